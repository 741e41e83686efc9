using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet of problems for a class, and its key: each as Markdown, or as an HTML page that prints on A4 and Letter.</summary>
/// <remarks>The same seed gives the same sheet. The page fetches nothing from a network; its math is MathML. Immutable and thread-safe.</remarks>
public sealed class ProblemSheet
{
    internal const string Invented = "The places and things in these problems are invented. The values are of the size that such things have, but no plan for a real installation.";
    internal const string PaperOnly = "These are paper exercises. Do not try out shorts, overloads or work on live circuits: even 12 V from a battery can burn, melt and explode.";

    private const int MostProblems = 1000;

    private ProblemSheet(string title, Problem[] problems)
    {
        Title = title;
        Problems = Array.AsReadOnly(problems);
    }

    /// <summary>The heading.</summary>
    public string Title { get; }

    /// <summary>The problems, in order.</summary>
    public IReadOnlyList<Problem> Problems { get; }

    /// <summary>A sheet of problems that ask for numbers, in metric units.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="count">How many problems, 1 to 1000.</param>
    /// <param name="topics">What they are about, taken in turn; all topics when empty.</param>
    /// <param name="difficulty">How much they ask for.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException">The topics are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside its range, or an enum is none of its values.</exception>
    public static ProblemSheet Create(long seed, int count, IReadOnlyList<ProblemTopic> topics, Difficulty difficulty) =>
        Create(seed, count, topics, difficulty, ProblemUnits.Metric, ProblemForm.Numeric);

    /// <summary>A sheet of problems.</summary>
    /// <param name="seed">Any number. Problem n has the seed 1000·seed + n.</param>
    /// <param name="count">How many problems, 1 to 1000.</param>
    /// <param name="topics">What they are about, taken in turn; all topics when empty.</param>
    /// <param name="difficulty">How much they ask for.</param>
    /// <param name="units">The units they use.</param>
    /// <param name="form">How they are to be answered.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException">The topics are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside its range, or an enum is none of its values.</exception>
    public static ProblemSheet Create(long seed, int count, IReadOnlyList<ProblemTopic> topics, Difficulty difficulty, ProblemUnits units, ProblemForm form)
    {
        _ = topics ?? throw new ArgumentNullException(nameof(topics));
        Quantities.Accept.Count(count, 1, MostProblems, nameof(count));
        Problem[] problems = new Problem[count];
        for (int i = 0; i < count; i++)
        {
            ProblemTopic topic = topics.Count == 0 ? (ProblemTopic)(i % ((int)ProblemTopic.LampVoltage + 1)) : topics[i % topics.Count];
            problems[i] = ProblemGenerator.Create(SeedOf(seed, i + 1), topic, difficulty, units, form);
        }

        return new ProblemSheet($"Wiring problems, sheet {seed.ToString(CultureInfo.InvariantCulture)}", problems);
    }

    /// <summary>A sheet of problems of one's own choice.</summary>
    /// <param name="title">The heading.</param>
    /// <param name="problems">The problems, in order. At least one.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException">An argument, or one of the problems, is null.</exception>
    /// <exception cref="ArgumentException">There is no problem.</exception>
    public static ProblemSheet Of(string title, IReadOnlyList<Problem> problems)
    {
        _ = title ?? throw new ArgumentNullException(nameof(title));
        _ = problems ?? throw new ArgumentNullException(nameof(problems));
        Problem[] own = [.. problems.Select(problem => problem ?? throw new ArgumentNullException(nameof(problems)))];
        return own.Length > 0 ? new ProblemSheet(title, own) : throw new ArgumentException("problems must hold at least one problem.", nameof(problems));
    }

    /// <summary>The seed of a problem on a sheet.</summary>
    /// <param name="sheetSeed">The seed of the sheet.</param>
    /// <param name="number">The number of the problem, from 1.</param>
    /// <returns>1000·seed + number.</returns>
    public static long SeedOf(long sheetSeed, int number) => unchecked((1000 * sheetSeed) + number);

    /// <summary>As Markdown in the usual layout; the math of the key as LaTeX between dollar signs.</summary>
    /// <param name="part">What is written.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The part is none of its values.</exception>
    public string ToMarkdown(SheetPart part) => ToMarkdown(part, SheetLayout.Usual);

    /// <summary>As Markdown; the math of the key as LaTeX between dollar signs, circuits described in words.</summary>
    /// <param name="part">What is written.</param>
    /// <param name="layout">What it has beside the problems.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException">The layout is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The part is none of its values.</exception>
    public string ToMarkdown(SheetPart part, SheetLayout layout) => SheetMarkdown.Write(this, Known(part), layout ?? throw new ArgumentNullException(nameof(layout)));

    /// <summary>As an HTML page of its own in the usual layout, for screen and print.</summary>
    /// <param name="part">What is written.</param>
    /// <returns>The page.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The part is none of its values.</exception>
    public string ToHtmlPage(SheetPart part) => ToHtmlPage(part, SheetLayout.Usual);

    /// <summary>As an HTML page of its own, for screen and print. The page of the problems holds nothing of the key.</summary>
    /// <param name="part">What is written.</param>
    /// <param name="layout">What it has beside the problems.</param>
    /// <returns>The page.</returns>
    /// <exception cref="ArgumentNullException">The layout is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The part is none of its values.</exception>
    public string ToHtmlPage(SheetPart part, SheetLayout layout) => SheetHtml.Page(this, Known(part), layout ?? throw new ArgumentNullException(nameof(layout)));

    /// <summary>As a package of the open quiz standard 1EdTech QTI: a manifest, one test, and an item with its drawing for each problem.</summary>
    /// <param name="version">The edition of the standard.</param>
    /// <returns>A zip file; the same sheet gives the same bytes on every platform.</returns>
    /// <remarks>
    /// <para>A number is right within the tolerance of the problem, and each mistake that <see cref="Problem.Grade"/> knows has a feedback of its own. A problem that asks for a size or
    /// a rating becomes a choice among those that its statement lists. What a design problem asks to be defended is left out: no rule can mark it.</para>
    /// <para>The package holds the answers, as the standard demands; it is for the teacher's quiz system, not to be handed out.</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The version is none of its values.</exception>
    public byte[] ToQtiPackage(QtiVersion version) => QtiPackage.Write(this, version is QtiVersion.Qti21 or QtiVersion.Qti30
        ? version
        : throw new ArgumentOutOfRangeException(nameof(version), version, $"version must be one of its named values; it was {version}."));

    /// <summary>The title.</summary>
    public override string ToString() => Title;

    internal static string DifficultyWords(Difficulty difficulty) => difficulty switch
    {
        Difficulty.OneStep => "one step",
        Difficulty.SeveralSteps => "several steps",
        _ => "design",
    };

    private static SheetPart Known(SheetPart part) =>
        part is >= SheetPart.Problems and <= SheetPart.Key ? part : throw new ArgumentOutOfRangeException(nameof(part), part, $"part must be one of its named values; it was {part}.");
}
