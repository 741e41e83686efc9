namespace LowVoltage.Calc.Teaching;

/// <summary>Metal that leads current back.</summary>
/// <param name="Noun">What it is, without its article: steel body.</param>
/// <param name="Where">Where, at the beginning of a sentence, {0} standing for the place; null for the world itself.</param>
/// <param name="Loads">What is switched on there; null for the loads of the world.</param>
/// <remarks>A hull, a house or a stage leads no current back; their worlds have a trailer or a trolley that does.</remarks>
internal sealed record WorldChassis(string Noun, string? Where = null, IReadOnlyList<WorldLoad>? Loads = null)
{
    internal const int TrailerVolts = 12;
}
