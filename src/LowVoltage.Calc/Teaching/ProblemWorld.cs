namespace LowVoltage.Calc.Teaching;

/// <summary>An invented world: what stands in it, what feeds it and how far the wires go.</summary>
internal sealed partial record ProblemWorld(
    ProblemSetting Setting,
    string Place,
    string Feeder,
    string Spot,
    IReadOnlyList<int> Supplies,
    int LeastMeters,
    int MostMeters,
    IReadOnlyList<WorldLoad> Loads);
