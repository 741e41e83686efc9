namespace LowVoltage.Calc.Protection;

/// <summary>A check of a fuse's voltage rating or breaking capacity: the verdict and why.</summary>
public sealed class RatingCheck
{
    internal RatingCheck(RatingVerdict verdict, double? share, string reason)
    {
        Verdict = verdict;
        Share = share;
        Reason = reason;
    }

    /// <summary>The verdict.</summary>
    public RatingVerdict Verdict { get; }

    /// <summary>Value over rating, at most 1 when within; null when no d.c. rating is stated.</summary>
    public double? Share { get; }

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;
}
