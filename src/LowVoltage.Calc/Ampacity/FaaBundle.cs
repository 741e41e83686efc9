using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B figure 11-5: the bundle factor from the number of wires and the share of the bundle's capacity in use.</summary>
/// <remarks>
/// The figure is a picture of curves in the public domain (also in MIL-W-5088L). The points for 1 to 19 wires at 20, 40, 60, 80 and 100 % are a private digitisation in steps
/// of 0.0025 to 0.005, whose accuracy is not stated; it meets the two points in that range that the circular states (8 wires at 60 %: 0.6 stated, 0.595 read; 12 wires at 100 %: 0.43 both).
/// Above 19 wires the circular states two points at 20 %: 20 wires 0.615 and 35 wires 0.52.
/// <para>Between two loadings the factor is interpolated linearly; most of the curves are convex, so a straight line can read up to about 0.008 high. From 21 to 34 wires at 20 % the point for 35 wires
/// is used, which is the safer. Below 20 % and above 35 wires there is no answer; for a lighter loading ask for 20 %, which is safer.</para>
/// </remarks>
public static class FaaBundle
{
    private const int MostWires = 100_000;
    private const int MostCurve = 19;

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Figure 11-5 (page 11-27 exchanges the numbers of figures 11-5 and 11-6)", Kind = ReferenceKind.Handbook,
        Note = "1 to 19 wires: private digitisation of a public-domain curve in steps of 0.0025 to 0.005. 8 wires at 60 % read 0.595, where the circular's own example says 0.6: the lower is kept.",
    };

    /// <summary>Where the points for 20 and 35 wires come from: worked examples, not the curve.</summary>
    public static Reference WorkedExamples { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "worked examples to figure 11-5", Kind = ReferenceKind.FromMemory, Note = "20 wires at 20 % 0.615, 35 wires at 20 % 0.52.",
    };

    /// <summary>The factor for a bundle.</summary>
    /// <param name="wires">Wires in the bundle: 1 or more.</param>
    /// <param name="loading">Share of the bundle's total capacity in use, up to 100 %.</param>
    /// <param name="factor">The factor; null where the curves have no point.</param>
    /// <returns>Whether the curves cover the question.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the loading is negative or above 100 %.</exception>
    public static bool TryFactor(int wires, Ratio loading, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        _ = Accept.Count(wires, 1, MostWires, nameof(wires));
        double percent = Percent(loading);
        factor = TryValue(wires, percent, out double value)
            ? new DeratingFactor(value, DeratingKind.BundleLoading, RuleSet.FaaAc4313, wires > MostCurve ? WorkedExamples : Reference)
            {
                BundleMeaning = "all wires of the bundle, with the share of their joint capacity that is in use",
                Holds = new LateText("{0} wires at {1} % of the bundle's capacity" + (wires is > 20 and < 35 ? ", point for 35 wires" : ""), wires, percent),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for a bundle.</summary>
    /// <param name="wires">Wires in the bundle: 1 or more.</param>
    /// <param name="loading">Share of the bundle's total capacity in use, up to 100 %.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The curves have no point for this.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the loading is negative or above 100 %.</exception>
    public static DeratingFactor Factor(int wires, Ratio loading) => TryFactor(wires, loading, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(wires),
            $"{wires} wires at {Accept.Text(Percent(loading))} %",
            "FAA AC 43.13-1B figure 11-5",
            "1 to 19 wires at 20 % to 100 % of the bundle's capacity and 20 to 35 wires at 20 %");

    internal static bool TryValue(int wires, double percent, out double value)
    {
        value = 0;
        if (!(percent >= 20 && percent <= 100) || wires < 1)
        {
            return false;
        }

        if (wires > MostCurve)
        {
            value = wires == 20 ? 0.615 : 0.52;
            return wires <= 35 && percent == 20;
        }

        ReadOnlySpan<double> curve = FaaBundleCurve.Points.Slice((wires - 1) * 5, 5);
        int below = Math.Min((int)((percent - 20) / 20), 3);
        double along = (percent - 20 - (20 * below)) / 20;
        value = (curve[below] * (1 - along)) + (curve[below + 1] * along);
        return true;
    }

    private static double Percent(Ratio loading) => TableKey.Rounded(Accept.Within(Accept.Raw(loading), 0, 100, "%", nameof(loading)));
}
