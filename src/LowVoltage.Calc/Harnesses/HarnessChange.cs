namespace LowVoltage.Calc.Harnesses;

/// <summary>What is different from the harness as stated: branches that are interrupted, a short, loads all off.</summary>
internal sealed record HarnessChange
{
    internal static HarnessChange None { get; } = new();

    /// <summary>Branches that carry nothing, by index.</summary>
    internal IReadOnlyCollection<int> Open { get; init; } = [];

    /// <summary>Two nodes with a resistance between them that should not be there.</summary>
    internal (int A, int B, double Ohms)? Short { get; init; }

    internal bool LoadsOff { get; init; }

    /// <summary>Whether loads of constant power stay on below their least voltage, as the checks count them.</summary>
    internal bool LoadsStayOn { get; init; }

    /// <summary>Whether supplies that hold a limit, and solar panels, are taken off.</summary>
    internal bool BatteriesOnly { get; init; }

    /// <summary>Whether a source stays that would disconnect above its limit: in a fault that is never counted on.</summary>
    internal bool SourcesStay { get; init; }

    /// <summary>Resistance of every branch, Ω, where wires do not follow their current; else null.</summary>
    internal double[]? Ohms { get; init; }

    /// <summary>What each load that is on draws while there is voltage, A, whatever its law says; else null.</summary>
    internal double[]? LoadAmperes { get; init; }
}
