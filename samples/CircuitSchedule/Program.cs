using System.Text;

namespace CircuitSchedule;

/// <summary>Designs every circuit of a CSV file and prints the schedule.</summary>
public static class Program
{
    public const int AllPass = 0;
    public const int SomeCircuitFails = 1;
    public const int BadInput = 2;

    public static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω and no ².
        Console.OutputEncoding = Encoding.UTF8;
        return Run(args, Console.Out, Console.Error);
    }

    /// <summary>The whole program. The schedule goes to <paramref name="output"/>; what keeps it from being made goes to <paramref name="error"/>.</summary>
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error)
    {
        if (args.Contains("--help") || args.Contains("-h"))
        {
            Help.Print(output);
            return AllPass;
        }

        try
        {
            Options options = Options.Parse(args);
            return Run(options, output);
        }
        catch (Exception problem) when (problem is UsageException or ScheduleFileException or IOException or UnauthorizedAccessException)
        {
            error.WriteLine(problem.Message);
            return BadInput;
        }
    }

    private static int Run(Options options, TextWriter output)
    {
        List<ScheduleEntry> entries = [.. ScheduleFile.Read(options.InputPath).Select(ScheduleEntry.From)];
        SchedulePrinter.Print(entries, options.IsShippedScenario, output);
        if (options.CsvPath is { } path)
        {
            using StreamWriter file = new(path, append: false, ResultCsv.Encoding);
            ResultCsv.Write(entries, file);
            output.WriteLine($"Results written to {path}");
        }

        return entries.Exists(entry => entry.Problems.Count > 0) ? BadInput
            : entries.Exists(entry => entry.Design is { IsFeasible: false }) ? SomeCircuitFails
            : AllPass;
    }
}
