using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>
/// Fixed circuits, vehicle mix and wide mix, designed one after another: what each took at least, and what the answers were, so that a faster library can be held to the answers of the slower one.
/// <c>--corpus [count] [--save FILE] [--against FILE] [--passes n] [--mix vehicle|wide]</c>.
/// </summary>
internal static class Corpus
{
    private const double Tolerance = 1e-9;

    // Of a search, which ends within a width: 1e-4 K is the widest.
    private const double LimitTolerance = 1e-5;
    private const double LimitWidth = 1.01e-4;
    private const string Limit = "limit ";

    private const int SettlingMilliseconds = 300;

    // Every so many circuits everything else is asked too.
    private const int FullEvery = 50;

    internal static int Run(string[] args)
    {
        int count = args.Length > 1 && int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out int stated) ? stated : 20_000;
        int passes = int.Parse(Option(args, "--passes") ?? "5", CultureInfo.InvariantCulture);
        List<string> answers = [];
        foreach ((string name, (CircuitRequirements Circuit, DesignRules Rules)[] mix) in Mixes(count))
        {
            if (!name.StartsWith(Option(args, "--mix") ?? "", StringComparison.Ordinal))
            {
                continue;
            }

            int from = answers.Count;
            foreach ((CircuitRequirements circuit, DesignRules rules) in mix)
            {
                answers.Add(Answer(circuit, rules, full: (answers.Count - from) % FullEvery == 0));
            }

            Console.WriteLine($"{name}: {count} circuits, answers {Hash(answers.Skip(from))}");
            if (passes > 0)
            {
                Spread spread = Measure(mix, passes);
                Console.WriteLine($"  {spread}");
            }
        }

        if (Option(args, "--save") is { } save)
        {
            File.WriteAllLines(save, answers);
        }

        return Option(args, "--against") is { } against ? Compare(File.ReadAllLines(against), answers) : 0;
    }

    /// <summary>Both mixes.</summary>
    internal static IEnumerable<(string Name, (CircuitRequirements Circuit, DesignRules Rules)[] Mix)> Mixes(int count) =>
    [
        ("vehicle mix", [.. Circuits60V.Varied(count).Select(circuit => (circuit, DesignRules.RoadVehicle))]),
        ("wide mix", WideMix.Make(count)),
    ];

    /// <summary>Times every circuit some times over and keeps the least of each: what the machine did besides falls away.</summary>
    internal static Spread Measure((CircuitRequirements Circuit, DesignRules Rules)[] mix, int passes)
    {
        double[] least = new double[mix.Length];
        Array.Fill(least, double.PositiveInfinity);
        long bytes = 0;
        for (int pass = 0; pass < passes + 1; pass++)
        {
            bytes = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < mix.Length; i++)
            {
                long start = Stopwatch.GetTimestamp();
                CircuitDesigner.Design(mix[i].Circuit, mix[i].Rules);
                least[i] = Math.Min(least[i], Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            }

            bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        }

        return new Spread(least, (double)bytes / mix.Length);
    }

    /// <summary>Settles the compiler on a mix, then measures it.</summary>
    internal static Spread MeasureSettled((CircuitRequirements Circuit, DesignRules Rules)[] mix, int passes)
    {
        Measure(mix, 1);
        Thread.Sleep(SettlingMilliseconds);
        Measure(mix, 1);
        Thread.Sleep(SettlingMilliseconds);
        return Measure(mix, passes);
    }

    private static string? Option(string[] args, string name)
    {
        int at = Array.IndexOf(args, name);
        return at >= 0 ? args[at + 1] : null;
    }

    private static string Answer(CircuitRequirements circuit, DesignRules rules, bool full)
    {
        CircuitDesign design = CircuitDesigner.Design(circuit, rules);
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"{design.Wire.Name}|{design.Fuse}|{design.Verdict}|{design.IsNearest}");
        foreach (CheckResult check in design.Checks)
        {
            Add(text, check, full);
        }

        if (full)
        {
            Everything(text, design);
        }

        return text.ToString();
    }

    private static void Everything(StringBuilder text, CircuitDesign design)
    {
        Add(text.Append("|governing"), design.Governing, true);
        foreach (RejectedSize size in design.Rejected)
        {
            Add(text.Append(CultureInfo.InvariantCulture, $"|{size.Conductor.Name}"), size.Check, true);
        }

        CheckResult first = design.Checks[0];
        text.Append(CultureInfo.InvariantCulture, $"|{first.Where}|{string.Join('|', design.Advice)}|{string.Join('|', design.Assumptions)}|{string.Join('|', design.Cautions)}");
        if (design.Fuse is not { } fuse)
        {
            return;
        }

        (CircuitRequirements asked, DesignRules rules) = (design.Requirements, design.Rules);
        AddLimit(text, design.Requirements.Return.IsOfWire ? CircuitDesigner.LongestRun(asked, design.Wire, fuse, rules) : null, limit => limit.Meters);
        AddLimit(text, CircuitDesigner.LargestCurrent(asked, design.Wire, fuse, rules), limit => limit.Amperes);
        AddLimit(text, CircuitDesigner.LargestPower(asked, design.Wire, fuse, rules), limit => (double)limit.Watts);
        AddLimit(text, CircuitDesigner.HottestAmbient(asked, design.Wire, fuse, rules), limit => limit.Kelvins);
        AddLimit(text, CircuitDesigner.MostLoadedConductors(asked, design.Wire, fuse, rules), limit => limit);
    }

    // A search ends within a width of its own: its number is held to that.
    private static void AddLimit<T>(StringBuilder text, DesignLimit<T>? limit, Func<T, double> number)
        where T : struct => text.Append(
            CultureInfo.InvariantCulture,
            $"|{limit?.Governing?.Kind?.Id}|{(limit?.Value is { } value ? Limit + number(value).ToString("R", CultureInfo.InvariantCulture) : "")}");

    private static void Add(StringBuilder text, in CheckResult check, bool full) => text.Append(
        CultureInfo.InvariantCulture,
        $"|{check.Kind?.Id} {check.Outcome}|{check.Value?.ToString("R", CultureInfo.InvariantCulture)}|{check.Limit?.ToString("R", CultureInfo.InvariantCulture)}{(full ? $"|{check.Where}|{check.Note}" : "")}");

    // Everything but the numbers, which may differ in their last digits.
    private static string Hash(IEnumerable<string> answers)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string answer in answers)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(string.Join('|', answer.Split('|').Where(part => !IsNumber(part, out _) && !part.StartsWith(Limit, StringComparison.Ordinal)))));
        }

        return Convert.ToHexString(hash.GetHashAndReset())[..16];
    }

    private static int Compare(string[] before, List<string> now)
    {
        int differing = 0;
        double most = 0;
        for (int i = 0; i < Math.Max(before.Length, now.Count); i++)
        {
            double by = i < before.Length && i < now.Count ? Apart(before[i], now[i]) : double.PositiveInfinity;
            most = by > most && !double.IsInfinity(by) ? by : most;
            if (by > Tolerance && ++differing <= 5)
            {
                Console.WriteLine($"{i}, by {by:E1}\n  was {before.ElementAtOrDefault(i)}\n  now {now.ElementAtOrDefault(i)}");
            }
        }

        Console.WriteLine($"{differing} of {now.Count} answers differ; the numbers of the others by at most {most:E1}");
        return differing == 0 ? 0 : 1;
    }

    private static double Apart(string was, string now)
    {
        if (was == now)
        {
            return 0;
        }

        string[] a = was.Split('|'), b = now.Split('|');
        double most = a.Length == b.Length ? 0 : double.PositiveInfinity;
        for (int i = 0; i < a.Length && !double.IsInfinity(most); i++)
        {
            if (a[i] == b[i])
            {
                continue;
            }

            bool limits = a[i].StartsWith(Limit, StringComparison.Ordinal) && b[i].StartsWith(Limit, StringComparison.Ordinal);
            (string first, string second) = limits ? (a[i][Limit.Length..], b[i][Limit.Length..]) : (a[i], b[i]);
            bool numbers = IsNumber(first, out double x) & IsNumber(second, out double y);
            double apart = numbers ? Math.Abs(x - y) / Math.Max(Math.Abs(x), 1e-300) : double.PositiveInfinity;
            most = limits && (apart <= LimitTolerance || Math.Abs(x - y) <= LimitWidth) ? most : Math.Max(most, apart);
        }

        return most;
    }

    private static bool IsNumber(string text, out double number) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    /// <summary>How the times of many circuits are spread, µs, and the bytes of one.</summary>
    internal sealed class Spread
    {
        private readonly double[] sorted;

        internal Spread(double[] microseconds, double bytes)
        {
            sorted = [.. microseconds.Order()];
            Bytes = bytes;
        }

        internal double Bytes { get; }

        internal double Mean => sorted.Average();

        internal double Slowest => sorted[^1];

        internal double At(double share) => sorted[(int)Math.Min(sorted.Length - 1, Math.Floor(share * sorted.Length))];

        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture, $"mean {Mean:F2}, p50 {At(0.5):F2}, p90 {At(0.9):F2}, p99 {At(0.99):F2}, slowest {Slowest:F1} µs; {Bytes:F0} B a circuit");
    }
}
