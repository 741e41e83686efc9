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
                Harness drawn = sample % 2 == 0 ? DrawnHarness.Of(harness, new ToleranceDraw(All, n, sample)) : Corner(harness, random);
                foreach (SupplyLevel level in new[] { SupplyLevel.Minimum, SupplyLevel.Maximum })
                {
                    HarnessSolution at = drawn.Solve(level);
                    foreach (HarnessLoad load in harness.Loads.Where(_ => at.Exists))
                    {
                        asked++;
                        if (bounds.LeastVoltage(load.Id) is not { } least)
                        {
                            continue;
                        }

                        guaranteed++;
                        double volts = at.VoltageAt(load.Id).Volts;
                        Assert.True(volts >= least.Volts && volts <= bounds.GreatestVoltage(load.Id)!.Value.Volts, $"{n}, {sample}: {load.Id} {volts} V, bound {least.Volts}");
                        nearest = Math.Min(nearest, volts - least.Volts);
                    }

                    foreach (HarnessBranch branch in harness.Branches.Where(b => at.Exists && bounds.GreatestCurrent(b.Id) is not null))
                    {
                        Assert.True(Math.Abs(at.CurrentOf(branch.Id).Amperes) <= bounds.GreatestCurrent(branch.Id)!.Value.Amperes);
                        if (branch is HarnessWire && bounds.HighestTemperature(branch.Id) is { } most)
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

        Assert.Equal((12 * 0.98) - (5 * 1.1 * 0.020 * 1.5), bounds.LeastVoltage("lamp")!.Value.Volts, 1e-7);
        Assert.Equal(5.5, bounds.GreatestCurrent("lead")!.Value.Amperes, 1e-7);
    }

    [Fact]
    public void Of_TwoSources_GuaranteeNothing()
    {
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(10));
        Harness harness = new HarnessBuilder("two", DesignRules.RoadVehicle).Terminals("plus", "minus", "other").Source("one", "plus", "minus", battery).Source("two", "other", "minus", battery)
            .Resistance("tie", "plus", "other", ElectricResistance.FromMilliohms(5)).Load("lamp", "other", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(5))).Build();
        HarnessBounds bounds = HarnessBounds.Of(harness, All);

        Assert.False(bounds.IsGuaranteed("lamp"));
        Assert.Null(bounds.LeastVoltage("lamp"));
        Assert.Null(bounds.GreatestCurrent("tie"));
    }

    [Fact]
    public void MayCutOut_ConverterNearItsMinimum_IsNamed()
    {
        Harness harness = Vans.Two(Load.ConstantPower(Power.FromWatts(40), minimumVoltage: ElectricPotential.FromVolts(11)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(12))).Build();
        Assert.Contains("left", HarnessBounds.Of(harness, All).MayCutOut);
    }

    private static Harness Corner(Harness harness, Random random)
    {
        double end(double share) => random.Next(2) == 0 ? 1 - share : 1 + share;
        HarnessBuilder builder = harness.ToBuilder();
        foreach (HarnessBranch branch in harness.Branches)
        {
            ElectricResistance ohms = ElectricResistance.FromOhms(branch.FixedOhms * end(0.4));
            _ = branch switch
            {
                HarnessWire wire => builder.Replace(wire.WithMeters(wire.Meters * end(0.05) * end(0.04)).WithPlace(wire.Place.WithAmbient(Temperature.FromDegreesCelsius(wire.Place.Ambient.DegreesCelsius + (random.Next(2) == 0 ? -8 : 8))))),
                HarnessFuse fuse => builder.Replace(fuse.WithResistance(ohms)),
                HarnessResistance chassis => builder.Replace(HarnessResistance.Chassis(chassis.Id, chassis.From, chassis.To, ohms)),
                _ => builder,
            };
        }

        Harness branches = builder.Build();
        return new Harness(branches.Parts with
        {
            Loads = [.. branches.LoadArray.Select(l => l.WithLoad(l.Load.Scaled(end(0.1))))],
            Sources = [.. branches.SourceArray.Select(s => HarnessSource.Create(s.Id, s.Positive, s.Negative, s.Source!.Scaled(end(0.03))))],
        });
    }
}
