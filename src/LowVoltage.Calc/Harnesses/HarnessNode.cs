namespace LowVoltage.Calc.Harnesses;

/// <summary>A place where conductors meet: a terminal, a splice, a busbar, a ground point.</summary>
/// <remarks>Immutable. A joint's resistance belongs to the wire that ends there.</remarks>
public sealed class HarnessNode
{
    private HarnessNode(string id, NodeKind kind)
    {
        Id = id;
        Kind = kind;
    }

    /// <summary>Its name, which no other node has; compared letter by letter.</summary>
    public string Id { get; }

    /// <summary>What it is.</summary>
    public NodeKind Kind { get; }

    /// <summary>A node.</summary>
    /// <param name="id">Its name; not empty.</param>
    /// <param name="kind">What it is.</param>
    /// <returns>The node.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not one of its enumeration.</exception>
    public static HarnessNode Create(string id, NodeKind kind = NodeKind.Terminal) => new(
        HarnessName.Check(id, nameof(id)),
        kind is >= NodeKind.Terminal and <= NodeKind.Ground ? kind : throw new ArgumentOutOfRangeException(nameof(kind), kind, "A node is a terminal, a splice, a busbar or a ground."));

    /// <inheritdoc/>
    public override string ToString() => Id;
}
