using Microsoft.AspNetCore.Components;

namespace CircuitPage.Parts;

/// <summary>The answer: redrawn for each design.</summary>
public partial class AnswerPart
{
    private object? drawn;
    private bool changed;

    [Parameter, EditorRequired]
    public required object Of { get; set; }

    private Answer Shown => (Answer)Of;

    // Not by colour alone.
    private string Sign => Shown.Verdict switch { "Pass" => "\u2713", "Fail" => "\u2717", _ => "?" };

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        changed = !ReferenceEquals(Of, drawn);
        drawn = Of;
    }

    /// <inheritdoc/>
    protected override bool ShouldRender() => changed;
}
