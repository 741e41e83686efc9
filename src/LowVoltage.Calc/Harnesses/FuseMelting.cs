using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses;

/// <summary>How far a fuse has come to opening over the stages of a fault, each of a constant current: by its least and by its longest operating times.</summary>
/// <remarks>
/// <para><b>Longest.</b> While its current only rises the shares Σ dt/t_longest(I) are added and it has opened when they come to one: for one lump that loses heat, time at a small current is worth more than
/// that share. When another fuse's opening makes its current fall it is counted from anew, since there the sum is not safe: a share had at a large current is worth less than it says, and the fall may have come sooner.
/// While the wires' heating makes it fall, its Joule integral counts at the current that is reached (<see cref="FaultClearing"/>). A circuit-breaker is always counted anew.</para>
/// <para><b>Least.</b> While its current only falls the shares Σ dt/t_least(I) are added, which is never later than the truth for the same reason. After a rise it opens no sooner than it would
/// if the largest current had flowed from the beginning.</para>
/// </remarks>
internal struct FuseMelting
{
    private const double Same = 1e-9;

    private double leastShare;
    private double longestShare;
    private double most;
    private double last;
    private bool rose;

    /// <summary>Whether it may open at all at a current.</summary>
    internal static bool MayOpen(TimeCurrentCurve curve, double amperes) =>
        curve.NonFusingAmperes is { } carried ? amperes > carried * (1 + Same) : amperes >= curve.FusingAmperes * (1 - Same);

    /// <summary>Seconds until it opens at the soonest, if this current stays.</summary>
    internal readonly bool TrySoonest(TimeCurrentCurve curve, double amperes, double now, out double seconds)
    {
        seconds = 0;
        if (!MayOpen(curve, amperes))
        {
            return false;
        }

        if (!curve.TryLeastSeconds(amperes, out double least))
        {
            // No least time is stated: at any moment.
            return true;
        }

        bool falls = !rose && !(last > 0 && amperes > last * (1 + Same)) && !curve.IsBreaker;
        seconds = falls ? Math.Max(0, (1 - leastShare) * least)
            : curve.TryLeastSeconds(Math.Max(most, amperes), out least) ? Math.Max(0, least - now) : 0;
        return true;
    }

    /// <summary>Seconds by which it has opened for sure, if this current stays.</summary>
    internal readonly bool TryLatest(TimeCurrentCurve curve, double amperes, out double seconds)
    {
        if (!curve.TryLongestSeconds(amperes, out seconds))
        {
            return false;
        }

        bool rises = !(amperes < last * (1 - Same)) && !curve.IsBreaker;
        seconds *= rises ? Math.Max(0, 1 - longestShare) : 1;
        return true;
    }

    /// <summary>The Joule integral that its share comes to at a current; nothing after a fall, or of a circuit-breaker.</summary>
    internal readonly double Credit(TimeCurrentCurve curve, double amperes) =>
        !curve.IsBreaker && !(amperes < last * (1 - Same)) && curve.TryLongestSeconds(amperes, out double seconds) ? longestShare * amperes * amperes * seconds : 0;

    /// <summary>A stage has passed in which the current fell: the Joule integral counts at the current it ended with.</summary>
    internal void PassFalling(TimeCurrentCurve curve, double endAmperes, double joules)
    {
        longestShare = curve.TryLongestSeconds(endAmperes, out double seconds) ? Math.Min(1, joules / (endAmperes * endAmperes * seconds)) : 0;
        last = endAmperes;
    }

    /// <summary>A stage has passed.</summary>
    internal void Pass(TimeCurrentCurve curve, double amperes, double seconds)
    {
        rose |= last > 0 && amperes > last * (1 + Same);
        longestShare = amperes < last * (1 - Same) ? 0 : longestShare;
        longestShare += curve.TryLongestSeconds(amperes, out double longest) ? seconds / longest : 0;
        leastShare += MayOpen(curve, amperes) && curve.TryLeastSeconds(amperes, out double least) && least > 0 ? seconds / least : 0;
        (most, last) = (Math.Max(most, amperes), amperes);
    }
}
