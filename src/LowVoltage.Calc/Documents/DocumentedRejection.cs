namespace LowVoltage.Calc.Documents;

/// <summary>A smaller size that was tried and not taken, as a document states it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentedRejection
{
    internal DocumentedRejection(string conductor, DocumentedCheck stoppedBy)
    {
        Conductor = conductor;
        StoppedBy = stoppedBy;
    }

    /// <summary>The conductor that was tried.</summary>
    public string Conductor { get; }

    /// <summary>The first check that it failed.</summary>
    public DocumentedCheck StoppedBy { get; }

    /// <summary>The size and what stopped it.</summary>
    public override string ToString() => $"{Conductor}, stopped by {StoppedBy}";
}
