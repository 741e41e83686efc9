namespace LowVoltage.Calc.Teaching;

/// <summary>Something that a world switches on, and the watts that such a thing really has.</summary>
internal sealed record WorldLoad(string Name, LoadKind Kind, int LeastWatts, int MostWatts);
