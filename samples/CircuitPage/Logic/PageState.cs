namespace CircuitPage;

/// <summary>What stands in the fields, as typed, and in which units. Immutable.</summary>
internal sealed class PageState
{
    private readonly Dictionary<string, string> texts;

    public PageState(PageUnits units, IEnumerable<KeyValuePair<string, string>> texts)
    {
        Units = units;
        this.texts = new Dictionary<string, string>(texts, StringComparer.Ordinal);
    }

    public static PageState Empty { get; } = new(PageUnits.Metric, []);

    public PageUnits Units { get; }

    /// <summary>The fields that the choices leave a use for, in their order.</summary>
    public IEnumerable<Field> Used => Fields.All.Where(one => one.IsUsed(this));

    /// <summary>What was typed; empty where nothing was.</summary>
    public string Text(string key) => texts.GetValueOrDefault(key, "");

    /// <summary>What is chosen in a list: its first entry where nothing was.</summary>
    public string Choice(string key) => Text(key) is { Length: > 0 } text ? text : Fields.Find(key)?.Default ?? "";

    public PageState With(string key, string text) => new(Units, new Dictionary<string, string>(texts, StringComparer.Ordinal) { [key] = text });

    /// <summary>The same circuit with its lengths and temperatures in other units; a text that is no number stays as it is.</summary>
    public PageState In(PageUnits units) => units == Units
        ? this
        : new(units, texts.Select(pair => Fields.Find(pair.Key) is { } known ? KeyValuePair.Create(pair.Key, UnitText.Convert(pair.Value, known.Measure, Units, units)) : pair));
}
