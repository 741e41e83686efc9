using System.Globalization;
using CircuitSchedule;
using LowVoltage.Calc;

namespace CircuitPage;

/// <summary>The fields read as a row of the schedule: the requirements of one circuit and the rules, or what is wrong with which field.</summary>
internal sealed class CircuitReading
{
    private static readonly Header Columns = Header.Check("the page", new CircuitSchedule.Record(1, [.. Column.All.Select(column => column.Name)], false), ',');
    private static readonly Dialect Dialect = new(',', DecimalSign.Point);

    private readonly PageState state;
    private readonly Dictionary<string, string> problems = new(StringComparer.Ordinal);

    private CircuitReading(PageState state) => this.state = state;

    public CircuitRequirements? Requirements { get; private set; }

    public DesignRules? Rules { get; private set; }

    /// <summary>What is wrong, by the key of the field.</summary>
    public IReadOnlyDictionary<string, string> Problems => problems;

    public static CircuitReading Of(PageState state)
    {
        CircuitReading reading = new(state);
        reading.Read();
        return reading;
    }

    /// <summary>Asks the designer; what it refuses is reported at its field.</summary>
    public CircuitDesign? Design()
    {
        if (Requirements is null || Rules is null)
        {
            return null;
        }

        try
        {
            return CircuitDesigner.Design(Requirements, Rules);
        }
        catch (ArgumentOutOfRangeException refusal)
        {
            Report(state.Choice("supply") is "lead-acid" ? "blocks_in_series" : state.Choice("supply") is "LiFePO4" ? "cells_in_series" : "supply_V", ProblemWords.Plain(refusal));
        }
        catch (ArgumentException refusal)
        {
            Report("main_fuse_lead_mOhm", ProblemWords.Plain(refusal));
        }

        return null;
    }

    private void Read()
    {
        string[] cells = [.. Columns.Names.Select(_ => "")];
        foreach (Field field in state.Used.Where(field => field.IsColumn))
        {
            cells[Columns.PlaceOf(field.Key)] = Cell(field);
        }

        cells[Columns.PlaceOf("circuit")] = state.Text("circuit") is { Length: > 0 } name ? name : "Circuit";
        CircuitRow row = new(1, Columns, cells, cells.Length, Dialect);
        DesignRules? practice = row.Choice("practice", Words.Practices);
        CircuitRequirements? requirements = CircuitCells.Read(row);
        if (row.Problems.Count == 0)
        {
            row.ReportUnused();
        }

        foreach (Problem problem in row.Problems)
        {
            Report(KeyOf(problem.Column), ProblemWords.Of(problem, state));
        }

        RulesReading rules = RulesReading.Of(state, practice, Report);
        MainFuseReading main = MainFuseReading.Of(state, rules.Rules, Number, Report);
        if (problems.Count == 0 && requirements is not null)
        {
            // A schedule needs names; a circuit of the page may have none.
            CircuitRequirements named = state.Text("circuit").Length > 0 ? requirements : new CircuitRequirements(requirements) { Name = "" };
            Requirements = main.Device is { } device ? named.WithUpstreamProtection(device) : named;
            Rules = rules.Rules;
        }
    }

    // Numbers go on in SI and with a decimal point; what is no number is told here, in the words of the page.
    private string Cell(Field field) => field.Kind switch
    {
        FieldKind.Number => Number(field.Key) is { } number ? number.ToString("R", CultureInfo.InvariantCulture) : state.Text(field.Key).Length > 0 ? "1" : "",
        FieldKind.Choice when field.Key == "insulation" && state.Choice("insulation") == WayFields.Rated =>
            $"{(Number("rated_degC") ?? 100).ToString("R", CultureInfo.InvariantCulture)} degC",
        FieldKind.Choice => state.Choice(field.Key),
        FieldKind.Tick => state.Text(field.Key) == "yes" ? "yes" : "",
        _ => state.Text(field.Key).Trim(),
    };

    /// <summary>A number in SI; null where the field is empty or holds none, which is reported.</summary>
    private double? Number(string key)
    {
        Field field = Fields.Find(key)!;
        string text = state.Text(key).Trim();
        if (text.Length == 0)
        {
            if (key == "rated_degC")
            {
                Report(key, ProblemWords.Missing(field, state.Units));
            }

            return null;
        }

        NumberReading read = PageNumber.Read(text, out double number);
        if (read != NumberReading.Number)
        {
            Report(key, ProblemWords.NoNumber(field, text, read, state.Units));
            return null;
        }

        return UnitText.ToMetric(number, field.Measure, state.Units);
    }

    private string KeyOf(string column) => column switch
    {
        "" => "circuit",
        "insulation" when state.Choice("insulation") == WayFields.Rated => "rated_degC",
        "supply" => "supply_V",
        _ => column,
    };

    // The first problem of a field is told: the others mostly follow from it.
    private void Report(string key, string words) => problems.TryAdd(key, words);
}
