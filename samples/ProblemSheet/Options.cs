using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>What the command line asks for.</summary>
public sealed record Options
{
    public required long Seed { get; init; }

    public required int Count { get; init; }

    public required IReadOnlyList<ProblemTopic> Topics { get; init; }

    /// <summary>Null: each difficulty in turn.</summary>
    public required Difficulty? Difficulty { get; init; }

    public required ProblemUnits Units { get; init; }

    /// <summary>Null: each form in turn.</summary>
    public required ProblemForm? Form { get; init; }

    /// <summary>Null: one sheet, no class set.</summary>
    public required int? ClassSet { get; init; }

    /// <summary>The letter of the variant whose answers are marked; null for the sheet itself.</summary>
    public required string? Variant { get; init; }

    public required string? HtmlFile { get; init; }

    public required string? KeyFile { get; init; }

    public required string? MarkerFile { get; init; }

    public required string? QtiFile { get; init; }

    public required QtiVersion QtiVersion { get; init; }

    public required string? Folder { get; init; }

    public required string? AnswersFile { get; init; }

    public required CultureInfo Culture { get; init; }

    public required SheetLayout Layout { get; init; }

    public bool WritesFiles => HtmlFile is not null || KeyFile is not null || QtiFile is not null || MarkerFile is not null || Folder is not null;
}
