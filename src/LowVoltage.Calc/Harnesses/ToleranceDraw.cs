using MathNet.Numerics.Distributions;

namespace LowVoltage.Calc.Harnesses;

/// <summary>The draws of one sample: each follows from the seed, the sample's number and the part alone, so that neither order nor threads change it.</summary>
internal readonly struct ToleranceDraw(Tolerances tolerances, int seed, int sample)
{
    // A tolerance is three standard deviations; what lies beyond is cut off and shared out.
    private const double Deviations = 3;

    internal Tolerances Tolerances => tolerances;

    /// <summary>A factor about one.</summary>
    internal double Factor(DrawKind kind, int part, double share) => share == 0 ? 1 : 1 + (share * Unit(kind, part));

    /// <summary>A difference about nothing.</summary>
    internal double Shift(DrawKind kind, int part, double most) => most == 0 ? 0 : most * Unit(kind, part);

    // From −1 to 1.
    private double Unit(DrawKind kind, int part)
    {
        double u = Uniform(Mix(Mix(Mix((ulong)(uint)seed, (ulong)(uint)sample), (ulong)kind), (ulong)(uint)part));
        if (tolerances.Shape == ToleranceShape.Uniform)
        {
            return (2 * u) - 1;
        }

        double low = Normal.CDF(0, 1, -Deviations);
        return Normal.InvCDF(0, 1, low + (u * (1 - (2 * low)))) / Deviations;
    }

    // 53 bits, in the middle of their steps: never 0, never 1.
    private static double Uniform(ulong bits) => ((bits >> 11) + 0.5) / 9007199254740992.0;

    // The finaliser of SplitMix64 (S. Vigna, public domain, from memory): each bit of the input changes half of the output.
    private static ulong Mix(ulong state, ulong value)
    {
        ulong z = unchecked(state + (value * 0x9E3779B97F4A7C15UL) + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return z ^ (z >> 31);
    }
}
