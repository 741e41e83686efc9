using System.Text;
using LowVoltage.Calc.Teaching;
using Sheet = LowVoltage.Calc.Teaching.ProblemSheet;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>Prints a sheet of problems, writes it with its key, as variants for a class or as a quiz package, or marks a file of answers.</summary>
public static class Program
{
    public const int Done = 0;
    public const int SomeWrong = 1;
    public const int BadInput = 2;

    public static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω and no ².
        Console.OutputEncoding = new UTF8Encoding(false);
        return Run(args, Console.Out, Console.Error);
    }

    /// <summary>The whole program. What keeps it from doing its work goes to <paramref name="error"/>.</summary>
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error)
    {
        try
        {
            if (new SheetCommand().Read(args, output) is not { } options)
            {
                return Done;
            }

            Sheet sheet = Make(options);
            if (options.AnswersFile is { } file)
            {
                Sheet marked = options.Variant is { } variant ? Variant(sheet, options.ClassSet!.Value, variant) : sheet;
                IReadOnlyDictionary<int, string> answers = AnswersFile.Read(file, marked.Problems.Count);
                return AnswersFile.Mark(marked.Problems, answers, options.Culture, output) == marked.Problems.Count ? Done : SomeWrong;
            }

            if (options.WritesFiles)
            {
                new SheetFiles(options, output).Write(sheet);
            }
            else
            {
                output.Write(sheet.ToMarkdown(SheetPart.Problems, options.Layout));
            }

            return Done;
        }
        catch (Exception problem) when (problem is UsageException or AnswersFileException or IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // Only the sentence: a parameter's name and the value again say nothing to whoever typed a command.
            error.WriteLine(problem is ArgumentException ? problem.Message.Split(" (Parameter", 2)[0] : problem.Message);
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

    private static Sheet Variant(Sheet sheet, int variants, string letter)
    {
        int at = Enumerable.Range(0, variants).FirstOrDefault(v => ClassSet.Label(v) == letter, -1);
        return at >= 0
            ? ClassSet.Create(sheet, variants).Variants[at]
            : throw new UsageException($"--variant takes a letter from A to {ClassSet.Label(variants - 1)}, not '{letter}'.");
    }
}
