namespace LowVoltage.Calc.Teaching;

/// <summary>Something that a problem gives: a value as it stands in the statement.</summary>
/// <remarks>Immutable and thread-safe. The solution is worked out from <see cref="Value"/>, which is just what <see cref="Text"/> says.</remarks>
public sealed class ProblemGiven
{
    internal ProblemGiven(string symbol, string meaning, decimal value, string unit)
    {
        Symbol = symbol;
        Meaning = meaning;
        Value = (double)value;
        Unit = unit;
        Text = AnswerText.Of(value, unit);
    }

    internal ProblemGiven(string symbol, string meaning, double gauge)
    {
        Symbol = symbol;
        Meaning = meaning;
        Value = gauge;
        Unit = AnswerUnit.Gauge;
        Text = AnswerText.Of(gauge, Unit, 0);
    }

    /// <summary>Its letter in the solution.</summary>
    public string Symbol { get; }

    /// <summary>What it stands for.</summary>
    public string Meaning { get; }

    /// <summary>Its value in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>Its unit; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>Value and unit as printed in the statement.</summary>
    public string Text { get; }

    /// <summary>Symbol and text.</summary>
    public override string ToString() => $"{Symbol} = {Text}";
}
