namespace CircuitSchedule;

/// <summary>The command line: which file to read, and where the results go as CSV, if anywhere.</summary>
public sealed class Options
{
    public required string InputPath { get; init; }

    public string? CsvPath { get; init; }

    public bool IsShippedScenario { get; init; }

    public static string ShippedScenario { get; } = Path.Combine(AppContext.BaseDirectory, "scenario.csv");

    public static Options Parse(IReadOnlyList<string> args)
    {
        string? input = null, csv = null;
        for (int i = 0; i < args.Count; i++)
        {
            if (string.IsNullOrWhiteSpace(args[i]))
            {
                throw new UsageException("A file name is empty.");
            }

            if (args[i] == "--csv")
            {
                csv = ++i < args.Count && args[i].Length > 0 && !args[i].StartsWith('-')
                    ? args[i]
                    : throw new UsageException("--csv needs the name of the file to write.");
            }
            else if (args[i].StartsWith('-'))
            {
                throw new UsageException($"Unknown option {args[i]}.");
            }
            else
            {
                input = input is null ? args[i] : throw new UsageException($"One input file at a time; {args[i]} is a second one.");
            }
        }

        Options options = new() { InputPath = input ?? ShippedScenario, CsvPath = csv, IsShippedScenario = input is null };
        return csv is not null && Path.GetFullPath(csv) == Path.GetFullPath(options.InputPath)
            ? throw new UsageException("--csv would overwrite the input file.")
            : options;
    }
}

/// <summary>The command line cannot be understood.</summary>
public sealed class UsageException(string problem) : Exception(problem + " Try --help.");
