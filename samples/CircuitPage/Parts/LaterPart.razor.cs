using Microsoft.AspNetCore.Components;

namespace CircuitPage.Parts;

/// <summary>What follows the answer a moment later.</summary>
public partial class LaterPart
{
    private object? drawn;
    private bool changed;

    [Parameter, EditorRequired]
    public required object Of { get; set; }

    private LaterAnswer Shown => (LaterAnswer)Of;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        changed = !ReferenceEquals(Of, drawn);
        drawn = Of;
    }

    /// <inheritdoc/>
    protected override bool ShouldRender() => changed;
}
