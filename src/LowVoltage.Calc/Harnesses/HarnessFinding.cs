namespace LowVoltage.Calc.Harnesses;

/// <summary>Something odd in how a harness is connected: what it is, where, and how much it weighs.</summary>
public sealed class HarnessFinding
{
    internal HarnessFinding(FindingSeverity severity, string text, params string[] places)
    {
        Severity = severity;
        Text = text;
        Places = Array.AsReadOnly(places);
    }

    /// <summary>How much it weighs.</summary>
    public FindingSeverity Severity { get; }

    /// <summary>What it is, in a sentence.</summary>
    public string Text { get; }

    /// <summary>Names of the nodes, branches, sources or loads that it is about.</summary>
    public IReadOnlyList<string> Places { get; }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
