using Microsoft.AspNetCore.Components;

namespace CircuitPage.Parts;

/// <summary>One field of the form.</summary>
public partial class FieldRow
{
    private FieldView? shown;
    private bool changed;

    [Parameter, EditorRequired]
    public required object Of { get; set; }

    [Parameter, EditorRequired]
    public required Action<string, string> OnTyped { get; set; }

    private FieldView View => (FieldView)Of;

    private string InputMode => View.Field.Kind switch { FieldKind.Number => "decimal", FieldKind.Count => "numeric", _ => "text" };

    private RenderFragment Said => builder =>
    {
        if (View.Problem is { } problem)
        {
            builder.AddMarkupContent(0, $"<p class=\"problem\" id=\"{View.ProblemId}\">{System.Net.WebUtility.HtmlEncode(problem)}</p>");
        }

        if (View.Field.Hint.Length > 0)
        {
            builder.AddMarkupContent(1, $"<p class=\"hint\" id=\"{View.HintId}\">{System.Net.WebUtility.HtmlEncode(View.Field.Hint)}</p>");
        }
    };

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        changed = !View.Equals(shown);
        shown = View;
    }

    /// <inheritdoc/>
    protected override bool ShouldRender() => changed;

    private void Typed(ChangeEventArgs change) => OnTyped(View.Field.Key, change.Value as string ?? "");

    private void Tick(ChangeEventArgs change) => OnTyped(View.Field.Key, change.Value is true ? "yes" : "");
}
