namespace LowVoltage.Calc.Teaching;

/// <summary>How a load behaves: only a heater is a plain resistance, only electronics take the same power at any voltage.</summary>
internal enum LoadKind
{
    Heater,
    Lamp,
    Motor,
    Electronics,
}
