using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Circuits;

public class DutyCycleTests
{
    private static Load Ampere => Load.ConstantCurrent(ElectricCurrent.FromAmperes(1));

    private static double HeatShare(double on, double period)
    {
        Load load = Ampere.WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(on), Duration.FromSeconds(period)));
        OperatingPoint point = OperatingPoint.Solve(Source.Ideal(ElectricPotential.FromVolts(12)), Paths.Wires(14, 1, 1), load, Paths.SelfHeated(20, 20, 100));
        return point.HeatingCurrent.Amperes * point.HeatingCurrent.Amperes;
    }

    // One body with one time constant of 1.15 s, stepped in time: heat in while on, loss in proportion to the rise.
    private static double Stepped(double on, double period)
    {
        const double Step = 1e-4;
        double rise = 0, most = 0;
        for (double t = 0; t < 20 * Math.Max(period, 2); t += Step)
        {
            double at = t % period;
            rise += Step / 1.15 * ((at < on ? 1 : 0) - rise);
            most = Math.Max(most, rise);
        }

        return most;
    }

    [Theory]
    [InlineData(0.1, 1)]
    [InlineData(0.5, 1)]
    [InlineData(1, 4)]
    [InlineData(1.9, 10)]
    [InlineData(5, 6)]
    public void FromTimes_HeatsAsTheEndOfAPulseSteppedInTime(double on, double period) => Assert.Equal(Stepped(on, period), HeatShare(on, period), 1e-3);

    [Theory]
    [InlineData(1e-3, 1e-2)]
    [InlineData(1e-6, 1e-3)]
    [InlineData(1e-9, 0.5e-8)]
    public void FromTimes_OfShortPulses_HeatsByTheMean(double on, double period) => Assert.Equal(on / period, HeatShare(on, period), 0.006 * on / period);

    [Fact]
    public void FromTimes_LongerOnOrAShorterPeriod_NeverHeatsLess()
    {
        double[] times = [1e-6, 1e-3, 0.05, 0.4, 1, 1.9999, 2, 2.0001, 3, 10, 60, 3600, 1e6];
        foreach (double period in times)
        {
            double[] shares = [.. times.Where(t => t <= period).Select(t => HeatShare(t, period))];
            Assert.Equal(shares.Order(), shares);
            Assert.All(times.Where(t => t <= period).Zip(shares), pair => Assert.InRange(pair.Second, pair.First / period * (1 - 1e-12), 1 + 1e-12));
            Assert.Equal(1, shares[^1], 1e-12);
        }

        foreach (double on in times)
        {
            double[] shares = [.. times.Where(t => t >= on).Select(t => HeatShare(on, t))];
            Assert.Equal(shares.OrderDescending(), shares);
        }
    }

    /// <summary>A rare hard pulse once counted by its mean: 40 A for 1.9 s in 1000 s showed a wire of 0.5 mm² at 32 °C where one pulse brings it to some 100 °C.</summary>
    [Fact]
    public void FromTimes_ARareHardPulse_IsNoCoolerThanOnePulseAlone()
    {
        // By hand: the adiabatic heat equation, β = 234.5 K and K = 226 A·√s/mm² (IEC 60949 (1988), Table I): x = I²t/(K·S)² = 40²·1.9/(226·0.5)²,
        // θ = (β + 30)·e^x − β = 264.5·e^0.2381 − 234.5 = 101.1 °C without any cooling.
        double adiabatic = (264.5 * Math.Exp(40 * 40 * 1.9 / Math.Pow(226 * 0.5, 2))) - 234.5;
        Load load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(40)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1.9), Duration.FromSeconds(1000)));
        CircuitDesign design = CircuitDesigner.Verify(
            new CircuitRequirements
            {
                Source = Source.Ideal(ElectricPotential.FromVolts(48)),
                Load = load,
                Feed = Length.FromMeters(0.2),
                Return = ReturnPath.Wire(Length.FromMeters(0.2)),
                Place = new Place { Ambient = Temperature.FromDegreesCelsius(30) },
                Insulation = InsulationMaterial.PolyvinylChloride,
            },
            Conductor.Iso6722(MetricSize.FromSquareMillimeters(0.5)), FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(5)), DesignRules.Bench);
        CheckResult temperature = design.Find(CheckKind.ConductorTemperature)!.Value;
        Assert.Equal(CheckOutcome.Fail, temperature.Outcome);
        Assert.True(temperature.Value > adiabatic, $"{temperature.Value} °C");
    }

    /// <summary>Every series of stranded conductors that the library carries in every insulation, by the model of repeating loads with the metal's heat alone. 30 AWG in PTFE went beyond its limit with 1.75 s.</summary>
    [Fact]
    public void FromTimes_EveryStrandedConductor_IsNoHotterAtTheEndOfItsPulses()
    {
        ConductorSeries[] series =
        [
            ConductorSeries.AwgStranded, ConductorSeries.AwgTrade, ConductorSeries.AwgTinned, ConductorSeries.KcmilStranded, ConductorSeries.AwgAndKcmil, ConductorSeries.RoadVehicle, ConductorSeries.Iec60228Class5,
            ConductorSeries.Iec60228Class5Tinned, ConductorSeries.Iec60228Class2, ConductorSeries.VehicleGauge, ConductorSeries.AircraftWire,
        ];
        int asked = 0;
        foreach (Conductor conductor in series.SelectMany(ThinAndThickest).Distinct())
        {
            foreach (InsulationMaterial insulation in Insulations)
            {
                double limit = insulation.ContinuousLimit.DegreesCelsius;
                foreach (double air in new[] { -40, limit - 50, limit - 20, limit - 10 })
                {
                    foreach ((double on, double period) in new[] { (0.01, 0.02), (1.0, 4.0), (2.0, 3.0), (1.9, 200.0) })
                    {
                        asked += IsNoHotter(Wire.Create(conductor, insulation), insulation, air, on, period);
                    }
                }
            }
        }

        Assert.True(asked > 6000, $"{asked}");
    }

    // Thin wires decide.
    private static IEnumerable<Conductor> ThinAndThickest(ConductorSeries series)
    {
        Conductor[] rising = [.. series.Conductors.OrderBy(c => c.Area.SquareMillimeters)];
        Assert.InRange(rising[0].Area.SquareMillimeters, 0.05, double.PositiveInfinity);
        return [.. rising.Take(3), rising[^1]];
    }

    private static InsulationMaterial[] Insulations =>
    [
        InsulationMaterial.PolyvinylChloride, InsulationMaterial.HeatResistantPolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.EthylenePropyleneRubber,
        InsulationMaterial.Rubber60, InsulationMaterial.Rubber85, InsulationMaterial.SiliconeRubber, InsulationMaterial.Etfe, InsulationMaterial.Ptfe,
        .. Enum.GetValues<RoadVehicleTemperatureClass>().Select(InsulationMaterial.RoadVehicle),
    ];

    // At the current on that the heat share makes just the continuous one.
    private static int IsNoHotter(Wire wire, InsulationMaterial insulation, double celsius, double on, double period)
    {
        Surroundings air = Surroundings.Create(Temperature.FromDegreesCelsius(celsius));
        double continuous = HeatBalance.CurrentFor(wire, air, insulation.ContinuousLimit).Amperes;
        ElectricCurrent current = ElectricCurrent.FromAmperes(continuous / Math.Sqrt(HeatShare(on, period)));
        TemperatureBand? band = OverloadHeating.CyclicBand(wire, air, current, Duration.FromSeconds(on), Duration.FromSeconds(period - on));
        Assert.True(
            band!.Highest.DegreesCelsius <= insulation.ContinuousLimit.DegreesCelsius + 1e-6,
            $"{wire.Conductor}, {insulation.Name}, air {celsius} °C, {on} s in {period} s: {band.Highest.DegreesCelsius} °C");
        return 1;
    }
}
