using System.Text;
using LowVoltage.Calc.Samples;
using Spectre.Console;

namespace CircuitSchedule;

/// <summary>Designs every circuit of a CSV file and prints the schedule.</summary>
internal static class Program
{
    public const int AllPass = 0;
    public const int SomeCircuitFails = 1;
    public const int BadInput = CommandLine.BadInput;
    public const int SomeUndetermined = 3;
    public const int Stopped = CommandLine.Stopped;

    public static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω and no ².
        Console.OutputEncoding = new UTF8Encoding(false);
        if (!Console.IsOutputRedirected)
        {
            return Run(args, Screen.Terminal(Console.Out, AnsiConsole.Console), Console.Error, null);
        }

        // Not a line at a time: nobody waits for the next one.
        using StreamWriter output = new(Console.OpenStandardOutput(), new UTF8Encoding(false), 1 << 14);
        return Run(args, Screen.Plain(output), Console.Error, Console.IsErrorRedirected ? null : ErrorTerminal());
    }

    /// <summary>The whole program. The schedule goes to <paramref name="screen"/>; what keeps it from being made goes to <paramref name="error"/>.</summary>
    /// <param name="args">The command line.</param>
    /// <param name="screen">Where the schedule is printed.</param>
    /// <param name="error">Notes on the file and refusals.</param>
    /// <param name="progress">A terminal for a bar; null where nobody waits, or the rows themselves show how far it is.</param>
    /// <param name="stop">Stops the run.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Screen screen, TextWriter error, IAnsiConsole? progress, CancellationToken stop = default)
    {
        int Refused(string message)
        {
            screen.Output.Flush();
            error.WriteLine(message);
            return BadInput;
        }

        try
        {
            return CommandLine.Run(ScheduleCommand.Create((options, token) => new Run(options, screen, error, token).Go(progress)), args, screen.Output, error, stop);
        }
        catch (DecoderFallbackException)
        {
            return Refused("The file is damaged: it begins as UTF-16 but is not UTF-16 throughout. Save it once more, in UTF-8.");
        }
        catch (OperationCanceledException)
        {
            screen.Output.Flush();
            error.WriteLine("Stopped. The schedule is incomplete, and no result file was written.");
            return Stopped;
        }
        catch (Exception problem) when (problem is ScheduleFileException or IOException or UnauthorizedAccessException)
        {
            return Refused(problem.Message);
        }
    }

    // Spectre asks the standard output whether anybody watches; here that is a file, and the error stream is the terminal.
    private static IAnsiConsole ErrorTerminal() =>
        AnsiConsole.Create(new AnsiConsoleSettings { Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(Console.Error) });
}
