namespace LowVoltage.Calc.Working;

/// <summary>Something that is given: a quantity, or words.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class SolutionGiven
{
    internal SolutionGiven(string meaning, Symbol symbol)
    {
        Meaning = meaning;
        Symbol = symbol;
    }

    internal SolutionGiven(string meaning, string words)
    {
        Meaning = meaning;
        Words = words;
    }

    /// <summary>What is given.</summary>
    public string Meaning { get; }

    /// <summary>The quantity; null where words are given.</summary>
    public Symbol? Symbol { get; }

    internal string Words { get; } = "";

    internal NumberStyle Style { get; init; } = SolutionBuilder.GivenDigits;

    /// <summary>The value as shown, with its unit, or the words.</summary>
    public string Value => Symbol is null ? Words : NumberText.WithUnit(Symbol.Value, Style, Symbol.Unit);

    /// <summary>What is given, in one line.</summary>
    public override string ToString() => Symbol is null ? $"{Meaning}: {Value}" : $"{Meaning}: {Symbol.Name} = {Value}";
}
