namespace LowVoltage.Calc.Teaching;

/// <summary>An invented world: what stands in it, what feeds it and how far the wires go.</summary>
internal sealed partial record ProblemWorld(
    ProblemSetting Setting,
    string Preposition,
    IReadOnlyList<string> Places,
    string Feeder,
    IReadOnlyList<int> Supplies,
    int LeastMeters,
    int MostMeters,
    IReadOnlyList<WorldLoad> Loads)
{
    internal WorldSite Site => Sites[(int)Setting];

    /// <summary>Whether the wiring of a building is the nearest rule.</summary>
    internal bool IsBuilding => Setting is ProblemSetting.OffGridCabin or ProblemSetting.StageLighting or ProblemSetting.Workbench;

    internal bool IsBoat => Setting == ProblemSetting.Boat;
}
