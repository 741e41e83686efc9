using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Circuits of every sort: all kinds of load and source, stiff and soft, supply lead stated and not, every kind of return, cool and hot places, feasible and not; one of four presets each in turn.</summary>
/// <remarks>Drawn from one fixed seed: the n-th circuit is the same on every machine. Invented, no circuit of anybody's.</remarks>
internal static class WideMix
{
    private static readonly double[] NominalVolts = [12, 12, 12, 24, 24, 36, 48, 5];

    private static readonly InsulationMaterial[] Insulations =
    [
        InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.HeatResistantPolyvinylChloride, InsulationMaterial.SiliconeRubber,
        InsulationMaterial.Rubber85, InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.A), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
    ];

    internal static (CircuitRequirements Circuit, DesignRules Rules)[] Make(int count)
    {
        Random random = new(2);
        var made = new (CircuitRequirements, DesignRules)[count];
        for (int i = 0; i < count; i++)
        {
            DesignRules rules = DesignRules.Presets[i % 4];
            made[i] = (One(random, ReferenceEquals(rules, DesignRules.LightAircraft)), rules);
        }

        return made;
    }

    private static CircuitRequirements One(Random random, bool aircraft)
    {
        double volts = NominalVolts[random.Next(NominalVolts.Length)];
        double meters = Between(random, 0.3, 30), watts = Between(random, 2, 1500) * Math.Min(1, volts / 12);
        bool leadStated = random.Next(2) == 0, distanceStated = random.Next(3) == 0;
        return new CircuitRequirements
        {
            Source = SourceOf(random, volts),
            Load = LoadOf(random, watts, volts),
            Feed = Length.FromMeters(meters),
            Return = ReturnOf(random, meters),
            Joints = random.Next(3) == 0 ? [Joint.Create("switch", ElectricResistance.FromMilliohms(Between(random, 0.5, 20)))] : [],
            Upstream = leadStated ? ElectricResistance.FromMilliohms(Between(random, 0.3, 30)) : null,
            FuseDistance = distanceStated ? Length.FromMeters(Between(random, 0.02, 1)) : null,
            Insulation = aircraft ? InsulationMaterial.Etfe : Insulations[random.Next(Insulations.Length)],
            Intermittent = random.Next(4) == 0,
            Place = new Place
            {
                Ambient = Temperature.FromDegreesCelsius(random.Next(10) == 0 ? 95 * random.NextDouble() : 15 + (40 * random.NextDouble())),
                LoadedConductors = random.Next(4) == 0 ? null : random.Next(1, 13),
                EngineSpace = random.Next(6) == 0,
                Altitude = Length.FromMeters(random.Next(5) == 0 ? 4000 * random.NextDouble() : 0),
                BundleLoading = random.Next(3) == 0 ? 0.2 + (0.8 * random.NextDouble()) : 1,
            },
        };
    }

    private static Source SourceOf(Random random, double volts) => random.Next(9) switch
    {
        0 or 1 when volts == 12 => Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(Between(random, 150, 1200))),
        2 => Source.CurrentLimited(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(Between(random, 1, 100))),
        3 => Source.Ideal(ElectricPotential.FromVolts(volts)),
        4 => Source.Alternator(ElectricPotential.FromVolts(1.15 * volts), ElectricCurrent.FromAmperes(Between(random, 20, 200))),
        5 => Source.BehindResistance(ElectricPotential.FromVolts(volts), ElectricResistance.FromMilliohms(Between(random, 0.2, 500))),
        6 or 7 when volts is 12 or 24 or 48 => Battery.LithiumIronPhosphate(
            (int)Math.Round(volts / 3), ElectricCharge.FromAmpereHours(Between(random, 10, 400)), random.Next(2) == 0 ? ElectricCurrent.FromAmperes(Between(random, 30, 300)) : null),
        8 when volts == 12 => Source.InParallel(
            Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)), Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(Between(random, 200, 900)))),
        8 when volts == 24 => Source.InSeries(
            Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)), Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(Between(random, 5, 60)))),
        _ => Source.BehindResistance(
            ElectricPotential.FromVolts(0.92 * volts), ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(1.15 * volts),
            ElectricResistance.FromMilliohms(Between(random, 1, 20)), ElectricResistance.FromMilliohms(Between(random, 20, 60))),
    };

    private static Load LoadOf(Random random, double watts, double volts)
    {
        Load load = Simple(random, random.Next(6), watts, volts);
        if (random.Next(5) == 0)
        {
            load = load.WithDutyCycle(DutyCycle.FromFraction(0.1 + (0.8 * random.NextDouble())));
        }

        if (random.Next(4) == 0)
        {
            load = load.WithMinimumVoltage(ElectricPotential.FromVolts(volts * (0.75 + (0.2 * random.NextDouble()))));
        }

        return load;
    }

    private static Load Simple(Random random, int kind, double watts, double volts) => kind switch
    {
        0 => Load.ConstantPower(Power.FromWatts(watts), 0.8 + (0.2 * random.NextDouble())),
        1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(watts / volts)),
        2 => Load.Resistance(ElectricResistance.FromOhms(volts * volts / watts)),
        3 => Load.Lamp(Power.FromWatts(watts), ElectricPotential.FromVolts(volts)),
        4 => Load.Motor(
            ElectricCurrent.FromAmperes(watts / volts), ElectricCurrent.FromAmperes(3 * watts / volts), ElectricCurrent.FromAmperes(4 * watts / volts), Duration.FromSeconds(Between(random, 0.05, 3))),
        _ => Load.Together(Simple(random, random.Next(5), 0.6 * watts, volts), Simple(random, random.Next(5), 0.4 * watts, volts)),
    };

    private static ReturnPath ReturnOf(Random random, double meters) => random.Next(8) switch
    {
        0 or 1 => ReturnPath.Chassis(ElectricResistance.FromMilliohms(Between(random, 0.5, 20))),
        2 => ReturnPath.Shared(ElectricResistance.FromMilliohms(Between(random, 0.5, 5)), ElectricCurrent.FromAmperes(Between(random, 0.5, 10))),
        3 => ReturnPath.Wire(Segment.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(random.Next(2) == 0 ? 6 : 16)), Length.FromMeters(meters))),
        4 => ReturnPath.Shared(
            [Segment.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(16)), Length.FromMeters(0.5 * meters))], ElectricCurrent.FromAmperes(Between(random, 0.5, 10))),
        _ => ReturnPath.Wire(Length.FromMeters(meters)),
    };

    // Evenly on a logarithmic scale.
    private static double Between(Random random, double least, double most) => least * Math.Pow(most / least, random.NextDouble());
}
