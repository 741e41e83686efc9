using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using LowVoltage.Calc.Checks;

namespace CircuitSchedule;

/// <summary>The results for programs and spreadsheets: one row per circuit, separator and decimal sign as in the file that was read, units in the header.</summary>
internal sealed class ResultCsv : IScheduleWriter
{
    /// <summary>UTF-8 with a byte-order mark: without it some spreadsheets take the file for a legacy code page and spoil the ² of mm².</summary>
    public static Encoding Encoding { get; } = new UTF8Encoding(encoderShouldEmitUTF8Identifier: true);

    private static readonly (string Header, Func<CircuitAnswer, string?> Value)[] Texts =
    [
        ("practice", answer => answer.Practice),
        ("governed_by", answer => answer.GovernedBy),
        ("wire", answer => answer.Wire),
        ("fuse", answer => answer.Fuse),
    ];

    private static readonly (string Header, Func<CircuitAnswer, double?> Value)[] Values =
    [
        ("wire_section_mm2", answer => answer.SectionSquareMillimeters),
        ("wire_rating_A", answer => answer.RatingAmperes),
        ("conductor_degC", answer => answer.ConductorCelsius),
        ("fuse_rating_A", answer => answer.FuseAmperes),
        ("current_at_min_supply_A", answer => answer.MinimumAmperes),
        ("current_at_nominal_supply_A", answer => answer.NominalAmperes),
        ("current_at_max_supply_A", answer => answer.MaximumAmperes),
        ("drop_V", answer => answer.DropVolts),
        ("drop_percent", answer => answer.DropPercent),
        ("lowest_load_voltage_V", answer => answer.LowestLoadVolts),
    ];

    private readonly CsvWriter csv;
    private readonly char decimalSign;

    public ResultCsv(TextWriter output, Dialect dialect)
    {
        decimalSign = dialect.ResultDecimal;
        csv = new CsvWriter(output, new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = dialect.Separator.ToString() });
    }

    public void Begin(Heading heading) => WriteRow(
        ["line", "circuit", "verdict", .. Texts.Select(column => column.Header), .. Values.Select(column => column.Header), "in_words", "undetermined", "advice", "assumed", "bad_input"]);

    public void Row(ScheduleEntry entry)
    {
        CircuitAnswer? answer = entry.Answer;
        csv.WriteField(entry.Line);
        csv.WriteField(Harmless(entry.Circuit));
        csv.WriteField(answer is null ? "bad input" : answer.Verdict == Verdict.Fail ? "fail" : Cells.Word(answer.Verdict));
        foreach ((_, Func<CircuitAnswer, string?> value) in Texts)
        {
            csv.WriteField(answer is null ? "" : Harmless(value(answer)));
        }

        foreach ((_, Func<CircuitAnswer, double?> value) in Values)
        {
            csv.WriteField(answer is not null && value(answer) is { } number ? Six(number) : "");
        }

        WriteRow(
        [
            answer?.InWords ?? "", string.Join("; ", answer?.Undetermined ?? []), string.Join(" ", answer?.Advice ?? []),
            string.Join("; ", entry.Assumptions.Select(one => $"{one.What}: {one.Value}")), string.Join(" ", entry.Problems),
        ]);
    }

    public void End(Tally tally) => csv.Flush();

    public void Dispose() => csv.Dispose();

    private string Six(double value) => decimalSign == '.' ? Numbers.Six(value) : Numbers.Six(value).Replace('.', decimalSign);

    // A spreadsheet runs a cell that begins like a formula; an apostrophe makes it text.
    private static string? Harmless(string? cell) => cell is { Length: > 0 } && cell[0] is '=' or '+' or '-' or '@' or '\t' ? "'" + cell : cell;

    private void WriteRow(IEnumerable<string?> cells)
    {
        foreach (string? cell in cells)
        {
            csv.WriteField(Harmless(cell));
        }

        csv.NextRecord();
    }
}
