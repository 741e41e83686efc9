namespace LowVoltage.Calc.Teaching;

/// <summary>One of the answers to choose from.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class ProblemChoice
{
    internal ProblemChoice(char letter, string text, bool isRight, Mistake? mistake)
    {
        Letter = letter;
        Text = text;
        IsRight = isRight;
        Mistake = mistake;
    }

    /// <summary>A to D.</summary>
    public char Letter { get; }

    /// <summary>What it says.</summary>
    public string Text { get; }

    /// <summary>Whether it is the right one.</summary>
    public bool IsRight { get; }

    /// <summary>The mistake behind it; null where there is none.</summary>
    public Mistake? Mistake { get; }

    /// <summary>Letter and text.</summary>
    public override string ToString() => $"{Letter}) {Text}";
}
