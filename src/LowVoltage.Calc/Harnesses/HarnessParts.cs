namespace LowVoltage.Calc.Harnesses;

/// <summary>What a harness is made of, as it was stated.</summary>
internal sealed record HarnessParts(string Name, DesignRules Rules)
{
    internal string? Reference { get; init; }

    internal HarnessNode[] Nodes { get; init; } = [];

    internal HarnessBranch[] Branches { get; init; } = [];

    internal HarnessSource[] Sources { get; init; } = [];

    internal HarnessLoad[] Loads { get; init; } = [];

    internal LoadCase[] Cases { get; init; } = [];
}
