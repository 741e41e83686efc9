namespace LowVoltage.Calc.Documents;

/// <summary>A check of a harness as a document states it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentedHarnessCheck
{
    internal DocumentedHarnessCheck(DocumentedCheck check)
    {
        Check = check;
    }

    /// <summary>The check.</summary>
    public DocumentedCheck Check { get; }

    /// <summary>Name of the part that it is about.</summary>
    public string Place { get; internal init; } = "";

    /// <summary>Name of the wire that decides; <c>null</c> where none does.</summary>
    public string? Wire { get; internal init; }

    /// <summary>Name of the node that the fault or the current is towards; <c>null</c> where it says nothing.</summary>
    public string? Toward { get; internal init; }

    /// <summary>Name of the load case; empty where it is of none.</summary>
    public string LoadCase { get; internal init; } = "";

    /// <summary>The part and its check.</summary>
    public override string ToString() => $"{Place}, {Check}";
}
