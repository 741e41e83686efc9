using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a start against a fuse: the verdict, what it rests on, and which part of the start dominates.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class StartOutcome
{
    private readonly StartFinding found;

    internal StartOutcome(in StartFinding found, FuseRating fuse, StartWaveform start, int starts)
    {
        this.found = found;
        Starts = starts;
        int part = found.Peak > fuse.Amperes ? start.DominantAbove(fuse.Amperes) : -1;
        Dominant = part < 0 ? null : start.Surges[part].Name;

        Reason = Say(fuse, start);
    }

    /// <summary>Within, exceeded, or not proven: no least time is published, which is never a pass.</summary>
    public RatingVerdict Verdict => found.Verdict;

    /// <summary>What the verdict rests on.</summary>
    public StartBasis Basis => found.Basis;

    /// <summary>The number of starts that it was judged for.</summary>
    public int Starts { get; }

    /// <summary>The surge with the most of the Joule integral above the rating; null when the rating is not exceeded, or by the running current alone.</summary>
    public string? Dominant { get; }

    /// <summary>The highest current of the start.</summary>
    public ElectricCurrent Peak => ElectricCurrent.FromAmperes(found.Peak);

    /// <summary>Time above the fuse's rating; <c>null</c> when the running current alone is.</summary>
    public Duration? TimeAboveRating => double.IsInfinity(found.Seconds) ? null : Duration.FromSeconds(found.Seconds);

    /// <summary>∫i²dt in that time; <c>null</c> when it has no end.</summary>
    public JouleIntegral? AboveRating => double.IsInfinity(found.Seconds) ? null : JouleIntegral.FromAmpereSquaredSeconds(found.Joules);

    /// <summary>Share of melting that one start takes, ∫dt/t_least; null when not evaluated.</summary>
    public double? OneStartShare => IsJudged ? found.Once : null;

    /// <summary>Joule integral of one start over what the fuse stands for the number of starts; null when not evaluated.</summary>
    public double? RepeatedShare => IsJudged ? found.Often : null;

    /// <summary>The larger of the two, at most 1 when within; null when not evaluated.</summary>
    public double? Share => IsJudged ? found.Share : null;

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;

    private bool IsJudged => found.Basis is not StartBasis.None;

    private string Say(FuseRating fuse, StartWaveform start)
    {
        if (found.Basis == StartBasis.WithinRating)
        {
            return $"The start of {Accept.Short(found.Peak)} A is within the rating of the {fuse}.";
        }

        if (double.IsInfinity(found.Seconds))
        {
            return $"The {Accept.Short(start.RunningAmperes)} A that run after the start exceed the rating of the {fuse}, or all that its source can give.";
        }

        string what = $"The start peaks at {Accept.Short(found.Peak)} A and stays above the rating of the {fuse} for {Accept.Short(found.Seconds)} s, mostly by the {Dominant}";
        if (found.Basis == StartBasis.None)
        {
            return $"{what}; no least operating time is published for that fuse there, so nothing is proven.";
        }

        string once = $"one start takes {Accept.Short(100 * found.Once)} % of what melts it";
        string often = $"its {Accept.Short(found.Joules)} A²s are {Accept.Short(100 * found.Often)} % of what it stands {(Starts == 1 ? "once" : Accept.Text(Starts) + " times")}";
        string basis = found.Basis == StartBasis.CustomaryLine ? " By the customary line between or beyond the stated least times, an assumption." : "";
        return $"{what}: {once}, and {often}, which is {(found.Verdict == RatingVerdict.Within ? "within" : "too much")}.{basis}";
    }
}
