using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>The letters of a stretch's rating, where they stand in a solution already.</summary>
/// <param name="Amperes">What one conductor of it carries continuously.</param>
/// <param name="Celsius">The conductor temperature that this stands for.</param>
/// <param name="Ambient">The air around it.</param>
/// <param name="RatedAmbient">The ambient that the rating is for.</param>
/// <param name="Mark">What tells its letters from others'.</param>
internal sealed record RatedSymbols(Symbol Amperes, Symbol Celsius, Symbol Ambient, Symbol RatedAmbient, string Mark);
