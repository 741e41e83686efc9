using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Whether a fuse withstands an inrush, pulse after pulse: the Joule integral of the pulse against its share of what melts the fuse.</summary>
/// <remarks>
/// <code>pulse I²t ≤ share(pulses) · ip²·t_least(ip)</code>
/// <para>ip is the peak of the pulse, t_least the least operating time at a constant current of that size, the share that of
/// <see cref="PulseWithstand"/>. A pulse that is below its peak most of the time melts a fuse with no less Joule integral than the peak held. The least of the values at the
/// peak and at every stated point below it counts, so that a curve whose Joule integral rises with the current is read on the safe side.</para>
/// <para><b>Within</b> needs the least time that the stated points prove (<see cref="TimeCurrentCurve.ProvenLeastTime"/>). Where only the customary line between
/// them, or its extension beyond the last, passes, the verdict is <b>not proven</b>: take the maker's melting Joule integral. A peak within the fuse's rating is always within.</para>
/// </remarks>
public static class PulseAgainstFuse
{
    /// <summary>The source of the shares.</summary>
    public static Reference Reference { get; } = PulseWithstand.Reference;

    /// <summary>A pulse against the operating times of a fuse.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="peak">Peak of the pulse, ip. Positive.</param>
    /// <param name="pulse">Joule integral of one pulse, from <see cref="PulseShape"/>.</param>
    /// <param name="pulses">Pulses expected in the fuse's life: 1 to 100 000.</param>
    /// <returns>The verdict; its share is the pulse over what is allowed.</returns>
    /// <exception cref="ArgumentNullException">The fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The peak or the number is outside its range.</exception>
    public static RatingCheck Check(FuseRating fuse, ElectricCurrent peak, JouleIntegral pulse, int pulses)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        double amperes = Accept.Amperes(peak, nameof(peak)), share = PulseWithstand.ShareFor(pulses), joules = pulse.AmpereSquaredSeconds;
        if (amperes <= fuse.Amperes)
        {
            return new RatingCheck(RatingVerdict.Within, null, $"The peak of {Accept.Text(amperes)} A is within the rating of the {fuse}.");
        }

        if (fuse.Curve is not { } curve || !curve.TryLeastSeconds(amperes, out double customary))
        {
            return new RatingCheck(RatingVerdict.NotProven, null, $"No least operating time is published for the {fuse} at {Accept.Text(amperes)} A.");
        }

        double line = Least(curve, amperes, customary);
        string of = $"of the {Accept.Text(share * line)} A²s that the {fuse} stands {pulses} times at {Accept.Text(amperes)} A";
        if (curve.TryProvenLeastSeconds(amperes, out double proven) && joules <= share * Least(curve, amperes, proven))
        {
            double allowed = share * Least(curve, amperes, proven);
            return new RatingCheck(
                RatingVerdict.Within, joules / allowed,
                $"The pulse of {Accept.Text(joules)} A²s is within the {Accept.Text(allowed)} A²s that the {fuse} stands {pulses} times at {Accept.Text(amperes)} A.");
        }

        return joules <= share * line
            ? new RatingCheck(RatingVerdict.NotProven, joules / (share * line), $"The pulse is {Accept.Text(joules)} A²s {of} by the line between or beyond the stated points, which proves nothing.")
            : new RatingCheck(RatingVerdict.Exceeded, joules / (share * line), $"The pulse is {Accept.Text(joules)} A²s {of}.");
    }

    /// <summary>A pulse against a melting Joule integral that the maker states.</summary>
    /// <param name="melting">Least melting (pre-arcing) Joule integral of the fuse. Positive.</param>
    /// <param name="pulse">Joule integral of one pulse, from <see cref="PulseShape"/>.</param>
    /// <param name="pulses">Pulses expected in the fuse's life: 1 to 100 000.</param>
    /// <returns>The verdict; its share is the pulse over what is allowed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The melting Joule integral is zero, or the number is outside its range.</exception>
    public static RatingCheck Check(JouleIntegral melting, JouleIntegral pulse, int pulses)
    {
        double least = Accept.Positive(melting.AmpereSquaredSeconds, 1e24, "A²s", nameof(melting));
        double share = PulseWithstand.ShareFor(pulses), joules = pulse.AmpereSquaredSeconds, allowed = share * least;
        bool within = joules <= allowed;
        return new RatingCheck(
            within ? RatingVerdict.Within : RatingVerdict.Exceeded, joules / allowed,
            $"The pulse of {Accept.Text(joules)} A²s {(within ? "is within" : "exceeds")} {Accept.Text(100 * share)} % of the {Accept.Text(least)} A²s that melt the fuse, for {pulses} pulses.");
    }

    // The peak's own I²t, and those of the stated points below it.
    internal static double Least(TimeCurrentCurve curve, double amperes, double seconds)
    {
        double least = amperes * amperes * seconds;
        for (int i = 0; curve.LeastLine is { } line && i < line.Count && line.X(i) < amperes; i++)
        {
            least = Math.Min(least, line.X(i) * line.X(i) * line.Y(i));
        }

        return least;
    }
}
