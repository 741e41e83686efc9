using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Protection;

/// <summary>The share of its melting Joule integral that a fuse withstands pulse after pulse.</summary>
/// <remarks>
/// <code>pulse I²t ≤ share · melting I²t;  share 48 % for 100 pulses, 38 % for 1000, 29 % for 10 000, 22 % for 100 000</code>
/// <para>At least 10 s between pulses. Between two counts the share of the larger one is taken, which is the cautious reading: a straight line through the points is no
/// part of the source. Below 100 pulses the share of 100 is taken, above 100 000 none is given.</para>
/// </remarks>
public static class PulseWithstand
{
    internal const int MostPulses = 100_000;

    // A pulse above this has no share that a Joule integral could still hold.
    private const double MostPulse = 2e23;

    private static readonly int[] Counts = [100, 1000, 10_000, MostPulses];
    private static readonly double[] Shares = [0.48, 0.38, 0.29, 0.22];

    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Fuse selection guide", Locator = "pulse-cycle withstand", Kind = ReferenceKind.Handbook,
        Note = "Share of the nominal melting Joule integral; at least 10 s between pulses.",
    };

    /// <summary>The share of the melting Joule integral for a number of pulses.</summary>
    /// <param name="pulses">Pulses expected in the fuse's life: 1 to 100 000.</param>
    /// <returns>The share, 0.22 to 0.48.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static double ShareFor(int pulses)
    {
        _ = Accept.Count(pulses, 1, MostPulses, nameof(pulses));
        int i = 0;
        while (pulses > Counts[i])
        {
            i++;
        }

        return Shares[i];
    }

    /// <summary>The least melting Joule integral that a fuse must have.</summary>
    /// <param name="pulse">Joule integral of one pulse, from <see cref="PulseShape"/>; at most 2e23 A²s.</param>
    /// <param name="pulses">Pulses expected in the fuse's life: 1 to 100 000.</param>
    /// <returns>pulse/share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pulse or the number is outside its range.</exception>
    public static JouleIntegral LeastMeltingFor(JouleIntegral pulse, int pulses) => JouleIntegral.FromAmpereSquaredSeconds(
        Accept.Within(pulse.AmpereSquaredSeconds, 0, MostPulse, "A²s", nameof(pulse)) / ShareFor(pulses));

    /// <summary>Whether a fuse withstands pulses.</summary>
    /// <param name="melting">The fuse's least melting Joule integral; a maker's value, or <see cref="TimeCurrentCurve.LeastJouleIntegral"/> as an estimate.</param>
    /// <param name="pulse">Joule integral of one pulse, from <see cref="PulseShape"/>.</param>
    /// <param name="pulses">Pulses expected in the fuse's life: 1 to 100 000.</param>
    /// <returns>True when the pulse is at most the fuse's share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static bool Withstands(JouleIntegral melting, JouleIntegral pulse, int pulses) =>
        pulse.AmpereSquaredSeconds <= melting.AmpereSquaredSeconds * ShareFor(pulses);
}
