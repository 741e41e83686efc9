namespace CircuitPage;

/// <summary>What replaces a part of the practice.</summary>
internal static class RulesFields
{
    /// <summary>The entry that stands for what the practice says.</summary>
    public const string OfPractice = "of the practice";

    public static Field[] All { get; } =
    [
        new("drop_limit_percent", "Allowed drop", FieldKind.Number, FieldGroup.Rules) { IsFolded = true, Hint = "Of the nominal voltage; the practice's own if both limits are empty." },
        new("drop_limit_V", "Allowed drop in volts", FieldKind.Number, FieldGroup.Rules) { IsFolded = true, Hint = "Give one of the two." },
        new("wires", "Wires to choose from", FieldKind.Choice, FieldGroup.Rules) { IsFolded = true, Choices = [new(OfPractice, "those of the practice"), .. Stock.WireChoices] },
        new("sizes", "Sizes in stock", FieldKind.Text, FieldGroup.Rules) { IsFolded = true, Hint = "Such as 1.5; 2.5; 4 or 16 AWG; 1/0 AWG. All of the series if empty." },
        new("fuses", "Fuses to choose from", FieldKind.Choice, FieldGroup.Rules) { IsFolded = true, Choices = [new(OfPractice, "those of the practice"), .. Stock.FuseChoices] },
    ];
}
