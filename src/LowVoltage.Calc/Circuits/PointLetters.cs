using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>The letters that the working of an operating point uses, and what it shares with that of other points in the same solution.</summary>
internal sealed class PointLetters
{
    /// <summary>Whether what is drawn from the point, its share of the nominal voltage and whether that is enough, is worked out for several points together.</summary>
    internal bool IsOneOfSeveral { get; init; }

    /// <summary>Voltage of the source with no current.</summary>
    internal required Symbol Open { get; init; }

    /// <summary>Resistance inside the source; null for none.</summary>
    internal Symbol? Inner { get; init; }

    internal required Symbol Nominal { get; init; }

    internal required LoadSymbols Load { get; init; }

    internal ConductorMarks Conductors { get; init; } = new();

    /// <summary>What is set behind every letter that is this supply level's own; empty when there is one point only.</summary>
    internal string Mark { get; init; } = "";

    /// <summary>The marks of such letters, of all points.</summary>
    internal Dictionary<Symbol, string> Marks { get; init; } = [];

    /// <summary>The letters of a stretch's rating, where they stand in the solution already.</summary>
    internal Func<Segment, RatedSymbols?> Rated { get; init; } = static _ => null;

    /// <summary>The temperature of conductors that are neither rated nor heated by this circuit alone.</summary>
    internal Symbol? Unrated { get; init; }
}
