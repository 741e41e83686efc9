using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Selectivity (which fuse blows first): whether a fuse stays shut while the fuse behind it clears a fault, at every current up to the prospective one.</summary>
/// <remarks>
/// <code>
/// proven at I:     proven least time of the upstream fuse(I) > longest time of the downstream fuse(I)
/// disproven at I:  longest time of the upstream fuse(I) &lt; proven least time of the downstream fuse(I)
/// beyond the last stated point of the upstream fuse: total Joule integral downstream &lt; least melting Joule integral upstream
/// </code>
/// <para>Both fuses see the fault current; what the upstream one carries for other loads comes on top and is not in it: state the upstream rating less
/// that load, or look at <see cref="FuseSelectivity.Current"/> with it in mind. The range begins at the conventional fusing current of the downstream fuse.</para>
/// <para>Published limits of a series span all its makers' fuses, so much that works in practice stays "not proven". <see cref="RatioRule"/> is
/// the practice of the trade, not a proof. Joule integrals of the real parts decide at high current; give them where they are known.</para>
/// <para><b>Exactness.</b> The proven least time is a step function of the current and the longest time falls, so the worst current of a step is its lower end:
/// nothing is sampled.</para>
/// </remarks>
public static class FuseAgainstFuse
{
    private const double GgRatio = 1.6;
    private const double OtherRatio = 2;
    private const double Above = 1 + 1e-9;

    /// <summary>The source of the ratio for gG fuses.</summary>
    public static Reference GgReference { get; } = new()
    {
        Title = "IEC 60269-1", Locator = "gG above gG, 1.6 : 1", Kind = ReferenceKind.Handbook,
        Note = "As two general application guides for fuses state it.",
    };

    /// <summary>The source of the ratio for other pairs.</summary>
    public static Reference OtherReference { get; } = Reference.CommonPractice("2 : 1 between fuses of different families or of unknown data, from memory");

    /// <summary>That the times of both fuses decide.</summary>
    internal static Reference TimesReference { get; } = Reference.CommonPractice("the fuse nearer the fault has opened before the one nearer the source can, by the times that are published for both");

    /// <summary>Whether the upstream fuse stays shut, by the published operating times.</summary>
    /// <param name="upstream">The fuse nearer the source.</param>
    /// <param name="downstream">The fuse nearer the fault.</param>
    /// <param name="prospective">Greatest prospective current behind the downstream fuse. Positive.</param>
    /// <returns>The outcome with its reason.</returns>
    /// <exception cref="ArgumentNullException">A fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static FuseSelectivity Check(FuseRating upstream, FuseRating downstream, ElectricCurrent prospective) =>
        Check(upstream, downstream, Accept.Amperes(prospective, nameof(prospective)), null, null);

    /// <summary>Whether the upstream fuse stays shut, by the published operating times and the Joule integrals of the real parts.</summary>
    /// <param name="upstream">The fuse nearer the source.</param>
    /// <param name="downstream">The fuse nearer the fault.</param>
    /// <param name="prospective">Greatest prospective current behind the downstream fuse. Positive.</param>
    /// <param name="upstreamMelting">Least melting (pre-arcing) Joule integral of the upstream fuse, from its data sheet: valid at any current.</param>
    /// <param name="downstreamTotal">Greatest total (melting and arcing) Joule integral of the downstream fuse, from its data sheet: valid from its last stated current on.</param>
    /// <returns>The outcome with its reason.</returns>
    /// <exception cref="ArgumentNullException">A fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static FuseSelectivity Check(
        FuseRating upstream, FuseRating downstream, ElectricCurrent prospective, JouleIntegral upstreamMelting, JouleIntegral downstreamTotal) => Check(
            upstream, downstream, Accept.Amperes(prospective, nameof(prospective)), upstreamMelting.AmpereSquaredSeconds, downstreamTotal.AmpereSquaredSeconds);

    /// <summary>The practice of the trade: gG above gG from 1.6 : 1 on, any other pair from 2 : 1 on.</summary>
    /// <param name="upstream">The fuse nearer the source.</param>
    /// <param name="downstream">The fuse nearer the fault.</param>
    /// <returns>Within when the ratio is large enough; the share is the ratio asked for over the one that is there. No proof.</returns>
    /// <remarks>1.6 is taken as printed. Pairs two preferred numbers apart whose ratio is a little less (25 A above 16 A, 63 A above 40 A) often pass for 1.6 : 1 in the trade; here they do not.</remarks>
    /// <exception cref="ArgumentNullException">A fuse is null.</exception>
    public static RatingCheck RatioRule(FuseRating upstream, FuseRating downstream)
    {
        Given(upstream, downstream);
        bool gg = upstream.Series == FuseSeries.IndustrialGg && downstream.Series == FuseSeries.IndustrialGg;
        double needed = gg ? GgRatio : OtherRatio, ratio = upstream.Amperes / downstream.Amperes;
        bool within = ratio >= needed * (1 - 1e-12);
        return new RatingCheck(
            within ? RatingVerdict.Within : RatingVerdict.Exceeded, needed / ratio,
            $"{Accept.Text(upstream.Amperes)} A above {Accept.Text(downstream.Amperes)} A is {Accept.Text(ratio)} : 1; practice asks for {Accept.Text(needed)} : 1.");
    }

    private static void Given(FuseRating upstream, FuseRating downstream)
    {
        _ = upstream ?? throw new ArgumentNullException(nameof(upstream));
        _ = downstream ?? throw new ArgumentNullException(nameof(downstream));
    }

    /// <summary>The same on doubles: A and A²s; a Joule integral is null where it is not known.</summary>
    internal static FuseSelectivity Check(FuseRating upstream, FuseRating downstream, double prospective, double? melting, double? total)
    {
        Given(upstream, downstream);
        FuseRating? unknown = upstream.FaultCurve is null ? upstream : downstream.FaultCurve is null ? downstream : null;
        if (unknown is not null)
        {
            return new FuseSelectivity(Selectivity.NotProven, null, $"No operating times are published for the {unknown.Untimed}.");
        }

        TimeCurrentCurve up = upstream.FaultCurve!, down = downstream.FaultCurve!;
        if (TryDisprove(up, down, prospective, out double first))
        {
            return new FuseSelectivity(
                Selectivity.Disproven, first,
                $"At {Accept.Text(first)} A the {upstream} opens within {Seconds(up, first)} s, the {downstream} no sooner than after {Proven(down, first)} s.");
        }

        double begin = down.FusingAmperes;
        if (prospective < begin)
        {
            return new FuseSelectivity(
                Selectivity.NotProven, null, $"The prospective current is below the conventional fusing current of the {downstream}, {Accept.Text(begin)} A, which need not open.");
        }

        return TryProve(up, down, prospective, melting, total, out double end)
            ? new FuseSelectivity(Selectivity.Proven, prospective, $"Up to {Accept.Text(prospective)} A the {downstream} has opened before the {upstream} can.")
            : new FuseSelectivity(Selectivity.NotProven, end > begin ? end : null, Why(upstream, downstream, end));
    }

    private static string Why(FuseRating upstream, FuseRating downstream, double end)
    {
        double beyond = end * Above;
        string least = upstream.FaultCurve!.TryProvenLeastSeconds(beyond, out double seconds)
            ? $"the {upstream} may open after {Accept.Text(seconds)} s"
            : $"nothing is stated of how soon the {upstream} opens";
        return $"Above {Accept.Text(end)} A {least}, and the {downstream} may take {Seconds(downstream.FaultCurve!, beyond)} s.";
    }

    /// <summary>Whether every current from the downstream fusing current to the prospective one is proven, and the end of what is; at least the fusing current.</summary>
    private static bool TryProve(TimeCurrentCurve up, TimeCurrentCurve down, double prospective, double? melting, double? total, out double end)
    {
        end = down.FusingAmperes;
        do
        {
            // Just above the lower end of a step the downstream fuse is slowest; the step's own least time holds for all of it.
            double worst = end * Above;
            _ = down.TryLongestSeconds(worst, out double longest);
            bool byTime = up.TryProvenLeastSeconds(worst, out double least) && longest < least;
            bool byJoules = melting is double m && total is double t && worst >= down.LongestLine.LastX && t < m;
            if (!byTime && !byJoules)
            {
                return false;
            }

            end = Math.Min(StepEnd(up, worst), prospective);
        }
        while (end < prospective);

        return true;
    }

    /// <summary>Where the proven least time changes next; infinite beyond the last stated point.</summary>
    private static double StepEnd(TimeCurrentCurve up, double amperes)
    {
        if (up.NonFusingAmperes is double carried && carried >= amperes)
        {
            return carried;
        }

        for (int i = 0; up.LeastLine is { } line && i < line.Count; i++)
        {
            if (line.X(i) >= amperes)
            {
                return line.X(i);
            }
        }

        return double.PositiveInfinity;
    }

    // On a step of the downstream least time the upstream fuse is fastest at the upper end.
    private static bool TryDisprove(TimeCurrentCurve up, TimeCurrentCurve down, double prospective, out double first)
    {
        if (down.NonFusingAmperes is double carried && Disproves(up, down, Math.Min(carried, prospective)))
        {
            first = Math.Min(carried, prospective);
            return true;
        }

        for (int i = 0; down.LeastLine is { } line && i < line.Count; i++)
        {
            first = Math.Min(line.X(i), prospective);
            if (Disproves(up, down, first))
            {
                return true;
            }
        }

        first = 0;
        return false;
    }

    private static bool Disproves(TimeCurrentCurve up, TimeCurrentCurve down, double amperes) =>
        up.TryLongestSeconds(amperes, out double longest) && down.TryProvenLeastSeconds(amperes, out double least) && longest < least;

    private static string Seconds(TimeCurrentCurve curve, double amperes) =>
        curve.TryLongestSeconds(amperes, out double seconds) ? Accept.Text(seconds) : "any number of";

    private static string Proven(TimeCurrentCurve curve, double amperes) =>
        curve.TryProvenLeastSeconds(amperes, out double seconds) ? Accept.Text(seconds) : "0";
}
