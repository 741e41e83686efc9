namespace LowVoltage.Calc.Checks;

/// <summary>What to say where the rules do not rate the wire: all that rests on its rating is undetermined for that one reason.</summary>
internal static class Unrated
{
    internal const string Advice =
        "The wire has no rating where it runs: a cooler place, fewer loaded conductors together, better insulation, or rules whose source covers it.";
}
