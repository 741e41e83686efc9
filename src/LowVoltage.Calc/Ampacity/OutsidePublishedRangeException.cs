namespace LowVoltage.Calc.Ampacity;

/// <summary>A published table or rule was asked for something that it does not cover. Nothing is extrapolated.</summary>
public sealed class OutsidePublishedRangeException : ArgumentOutOfRangeException
{
    /// <summary>An exception without details.</summary>
    public OutsidePublishedRangeException()
    {
    }

    /// <summary>An exception with a message of its own.</summary>
    /// <param name="message">The message.</param>
    public OutsidePublishedRangeException(string message)
        : base(null, message)
    {
    }

    /// <summary>An exception with a message of its own and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public OutsidePublishedRangeException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    private OutsidePublishedRangeException(string parameter, object asked, string source, string covers)
        : base(parameter, asked, $"{parameter}: {asked} is outside {source}, which covers {covers}.")
    {
        Source = source;
        Covers = covers;
    }

    /// <summary>What the source covers, in words. Empty when the exception was made without details.</summary>
    public string Covers { get; } = "";

    internal static OutsidePublishedRangeException For(string parameter, string asked, string source, string covers) =>
        new(parameter, asked, source, covers);
}
