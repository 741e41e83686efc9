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
    /// <summary>Where something happens: in a camper van, on a workshop bench.</summary>
    internal string In => Preposition + " " + Place;

    /// <summary>A metal frame that may lead current back; where the place has none, that of a trolley.</summary>
    internal string Frame => Setting is ProblemSetting.Van or ProblemSetting.FarmMachine or ProblemSetting.Robot or ProblemSetting.FoodWagon
        ? "The metal frame of " + Place
        : "The steel frame of a trolley that serves " + Place;

    internal string InAtStart => char.ToUpperInvariant(Preposition[0]) + Preposition.Substring(1) + " " + Place;
}
