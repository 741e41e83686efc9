namespace LowVoltage.Calc.Circuits;

/// <summary>Which two of the four numbers of Ohm's law were given.</summary>
internal enum OhmsLawPair : byte
{
    None,
    VoltageAndCurrent,
    VoltageAndResistance,
    VoltageAndPower,
    CurrentAndResistance,
    CurrentAndPower,
    ResistanceAndPower,
}
