namespace LowVoltage.Calc.Harnesses;

/// <summary>Between which limits a quantity of a harness lies, and what that is worth.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <remarks>Immutable.</remarks>
public sealed class HarnessBound<T>
    where T : struct
{
    internal HarnessBound(BoundKind kind, T? least, T? greatest, string reason)
    {
        (Kind, Reason) = (kind, kind == BoundKind.None ? reason : "");
        (Least, Greatest) = kind == BoundKind.None ? (null, null) : (least, greatest);
    }

    /// <summary>What the bound is worth.</summary>
    public BoundKind Kind { get; }

    /// <summary>No harness within the tolerances has less; <c>null</c> where nothing is known.</summary>
    public T? Least { get; }

    /// <summary>No harness within the tolerances has more; <c>null</c> where nothing is known.</summary>
    public T? Greatest { get; }

    /// <summary>Why there is no bound, in words; empty where there is one.</summary>
    public string Reason { get; }

    /// <summary>The kind of bound in a word.</summary>
    public override string ToString() => Kind switch { BoundKind.Guaranteed => "guaranteed", BoundKind.Enclosure => "enclosed", _ => $"no bound: {Reason}" };
}
