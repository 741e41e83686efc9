using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A finding about a harness as a document states it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentedFinding
{
    internal DocumentedFinding(FindingSeverity severity, string text, IReadOnlyList<string> places)
    {
        Severity = severity;
        Text = text;
        Places = places;
    }

    /// <summary>How grave it is.</summary>
    public FindingSeverity Severity { get; }

    /// <summary>What was found.</summary>
    public string Text { get; }

    /// <summary>Names of the parts that it is about.</summary>
    public IReadOnlyList<string> Places { get; }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
