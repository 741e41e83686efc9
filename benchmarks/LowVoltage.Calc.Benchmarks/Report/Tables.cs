namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>The tables of the page.</summary>
internal static class Tables
{
    internal static IEnumerable<string> Formulas(IReadOnlyList<FormulaRow> rows)
    {
        foreach (IGrouping<string, FormulaRow> room in rows.GroupBy(row => row.Room))
        {
            yield return $"### {room.Key}";
            yield return "";
            yield return "| call | formula | raw | UnitsNet | typed | ± | least | typed/raw | a quantity | other units | bytes, typed | bytes, UnitsNet |";
            yield return "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |";
            foreach (FormulaRow row in room)
            {
                yield return $"| {Call(row)} | {row.Formula.Formula} | {N(row.Raw.Median)} | {N(row.UnitsNet?.Median)} | {N(row.Typed.Median)} | {N(row.Typed.Error)} "
                    + $"| {N(row.Typed.Least)} | {N(row.Typed.Median / row.Raw.Median)} | {N(row.AQuantity)} | {N(row.OtherUnits.Median)} | {row.Typed.Bytes:0} | {row.UnitsNet?.Bytes:0} |";
            }

            yield return "";
        }
    }

    internal static IEnumerable<string> Searches(IReadOnlyList<FormulaRow> rows)
    {
        yield return "| call | what it does | baseline | baseline's time | typed | ± | least | typed/baseline | bytes, baseline | bytes, typed |";
        yield return "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |";
        foreach (FormulaRow row in rows)
        {
            yield return $"| {Call(row)} | {row.Formula.Formula} | {row.Formula.Baseline} | {Text.Time(row.Raw.Median)} | {Text.Time(row.Typed.Median)} | {Text.Time(row.Typed.Error)} "
                + $"| {Text.Time(row.Typed.Least)} | {N(row.Typed.Median / row.Raw.Median)} | {row.Raw.Bytes:0} | {row.Typed.Bytes:0} |";
        }
    }

    internal static IEnumerable<string> Designs(IEnumerable<(string Call, Measured Measured)> rows)
    {
        yield return "| call | median | ± | least | bytes |";
        yield return "| --- | --- | --- | --- | --- |";
        foreach ((string call, Measured m) in rows)
        {
            yield return $"| {call} | {Text.Time(m.Median)} | {Text.Time(m.Error)} | {Text.Time(m.Least)} | {Text.Bytes(m.Bytes)} |";
        }
    }

    internal static IEnumerable<string> Many(IEnumerable<(int Count, Measured Measured)> rows)
    {
        yield return "| different circuits | median | ± | least | a circuit | bytes a circuit |";
        yield return "| --- | --- | --- | --- | --- | --- |";
        foreach ((int count, Measured m) in rows)
        {
            yield return $"| {count} | {Text.Time(m.Median)} | {Text.Time(m.Error)} | {Text.Time(m.Least)} | {Text.Time(m.Median / count)} | {Text.Bytes(m.Bytes / count)} |";
        }
    }

    internal static IEnumerable<string> Mixes(IEnumerable<MixRow> rows)
    {
        yield return "| mix | mean | half take less than | nine in ten | 99 in 100 | slowest | bytes a circuit |";
        yield return "| --- | --- | --- | --- | --- | --- | --- |";
        foreach (MixRow row in rows)
        {
            yield return $"| {row.Name} | {Text.Time(row.Mean * 1e3)} | {Text.Time(row.Half * 1e3)} | {Text.Time(row.NineTenths * 1e3)} | {Text.Time(row.P99 * 1e3)} | {Text.Time(row.Slowest * 1e3)} | {Text.Bytes(row.Bytes)} |";
        }
    }

    internal static IEnumerable<string> FirstUse(IEnumerable<(string Name, List<double[]> Launches)> rows)
    {
        yield return "| step | ms, by the clock |";
        yield return "| --- | --- |";
        foreach ((string name, List<double[]> launches) in rows)
        {
            yield return $"| {name} | {Text.Range([.. launches.Select(launch => launch[0])])} |";
        }
    }

    internal static IEnumerable<string> Bulk(IEnumerable<BulkRow> rows)
    {
        yield return "| call | cases | raw | bulk | typed | raw/bulk | typed/bulk |";
        yield return "| --- | --- | --- | --- | --- | --- | --- |";
        foreach (BulkRow row in rows)
        {
            yield return $"| `{row.Call}` | {row.Cases} | {Text.Range(row.Raw)} | {Text.Range(row.Bulk)} | {Text.Range(row.Typed)} | {Text.Range(row.OverRaw)} | {Text.Range(row.OverTyped)} |";
        }
    }

    // The member as code, what sets it apart from another of its name beside it.
    private static string Call(FormulaRow row)
    {
        string[] parts = row.Formula.Call.Split(", ", 2);
        return $"`{parts[0]}`" + (parts.Length > 1 ? ", " + parts[1] : "");
    }

    private static string N(double? value) => value is { } number ? Text.Number(number) : "";
}
