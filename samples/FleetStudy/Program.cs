using System.Text;
using LowVoltage.Calc.Samples;
using Spectre.Console;

namespace FleetStudy;

/// <summary>Studies a fleet of variants on one or many machines.</summary>
internal static class Program
{
    public const int AllPass = 0;
    public const int SomethingFails = 1;
    public const int BadInput = CommandLine.BadInput;
    public const int SomethingUndetermined = 3;
    public const int Unfinished = 4;
    public const int Stopped = CommandLine.Stopped;

    // To keep what is done, and to let the silos go.
    private static readonly TimeSpan EndPatience = TimeSpan.FromSeconds(30);

    public static int Main(string[] args)
    {
        if (args is [SiloProcess.Argument])
        {
            return SiloProcess.Go().GetAwaiter().GetResult();
        }

        // Some consoles start with a legacy code page, which has no Ω and no ².
        Console.OutputEncoding = new UTF8Encoding(false);
        return Run(args, Console.Out, Console.Error, Console.IsErrorRedirected ? null : AnsiConsole.Create(new AnsiConsoleSettings { Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(Console.Error) }));
    }

    /// <summary>The whole program.</summary>
    /// <param name="args">The command line.</param>
    /// <param name="output">Where the report is printed.</param>
    /// <param name="error">Refusals, and notes on the run.</param>
    /// <param name="terminal">Where progress is shown; null where nobody watches.</param>
    /// <param name="stop">Stops the run.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error, IAnsiConsole? terminal, CancellationToken stop = default)
    {
        try
        {
            return CommandLine.Run(StudyCommand.Create((options, token) => Task.Run(() => new Run(options, output, error, terminal, token).Go(), CancellationToken.None)), args, output, error, EndPatience, stop);
        }
        catch (OperationCanceledException)
        {
            error.WriteLine("Stopped. The same command goes on from there.");
            return Stopped;
        }
        catch (UnfinishedException problem)
        {
            error.WriteLine($"{problem.Message} The study is not finished; the same command goes on from there.");
            return Unfinished;
        }
        catch (UsageException problem)
        {
            error.WriteLine(problem.Message);
            error.WriteLine("Try --help.");
            return BadInput;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            error.WriteLine(problem.Message);
            return BadInput;
        }
    }
}
