namespace LowVoltage.Calc.Harnesses;

/// <summary>What carries current between two nodes: a wire, a stated resistance such as a chassis, a fuse or breaker, a switch.</summary>
/// <remarks>Its current counts from <see cref="From"/> to <see cref="To"/>. Immutable.</remarks>
public abstract class HarnessBranch
{
    private protected HarnessBranch(string id, string from, string to)
    {
        Id = HarnessName.Check(id, nameof(id));
        From = HarnessName.Check(from, nameof(from));
        To = HarnessName.Check(to, nameof(to));
        HarnessName.CheckEnds(id, from, to, nameof(to));
    }

    /// <summary>Its name, which no other branch, source or load has.</summary>
    public string Id { get; }

    /// <summary>The node that its current is counted from.</summary>
    public string From { get; }

    /// <summary>The other node.</summary>
    public string To { get; }

    /// <summary>Resistance that no temperature changes, Ω: of what is no wire all of it, of a wire its joints.</summary>
    internal abstract double FixedOhms { get; }

    /// <summary>What it is, in a word.</summary>
    internal abstract string Word { get; }

    /// <inheritdoc/>
    public override string ToString() => $"{Word} {Id}";
}
