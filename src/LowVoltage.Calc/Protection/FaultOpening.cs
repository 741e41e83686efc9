using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Protection;

/// <summary>How a short circuit ends, and the state of the loop at that moment.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class FaultOpening
{
    internal FaultOpening(FaultOutcome outcome, FaultState? state, string reason)
    {
        Outcome = outcome;
        State = state;
        Reason = reason;
    }

    /// <summary>How it ends.</summary>
    public FaultOutcome Outcome { get; }

    /// <summary>Time, current, let-through Joule integral and temperatures when the fuse opens or a conductor melts; null when neither happens for sure.</summary>
    public FaultState? State { get; }

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;
}
