namespace LowVoltage.Calc.Teaching;

/// <summary>A student's text as read: number, unit and how many figures were written.</summary>
/// <param name="Value">The number as written.</param>
/// <param name="Figures">Significant figures as written; zeros at the end count.</param>
/// <param name="Unit">The unit; null when none was written.</param>
internal readonly record struct AnswerReading(double Value, int Figures, AnswerUnit? Unit);
