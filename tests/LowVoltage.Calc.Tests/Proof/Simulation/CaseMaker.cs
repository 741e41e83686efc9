using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Random circuits: every preset, kind of source, load and return; each follows from the seed and its own number alone.</summary>
internal sealed partial class CaseMaker : Draws
{
    private static readonly Named<InsulationMaterial>[] Insulations =
    [
        new("InsulationMaterial.PolyvinylChloride", InsulationMaterial.PolyvinylChloride),
        new("InsulationMaterial.PolyvinylChloride", InsulationMaterial.PolyvinylChloride),
        new("InsulationMaterial.HeatResistantPolyvinylChloride", InsulationMaterial.HeatResistantPolyvinylChloride),
        new("InsulationMaterial.CrossLinkedPolyethylene", InsulationMaterial.CrossLinkedPolyethylene),
        new("InsulationMaterial.CrossLinkedPolyethylene", InsulationMaterial.CrossLinkedPolyethylene),
        new("InsulationMaterial.Rubber60", InsulationMaterial.Rubber60),
        new("InsulationMaterial.SiliconeRubber", InsulationMaterial.SiliconeRubber),
        new("InsulationMaterial.Etfe", InsulationMaterial.Etfe),
        new("InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B)", InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B)),
        new("InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C)", InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C)),
    ];

    private double volts;

    private CaseMaker(int seed, int number)
        : base(new Random(unchecked((seed * 486_187_739) + number)))
    {
    }

    public static CaseGiven Design(int seed, int number)
    {
        CaseMaker maker = new(seed, number);
        return maker.Circuit(maker.Wide(0.2, 60));
    }

    private CaseGiven Circuit(double amperes)
    {
        RulesGiven rules = Rules();
        SourceGiven source = AnySource(amperes);
        volts = new OwnSource(source).NominalVolts;
        Named<InsulationMaterial> insulation = rules.Basis == BasisType.Aircraft ? Pick(Insulations[6], Insulations[7], Insulations[7]) : Pick(Insulations);
        double feed = Wide(0.3, 15);
        bool free = Chance(0.5);
        return new CaseGiven(source, AnyLoad(amperes), feed, Back(feed, rules, amperes), insulation, rules)
        {
            Place = Place(insulation.Value.ContinuousLimit.DegreesCelsius, rules),
            JointOhms = Chance(0.3) ? Wide(0.0002, 0.02) : 0,
            UpstreamOhms = Chance(0.7) ? Chance(0.1) ? 0 : Wide(0.001, 0.05) : null,
            FuseMeters = Chance(0.8) ? Wide(0.02, Chance(0.8) ? 0.17 : 2) : null,
            FuseAmbient = Chance(0.15) ? Math.Round(Even(20, 75)) : null,
            Starts = Chance(0.2) ? Pick(1, 100, 1000, 100_000) : null,
            Sheathed = Chance(0.3),
            WallMillimeters = Chance(0.15) ? Wide(0.2, 2) : null,
            Intermittent = Chance(0.2),
            DropPercent = free ? Wide(2, 12) : null,
            DropVolts = !free && Chance(0.1) ? Wide(0.1, 2) : null,
        };
    }

    private RulesGiven Rules()
    {
        RulesGiven rules = new(Random.Next(4));
        if (rules.Preset is 0 or 3 && Chance(0.3))
        {
            rules = rules with { Basis = Pick(BasisType.RoadVehicleTable, BasisType.Building, BasisType.HeatBalance) };
        }

        if (Chance(0.35))
        {
            rules = rules with { Fuses = Pick(FuseType.Blades, FuseType.Gg, FuseType.Gg, FuseType.Breakers, FuseType.Breakers) };
        }

        return Chance(0.7) ? rules : rules with
        {
            Loading = Pick(0.7, 0.8, 1),
            Share = Pick(1.0, 1, 0.8, 1.2),
            Allowance = Pick<(double, double)?>((0, 0), (25, 25), (25, 50), null),
            FaultSeconds = Pick(5.0, 5, 0.4),
        };
    }

    private PlaceGiven Place(double limit, RulesGiven rules)
    {
        double ambient = Random.Next(10) switch { 0 => Even(-40, 0), < 6 => Even(15, 45), < 9 => Even(40, Math.Min(limit - 5, 105)), _ => Even(60, 120) };
        ambient = rules.Preset == 1 && Chance(0.7) ? Even(10, 50) : ambient;
        int? loaded = Random.Next(10) switch { < 3 => null, < 6 => 2, < 9 => Random.Next(3, 10), _ => Random.Next(10, 41) };
        double loading = rules.Basis == BasisType.Aircraft ? Chance(0.7) ? 0.2 : Even(0.2, 1) : Chance(0.8) ? 1 : Even(0.2, 1);
        return new(Math.Round(ambient, 1), loaded, loading, Chance(0.8) ? 0 : Even(0, rules.Preset == 2 ? 12_000 : 5_000), rules.Preset == 1 && Chance(0.2));
    }

    private BackGiven Back(double feed, RulesGiven rules, double amperes) => Random.Next(10) switch
    {
        < 5 => new(BackType.Wire, feed * (Chance(0.7) ? 1 : Even(0.3, 1.5))),
        < 7 => new(BackType.Chassis, Ohms: Chance(0.1) ? 0 : Wide(0.0005, 0.02)),
        7 => new(BackType.Segments, Stretches: [.. Enumerable.Range(0, Random.Next(1, 3)).Select(_ => Stretch(rules, amperes * Wide(1, 4), Wide(0.3, feed + 0.5)))]),
        8 => new(BackType.SharedOhms, Ohms: Wide(0.0005, 0.01), Others: Wide(0.1, 30)),
        _ => new(BackType.SharedSegments, Others: Wide(0.1, 15), Stretches: [Stretch(rules, amperes * Wide(1, 6), feed * Even(0.5, 1.3))]),
    };

    /// <summary>A size of the rules' series whose section suits a current, some 5 A for each mm².</summary>
    private StretchGiven Stretch(RulesGiven rules, double amperes, double meters)
    {
        Named<Conductor>[] sizes = Sizes.Of(rules.Preset);
        Named<Conductor>[] fitting = [.. sizes.Where(size => size.Value.Area.SquareMillimeters >= Math.Max(amperes / 6, 0.4))];
        return new(fitting.Length > 0 ? fitting[Math.Min(fitting.Length - 1, Random.Next(3))] : sizes[^1], meters);
    }
}

/// <summary>The sizes that a preset's series holds, with the C# that names them.</summary>
internal static class Sizes
{
    private static readonly Named<Conductor>[][] All = [.. Enumerable.Range(0, 4).Select(preset => DesignRules.Presets[preset].Conductors.Conductors.Select(c => new Named<Conductor>(Code(preset, c), c)).ToArray())];

    public static Named<Conductor>[] Of(int preset) => All[preset];

    public static Named<Conductor> Name(int preset, Conductor conductor) => new(Code(preset, conductor), conductor);

    private static string Code(int preset, Conductor conductor)
    {
        ConductorSize size = conductor.Size!.Value;
        string mm2 = size.TryGetMetric(out MetricSize metric) ? metric.NominalArea.SquareMillimeters.ToString(System.Globalization.CultureInfo.InvariantCulture) : "";
        return preset switch
        {
            0 => $"Conductor.Iso6722(MetricSize.FromSquareMillimeters({mm2}))",
            1 => $"Conductor.Stranded(AwgSize.FromNumber({(size.TryGetAwg(out AwgSize awg) ? awg.Number : 0)}), ConductorMaterial.Copper)",
            2 => $"Conductor.AircraftWire(AircraftWireSize.FromNumber({(size.TryGetAircraft(out AircraftWireSize aircraft) ? aircraft.Number : 0)}))",
            _ => $"Conductor.Iec60228(MetricSize.FromSquareMillimeters({mm2}), Iec60228Class.Flexible)",
        };
    }
}
