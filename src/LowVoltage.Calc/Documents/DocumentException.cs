namespace LowVoltage.Calc.Documents;

/// <summary>A document that is refused, with every mistake that was found in it.</summary>
public sealed class DocumentException : FormatException
{
    /// <summary>A refusal without a mistake named.</summary>
    public DocumentException()
    {
    }

    /// <summary>A refusal with a message of its own.</summary>
    /// <param name="message">The message.</param>
    public DocumentException(string message)
        : base(message)
    {
    }

    /// <summary>A refusal with a message of its own and what led to it.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">What led to it.</param>
    public DocumentException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    internal DocumentException(DocumentFault[] faults)
        : base(Told(faults)) => Faults = Array.AsReadOnly(faults);

    /// <summary>The mistakes, in the order of the text.</summary>
    public IReadOnlyList<DocumentFault> Faults { get; } = [];

    private static string Told(DocumentFault[] faults) =>
        (faults.Length == 1 ? "The document has one mistake:\n" : $"The document has {Quantities.Accept.Text(faults.Length)} mistakes:\n") + string.Join('\n', faults.Select(fault => fault.ToString()));
}
