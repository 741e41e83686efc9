using System.Globalization;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Reads the arguments, draws and solves the cases, prints the report, writes the histograms.</summary>
public static class Sample
{
    private const int MostDraws = 10_000_000;

    /// <summary>Runs the sample.</summary>
    /// <param name="args">Seed, number of draws, folder for the histograms; all optional, in this order.</param>
    /// <param name="output">Where the report goes.</param>
    /// <param name="error">Where the progress and a refusal go.</param>
    /// <param name="showProgress">Whether to show progress.</param>
    /// <returns>0, or 2 for a bad argument.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, bool showProgress)
    {
        ulong seed = 1;
        int draws = 100_000;
        if ((args.Length > 0 && !ulong.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out seed))
            || (args.Length > 1 && !(int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out draws) && draws is >= 1000 and <= MostDraws)))
        {
            error.WriteLine($"The arguments are a seed (a whole number, 1 if left out), a number of draws (1000 to {MostDraws}, 100000 if left out) and a folder; they were '{string.Join("' '", args)}'.");
            return 2;
        }

        Circuit circuit = new();
        Cases cases = Cases.Draw(circuit, seed, draws);
        Study.Solve(circuit, cases, showProgress ? done => error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{100.0 * done / draws:0} % of {draws} draws solved")) : null);
        if (showProgress)
        {
            error.WriteLine();
        }

        Report.Write(circuit, cases, seed, output);
        string folder = args.Length > 2 ? args[2] : Environment.CurrentDirectory;
        Directory.CreateDirectory(folder);
        Histogram.Write(circuit, cases, folder);
        output.WriteLine($"Histograms written to {folder}.");
        return 0;
    }
}
