using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Globalization;

namespace LowVoltage.Calc.Samples;

/// <summary>What the samples' command lines have in common: exit codes, refusals in words on the error stream, and help that ends with more than the options.</summary>
internal static class CommandLine
{
    public const int BadInput = 2;

    /// <summary>Stopped by Ctrl-C: 128 and the number of the signal, as shells count.</summary>
    public const int Stopped = 130;

    // Help is text to read, whatever the width of the window.
    private const int HelpWidth = 100;

    private static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(2);

    /// <summary>Runs a command; wrong arguments are written to <paramref name="error"/> and end with <see cref="BadInput"/>.</summary>
    public static int Run(RootCommand command, IReadOnlyList<string> args, TextWriter output, TextWriter error, CancellationToken stop = default) => Run(command, args, output, error, UsualPatience, stop);

    /// <summary>The same; a stopped command has <paramref name="patience"/> to end by itself.</summary>
    public static int Run(RootCommand command, IReadOnlyList<string> args, TextWriter output, TextWriter error, TimeSpan patience, CancellationToken stop)
    {
        // A file name may begin with @: it is a name here, not a file of further arguments.
        ParseResult parsed = command.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        bool helps = parsed.Action is HelpFollowedBy;
        if (parsed.Errors.Count > 0 && !helps)
        {
            foreach (string message in parsed.Errors.Select(problem => problem.Message).Distinct())
            {
                error.WriteLine(message);
            }

            error.WriteLine("Try --help.");
            return BadInput;
        }

        InvocationConfiguration configuration = new() { Output = output, Error = error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = patience };
        return parsed.InvokeAsync(configuration, stop).GetAwaiter().GetResult();
    }

    /// <summary>A command whose help ends with a text of its own.</summary>
    public static RootCommand Create(string description, Action<TextWriter> moreHelp)
    {
        RootCommand command = new(description);
        command.Options.Remove(command.Options.OfType<VersionOption>().Single());
        HelpOption help = command.Options.OfType<HelpOption>().Single();
        help.Description = "Show this text";
        help.Action = new HelpFollowedBy((HelpAction)help.Action!, moreHelp);
        return command;
    }

    /// <summary>An option that takes a whole number.</summary>
    public static Option<long> WholeNumber(string name, string description, long least, long most, long whenAbsent) => Value(
        name,
        description,
        whenAbsent,
        (string text, out long number) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number >= least && number <= most,
        string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}"));

    /// <summary>An option that takes a number with a decimal point, above one bound and up to another.</summary>
    public static Option<double> Number(string name, string description, double above, double most, double whenAbsent, bool orEqual = false) => Value(
        name,
        description,
        whenAbsent,
        (string text, out double number) => double.TryParse(text, NumberStyles.Float & ~NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out number)
            && (orEqual ? number >= above : number > above) && number <= most,
        string.Create(CultureInfo.InvariantCulture, $"a number with a decimal point, {(orEqual ? "from" : "above")} {above} {(orEqual ? "to" : "and at most")} {most}"));

    /// <summary>An option that takes the name of a file to write.</summary>
    public static Option<string?> OutputFile(string name, string description, params string[] endings)
    {
        Option<string?> option = new(name) { Description = description, HelpName = "FILE" };
        option.Validators.Add(result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (text.Length == 0 || text[0] == '-')
            {
                result.AddError($"{name} needs the name of the file to write.");
            }
            else if (endings.Length > 0 && !Array.Exists(endings, ending => text.EndsWith(ending, StringComparison.OrdinalIgnoreCase)))
            {
                result.AddError($"{name} writes {string.Join(" or ", endings)}; the name was '{text}'.");
            }
        });
        return option;
    }

    private delegate bool Reader<T>(string text, out T value);

    private static Option<T> Value<T>(string name, string description, T whenAbsent, Reader<T> read, string accepted) => new(name)
    {
        Description = description,
        HelpName = "N",
        DefaultValueFactory = _ => whenAbsent,
        CustomParser = result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (!read(text, out T value))
            {
                result.AddError($"{name} must be {accepted}; it was '{text}'.");
            }

            return value;
        },
    };

    private sealed class HelpFollowedBy(HelpAction help, Action<TextWriter> more) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            help.MaxWidth = HelpWidth;
            help.Invoke(parseResult);
            more(parseResult.InvocationConfiguration.Output);
            return 0;
        }
    }
}
