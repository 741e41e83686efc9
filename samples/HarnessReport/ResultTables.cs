using System.Globalization;
using CsvHelper;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace HarnessReport;

/// <summary>Writes the tables of a report as CSV files, with points as decimal signs.</summary>
internal static class ResultTables
{
    public static void Write(string folder, HarnessVerification verified, FaultAudit? audit)
    {
        _ = Directory.CreateDirectory(folder);
        One(folder, "checks", ["place", "wire", "toward", "check", "outcome", "value", "limit", "unit", "margin", "load_case", "note", "source", "advice"], verified.Checks.Select(c => new object?[]
        {
            c.Place, c.Wire, c.Toward, c.Kind!.Name, c.Outcome.ToString().ToLowerInvariant(), c.Result.Value, c.Result.Limit, c.Result.Unit, c.Result.Margin, c.LoadCase, c.Result.Note, c.Result.Reference.ToString(), c.Advice,
        }));
        One(folder, "branches", ["load_case", "level", "branch", "from", "to", "current_A", "heating_A", "loss_W", "temperature_C"], Solved(verified).SelectMany(at => at.Harness.Branches.Select(b => new object?[]
        {
            at.LoadCase.Name, at.Level.ToString().ToLowerInvariant(), b.Id, b.From, b.To, at.CurrentOf(b.Id).Amperes, at.HeatingCurrentOf(b.Id).Amperes, (double)at.LossOf(b.Id).Watts,
            b is HarnessWire ? at.TemperatureOf(b.Id)?.DegreesCelsius : null,
        })));
        One(folder, "nodes", ["load_case", "level", "node", "voltage_V"], Solved(verified).SelectMany(at => at.Harness.Nodes.Select(n => new object?[] { at.LoadCase.Name, at.Level.ToString().ToLowerInvariant(), n.Id, at.VoltageOf(n.Id).Volts })));
        One(folder, "loads", ["load_case", "level", "load", "condition", "voltage_V", "current_A"], Solved(verified).SelectMany(at => at.Harness.Loads.Select(l => new object?[]
        {
            at.LoadCase.Name, at.Level.ToString().ToLowerInvariant(), l.Id, at.ConditionOf(l.Id).ToString(), at.VoltageAt(l.Id).Volts, at.CurrentAt(l.Id).Amperes,
        })));
        if (audit is not null)
        {
            One(folder, "faults", ["kind", "place", "load_case", "rank", "ending", "least_A", "greatest_A", "what"], audit.Faults.Select(f => new object?[]
            {
                f.Kind.ToString(), f.Place, f.LoadCase, f.Rank.ToString(), f.Ending.ToString(), f.LeastCurrent?.Amperes, f.GreatestCurrent?.Amperes, f.ToString(),
            }));
        }
    }

    private static IEnumerable<HarnessSolution> Solved(HarnessVerification verified) =>
        from used in verified.Harness.LoadCases
        from level in Enum.GetValues<SupplyLevel>()
        let at = verified.Harness.Solve(level, used)
        where at.Exists
        select at;

    private static void One(string folder, string name, string[] columns, IEnumerable<object?[]> rows)
    {
        using StreamWriter text = new(Path.Combine(folder, name + ".csv"));
        using CsvWriter writer = new(text, CultureInfo.InvariantCulture);
        foreach (string column in columns)
        {
            writer.WriteField(column);
        }

        writer.NextRecord();
        foreach (object?[] row in rows)
        {
            foreach (object? cell in row)
            {
                writer.WriteField(cell);
            }

            writer.NextRecord();
        }
    }
}
