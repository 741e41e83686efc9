using System.Text;
using LowVoltage.Calc.Teaching;
using Sheet = LowVoltage.Calc.Teaching.ProblemSheet;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>Prints a sheet of problems, writes it with its key, or marks a file of answers.</summary>
public static class Program
{
    public const int Done = 0;
    public const int SomeWrong = 1;
    public const int BadInput = 2;

    public static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω and no ².
        Console.OutputEncoding = Encoding.UTF8;
        return Run(args, Console.Out, Console.Error);
    }

    /// <summary>The whole program. What keeps it from doing its work goes to <paramref name="error"/>.</summary>
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error)
    {
        if (args.Contains("--help") || args.Contains("-h"))
        {
            Help(output);
            return Done;
        }

        try
        {
            Options options = Options.Parse(args);
            Sheet sheet = Make(options);
            if (options.AnswersFile is { } file)
            {
                IReadOnlyDictionary<int, string> answers = AnswersFile.Read(file, sheet.Problems.Count);
                return AnswersFile.Mark(sheet.Problems, answers, options.Culture, output) == sheet.Problems.Count ? Done : SomeWrong;
            }

            if (options.Folder is { } folder)
            {
                Write(sheet, options, folder, output);
            }
            else
            {
                output.Write(sheet.ToMarkdown(SheetPart.Problems));
            }

            return Done;
        }
        catch (Exception problem) when (problem is UsageException or AnswersFileException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            error.WriteLine(problem.Message);
            return BadInput;
        }
    }

    private static Sheet Make(Options options)
    {
        Difficulty[] difficulties = options.Difficulty is { } difficulty ? [difficulty] : Enum.GetValues<Difficulty>();
        ProblemForm[] forms = options.Form is { } form ? [form] : Enum.GetValues<ProblemForm>();
        IReadOnlyList<ProblemTopic> topics = options.Topics.Count > 0 ? options.Topics : Enum.GetValues<ProblemTopic>();
        // Numbers first, then choices, then mistakes; the difficulties in steps from the easy to the hard.
        Problem[] problems = [.. Enumerable.Range(0, options.Count).Select(i => ProblemGenerator.Create(
            Sheet.SeedOf(options.Seed, i + 1), topics[i % topics.Count], difficulties[i * difficulties.Length / options.Count], options.Units, forms[i % forms.Length]))];
        return Sheet.Of($"Wiring problems, sheet {options.Seed}", problems);
    }

    private static void Write(Sheet sheet, Options options, string folder, TextWriter output)
    {
        Directory.CreateDirectory(folder);
        (string Name, string Text, string What)[] files =
        [
            ($"sheet-{options.Seed}.md", sheet.ToMarkdown(SheetPart.Problems), "the problems"),
            ($"sheet-{options.Seed}-key.md", sheet.ToMarkdown(SheetPart.Key), "answers, usual mistakes and worked solutions"),
            ($"sheet-{options.Seed}.html", sheet.ToHtmlPage(SheetPart.Both), "both to print, the key on pages of its own"),
        ];
        foreach ((string name, string text, string what) in files)
        {
            File.WriteAllText(Path.Combine(folder, name), text);
            output.WriteLine($"{Path.Combine(folder, name)}: {what}");
        }
    }

    private static void Help(TextWriter output) => output.WriteLine($"""
        Prints a sheet of wiring problems; the same seed gives the same sheet. The problems are invented paper exercises.

          ProblemSheet [--seed N] [--count N] [--topics A,B] [--difficulty D] [--units U] [--form F] [--out DIR | --grade FILE [--culture C]]

          --seed N        any whole number of at most 18 digits; 1 without it
          --count N       1 to 1000; 10 without it
          --topics A,B    taken in turn; all without it:
                          {string.Join(",\n                  ", Enum.GetNames<ProblemTopic>().Chunk(5).Select(some => string.Join(", ", some)))}
          --difficulty D  OneStep, SeveralSteps, Design or Mixed; SeveralSteps without it
          --units U       Metric, UsCustomary or Mixed; Metric without it
          --form F        Numeric, MultipleChoice, FindTheMistake or Mixed; Numeric without it
          --out DIR       writes the problems and the key as Markdown, and both as one HTML page to print
          --grade FILE    marks a file of answers, one a line: '3: 2.4 A'; give the options the sheet was made with
          --culture C     whose decimal mark the answers use, such as de-DE; a point without it

        Exit code: 0 done (with --grade: all right), 1 some answer is wrong or missing, 2 bad input.
        """);
}
