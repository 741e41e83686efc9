namespace LowVoltage.Calc.Ampacity;

/// <summary>A derating factor does not fit the rating it was applied to.</summary>
public sealed class FactorRefusedException : ArgumentException
{
    /// <summary>An exception without details.</summary>
    public FactorRefusedException()
    {
    }

    /// <summary>An exception with a message of its own.</summary>
    /// <param name="message">The message.</param>
    public FactorRefusedException(string message)
        : base(message)
    {
    }

    /// <summary>An exception with a message of its own and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public FactorRefusedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    internal FactorRefusedException(FactorRefusal reason, string message, string parameter)
        : base(message, parameter) => Reason = reason;

    /// <summary>Why the factor was refused.</summary>
    public FactorRefusal Reason { get; }
}
