namespace LowVoltage.Calc.Teaching;

/// <summary>A mistake that people really make, with a name and a sentence that helps.</summary>
/// <remarks>Immutable and thread-safe. All of them are in <see cref="All"/>; one mistake is one object.</remarks>
public sealed partial class Mistake
{
    private Mistake(string name, string explanation)
    {
        Name = name;
        Explanation = explanation;
    }

    /// <summary>Every mistake that problems and grading know, by concept.</summary>
    public static IReadOnlyList<Mistake> All => Array.AsReadOnly<Mistake>([.. OfPaths, .. OfWires, .. OfHeat, .. OfRatings, .. OfFuses, .. OfNetworks, .. OfSources, .. OfArithmetic]);

    /// <summary>What went wrong, in a few words: <c>way back forgotten</c>.</summary>
    public string Name { get; }

    /// <summary>A sentence that says what happened and how it is done right.</summary>
    public string Explanation { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
