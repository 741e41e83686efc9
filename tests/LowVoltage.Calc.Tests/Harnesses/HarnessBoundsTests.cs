using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>No harness within its tolerances passes the bounds.</summary>
public class HarnessBoundsTests
{
    private static readonly Tolerances All = Tolerances.None.WithSupply(Ratio.FromPercent(3)).WithLengths(Ratio.FromPercent(5)).WithResistances(Ratio.FromPercent(4)).WithJoints(Ratio.FromPercent(40))
        .WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(8));

    // Draws of each of 50 trees; LOWVOLTAGE_BOUNDS=20000 dotnet test --filter HarnessBoundsTests asks for more, offline.
    private static readonly int Draws = int.Parse(Environment.GetEnvironmentVariable("LOWVOLTAGE_BOUNDS") ?? "40", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Of_RandomTrees_HoldEverySampleAndCorner()
    {
        Random random = new(3001);
        int asked = 0, guaranteed = 0;
        double nearest = double.PositiveInfinity;
        for (int n = 0; n < 50; n++)
        {
            Harness harness = RandomTree.Of(random, 2 + (n % 6));
            HarnessBounds bounds = HarnessBounds.Of(harness, All);
            for (int sample = 0; sample < Draws; sample++)
            {
                // Every other one a corner: each part at one end of its tolerance.
                Harness drawn = sample % 2 == 0 ? DrawnHarness.Of(harness, new ToleranceDraw(All, n, sample)) : ToleranceCorner.Of(harness, All, random);
                foreach (SupplyLevel level in new[] { SupplyLevel.Minimum, SupplyLevel.Maximum })
                {
                    HarnessSolution at = drawn.Solve(level);
                    foreach (HarnessLoad load in harness.Loads.Where(_ => at.Exists))
                    {
                        asked++;
                        HarnessBound<ElectricPotential> bound = bounds.VoltageAt(load.Id);
                        if (bound.Kind != BoundKind.Guaranteed)
                        {
                            continue;
                        }

                        guaranteed++;
                        double volts = at.VoltageAt(load.Id).Volts;
                        Assert.True(volts >= bound.Least!.Value.Volts && volts <= bound.Greatest!.Value.Volts, $"{n}, {sample}: {load.Id} {volts} V, bound {bound.Least}");
                        nearest = Math.Min(nearest, volts - bound.Least!.Value.Volts);
                    }

                    foreach (HarnessBranch branch in harness.Branches.Where(b => at.Exists && bounds.CurrentOf(b.Id).Kind == BoundKind.Guaranteed))
                    {
                        Assert.True(Math.Abs(at.CurrentOf(branch.Id).Amperes) <= bounds.CurrentOf(branch.Id).Greatest!.Value.Amperes);
                        if (branch is HarnessWire && bounds.TemperatureOf(branch.Id).Greatest is { } most)
                        {
                            Assert.True(at.TemperatureOf(branch.Id)!.Value.DegreesCelsius <= most.DegreesCelsius);
                        }
                    }
                }
            }
        }

        Assert.True(guaranteed > 0.9 * asked, $"{guaranteed} of {asked} guaranteed");
        Assert.True(nearest < 0.5, $"the bounds are {nearest} V wide at the least");
    }

    // 5 A through 20 mΩ of joints ±50 % behind 12 V ±2 %: 12·0.98 − 5·1.1·0.020·1.5 V at the least.
    [Fact]
    public void Of_ConstantCurrentBehindAResistance_IsAttained()
    {
        Harness harness = new HarnessBuilder("one", DesignRules.RoadVehicle).Terminals("plus", "minus", "at")
            .Source("supply", "plus", "minus", Source.Ideal(ElectricPotential.FromVolts(12))).Resistance("lead", "plus", "at", ElectricResistance.FromMilliohms(20))
            .Load("lamp", "at", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(5))).Build();
        HarnessBounds bounds = HarnessBounds.Of(harness, Tolerances.None.WithSupply(Ratio.FromPercent(2)).WithJoints(Ratio.FromPercent(50)).WithLoads(Ratio.FromPercent(10)));

        Assert.Equal((12 * 0.98) - (5 * 1.1 * 0.020 * 1.5), bounds.VoltageAt("lamp").Least!.Value.Volts, 1e-7);
        Assert.Equal(5.5, bounds.CurrentOf("lead").Greatest!.Value.Amperes, 1e-7);
    }

    [Fact]
    public void Of_TwoSources_EnclosesWithoutAGuarantee()
    {
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(10));
        Harness harness = new HarnessBuilder("two", DesignRules.RoadVehicle).Terminals("plus", "minus", "other").Source("one", "plus", "minus", battery).Source("two", "other", "minus", battery)
            .Resistance("tie", "plus", "other", ElectricResistance.FromMilliohms(5)).Load("lamp", "other", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(5))).Build();
        HarnessBounds bounds = HarnessBounds.Of(harness, All);

        Assert.Equal(BoundKind.Enclosure, bounds.VoltageAt("lamp").Kind);
        Assert.Equal(BoundKind.Enclosure, bounds.CurrentOf("tie").Kind);
        Assert.Equal(BoundKind.Enclosure, bounds.CurrentFrom("one").Kind);
    }

    [Fact]
    public void MayCutOut_ConverterNearItsMinimum_IsNamed()
    {
        Harness harness = Vans.Two(Load.ConstantPower(Power.FromWatts(40), minimumVoltage: ElectricPotential.FromVolts(11)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(12))).Build();
        Assert.Contains("left", HarnessBounds.Of(harness, All).MayCutOut);
    }

    // A load on a way of its own shares the source's resistance with one in a ring: that one's current was not counted.
    [Fact]
    public void VoltageAt_AnotherLoadInARing_IsEnclosedAndNotGuaranteed()
    {
        Harness harness = Ringed();
        HarnessBounds bounds = HarnessBounds.Of(harness, All);
        double volts = harness.Solve(SupplyLevel.Minimum).VoltageAt("alone").Volts;

        Assert.Equal(BoundKind.Enclosure, bounds.VoltageAt("alone").Kind);
        Assert.InRange(volts, bounds.VoltageAt("alone").Least!.Value.Volts, 10.9);
    }

    // A source at its limit gives less than its voltage: no bound by the way's resistance holds.
    [Fact]
    public void VoltageAt_SourceThatMayReachItsLimit_IsEnclosedAndNotGuaranteed()
    {
        Harness harness = Limited(Load.ConstantCurrent(ElectricCurrent.FromAmperes(4.9)), Load.Resistance(ElectricResistance.FromOhms(100)));
        HarnessBounds bounds = HarnessBounds.Of(harness, Tolerances.None.WithLoads(Ratio.FromPercent(5)));

        Assert.True(bounds.MayPassLimit);
        Assert.NotEqual(BoundKind.Guaranteed, bounds.VoltageAt("one").Kind);
    }

    // At standstill nothing is thinned by the duty cycle of running: 20 A, not 2 A, heats the lead.
    [Fact]
    public void TemperatureOf_StalledMotorWithADutyCycle_IsThatOfTheWholeCurrent()
    {
        Load motor = Load.Motor(ElectricCurrent.FromAmperes(4), ElectricCurrent.FromAmperes(16), ElectricCurrent.FromAmperes(16), Duration.FromSeconds(1)).WithDutyCycle(DutyCycle.FromFraction(0.01));
        Harness harness = Vans.Two(motor, Load.ConstantCurrent(ElectricCurrent.FromAmperes(1))).Build();
        LoadCase stalled = LoadCase.Create("stalled").WithStalled("left");
        double celsius = harness.Solve(SupplyLevel.Nominal, stalled).TemperatureOf("left feed")!.Value.DegreesCelsius;

        Assert.True(celsius > harness.Solve(SupplyLevel.Nominal).TemperatureOf("left feed")!.Value.DegreesCelsius + 5);
        HarnessBound<Temperature> bound = HarnessBounds.Of(harness, Tolerances.None, stalled).TemperatureOf("left feed");
        Assert.Equal(BoundKind.Guaranteed, bound.Kind);
        Assert.True(bound.Greatest!.Value.DegreesCelsius >= celsius, $"{bound.Greatest} below {celsius}");
    }

    /// <summary>A motor that starts in every period heats more than its running current; where its starting current is of a voltage, up to the highest that it gets.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TemperatureOf_MotorThatStartsInEveryPeriod_HoldsItsStarts(bool ofAVoltage)
    {
        ElectricCurrent running = ElectricCurrent.FromAmperes(4), peak = ElectricCurrent.FromAmperes(16);
        Duration start = Duration.FromSeconds(1);
        Load motor = (ofAVoltage ? Load.Motor(running, peak, peak, start, ElectricPotential.FromVolts(12)) : Load.Motor(running, peak, peak, start)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(2), Duration.FromSeconds(12)));
        Load other = Load.ConstantCurrent(ElectricCurrent.FromAmperes(1));
        Harness still = Vans.Two(Load.ConstantCurrent(running), other).Build(), harness = Vans.Two(motor, other).Build();
        foreach (SupplyLevel level in Enum.GetValues<SupplyLevel>())
        {
            double celsius = harness.Solve(level).TemperatureOf("left feed")!.Value.DegreesCelsius;
            Assert.True(celsius > still.Solve(level).TemperatureOf("left feed")!.Value.DegreesCelsius + 2, $"{celsius} °C");
            HarnessBound<Temperature> bound = HarnessBounds.Of(harness, All).TemperatureOf("left feed");
            Assert.InRange(celsius, bound.Least?.DegreesCelsius ?? -273, bound.Greatest!.Value.DegreesCelsius);
        }
    }

    private static Harness Ringed() => new HarnessBuilder("ringed", DesignRules.RoadVehicle).Terminals("plus", "minus", "a", "b", "c")
        .Source("battery", "plus", "minus", Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(100)))
        .Resistance("left", "plus", "a", ElectricResistance.FromMilliohms(10)).Resistance("right", "plus", "b", ElectricResistance.FromMilliohms(10)).Resistance("across", "a", "b", ElectricResistance.FromMilliohms(10))
        .Resistance("own", "plus", "c", ElectricResistance.FromMilliohms(10))
        .Load("in the ring", "a", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(10))).Load("alone", "c", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(1))).Build();

    private static Harness Limited(Load one, Load other) => new HarnessBuilder("limited", DesignRules.RoadVehicle).Terminals("plus", "minus", "at")
        .Source("supply", "plus", "minus", Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(5))).Resistance("lead", "plus", "at", ElectricResistance.FromMilliohms(20))
        .Load("one", "at", "minus", one).Load("other", "at", "minus", other).Build();
}
