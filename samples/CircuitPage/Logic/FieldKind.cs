namespace CircuitPage;

/// <summary>How a field is filled in.</summary>
internal enum FieldKind
{
    Text,
    Number,
    Count,
    Choice,

    /// <summary>Yes where it is ticked.</summary>
    Tick,
}
