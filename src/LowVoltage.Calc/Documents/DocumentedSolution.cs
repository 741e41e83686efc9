using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A solution of a harness in one load case at one supply level, as a document states it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentedSolution
{
    internal DocumentedSolution(string loadCase, SupplyLevel level)
    {
        LoadCase = loadCase;
        Level = level;
    }

    /// <summary>Name of the load case.</summary>
    public string LoadCase { get; }

    /// <summary>Where in its range every source is.</summary>
    public SupplyLevel Level { get; }

    /// <summary>Whether there is a solution; where there is none the lists are empty.</summary>
    public bool Exists { get; internal init; }

    /// <summary>Why there is none; empty where there is one.</summary>
    public string Explanation { get; internal init; } = "";

    /// <summary>The nodes with their voltages.</summary>
    public IReadOnlyList<DocumentedPart> Nodes { get; internal init; } = [];

    /// <summary>The branches with their currents and losses, wires with their temperatures.</summary>
    public IReadOnlyList<DocumentedPart> Branches { get; internal init; } = [];

    /// <summary>The sources with their voltages and what they give.</summary>
    public IReadOnlyList<DocumentedPart> Sources { get; internal init; } = [];

    /// <summary>The loads with their voltages, what they draw and what they do.</summary>
    public IReadOnlyList<DocumentedPart> Loads { get; internal init; } = [];

    /// <summary>What a careful reader must know.</summary>
    public IReadOnlyList<string> Remarks { get; internal init; } = [];

    /// <summary>The load case and the level.</summary>
    public override string ToString() => $"{LoadCase}, {Level}";

    internal static DocumentedSolution From(HarnessSolution solution) => new(solution.LoadCase.Name, solution.Level)
    {
        Exists = solution.Exists,
        Explanation = solution.Explanation,
        Remarks = solution.Remarks,
        Nodes = Array.AsReadOnly(Of(solution, solution.Harness.Nodes, node => new DocumentedPart(node.Id) { Volts = solution.VoltageOf(node.Id).Volts })),
        Branches = Array.AsReadOnly(Of(solution, solution.Harness.Branches, branch => new DocumentedPart(branch.Id)
        {
            Amperes = solution.CurrentOf(branch.Id).Amperes,
            Watts = (double)solution.LossOf(branch.Id).Watts,
            Celsius = branch is HarnessWire ? solution.TemperatureOf(branch.Id)?.DegreesCelsius : null,
        })),
        Sources = Array.AsReadOnly(Of(solution, solution.Harness.Sources, source => new DocumentedPart(source.Id) { Volts = solution.VoltageOfSource(source.Id).Volts, Amperes = solution.CurrentFrom(source.Id).Amperes })),
        Loads = Array.AsReadOnly(Of(solution, solution.Harness.Loads, load => new DocumentedPart(load.Id)
        {
            Volts = solution.VoltageAt(load.Id).Volts,
            Amperes = solution.CurrentAt(load.Id).Amperes,
            Condition = solution.ConditionOf(load.Id),
        })),
    };

    private static DocumentedPart[] Of<T>(HarnessSolution solution, IReadOnlyList<T> parts, Func<T, DocumentedPart> make) =>
        solution.Exists ? [.. parts.Select(make)] : [];
}
