namespace LowVoltage.Calc.Teaching;

/// <summary>A wrong answer and the mistake that gives it.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class WrongAnswer
{
    internal WrongAnswer(Mistake mistake, double value, string unit, int figures)
    {
        Mistake = mistake;
        Value = value;
        Text = AnswerText.Of(value, unit, figures);
    }

    /// <summary>The mistake.</summary>
    public Mistake Mistake { get; }

    /// <summary>What it gives, in the unit of the answer, not rounded.</summary>
    public double Value { get; }

    /// <summary>Value and unit as printed.</summary>
    public string Text { get; }

    /// <summary>Text and mistake.</summary>
    public override string ToString() => $"{Text} ({Mistake})";
}
