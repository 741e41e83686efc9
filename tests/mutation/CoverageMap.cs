using Xunit.Abstractions;

namespace Mutation;

/// <summary>Which test passes which mutant, and how long each test takes when warm.</summary>
internal static class CoverageMap
{
    /// <summary>A test that is too slow to run for each mutant is left out; that can only lower the score. A busy machine makes every test slow: MUTATION_SECONDS says more.</summary>
    private static readonly double MostSeconds = double.Parse(Environment.GetEnvironmentVariable("MUTATION_SECONDS") ?? "1.5", System.Globalization.CultureInfo.InvariantCulture);

    internal sealed record Entry(string Case, double Seconds, int[] Passed);

    /// <summary>Line 1: mutants passed on the first, cold run of all. Then a line a test: id, seconds, mutants passed when warm.</summary>
    internal static int Write(MutantSwitch mutants, Suite suite, string path)
    {
        List<Suite.Outcome> first = [];
        Dictionary<string, double> cold = [];
        foreach ((string id, ITestCase test) in suite.Cases)
        {
            if (suite.Run([test], false, TimeSpan.FromMinutes(5)) is not { Failed: null } outcome)
            {
                Console.Error.WriteLine($"left out, fails here without a mutant: {test.DisplayName}");
                continue;
            }

            cold[id] = outcome.Took.TotalSeconds;
        }

        int[] ever = mutants.Take();
        List<string> lines = [string.Join(' ', ever)];
        foreach ((string id, double seconds) in cold)
        {
            if (seconds > MostSeconds && !Suite.ReadsAll(suite.Cases[id]))
            {
                Console.Error.WriteLine($"left out, {seconds:F1} s: {suite.Cases[id].DisplayName}");
                continue;
            }

            if (suite.Run([suite.Cases[id]], false, TimeSpan.FromMinutes(5)) is { Failed: null } outcome)
            {
                lines.Add(FormattableString.Invariant($"{id}\t{outcome.Took.TotalSeconds:F6}\t{string.Join(' ', mutants.Take())}"));
            }
        }

        File.WriteAllLines(path, lines);
        return 0;
    }

    internal static List<Entry> Read(string path) =>
    [
        .. File.ReadLines(path).Skip(1).Select(line => line.Split('\t')).Select(parts => new Entry(
            parts[0],
            double.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture),
            [.. parts[2].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)])),
    ];
}
