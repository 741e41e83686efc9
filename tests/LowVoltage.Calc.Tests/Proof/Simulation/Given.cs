using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A thing of the library with the C# that names it.</summary>
internal sealed record Named<T>(string Code, T Value);

internal enum SourceType
{
    LeadAcid,
    Lithium,
    Range,
    Limited,
    Alternator,
    Series,
    Parallel,
}

/// <summary>A source in plain numbers. Lead-acid: A cold-cranking amperes, B blocks, C strings. Lithium: A cells, B ampere-hours, C protection amperes or NaN.</summary>
/// <remarks>Range: A, B, C least, nominal and greatest volts, D, E least and greatest ohms. Limited and alternator: A volts, B amperes.</remarks>
internal sealed record SourceGiven(SourceType Type, double A = 0, double B = 0, double C = double.NaN, double D = 0, double E = 0, params SourceGiven[] Parts);

internal enum LoadType
{
    Resistance,
    Current,
    Power,
    Lamp,
    Motor,
    Together,
}

/// <summary>A load in plain numbers. Resistance: A ohms. Current: A amperes. Power: A watts, B efficiency. Lamp: A watts, B volts, C hot over cold.</summary>
/// <remarks>Motor: A running, B peak, C locked-rotor amperes, D seconds, E volts of the two last currents or NaN.</remarks>
internal sealed record LoadGiven(LoadType Type, double A = 0, double B = 1, double C = 0, double D = 0, double E = double.NaN, params LoadGiven[] Parts)
{
    /// <summary>Least volts at which it works.</summary>
    public double? LeastVolts { get; init; }

    /// <summary>Share of the time that it is on, in short pulses.</summary>
    public double? Duty { get; init; }

    public double? CapacitorFarads { get; init; }

    /// <summary>Whether a motor switches itself off when it is held still.</summary>
    public bool CutsOut { get; init; }
}

internal enum BackType
{
    Wire,
    Segments,
    Chassis,
    SharedOhms,
    SharedSegments,
}

internal sealed record StretchGiven(Named<Conductor> Conductor, double Meters, int Parallel = 1)
{
    /// <summary>A stated conductor temperature, °C.</summary>
    public double? Celsius { get; init; }

    /// <summary>A place of its own; null where it runs with the rest.</summary>
    public PlaceGiven? Place { get; init; }
}

internal sealed record BackGiven(BackType Type, double Meters = 0, double Ohms = 0, double Others = 0, params StretchGiven[] Stretches);

/// <summary>What a limit is asked for.</summary>
internal enum LimitType
{
    Run,
    Current,
    Power,
    Ambient,
    Conductors,
}

/// <summary>Where the wire runs; without a count the circuit's own conductors.</summary>
internal sealed record PlaceGiven(double Ambient = 30, int? Loaded = null, double Loading = 1, double Altitude = 0, bool EngineSpace = false);

internal enum BasisType
{
    RoadVehicle,
    SmallCraft,
    Aircraft,
    HeatBalance,
    RoadVehicleTable,
    Building,
}

internal enum FuseType
{
    Preset,
    Blades,
    Gg,
    Breakers,
}

/// <summary>The rules: a preset (0 road vehicle, 1 small craft, 2 light aircraft, 3 bench) with what is changed in it.</summary>
internal sealed record RulesGiven(int Preset)
{
    public BasisType Basis { get; init; } = Preset switch { 0 => BasisType.RoadVehicle, 1 => BasisType.SmallCraft, 2 => BasisType.Aircraft, _ => BasisType.HeatBalance };

    public FuseType Fuses { get; init; }

    public double Loading { get; init; } = 0.8;

    public double Share { get; init; } = 1;

    /// <summary>Kelvins above the continuous limit while an overload lasts, and until the fuse opens; null where overload is not computed.</summary>
    public (double Sustained, double Opened)? Allowance { get; init; } = (25, 25);

    public double FaultSeconds { get; init; } = 5;
}

/// <summary>One question: a circuit to be designed, or, with a fuse, wiring to be verified.</summary>
internal sealed record CaseGiven(SourceGiven Source, LoadGiven Load, double Feed, BackGiven Back, Named<InsulationMaterial> Insulation, RulesGiven Rules)
{
    public PlaceGiven Place { get; init; } = new();

    public double JointOhms { get; init; }

    public double? UpstreamOhms { get; init; }

    public double? FuseMeters { get; init; }

    public bool Sheathed { get; init; }

    /// <summary>Air around the fuse, °C; null means that of the wire's place.</summary>
    public double? FuseAmbient { get; init; }

    /// <summary>Starts in the life of the fuse; null means as many as is usual.</summary>
    public int? Starts { get; init; }

    public double? WallMillimeters { get; init; }

    public bool Intermittent { get; init; }

    public double? DropPercent { get; init; }

    public double? DropVolts { get; init; }

    /// <summary>The feed as it is laid; empty for a design.</summary>
    public StretchGiven[] Laid { get; init; } = [];

    /// <summary>One wire throughout, to be verified instead of a laid path.</summary>
    public Conductor? Wire { get; init; }

    /// <summary>The fuse as it is fitted; null for a design.</summary>
    public Named<FuseRating>? Fitted { get; init; }

    /// <summary>Wiring that exists and has no fuse.</summary>
    public bool Unfused { get; init; }

    /// <summary>What protects the supply lead, from the source on.</summary>
    public MainGiven[] Mains { get; init; } = [];

    /// <summary>Resistance up to the fuse that protects the wire, where it is stated: of an unfused circuit the nearest main fuse.</summary>
    public double? AtFuseOhms => Unfused && Mains.Length > 0 ? Mains[^1].Before : UpstreamOhms;

    /// <summary>A piece of another case's supply lead, as a circuit of its own.</summary>
    public bool IsLead { get; init; }

    public bool IsVerification => Fitted is not null || Unfused;
}
