using System.CommandLine;
using LowVoltage.Calc.Harnesses;
using Spectre.Console;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Reads the command line, samples the circuit, prints the report, draws the charts that were asked for.</summary>
public static class Sample
{
    private const int MostDraws = 1_000_000;

    /// <summary>Runs the sample.</summary>
    /// <param name="args">The command line.</param>
    /// <param name="output">Where the report goes.</param>
    /// <param name="error">Where a refusal goes.</param>
    /// <param name="progress">A terminal for the progress; null where nobody waits.</param>
    /// <param name="stop">Stops the study.</param>
    /// <returns>0, or 2 for a bad argument; 130 when stopped.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, IAnsiConsole? progress = null, CancellationToken stop = default)
    {
        Option<long> seed = CommandLine.WholeNumber("--seed", "The draws to make: the same seed gives the same answer on every machine", 0, int.MaxValue, 1);
        Option<long> draws = CommandLine.WholeNumber("--draws", "How many circuits to draw", 1000, MostDraws, 100_000);
        Option<string?> volts = CommandLine.OutputFile("--chart", "Draw the voltage at the load, as .png or .svg", ChartFile.Endings);
        Option<string?> heat = CommandLine.OutputFile("--temperature-chart", "Draw the wire temperature, as .png or .svg", ChartFile.Endings);
        RootCommand command = CommandLine.Create("Draws many circuits around one design and says how often a check fails.", MoreHelp);
        foreach (Option option in new Option[] { seed, draws, volts, heat })
        {
            command.Options.Add(option);
        }

        // On a thread of its own, so that Ctrl-C is listened for while it runs.
        command.SetAction((parsed, token) => Task.Run(
            () =>
            {
                CircuitDesign design = Circuit.Design();
                ToleranceSample sample = Solve(design, (int)parsed.GetValue(draws), (int)parsed.GetValue(seed), progress, token);
                Report.Write(design, sample, output);
                Draw(() => Curve.Draw(design, sample, "voltage at the load"), parsed.GetValue(volts), "Voltage at the load", output);
                Draw(() => Curve.Draw(design, sample, "conductor temperature"), parsed.GetValue(heat), "Conductor temperature", output);
                return 0;
            },
            CancellationToken.None));
        try
        {
            return CommandLine.Run(command, args, output, error, stop);
        }
        catch (OperationCanceledException)
        {
            error.WriteLine("Stopped.");
            return CommandLine.Stopped;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            error.WriteLine(refused.Message);
            return CommandLine.BadInput;
        }
    }

    private static ToleranceSample Solve(CircuitDesign design, int count, int seed, IAnsiConsole? progress, CancellationToken stop)
    {
        if (progress is null)
        {
            return ToleranceSample.OfCircuit(design, Circuit.Tolerances, count, seed, cancellation: stop);
        }

        return progress.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask("Solving the draws", maxValue: 1);
            return ToleranceSample.OfCircuit(design, Circuit.Tolerances, count, seed, progress: new Told(task), cancellation: stop);
        });
    }

    private static void Draw(Func<ScottPlot.Plot> plot, string? path, string what, TextWriter output)
    {
        if (path is not null)
        {
            ChartFile.Save(plot(), path);
            output.WriteLine($"{what} drawn in {path}");
        }
    }

    private static void MoreHelp(TextWriter output) => output.WriteLine("""
        Exit codes:
          0    the study was made; how often a draw fails is its result, not an error
          2    bad arguments
          130  stopped by Ctrl-C
        """);

    // Told as the study goes: the library's progress is not queued anywhere.
    private sealed class Told(ProgressTask task) : IProgress<double>
    {
        public void Report(double value) => task.Value = value;
    }
}
