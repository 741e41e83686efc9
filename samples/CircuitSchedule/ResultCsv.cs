using System.Globalization;
using System.Text;
using CsvHelper;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;

namespace CircuitSchedule;

/// <summary>The results for programs and spreadsheets: one row per circuit, comma and decimal point always, units in the header.</summary>
public static class ResultCsv
{
    /// <summary>UTF-8 with a byte-order mark: without it some spreadsheets take the file for a legacy code page and spoil the ² of mm².</summary>
    public static Encoding Encoding { get; } = new UTF8Encoding(encoderShouldEmitUTF8Identifier: true);

    private static readonly (string Header, Func<CircuitDesign, string?> Value)[] Columns =
    [
        ("practice", design => design.Rules.Name),
        ("governed_by", design => design.Governing.Name),
        ("current_at_min_supply_A", design => Six(design.SupplyRange?.Minimum.Current.Amperes)),
        ("current_at_nominal_supply_A", design => Six(design.SupplyRange?.Nominal.Current.Amperes)),
        ("current_at_max_supply_A", design => Six(design.SupplyRange?.Maximum.Current.Amperes)),
        ("wire", design => design.Wire?.Name),
        ("wire_section_mm2", design => Six(design.Wire?.Area.SquareMillimeters)),
        ("wire_rating_A", design => Six(design.Wire is null ? null : design.Find(CheckKind.ContinuousCurrent)?.Limit)),
        ("conductor_degC", design => Six(design.Wire is null ? null : design.Find(CheckKind.ConductorTemperature)?.Value)),
        ("fuse", design => design.Fuse?.ToString()),
        ("fuse_rating_A", design => Six(design.Fuse?.Current.Amperes)),
        ("drop_V", design => Six(design.SupplyRange?.MostDrop?.Drop.Volts)),
        ("drop_percent", design => Six(design.SupplyRange?.MostDrop?.DropOfNominal.Percent)),
        ("lowest_load_voltage_V", design => Six(design.SupplyRange?.LeastVoltageAtLoad?.VoltageAtLoad.Volts)),
        ("in_words", design => design.ToString()),
        ("undetermined", design => string.Join("; ", design.Undetermined)),
        ("advice", design => string.Join(" ", design.Advice)),
    ];

    public static void Write(IEnumerable<ScheduleEntry> entries, TextWriter output)
    {
        using CsvWriter csv = new(output, CultureInfo.InvariantCulture, leaveOpen: true);
        WriteRow(csv, ["line", "circuit", "verdict", .. Columns.Select(column => column.Header), "bad_input"]);
        foreach (ScheduleEntry entry in entries)
        {
            string verdict = entry.Design is { } design ? WordFor(design.Verdict) : "bad input";
            IEnumerable<string?> values = Columns.Select(column => entry.Design is null ? "" : column.Value(entry.Design));
            WriteRow(csv, [Six(entry.Line), entry.Circuit, verdict, .. values, string.Join("; ", entry.Problems)]);
        }
    }

    private static string WordFor(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.Undetermined => "undetermined",
        _ => "fail",
    };

    private static string? Six(double? value) => value is { } number ? Numbers.Six(number) : null;

    // A spreadsheet runs a cell that begins like a formula; an apostrophe makes it text.
    private static string? Harmless(string? cell) =>
        cell is { Length: > 0 } && cell[0] is '=' or '+' or '@' or '\t' ? "'" + cell : cell;

    private static void WriteRow(CsvWriter csv, IEnumerable<string?> cells)
    {
        foreach (string? cell in cells)
        {
            csv.WriteField(Harmless(cell));
        }

        csv.NextRecord();
    }
}
