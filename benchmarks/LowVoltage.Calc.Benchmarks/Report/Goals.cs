namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>The goals and whether the numbers just taken meet them.</summary>
internal static class Goals
{
    private const double NanosecondsAQuantity = 4;
    private const double MicrosecondsADesign = 3;
    private const double BytesADesign = 1500;
    private const double MicrosecondsACircuit = 5;
    private const double MicrosecondsOfWideMix = 12;
    private const double MicrosecondsOfWideMixAtMost = 50;
    private const double MicrosecondsALimit = 30;
    private const double BytesALimit = 5000;
    private const double NanosecondsAPoint = 60;
    private const double BytesAPoint = 200;
    private const double MicrosecondsFuseAgainstWire = 30;
    private const double Linear = 1.25;
    private const double BulkOverRaw = 3.5;
    private const double BulkOverRawWithExpLog = 2;
    private const double BulkOverTyped = 10;

    // So many of those that miss a goal are named; the tables show all.
    private const int Named = 6;

    internal static IEnumerable<string> Judge(
        IReadOnlyList<FormulaRow> formulas,
        IReadOnlyList<FormulaRow> searches,
        IReadOnlyList<(string Call, Measured Measured)> designs,
        IReadOnlyList<(int Count, Measured Measured)> many,
        IReadOnlyList<MixRow> mixes,
        IReadOnlyList<BulkRow> bulk)
    {
        yield return "| goal | measured | |";
        yield return "| --- | --- | --- |";
        yield return All(
            $"A typed call in SI, mm² and °C takes the raw formula and at most {NanosecondsAQuantity} ns a quantity",
            [.. formulas.Where(row => row.AQuantity is not null)],
            row => row.AQuantity <= NanosecondsAQuantity,
            row => $"`{row.Formula.Call}` {Text.Number(row.AQuantity!.Value)}",
            row => row.AQuantity!.Value);
        yield return All("A typed call of a formula allocates nothing", formulas, row => row.Typed.Bytes == 0, row => $"`{row.Formula.Call}` {row.Typed.Bytes:0} B", row => row.Typed.Bytes);
        yield return All("A kernel allocates nothing", [.. searches.Where(row => row.Formula.Baseline == "kernel")], row => row.Raw.Bytes == 0, row => $"`{row.Formula.Call}` {row.Raw.Bytes:0} B", row => row.Raw.Bytes);
        yield return All("A bulk call allocates nothing", BenchmarkSet.Bulk, BulkAllocatesNothing, type => type.Name, _ => 0);
        (string Call, Measured Measured)[] presets = [.. Summary.Presets(designs)], limits = [.. designs.Where(row => Summary.IsLimit(row.Call))];
        yield return All($"One typical design of each preset takes at most {MicrosecondsADesign} µs", presets, row => row.Measured.Median <= MicrosecondsADesign * 1e3, Timed, row => row.Measured.Median);
        yield return All($"It allocates at most {BytesADesign} B", presets, row => row.Measured.Bytes <= BytesADesign, row => $"{row.Call}: {Text.Bytes(row.Measured.Bytes)}", row => row.Measured.Bytes);
        double[] each = [.. many.Where(row => row.Count >= 1000).Select(row => row.Measured.Median / row.Count)];
        yield return Row($"Circuits of a vehicle take at most {MicrosecondsACircuit} µs each (10 000 in 50 ms)", $"the slowest {Text.Time(each.Max())} each", each.Max() <= MicrosecondsACircuit * 1e3);
        MixRow wide = mixes[^1];
        yield return Row($"The wide mix takes at most {MicrosecondsOfWideMix} µs on average", Text.Time(wide.Mean * 1e3), wide.Mean <= MicrosecondsOfWideMix);
        yield return Row($"99 in 100 circuits of it take at most {MicrosecondsOfWideMixAtMost} µs", Text.Time(wide.P99 * 1e3), wide.P99 <= MicrosecondsOfWideMixAtMost);
        yield return All($"How far a circuit can be pushed takes at most {MicrosecondsALimit} µs", limits, row => row.Measured.Median <= MicrosecondsALimit * 1e3, Timed, row => row.Measured.Median);
        yield return All($"It allocates at most {BytesALimit / 1e3} kB", limits, row => row.Measured.Bytes <= BytesALimit, row => $"{row.Call}: {Text.Bytes(row.Measured.Bytes)}", row => row.Measured.Bytes);
        FormulaRow point = searches.First(row => row.Formula.Call == "OperatingPoint.Solve, constant power"), fuse = searches.First(row => row.Formula.Call.StartsWith("FuseAgainstWire.Check", StringComparison.Ordinal));
        yield return Row(
            $"An operating point in closed form takes at most {NanosecondsAPoint} ns and {BytesAPoint} B", $"{Text.Time(point.Typed.Median)}, {Text.Bytes(point.Typed.Bytes)}",
            point.Typed.Median <= NanosecondsAPoint && point.Typed.Bytes <= BytesAPoint);
        yield return Row($"A fuse against a wire in free air takes at most {MicrosecondsFuseAgainstWire} µs", Text.Time(fuse.Typed.Median), fuse.Typed.Median <= MicrosecondsFuseAgainstWire * 1e3);
        yield return Row($"Linear: a circuit takes as long among 100 000 as among 1000, within a factor of {Linear}", $"a factor of {Text.Number(each.Max() / each.Min())}", each.Max() <= Linear * each.Min());
        yield return Ratio($"Bulk, algebra and square roots: at least {BulkOverRaw} × the raw loop", [.. bulk.Where(row => !row.IsTranscendental)], row => row.OverRaw, BulkOverRaw);
        yield return Ratio($"Bulk, exp and log: at least {BulkOverRawWithExpLog} × the raw loop", [.. bulk.Where(row => row.IsTranscendental)], row => row.OverRaw, BulkOverRawWithExpLog);
        yield return Ratio($"Bulk: at least {BulkOverTyped} × a loop of typed calls", bulk, row => row.OverTyped, BulkOverTyped);
    }

    private static string Timed((string Call, Measured Measured) row) => $"{row.Call}: {Text.Time(row.Measured.Median)}";

    // Judged by the worst process: steady, not the best of one.
    private static string Ratio(string goal, IReadOnlyList<BulkRow> rows, Func<BulkRow, double[]> ratio, double least) =>
        All(goal, rows, row => ratio(row).Min() >= least, row => $"`{row.Call}` at {row.Cases}: {Text.Number(ratio(row).Min())}", row => -ratio(row).Min());

    private static string All<T>(string goal, IReadOnlyCollection<T> rows, Func<T, bool> isMet, Func<T, string> say, Func<T, double> howFar)
    {
        T[] missed = [.. rows.Where(row => !isMet(row)).OrderByDescending(howFar)];
        string named = string.Join(", ", missed.Take(Named).Select(say)), others = missed.Length > Named ? $" and {missed.Length - Named} more" : "";
        return Row(goal, $"{rows.Count - missed.Length} of {rows.Count}" + (missed.Length > 0 ? $"; not {named}{others}" : ""), missed.Length == 0);
    }

    private static bool BulkAllocatesNothing(Type type) =>
        Allocated.Of(type, nameof(BulkBenchmarks.Bulk), nameof(BulkBenchmarks.Cases), BulkRatios.Counts[0]) == 0;

    private static string Row(string goal, string measured, bool met) => $"| {goal} | {measured} | {(met ? "met" : "**missed**")} |";
}
