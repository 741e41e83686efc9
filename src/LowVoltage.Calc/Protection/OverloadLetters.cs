using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Protection;

/// <summary>What stands in a solution already when the working of a fuse against a wire begins.</summary>
internal sealed class OverloadLetters
{
    internal required Wire Wire { get; init; }

    internal required OverloadAllowance Allowance { get; init; }

    internal required Symbol Ambient { get; init; }

    /// <summary>The ambient that the rating is for; null for the air where the wire runs.</summary>
    internal Symbol? RatedAmbient { get; init; }

    /// <summary>The insulation's continuous limit.</summary>
    internal required Symbol Continuous { get; init; }

    /// <summary>What all the parallel conductors carry continuously; null for the heat balance of a wire free in air.</summary>
    internal Symbol? Rated { get; init; }

    /// <summary>Conductor temperature that the rating stands for.</summary>
    internal required Symbol RatedCelsius { get; init; }

    internal int Parallel { get; init; } = 1;

    /// <summary>What tells the conductor from others of the solution.</summary>
    internal string Mark { get; init; } = "";

    /// <summary>Whether the start is the insulation's continuous limit.</summary>
    internal bool StartsHot { get; init; } = true;

    /// <summary>What another start is called.</summary>
    internal string StartLetter { get; init; } = "θ_i";

    /// <summary>Where another start comes from, in a sentence.</summary>
    internal string StartWords { get; init; } = "As stated.";
}
