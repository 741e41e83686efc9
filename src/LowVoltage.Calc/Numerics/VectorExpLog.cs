using System.Numerics;
using System.Runtime.CompilerServices;

namespace LowVoltage.Calc.Numerics;

/// <summary>exp(x) − 1 and the logarithm of a quotient, for a vector of doubles, from additions, multiplications and one division only.</summary>
/// <remarks>
/// <code>x = k·ln 2 + r, |r| ≤ ln 2/2:  exp(x) − 1 = 2^k·(exp(r) − 1) + (2^k − 1)
/// s = (b − 2^k·a)/(b + 2^k·a):  ln(b/a) = k·ln 2 + 2·artanh(s), with k such that |s| ≤ 0.21</code>
/// <para>exp(r) − 1 is its Taylor series to r¹³ (what is left out is below 1.2e-17 of it), artanh its series to s²³ (below 4e-18). ln 2 is held in two
/// parts, the first with so few digits that its product with k is exact. Nothing is fused, looked up or taken from the machine's mathematical
/// library, so the bits are the same on every machine, target and vector width, and in every lane.</para>
/// <para><b>Range.</b> exp: x from −37 to 700. Quotient: a, b and b − a normal doubles, a and b positive. Outside, the result means nothing;
/// <see cref="ExpLog"/> keeps out of there.</para>
/// <para><b>Accuracy.</b> exp(x) − 1 within 3 units in the last place, ln(b/a) within 3 where b is a + rise to the last bit.</para>
/// </remarks>
internal static class VectorExpLog
{
    private const double LogTwoHigh = 0.69314718036912382; // ln 2 to 32 bits, 0x3FE62E42FEE00000
    private const double LogTwoLow = 1.9082149292705877e-10; // the rest of ln 2
    private const double PerLogTwo = 1.4426950408889634;

    // 1.5·2^52: adding it to a small number rounds that to a whole one and leaves it in the lowest bits.
    private const double Rounder = 6755399441055744;
    private const long One = 0x3FF0_0000_0000_0000;
    private const long HalfStep = 0x0008_0000_0000_0000;
    private const long Fraction = 0x000F_FFFF_FFFF_FFFF;

    /// <summary>exp(x) − 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector<double> Expm1(Vector<double> x)
    {
        Vector<double> rounder = new(Rounder);
        Vector<double> shifted = (x * new Vector<double>(PerLogTwo)) + rounder;
        Vector<double> k = shifted - rounder;
        Vector<double> r = x - (k * new Vector<double>(LogTwoHigh)) - (k * new Vector<double>(LogTwoLow));
        Vector<double> p = r + (r * r * Series(r));
        Vector<double> scale = PowerOfTwo(shifted, k);
        return (scale * p) + (scale - Vector<double>.One);
    }

    /// <summary>ln((from + rise)/from): with the rise given apart, a small one is not lost.</summary>
    /// <param name="from">Positive.</param>
    /// <param name="rise">What is added; from + rise is positive.</param>
    /// <param name="to">from + rise, computed in whichever way loses least.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector<double> LogRatio(Vector<double> from, Vector<double> rise, Vector<double> to)
    {
        // The bits of a double rise nearly as its logarithm; half an exponent more rounds to the nearest power of two.
        Vector<long> lower = Vector.AsVectorInt64(from);
        Vector<long> rounded = Vector.AsVectorInt64(to) - lower + new Vector<long>(One + HalfStep);
        Vector<long> exponent = rounded & new Vector<long>(~Fraction);
        Vector<double> scaled = Vector.AsVectorDouble(lower + (exponent - new Vector<long>(One)));
        Vector<double> k = Exponent(rounded, exponent);
        Vector<double> s = (rise + (from - scaled)) / (to + scaled);
        Vector<double> rest = (s * Artanh(s * s)) + (k * new Vector<double>(LogTwoLow));
        return (k * new Vector<double>(LogTwoHigh)) + (s + s + rest);
    }

    // (exp(r) − 1 − r)/r² = 1/2! + r/3! + … + r¹¹/13!, in pairs so that the multiplications need not wait for one another.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Series(Vector<double> r)
    {
        Vector<double> r2 = r * r, r4 = r2 * r2;
        Vector<double> a = new Vector<double>(1.0 / 2) + (r * new Vector<double>(1.0 / 6));
        Vector<double> b = new Vector<double>(1.0 / 24) + (r * new Vector<double>(1.0 / 120));
        Vector<double> c = new Vector<double>(1.0 / 720) + (r * new Vector<double>(1.0 / 5040));
        Vector<double> d = new Vector<double>(1.0 / 40_320) + (r * new Vector<double>(1.0 / 362_880));
        Vector<double> e = new Vector<double>(1.0 / 3_628_800) + (r * new Vector<double>(1.0 / 39_916_800));
        Vector<double> g = new Vector<double>(1.0 / 479_001_600) + (r * new Vector<double>(1.0 / 6_227_020_800));
        return a + (b * r2) + ((c + (d * r2)) * r4) + ((e + (g * r2)) * (r4 * r4));
    }

    // 2·(z/3 + z²/5 + … + z¹¹/23) with z = s²: what 2·artanh(s) has beyond 2s, over s.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Artanh(Vector<double> z)
    {
        Vector<double> z2 = z * z, z4 = z2 * z2;
        Vector<double> a = new Vector<double>(2.0 / 3) + (z * new Vector<double>(2.0 / 5));
        Vector<double> b = new Vector<double>(2.0 / 7) + (z * new Vector<double>(2.0 / 9));
        Vector<double> c = new Vector<double>(2.0 / 11) + (z * new Vector<double>(2.0 / 13));
        Vector<double> d = new Vector<double>(2.0 / 15) + (z * new Vector<double>(2.0 / 17));
        Vector<double> e = new Vector<double>(2.0 / 19) + (z * new Vector<double>(2.0 / 21));
        Vector<double> g = new(2.0 / 23);
        return z * (a + (b * z2) + ((c + (d * z2)) * z4) + ((e + (g * z2)) * (z4 * z4)));
    }

#if NET8_0_OR_GREATER
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> PowerOfTwo(Vector<double> shifted, Vector<double> k) =>
        Vector.AsVectorDouble(Vector.ShiftLeft(Vector.AsVectorInt64(shifted), 52) + new Vector<long>(One));

    // The exponent in the lowest bits of 2^52 is the number 2^52 + exponent.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Exponent(Vector<long> bits, Vector<long> exponent) =>
        Vector.AsVectorDouble(Vector.ShiftRightLogical(bits, 52) | new Vector<long>(0x4330_0000_0000_0000)) - new Vector<double>(4503599627370496 + 1023.0);
#else
    // No shifts there; the same numbers by conversion, all exact.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> PowerOfTwo(Vector<double> shifted, Vector<double> k) =>
        Vector.AsVectorDouble(Vector.ConvertToInt64((k + new Vector<double>(1023)) * new Vector<double>(4503599627370496)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Exponent(Vector<long> bits, Vector<long> exponent) =>
        (Vector.ConvertToDouble(exponent) * new Vector<double>(1 / 4503599627370496.0)) - new Vector<double>(1023);
#endif
}
