using System.Globalization;
using System.Text;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Teaching;

/// <summary>Variants of one sheet for a class: the same topics in the same order, other places and numbers for each, a key each, and one table for whoever marks them.</summary>
/// <remarks>
/// No two problems of a set have the same statement, and no two of the same topic, difficulty, units and form have the same numbers. The same sheet and the same number of variants
/// give the same set, and more variants begin with the same ones. Immutable and thread-safe.
/// </remarks>
public sealed class ClassSet
{
    private const int MostVariants = 500;

    // Far more than a topic needs that has a new set of numbers left.
    private const int MostDraws = 400;

    private const int Letters = 26;

    private ClassSet(string title, IReadOnlyList<ProblemSheet> variants)
    {
        Title = title;
        Variants = variants;
    }

    /// <summary>The heading of the table.</summary>
    public string Title { get; }

    /// <summary>The variants, in order; the first has the problems of the sheet itself.</summary>
    public IReadOnlyList<ProblemSheet> Variants { get; }

    internal IReadOnlyList<string> MarkerHeads => ["variant", .. Variants[0].Problems.Select((_, i) => (i + 1).ToString(CultureInfo.InvariantCulture))];

    internal IReadOnlyList<IReadOnlyList<string>> MarkerRows =>
        [.. Variants.Select((sheet, v) => (IReadOnlyList<string>)[Label(v), .. sheet.Problems.Select(SheetWords.Answer)])];

    /// <summary>Variants of a sheet.</summary>
    /// <param name="sheet">The sheet: topics, difficulties, units and forms are taken from it, and settings that were asked for.</param>
    /// <param name="variants">How many, 1 to 500.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentNullException">The sheet is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range, or so many variants cannot be told apart; the message says which problem runs out and how many there are.</exception>
    public static ClassSet Create(ProblemSheet sheet, int variants)
    {
        _ = sheet ?? throw new ArgumentNullException(nameof(sheet));
        Accept.Count(variants, 1, MostVariants, nameof(variants));
        HashSet<string> statements = new(StringComparer.Ordinal), numbers = new(StringComparer.Ordinal);
        ProblemSheet[] all = new ProblemSheet[variants];
        for (int v = 0; v < variants; v++)
        {
            Problem[] problems = new Problem[sheet.Problems.Count];
            for (int q = 0; q < problems.Length; q++)
            {
                problems[q] = Draw(sheet.Problems[q], v, statements, numbers) ?? throw TooMany(variants, v, q, sheet.Problems[q]);
            }

            all[v] = ProblemSheet.Of($"{sheet.Title}, variant {Label(v)}", problems);
        }

        return new ClassSet($"Answers: {sheet.Title}", Array.AsReadOnly(all));
    }

    /// <summary>The letter of a variant: A to Z, then AA and so on.</summary>
    /// <param name="index">Its place in <see cref="Variants"/>, from 0 to 499.</param>
    /// <returns>The letter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside its range.</exception>
    public static string Label(int index)
    {
        Accept.Count(index, 0, MostVariants - 1, nameof(index));
        string last = ((char)('A' + (index % Letters))).ToString();
        return index < Letters ? last : (char)('A' + (index / Letters) - 1) + last;
    }

    /// <summary>The table for the marker as Markdown: a row for each variant, a column for each problem.</summary>
    /// <returns>The text.</returns>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        text.Append("# ").Append(Working.SolutionMarkdown.Escape(Title)).Append("\n\n");
        SheetMarkdown.Table(text, MarkerHeads, MarkerRows);
        return text.ToString().TrimEnd('\n') + "\n";
    }

    /// <summary>The table for the marker as an HTML page.</summary>
    /// <param name="layout">Paper and page numbers.</param>
    /// <returns>The page.</returns>
    /// <exception cref="ArgumentNullException">The layout is null.</exception>
    public string ToHtmlPage(SheetLayout layout) => SheetKeyHtml.Marker(this, layout ?? throw new ArgumentNullException(nameof(layout)));

    /// <summary>The title.</summary>
    public override string ToString() => Title;

    // The sheet's own problem for the first variant; for the others new draws, until one has neither a statement nor numbers that are taken.
    private static Problem? Draw(Problem pattern, int variant, HashSet<string> statements, HashSet<string> numbers)
    {
        for (int draw = 0; draw < (variant == 0 ? 1 : MostDraws); draw++)
        {
            Problem problem = variant == 0 ? pattern : ProblemGenerator.Create(pattern.Request with { Seed = Seed(pattern.Seed, variant, draw) });
            if (!statements.Contains(problem.Statement) && numbers.Add(Numbers(problem)))
            {
                statements.Add(problem.Statement);
                return problem;
            }
        }

        return null;
    }

    private static long Seed(long seed, int variant, int draw) =>
        (long)(DeterministicRandom.Mix(unchecked((ulong)seed), (ulong)variant, (ulong)draw) >> 2);

    private static string Numbers(Problem problem) =>
        $"{problem.Topic} {problem.Difficulty} {problem.Units} {problem.Form}: {problem.Answer.Quantity} {string.Join("; ", problem.Givens)}";

    private static ArgumentOutOfRangeException TooMany(int variants, int found, int question, Problem problem) => new(
        nameof(variants),
        variants,
        found == 0
            ? $"This sheet repeats itself: problem {question + 1} ({SheetWords.Heading(problem, false)}) has the statement or the numbers of an earlier one, so that no variants can be told apart."
            : $"variants of this sheet must be at most {found}: within {MostDraws} draws, problem {question + 1} ({SheetWords.Heading(problem, false)}) gave no numbers that another variant does not have; asked for were {variants}.");
}
