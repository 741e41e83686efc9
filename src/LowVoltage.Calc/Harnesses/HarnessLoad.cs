using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A load between two nodes of a harness. Its ground is a node like any other.</summary>
/// <remarks>Immutable. A variation is a copy: <c>load.WithDropLimit(…)</c>.</remarks>
public sealed class HarnessLoad
{
    private HarnessLoad(string id, string positive, string negative, Load load, bool intermittent, DropLimit? dropLimit, int? starts)
    {
        Id = HarnessName.Check(id, nameof(id));
        Positive = HarnessName.Check(positive, nameof(positive));
        Negative = HarnessName.Check(negative, nameof(negative));
        HarnessName.CheckEnds(id, positive, negative, nameof(negative));
        Load = load;
        Intermittent = intermittent;
        DropLimit = dropLimit;
        Starts = starts;
    }

    /// <summary>Its name, which no branch, source or other load has.</summary>
    public string Id { get; }

    /// <summary>Name of the node at its positive terminal.</summary>
    public string Positive { get; }

    /// <summary>Name of the node at its negative terminal.</summary>
    public string Negative { get; }

    /// <summary>What it draws.</summary>
    public Load Load { get; }

    /// <summary>Whether it runs for short times only; the aircraft voltage-drop allowances distinguish that.</summary>
    public bool Intermittent { get; }

    /// <summary>An allowance of its own in place of the rules'; <c>null</c> means the rules'.</summary>
    public DropLimit? DropLimit { get; }

    /// <summary>How often it is started in the life of its fuse; <c>null</c> means <see cref="CircuitRequirements.UsualStarts"/>.</summary>
    public int? Starts { get; }

    internal int CountedStarts => Starts ?? CircuitRequirements.UsualStarts;

    /// <summary>A load.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="positive">Name of the node at its positive terminal.</param>
    /// <param name="negative">Name of the node at its negative terminal.</param>
    /// <param name="load">What it draws.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public static HarnessLoad Create(string id, string positive, string negative, Load load) =>
        new(id, positive, negative, load ?? throw new ArgumentNullException(nameof(load)), false, null, null);

    /// <summary>The same load, running for short times only or not.</summary>
    /// <param name="intermittent">See <see cref="Intermittent"/>.</param>
    /// <returns>A copy.</returns>
    public HarnessLoad WithIntermittent(bool intermittent) => new(Id, Positive, Negative, Load, intermittent, DropLimit, Starts);

    /// <summary>The same load with an allowance of its own.</summary>
    /// <param name="dropLimit">See <see cref="DropLimit"/>.</param>
    /// <returns>A copy.</returns>
    public HarnessLoad WithDropLimit(DropLimit? dropLimit) => new(Id, Positive, Negative, Load, Intermittent, dropLimit, Starts);

    /// <summary>The same load, started so often in the life of its fuse.</summary>
    /// <param name="starts">1 to 100 000; <c>null</c> for the usual number.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public HarnessLoad WithStarts(int? starts) =>
        new(Id, Positive, Negative, Load, Intermittent, DropLimit, starts is { } count ? Accept.Count(count, 1, 100_000, nameof(starts)) : null);

    /// <summary>The same with another law.</summary>
    /// <param name="load">What it draws.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The load is null.</exception>
    public HarnessLoad WithLoad(Load load) => new(Id, Positive, Negative, load ?? throw new ArgumentNullException(nameof(load)), Intermittent, DropLimit, Starts);

    /// <inheritdoc/>
    public override string ToString() => $"load {Id}, {Load}";
}
