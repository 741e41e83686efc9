namespace LowVoltage.Calc.Teaching;

/// <summary>What kind of quantity a unit measures.</summary>
internal enum AnswerDimension
{
    None,
    Voltage,
    Current,
    Resistance,
    Power,
    Length,
    Section,
    Time,
    Temperature,
    Charge,
    Energy,
    ResistancePerLength,
    CurrentDensity,
    SectionPerCurrent,
    JouleIntegral,
}
