namespace LowVoltage.Calc.Teaching;

/// <summary>The right answer of a problem.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class ProblemAnswer
{
    internal ProblemAnswer(string quantity, double value, string unit, double tolerance, int figures)
    {
        Quantity = quantity;
        Value = value;
        Unit = unit;
        Tolerance = tolerance;
        SignificantFigures = figures;
        Text = AnswerText.Of(value, unit, figures);
    }

    /// <summary>What is asked for, in words.</summary>
    public string Quantity { get; }

    /// <summary>The value in <see cref="Unit"/>, not rounded; the gauge number for a gauge.</summary>
    public double Value { get; }

    /// <summary>The unit; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>How far an answer may be off, in <see cref="Unit"/>; 0 for a standard size or rating, which is right or wrong.</summary>
    public double Tolerance { get; }

    /// <summary>Significant figures that the statement asks for; 0 for a standard size or rating.</summary>
    public int SignificantFigures { get; }

    /// <summary>Value and unit as printed in a key.</summary>
    public string Text { get; }

    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
