using System.Globalization;
using CircuitSchedule;

namespace CircuitPage;

/// <summary>One row of a schedule as the fields of the page.</summary>
internal sealed class ScheduleChoice
{
    private ScheduleChoice(int line, string name, PageState state, IReadOnlyList<string> remarks) => (Line, Name, State, Remarks) = (line, name, state, remarks);

    public int Line { get; }

    public string Name { get; }

    public PageState State { get; }

    /// <summary>What the row says that the fields cannot take.</summary>
    public IReadOnlyList<string> Remarks { get; }

    public static ScheduleChoice Of(CircuitRow row)
    {
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        foreach (Field field in Fields.All.Where(field => field.IsColumn && row.Gives(field.Key)))
        {
            texts[field.Key] = Text(row, field);
        }

        Imply(row, texts);
        PageState state = new(PageUnits.Metric, texts);
        List<string> remarks = [.. row.Problems.Select(problem => problem.ToString())];
        remarks.AddRange(texts.Keys.Select(key => Fields.Find(key)!)
            .Where(field => !field.IsUsed(state))
            .Select(field => $"line {row.Line}, {field.Key}: expected an empty cell, because this supply, load and return don't use it; {row.Found(field.Key)}"));
        return new ScheduleChoice(row.Line, row.Name("circuit"), state, remarks);
    }

    private static string Text(CircuitRow row, Field field)
    {
        string text = field.Kind == FieldKind.Text ? row.Name(field.Key) : row.Text(field.Key);
        return field.Kind switch
        {
            FieldKind.Number when row.TryNumber(text, out double number) => number.ToString("R", CultureInfo.InvariantCulture),
            FieldKind.Choice => field.Choices.FirstOrDefault(choice => string.Equals(choice.Value, text, StringComparison.OrdinalIgnoreCase))?.Value ?? text,
            FieldKind.Tick => text.Equals("yes", StringComparison.OrdinalIgnoreCase) ? "yes" : text.Equals("no", StringComparison.OrdinalIgnoreCase) ? "" : text,
            _ => text,
        };
    }

    // What the page has a list for and the schedule tells by which cells are filled.
    private static void Imply(CircuitRow row, Dictionary<string, string> texts)
    {
        texts.TryAdd("supply", SupplyCells.Implied(row) ?? "");
        texts.TryAdd("load", LoadCells.Implied(row) ?? "");
        texts["return"] = row.Gives("chassis_mOhm") ? WayFields.Chassis : row.Gives("shared_mOhm") ? WayFields.Shared : WayFields.Wire;
        if (texts.GetValueOrDefault("insulation", "") is var rated && rated.EndsWith("degC", StringComparison.Ordinal) && row.TryNumber(rated[..^"degC".Length].TrimEnd(), out double celsius))
        {
            texts["insulation"] = WayFields.Rated;
            texts["rated_degC"] = celsius.ToString("R", CultureInfo.InvariantCulture);
        }
    }
}
