namespace LowVoltage.Calc.Teaching;

/// <summary>A student's text as read: number, unit and how many figures were written.</summary>
/// <param name="Value">The number as written.</param>
/// <param name="Figures">Significant figures as written; zeros at the end count.</param>
/// <param name="Unit">The unit; null when none was written.</param>
/// <param name="Flaw">Why nothing was read.</param>
internal readonly record struct AnswerReading(double Value, int Figures, AnswerUnit? Unit, AnswerFlaw Flaw = AnswerFlaw.None)
{
    /// <summary>The number, were its only separator the decimal one and not the one of thousands; null where that cannot be.</summary>
    internal double? WithDecimalMark { get; init; }

    /// <summary>Whether the text calls the number a size, so that it needs no unit of its own.</summary>
    internal bool SaysSize { get; init; }
}
