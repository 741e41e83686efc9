using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>The command line: its options, its help, and what was asked for.</summary>
internal sealed class SheetCommand
{
    private const long MostDigits = 999_999_999_999_999_999;

    private readonly Option<long> seed = Words.Number("--seed", "N", "The number that the sheet is made from", 1, -MostDigits, MostDigits);
    private readonly Option<long> count = Words.Number("--count", "N", "How many problems", 10, 1, 1000);
    private readonly Option<ProblemTopic[]> topics = Words.Several<ProblemTopic>("--topics", "A,B", "Topics, taken in turn; all without it");
    private readonly Option<Choice<Difficulty>> difficulty = Words.One<Difficulty>("--difficulty", "D", "OneStep, SeveralSteps, Design or Mixed", "SeveralSteps", "Mixed");
    private readonly Option<Choice<ProblemUnits>> units = Words.One<ProblemUnits>("--units", "U", "metric, us or mixed", "metric", null, ("metric", ProblemUnits.Metric), ("us", ProblemUnits.UsCustomary), ("mixed", ProblemUnits.Mixed));
    private readonly Option<Choice<ProblemForm>> form = Words.One<ProblemForm>("--form", "F", "Numeric, MultipleChoice, FindTheMistake or Mixed", "Numeric", "Mixed");
    private readonly Option<long> classSet = Words.Number("--class-set", "N", "So many variants of the sheet, all different; the files get the variant's letter", null, 1, 500);
    private readonly Option<string?> variant = Words.File("--variant", "LETTER", "With --class-set and --grade: the variant whose answers are marked");
    private readonly Option<string?> html = Words.File("--html", "FILE", "Write the problems as a page to print");
    private readonly Option<string?> key = Words.File("--key", "FILE", "Write the key: as a page if the name ends with .html, else as Markdown");
    private readonly Option<string?> marker = Words.File("--marker", "FILE", "With --class-set: write the table of answers by variant and problem, as a page or Markdown");
    private readonly Option<string?> qti = Words.File("--qti", "FILE", "Write a package of the quiz standard 1EdTech QTI; it holds the answers");
    private readonly Option<Choice<QtiVersion>> qtiVersion = Words.One<QtiVersion>("--qti-version", "V", "3.0 or 2.1", "3.0", null, ("3.0", QtiVersion.Qti30), ("2.1", QtiVersion.Qti21));
    private readonly Option<string?> folder = Words.File("--out", "DIR", "Write problems and key, each as a page and as Markdown, into a folder");
    private readonly Option<string?> answers = Words.File("--grade", "FILE", "Mark a file of answers, one a line: '3: 2.4 A'; give the options that the sheet was made with");
    private readonly Option<CultureInfo> culture = CultureOption();
    private readonly Option<Choice<SheetPaper>> paper = Words.One<SheetPaper>("--paper", "P", "any, a4 or letter", "any");
    private readonly Option<long> space = Words.Number("--space", "MM", "Millimetres of empty space below each problem", 0, 0, 250);
    private readonly Option<bool> points = Words.Flag("--points", "Show points");
    private readonly Option<bool> pageNumbers = Words.Flag("--page-numbers", "Number the printed pages");
    private readonly Option<bool> noName = Words.Flag("--no-name", "Leave out the line for name, class and date");
    private readonly Option<bool> noDiagrams = Words.Flag("--no-diagrams", "Leave out the circuit diagrams");
    private readonly RootCommand command = new("Prints a sheet of wiring problems; the same seed gives the same sheet. The problems are invented paper exercises.");

    internal SheetCommand()
    {
        command.Options.Remove(command.Options.OfType<VersionOption>().Single());
        foreach (Option option in (Option[])[seed, count, topics, difficulty, units, form, classSet, variant, html, key, marker, qti, qtiVersion, folder, answers, culture, paper, space, points, pageNumbers, noName, noDiagrams])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>What was asked for; null when it was for help, which is then written.</summary>
    internal Options? Read(IReadOnlyList<string> args, TextWriter output)
    {
        // A file name may begin with @: it is a name here, not a file of further arguments.
        ParseResult parsed = command.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is HelpAction help)
        {
            help.MaxWidth = 110;
            parsed.Invoke(new InvocationConfiguration { Output = output, EnableDefaultExceptionHandler = false });
            output.WriteLine("Topics:");
            foreach (ProblemTopic[] some in Enum.GetValues<ProblemTopic>().Chunk(5))
            {
                output.WriteLine("  " + string.Join(", ", some));
            }

            output.WriteLine();
            output.WriteLine("Exit code: 0 done (with --grade: all right), 1 some answer is wrong or missing, 2 bad input.");
            return null;
        }

        return parsed.Errors.Count > 0 ? throw new UsageException(string.Join(Environment.NewLine, parsed.Errors.Select(error => error.Message).Distinct())) : Checked(Of(parsed));
    }

    private Options Of(ParseResult parsed) => new()
    {
        Seed = parsed.GetValue(seed),
        Count = (int)parsed.GetValue(count),
        Topics = parsed.GetValue(topics) ?? [],
        Difficulty = parsed.GetValue(difficulty)!.Value,
        Units = parsed.GetValue(units)!.Value!.Value,
        Form = parsed.GetValue(form)!.Value,
        ClassSet = parsed.GetValue(classSet) is > 0 and long variants ? (int)variants : null,
        Variant = parsed.GetValue(variant)?.ToUpperInvariant(),
        HtmlFile = parsed.GetValue(html),
        KeyFile = parsed.GetValue(key),
        MarkerFile = parsed.GetValue(marker),
        QtiFile = parsed.GetValue(qti),
        QtiVersion = parsed.GetValue(qtiVersion)!.Value!.Value,
        Folder = parsed.GetValue(folder),
        AnswersFile = parsed.GetValue(answers),
        Culture = parsed.GetValue(culture)!,
        Layout = new SheetLayout(
            parsed.GetValue(paper)!.Value!.Value, !parsed.GetValue(noName), parsed.GetValue(points), parsed.GetValue(pageNumbers), Length.FromMillimeters(parsed.GetValue(space)), !parsed.GetValue(noDiagrams)),
    };

    private static Options Checked(Options options) =>
        options.AnswersFile is not null && options.WritesFiles ? throw new UsageException("--grade marks answers and writes no sheet: leave out --html, --key, --marker, --qti and --out.")
        : options.ClassSet is null && (options.MarkerFile ?? options.Variant) is not null ? throw new UsageException("--marker and --variant belong to --class-set.")
        : options.ClassSet is not null && options.AnswersFile is not null && options.Variant is null ? throw new UsageException("--grade of a class set needs --variant, such as --variant B.")
        : options.ClassSet is not null && options.AnswersFile is null && !options.WritesFiles ? throw new UsageException("--class-set writes files: add --out, --html, --key, --marker or --qti.")
        : options;

    private static Option<CultureInfo> CultureOption() => new("--culture")
    {
        HelpName = "C",
        Description = "Whose decimal mark the answers use, such as de-DE; a point without it",
        DefaultValueFactory = _ => CultureInfo.InvariantCulture,
        CustomParser = result =>
        {
            string name = Words.Text(result);
            CultureInfo? known = CultureInfo.GetCultures(CultureTypes.AllCultures).FirstOrDefault(culture => string.Equals(culture.Name, name, StringComparison.OrdinalIgnoreCase));
            if (known is null)
            {
                result.AddError($"--culture does not know '{name}'; de-DE is one.");
            }

            return known ?? CultureInfo.InvariantCulture;
        },
    };
}

/// <summary>The command line cannot be understood.</summary>
public sealed class UsageException(string problem) : Exception(problem + Environment.NewLine + "Try --help.");
