namespace LowVoltage.Calc.Networks;

/// <summary>A stated voltage between two nodes with nothing in its way: an ideal source, or with 0 V two nodes that are one.</summary>
/// <param name="Positive">Node of the higher voltage.</param>
/// <param name="Negative">The other node.</param>
/// <param name="Volts">Voltage of the one over the other.</param>
internal readonly record struct Tie(int Positive, int Negative, double Volts);
