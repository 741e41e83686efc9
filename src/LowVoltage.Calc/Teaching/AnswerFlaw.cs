namespace LowVoltage.Calc.Teaching;

/// <summary>Why a text could not be read as an answer.</summary>
internal enum AnswerFlaw
{
    None,
    Empty,
    Unreadable,
    NoSuchGauge,
}
