namespace LowVoltage.Calc.Teaching;

/// <summary>Where the wire of a design problem lies.</summary>
/// <param name="Celsius">The air around it.</param>
/// <param name="Conductors">Loaded conductors together, its own included.</param>
/// <param name="Words">The place in words, up to what the wire may carry.</param>
/// <param name="Factor">What it may carry there, of the table's current, as printed.</param>
internal sealed record DesignPlace(int Celsius, int Conductors, string Words, double Factor);
