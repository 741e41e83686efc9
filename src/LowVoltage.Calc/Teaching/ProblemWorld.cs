namespace LowVoltage.Calc.Teaching;

/// <summary>An invented world: what stands in it, what feeds it and how far the wires go.</summary>
internal sealed partial record ProblemWorld(
    ProblemSetting Setting,
    string Preposition,
    string Place,
    string Feeder,
    IReadOnlyList<int> Supplies,
    int LeastMeters,
    int MostMeters,
    IReadOnlyList<WorldLoad> Loads)
{
    /// <summary>Where something happens: in a camper van, on a small sailing boat.</summary>
    internal string In => Preposition + " " + Place;

    internal string InAtStart => char.ToUpperInvariant(Preposition[0]) + Preposition.Substring(1) + " " + Place;

    internal WorldSite Site => Sites[(int)Setting];

    /// <summary>Where a current comes back through metal, at the beginning of a sentence.</summary>
    internal string ChassisAtStart => Site.Chassis.Where ?? InAtStart;

    /// <summary>Whether the wiring of a building is the nearest rule.</summary>
    internal bool IsBuilding => Setting is ProblemSetting.OffGridCabin or ProblemSetting.StageLighting or ProblemSetting.Workbench;

    internal bool IsBoat => Setting == ProblemSetting.Boat;
}
