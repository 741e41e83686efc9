using System.CommandLine;
using LowVoltage.Calc;
using LowVoltage.Calc.Samples;
using LowVoltage.Calc.Working;

namespace CircuitSchedule;

/// <summary>The command line: a file of circuits, and how and where to show the results.</summary>
internal static class ScheduleCommand
{
    private const int LongestText = 120;

    private static readonly Dictionary<string, DecimalSign> Signs = new(StringComparer.OrdinalIgnoreCase)
    {
        ["comma"] = DecimalSign.Comma,
        ["point"] = DecimalSign.Point,
    };

    private static readonly Dictionary<string, SheetPaper> Papers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["a4"] = SheetPaper.A4,
        ["letter"] = SheetPaper.Letter,
    };

    public static RootCommand Create(Func<Options, CancellationToken, int> run)
    {
        Argument<string?> file = FileArgument();
        Option<string?> csv = CommandLine.OutputFile("--csv", "Write the results as CSV as well: separator and decimal sign as in the file that was read");
        Option<string?> html = CommandLine.OutputFile("--html", "Write the schedule as a page to print, for any browser");
        Option<string?> sheets = Text("--sheets", "FOLDER", "Write a calculation sheet for each circuit into a folder: a page to print and to sign");
        Option<string?> date = Text("--date", "TEXT", "The date on the sheets; a line to fill in if left out");
        Option<string?> paper = Word("--paper", "PAPER", $"The paper of the sheets ({Words.List(Papers)}); what the printer has if left out", Papers);
        Option<string?> practice = Word("--practice", "NAME", $"The rules for rows without a practice ({Words.List(Words.Practices)}); {DesignRules.RoadVehicle.Name} if left out", Words.Practices);
        Option<string?> decimals = Word("--decimal", "SIGN", "The decimal sign of a file that leaves it in doubt (comma, point)", Signs);
        Option<long> width = CommandLine.WholeNumber("--width", $"Columns of the schedule; the terminal's if left out, {Screen.PlainWidth} where the output goes to a file", Screen.Narrowest, Screen.Widest, 0);
        width.DefaultValueFactory = null;
        Option<long> list = CommandLine.WholeNumber("--list", "How many circuits each list below the table names", 0, int.MaxValue, Options.UsualList);
        RootCommand command = CommandLine.Create(
            "Designs every circuit of a CSV file (extra-low-voltage DC, up to 60 V) and prints the schedule.", MoreHelp.Write);
        command.Arguments.Add(file);
        foreach (Option option in new Option[] { csv, html, sheets, date, paper, practice, decimals, width, list })
        {
            command.Options.Add(option);
        }

        // On a thread of its own, so that Ctrl-C is listened for while it runs.
        command.SetAction((parsed, stop) => Task.Run(() => run(
            new Options
            {
                InputPath = parsed.GetValue(file) ?? Options.ShippedScenario,
                CsvPath = parsed.GetValue(csv),
                HtmlPath = parsed.GetValue(html),
                SheetFolder = parsed.GetValue(sheets),
                Date = parsed.GetValue(date) ?? "",
                Paper = parsed.GetValue(paper) is { } size ? Papers[size] : SheetPaper.Any,
                Practice = parsed.GetValue(practice) is { } name ? Words.Practices[name] : DesignRules.RoadVehicle,
                Decimals = parsed.GetValue(decimals) is { } sign ? Signs[sign] : null,
                Width = parsed.GetValue(width) is > 0 and long columns ? (int)columns : null,
                List = (int)parsed.GetValue(list),
            },
            stop), CancellationToken.None));
        return command;
    }

    private static Argument<string?> FileArgument()
    {
        Argument<string?> file = new("FILE")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "Circuits, one a row; the invented scenario that ships with the program if left out",
        };
        file.Validators.Add(result =>
        {
            string? text = result.Tokens.Count > 0 ? result.Tokens[0].Value : null;
            if (text is ['-', ..])
            {
                result.AddError($"Unknown option {text}.");
            }
            else if (text is not null && string.IsNullOrWhiteSpace(text))
            {
                result.AddError("A file name is empty.");
            }
        });
        return file;
    }

    private static Option<string?> Text(string name, string helpName, string description)
    {
        Option<string?> option = new(name) { HelpName = helpName, Description = description };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 0 || string.IsNullOrWhiteSpace(result.Tokens[0].Value) || result.Tokens[0].Value[0] == '-')
            {
                result.AddError($"{name} needs a {helpName.ToLowerInvariant()}.");
            }
            else if (result.Tokens[0].Value.Length > LongestText)
            {
                result.AddError($"{name} takes at most {LongestText} characters.");
            }
        });
        return option;
    }

    private static Option<string?> Word<T>(string name, string helpName, string description, Dictionary<string, T> words)
    {
        Option<string?> option = new(name) { HelpName = helpName, Description = description };
        option.Validators.Add(result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (!words.ContainsKey(text))
            {
                result.AddError($"{name} must be one of {Words.List(words)}; it was '{text}'.");
            }
        });
        return option;
    }
}
