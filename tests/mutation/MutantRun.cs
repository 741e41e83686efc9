using Xunit.Abstractions;

namespace Mutation;

/// <summary>Turns one mutant on after another and runs the tests that pass it, quick ones first, until one fails.</summary>
internal static class MutantRun
{
    // Seconds: tests are run in batches, the quickest first, and a failure ends the mutant.
    private static readonly double[] Steps = [0.002, 0.01, 0.05, 0.3, double.PositiveInfinity];

    internal static int All(MutantSwitch mutants, Suite suite, string map, IEnumerable<int> ids, string results)
    {
        List<CoverageMap.Entry> entries = [.. CoverageMap.Read(map).Where(e => suite.Cases.ContainsKey(e.Case)).OrderBy(e => e.Seconds)];
        int[] todo = [.. ids];
        HashSet<int> wanted = [.. todo];
        Dictionary<int, List<CoverageMap.Entry>> tests = todo.ToDictionary(id => id, _ => new List<CoverageMap.Entry>());
        foreach (CoverageMap.Entry entry in entries)
        {
            foreach (int id in entry.Passed.Where(wanted.Contains))
            {
                tests[id].Add(entry);
            }
        }

        // Static data is built, and every test shown to pass, before any mutant is on.
        HashSet<string> unfit = [];
        foreach (CoverageMap.Entry entry in entries.Where(e => (e.Seconds < 0.005 || Suite.ReadsAll(suite.Cases[e.Case])) && e.Passed.Any(wanted.Contains)))
        {
            if (suite.Run([suite.Cases[entry.Case]], true, TimeSpan.FromMinutes(2)) is not { Failed: null })
            {
                unfit.Add(entry.Case);
            }
        }

        using StreamWriter writer = new(results, append: true) { AutoFlush = true };
        foreach (int id in todo)
        {
            mutants.Active = id;
            string verdict = Judge(suite, [.. tests[id].Where(e => !unfit.Contains(e.Case))]);
            mutants.Active = -1;
            writer.WriteLine($"{id}\t{verdict}");
            if (verdict == "Timeout")
            {
                return Die();
            }
        }

        // What a mutant left behind in a cache would spoil the verdicts after it.
        foreach (CoverageMap.Entry entry in entries.Where(e => e.Passed.Any(wanted.Contains) && !unfit.Contains(e.Case)))
        {
            if (suite.Run([suite.Cases[entry.Case]], true, TimeSpan.FromMinutes(2)) is not { Failed: null })
            {
                writer.WriteLine($"-1\tSpoilt\t{suite.Cases[entry.Case].DisplayName}");
            }
        }

        return 0;
    }

    /// <summary>
    /// A mutant in the making of static data: on from the start of the process, first against the tests that read all there is, one by one (nothing else is looked up
    /// then, which halves the time), then against every test that passes a mutant of the same file.
    /// </summary>
    internal static int Fresh(MutantSwitch mutants, string tests, string map, int id, string same, string results)
    {
        mutants.Active = id;
        List<CoverageMap.Entry> entries = CoverageMap.Read(map);
        string verdict = "";
        foreach (string type in Suite.TypesThatReadAll)
        {
            Suite one = new(tests, type);
            verdict = Judge(one, entries.FindAll(e => one.Cases.ContainsKey(e.Case)));
            if (verdict is not ("Survived" or "NoCoverage"))
            {
                break;
            }
        }

        if (verdict is "Survived" or "NoCoverage")
        {
            HashSet<int> file = [.. File.ReadAllText(same).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];
            verdict = Judge(new Suite(tests), [.. entries.Where(e => e.Seconds < 0.3 && e.Passed.Any(file.Contains)).OrderBy(e => e.Seconds)]);
        }

        File.AppendAllText(results, $"{id}\t{verdict}\n");
        return verdict == "Timeout" ? Die() : 0;
    }

    private static string Judge(Suite suite, List<CoverageMap.Entry> tests)
    {
        if (tests.Count == 0)
        {
            return "NoCoverage";
        }

        // Quick tests first, up to a budget, and the few that read everything: what the other slow ones alone would kill counts as survived.
        double budget = double.Parse(Environment.GetEnvironmentVariable("MUTATION_BUDGET") ?? "4", System.Globalization.CultureInfo.InvariantCulture);
        tests = [.. tests.Where(e => Suite.ReadsAll(suite.Cases[e.Case]) || (budget -= e.Seconds) > 0)];

        double from = 0;
        foreach (double to in Steps)
        {
            List<CoverageMap.Entry> part = tests.FindAll(e => e.Seconds >= from && e.Seconds < to);
            from = to;
            if (part.Count == 0)
            {
                continue;
            }

            Suite.Outcome? outcome = suite.Run(part.Select(e => suite.Cases[e.Case]), true, TimeSpan.FromSeconds(4 + (10 * part.Sum(e => e.Seconds))));
            if (outcome is null)
            {
                return "Timeout";
            }

            if (outcome.Failed is { } name)
            {
                return "Killed\t" + name.Replace('\t', ' ').Replace('\n', ' ').Replace('\r', ' ');
            }
        }

        return "Survived";
    }

    // A test that never ends can't be stopped from inside.
    private static int Die()
    {
        System.Diagnostics.Process.GetCurrentProcess().Kill();
        return 3;
    }
}
