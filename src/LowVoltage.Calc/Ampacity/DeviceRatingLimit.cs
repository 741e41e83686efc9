using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How large an overcurrent device a rule allows for a conductor.</summary>
/// <remarks>
/// A device at or below <see cref="Limit"/> is allowed. Where <see cref="Greatest"/> is above it, the next larger standard rating is allowed too, up to that.
/// Immutable and thread-safe.
/// </remarks>
public sealed class DeviceRatingLimit
{
    internal DeviceRatingLimit(double limit, double greatest, Reference reference)
    {
        LimitAmperes = limit;
        GreatestAmperes = greatest;
        Reference = reference;
    }

    /// <summary>Any device up to this rating is allowed.</summary>
    public ElectricCurrent Limit => ElectricCurrent.FromAmperes(LimitAmperes);

    /// <summary>No device above this rating is ever allowed.</summary>
    public ElectricCurrent Greatest => ElectricCurrent.FromAmperes(GreatestAmperes);

    /// <summary>The source of the rule.</summary>
    public Reference Reference { get; }

    internal double LimitAmperes { get; }

    internal double GreatestAmperes { get; }

    /// <summary>The greatest rating of a series that the rule allows.</summary>
    /// <param name="standardRatings">Standard ratings, in any order. Each positive.</param>
    /// <param name="rating">The greatest allowed; zero when every rating of the series is too large.</param>
    /// <returns>Whether any rating is allowed.</returns>
    /// <exception cref="ArgumentNullException">The series is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rating is not positive.</exception>
    public bool TryGreatestStandardRating(IEnumerable<ElectricCurrent> standardRatings, out ElectricCurrent rating)
    {
        _ = standardRatings ?? throw new ArgumentNullException(nameof(standardRatings));
        double[] series = [.. standardRatings.Select(r => Accept.Amperes(r, nameof(standardRatings)))];
        Array.Sort(series);
        double found = GreatestOf(series, LimitAmperes, GreatestAmperes);
        rating = found > 0 ? ElectricCurrent.FromAmperes(found) : default;
        return found > 0;
    }

    /// <summary>The greatest allowed of an ascending series, in A; 0 when there is none.</summary>
    internal static double GreatestOf(ReadOnlySpan<double> ascending, double limit, double greatest)
    {
        double best = 0;
        foreach (double rating in ascending)
        {
            if (rating <= limit)
            {
                best = rating;
                continue;
            }

            // The next larger one stands in only where no standard rating equals the limit.
            return best < limit && rating <= greatest ? rating : best;
        }

        return best;
    }

    /// <summary>The limit in one line.</summary>
    public override string ToString() => $"up to {Accept.Text(LimitAmperes)} A, next standard rating up to {Accept.Text(GreatestAmperes)} A: {Reference}";
}
