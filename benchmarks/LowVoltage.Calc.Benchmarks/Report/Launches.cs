using System.Diagnostics;
using System.Globalization;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>Numbers that only a fresh process can give: this program, started some times over, each line of its output a name and numbers between tabs.</summary>
internal static class Launches
{
    /// <summary>For each name the numbers of every launch, in the order of the lines.</summary>
    internal static List<(string Name, List<double[]> Launches)> Of(string argument, int count, params string[] more)
    {
        List<(string Name, List<double[]> Launches)> found = [];
        for (int launch = 0; launch < count; launch++)
        {
            Console.WriteLine($"{argument}, process {launch + 1} of {count}");
            string[] lines = Output(argument, more).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            for (int i = 0; i < lines.Length; i++)
            {
                string[] cells = lines[i].Trim().Split('\t');
                if (launch == 0)
                {
                    found.Add((cells[0], []));
                }

                found[i].Launches.Add([.. cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))]);
            }
        }

        return found;
    }

    private static string Output(string argument, string[] more)
    {
        ProcessStartInfo start = new(Environment.ProcessPath!) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
        {
            start.ArgumentList.Add(typeof(Launches).Assembly.Location);
        }

        start.ArgumentList.Add(argument);
        foreach (string other in more)
        {
            start.ArgumentList.Add(other);
        }

        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{argument} ended with {process.ExitCode}.");
    }
}
