using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The fuse that carries a load continuously.</summary>
/// <remarks><code>In ≥ I_load/factor</code> The factor is the product of a loading rule's and, where it applies, an ambient re-rating's.</remarks>
public static partial class FuseLoading
{
    /// <summary>The least rated current for a continuous load.</summary>
    /// <param name="load">Continuous load current. Positive.</param>
    /// <param name="factor">Share of its rating that the fuse may carry: above 0, at most 1.5.</param>
    /// <returns>load/factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent LeastRatingFor(ElectricCurrent load, double factor) =>
        ElectricCurrent.FromAmperes(Accept.Amperes(load, nameof(load)) / Factor(factor));

    /// <summary>The most that a fuse may carry continuously.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="factor">Share of its rating that the fuse may carry: above 0, at most 1.5.</param>
    /// <returns>rating · factor.</returns>
    /// <exception cref="ArgumentNullException">The fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public static ElectricCurrent MostLoadFor(FuseRating fuse, double factor)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return ElectricCurrent.FromAmperes(fuse.Amperes * Factor(factor));
    }

    /// <summary>The smallest fuse of a series that carries a load by a rule.</summary>
    /// <param name="series">The series.</param>
    /// <param name="load">Continuous load current. Positive.</param>
    /// <param name="rule">The rule; ratings that it does not cover are passed over.</param>
    /// <param name="fuse">The fuse, or null.</param>
    /// <returns>False when no fuse of the series does.</returns>
    /// <exception cref="ArgumentNullException">The series or the rule is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public static bool TrySmallestFor(FuseSeries series, ElectricCurrent load, LoadingRule rule, [NotNullWhen(true)] out FuseRating? fuse)
    {
        _ = series ?? throw new ArgumentNullException(nameof(series));
        _ = rule ?? throw new ArgumentNullException(nameof(rule));
        double amperes = Accept.Amperes(load, nameof(load));
        foreach (FuseRating rating in series.Ratings)
        {
            if (rule.TryFactorFor(rating.Amperes, out double factor) && Carries(rating.Amperes, factor, amperes))
            {
                fuse = rating;
                return true;
            }
        }

        fuse = null;
        return false;
    }

    /// <summary>Whether a rating in A carries a load in A at a loading factor; 1e-9 of rounding is forgiven.</summary>
    internal static bool Carries(double ratingAmperes, double factor, double loadAmperes) => ratingAmperes * factor >= loadAmperes * (1 - 1e-9);

    private static double Factor(double factor) => Accept.Positive(factor, 1.5, "", nameof(factor));
}
