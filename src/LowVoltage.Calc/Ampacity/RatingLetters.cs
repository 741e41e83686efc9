using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Where the rating of one conductor is written, and with which letters.</summary>
internal sealed class RatingLetters
{
    internal required SolutionBuilder Board { get; init; }

    internal required Symbol Ambient { get; init; }

    /// <summary>What the insulation stands continuously.</summary>
    internal required Symbol Limit { get; init; }

    /// <summary>What tells the conductor from others of the sheet.</summary>
    internal required string Mark { get; init; }

    /// <summary>A letter with the conductor's mark.</summary>
    internal string Named(string letter) => SymbolName.With(letter, Mark);

    /// <summary>The conductor temperature that a rating stands for; the insulation's limit where it is that.</summary>
    internal Symbol Rated(string letter, double celsius, string whose, References.Reference source) => Limit.Value.Equals(celsius)
        ? Limit
        : Board.LookUp($"conductor temperature that {whose} stands for", letter, celsius, "°C", source);

    /// <summary>The ambient that a rating is for; the air itself where it is that.</summary>
    internal Symbol AmbientOfRating(string letter, double celsius, References.Reference source) => Ambient.Value.Equals(celsius)
        ? Ambient
        : Board.LookUp("ambient temperature that the table's rating is for", letter, celsius, "°C", source);

    internal static string Sought(Conductor conductor) => $"current that {conductor} carries continuously where it runs";

    /// <summary>What tells the letters of the second of two tables from those of the first.</summary>
    internal static string Family(string name) => name.StartsWith("I_zb", StringComparison.Ordinal) || name.StartsWith("θ_hb", StringComparison.Ordinal) ? "b" : "";
}
