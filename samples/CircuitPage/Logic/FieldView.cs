namespace CircuitPage;

/// <summary>What a field shows: drawn anew only where this has changed.</summary>
internal sealed record FieldView(Field Field, string Text, string? Problem, PageUnits Units)
{
    public string Unit => Field.Unit(Units);

    public string HintId => Field.Key + "-hint";

    public string ProblemId => Field.Key + "-problem";

    /// <summary>The elements that say more about the field; null where none does.</summary>
    public string? DescribedBy => string.Join(' ', new[] { Problem is null ? null : ProblemId, Field.Hint.Length == 0 ? null : HintId }.OfType<string>()) is { Length: > 0 } ids ? ids : null;

    public static FieldView Of(Field field, PageModel model) => new(
        field,
        field.Kind == FieldKind.Choice ? model.State.Choice(field.Key) : model.State.Text(field.Key),
        model.Problems.GetValueOrDefault(field.Key),
        model.State.Units);
}
