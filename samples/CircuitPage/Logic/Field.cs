namespace CircuitPage;

/// <summary>One field of the page. Its key is the column of the schedule that it fills, unit included, or a word of the page's own.</summary>
internal sealed record Field(string Key, string Label, FieldKind Kind, FieldGroup Group)
{
    private static readonly (string Suffix, string Unit)[] Units =
    [
        ("_mOhm", "mΩ"), ("_Ohm", "Ω"), ("_Ah", "Ah"), ("_uF", "µF"), ("_A2s", "A²s"), ("_percent", "%"), ("_degC", "°C"), ("_V", "V"), ("_A", "A"), ("_W", "W"), ("_s", "s"), ("_m", "m"),
    ];

    /// <summary>What is said below it; may be empty.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Whether it is optional and folded away until somebody asks for it.</summary>
    public bool IsFolded { get; init; }

    /// <summary>Whether a circuit cannot be described without it.</summary>
    public bool IsNeeded { get; init; }

    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>Whether what stands in other fields leaves a use for it.</summary>
    public Func<PageState, bool> IsUsed { get; init; } = _ => true;

    /// <summary>Whether its key is a column of the schedule.</summary>
    public bool IsColumn => CircuitSchedule.Column.IsKnown(Key);

    public Measure Measure { get; } = Kind != FieldKind.Number ? Measure.Same
        : Key.EndsWith("_m", StringComparison.Ordinal) ? Measure.Length
        : Key.EndsWith("_degC", StringComparison.Ordinal) ? Measure.Temperature
        : Measure.Same;

    /// <summary>What the field is taken for where nothing is chosen.</summary>
    public string Default => Choices.Count > 0 ? Choices[0].Value : "";

    /// <summary>The unit that stands beside it.</summary>
    public string Unit(PageUnits system) => Measure switch
    {
        Measure.Length when system == PageUnits.Us => "ft",
        Measure.Temperature when system == PageUnits.Us => "°F",
        _ => Kind == FieldKind.Number ? Array.Find(Units, pair => Key.EndsWith(pair.Suffix, StringComparison.Ordinal)).Unit ?? "" : "",
    };

    /// <summary>Its name in an address: the unit is part of it.</summary>
    public string AddressKey(PageUnits system) => Measure switch
    {
        Measure.Length when system == PageUnits.Us => Key[..^"m".Length] + "ft",
        Measure.Temperature when system == PageUnits.Us => Key[..^"degC".Length] + "degF",
        _ => Key,
    };
}
