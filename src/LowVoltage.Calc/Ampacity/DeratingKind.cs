namespace LowVoltage.Calc.Ampacity;

/// <summary>What a derating factor accounts for.</summary>
public enum DeratingKind
{
    /// <summary>Air warmer or cooler than the base ambient of the table.</summary>
    Ambient,

    /// <summary>A conductor in an engine space, which is an ambient of its own in law.</summary>
    EngineSpace,

    /// <summary>The number of current-carrying conductors together.</summary>
    ConductorCount,

    /// <summary>The number of circuits or multi-core cables together.</summary>
    Grouping,

    /// <summary>The number of wires together and how much of their joint capacity is in use.</summary>
    BundleLoading,

    /// <summary>Thin air at altitude.</summary>
    Altitude,

    /// <summary>An insulation with another temperature rating than the one the table was made for.</summary>
    Insulation,
}

/// <summary>Kinds that describe the same physical effect, so that no effect is counted twice.</summary>
internal static class DeratingEffect
{
    internal static DeratingKind Of(DeratingKind kind) => kind switch
    {
        DeratingKind.EngineSpace => DeratingKind.Ambient,
        DeratingKind.Grouping or DeratingKind.BundleLoading => DeratingKind.ConductorCount,
        _ => kind,
    };

    internal static string Describe(DeratingKind kind) => kind switch
    {
        DeratingKind.Ambient => "ambient temperature",
        DeratingKind.EngineSpace => "engine space",
        DeratingKind.ConductorCount => "number of conductors",
        DeratingKind.Grouping => "grouping of circuits",
        DeratingKind.BundleLoading => "bundle and its loading",
        DeratingKind.Altitude => "altitude",
        _ => "insulation rating",
    };
}
