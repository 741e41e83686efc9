using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>What a calculation sheet says of itself: which program made it, when, for what, and the paper that it is printed on.</summary>
/// <remarks>The library asks no clock and no machine: what is left out is a line to fill in by hand. Immutable and thread-safe.</remarks>
public sealed class SheetDetails
{
    private const int Longest = 120;

    /// <summary>The details.</summary>
    /// <param name="program">The program that made the calculation.</param>
    /// <param name="version">Its version.</param>
    /// <param name="date">The date of the calculation, as it is to be read.</param>
    /// <param name="project">What the circuit belongs to.</param>
    /// <param name="number">Number of the sheet or of the circuit.</param>
    /// <param name="paper">The paper.</param>
    /// <exception cref="ArgumentOutOfRangeException">The paper is none of its values.</exception>
    /// <exception cref="ArgumentException">A text is longer than 120 characters.</exception>
    public SheetDetails(string? program = null, string? version = null, string? date = null, string? project = null, string? number = null, SheetPaper paper = SheetPaper.Any)
    {
        Program = Short(program, nameof(program));
        Version = Short(version, nameof(version));
        Date = Short(date, nameof(date));
        Project = Short(project, nameof(project));
        Number = Short(number, nameof(number));
        Paper = paper is >= SheetPaper.Any and <= SheetPaper.Letter
            ? paper
            : throw new ArgumentOutOfRangeException(nameof(paper), paper, $"paper must be one of its named values; it was {paper}.");
    }

    /// <summary>Nothing stated: every line is left to be filled in by hand.</summary>
    public static SheetDetails Blank { get; } = new();

    /// <summary>The program; empty when it was not stated.</summary>
    public string Program { get; }

    /// <summary>Its version; empty when it was not stated.</summary>
    public string Version { get; }

    /// <summary>The date; empty when it was not stated.</summary>
    public string Date { get; }

    /// <summary>What the circuit belongs to; empty when it was not stated.</summary>
    public string Project { get; }

    /// <summary>Number of the sheet or of the circuit; empty when it was not stated.</summary>
    public string Number { get; }

    /// <summary>The paper.</summary>
    public SheetPaper Paper { get; }

    private static string Short(string? text, string name) => text is null ? "" : text.Length <= Longest
        ? text
        : throw new ArgumentException($"{name} must be at most {Longest} characters; it was {text.Length}.", name);
}
