using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Whether a fuse may be used at a d.c. voltage, and can break a d.c. fault.</summary>
/// <remarks>
/// An a.c. rating proves nothing for d.c., whose arc meets no zero crossing; nor does a rating of which the source does not say what it is for.
/// The breaking capacity holds at the rated voltage. Ask it with the greatest prospective current: source cold and new, wire cold.
/// </remarks>
public static class FuseRatingChecks
{
    /// <summary>The breaking capacity against the prospective short-circuit current.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="prospective">Greatest prospective d.c. current where the fuse is. Positive.</param>
    /// <returns>The verdict with its reason.</returns>
    /// <exception cref="ArgumentNullException">The fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static RatingCheck BreakingCapacity(FuseRating fuse, ElectricCurrent prospective)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        double amperes = Accept.Amperes(prospective, nameof(prospective));
        return Check(fuse, "breaking capacity", "prospective current", amperes, fuse.BreakingAmperes, fuse.BreakingCapacityBasis, "A");
    }

    /// <summary>The rated voltage against the highest voltage of the circuit.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="highest">Highest d.c. voltage of the circuit, charging included (28 V to 30 V in a 24 V system). Positive.</param>
    /// <returns>The verdict with its reason.</returns>
    /// <exception cref="ArgumentNullException">The fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside its range.</exception>
    public static RatingCheck Voltage(FuseRating fuse, ElectricPotential highest)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        double volts = Accept.Volts(highest, nameof(highest));
        return Check(fuse, "rated voltage", "circuit voltage", volts, fuse.Series.Volts, fuse.VoltageBasis, "V");
    }

    private static RatingCheck Check(
        FuseRating fuse, string property, string quantity, double value, double? rating, RatingBasis basis, string unit)
    {
        if (rating is not double limit)
        {
            return new RatingCheck(RatingVerdict.NotProven, null, $"No {property} is known for the {fuse}.");
        }

        string stated = $"The {property} of the {fuse} is {Accept.Text(limit)} {unit}";
        if (basis != RatingBasis.DirectCurrent)
        {
            string why = basis == RatingBasis.AlternatingCurrent ? "a.c., which proves nothing for d.c." : "and the source does not say whether for d.c.";
            return new RatingCheck(RatingVerdict.NotProven, null, $"{stated} {why}");
        }

        RatingVerdict verdict = value <= limit ? RatingVerdict.Within : RatingVerdict.Exceeded;
        string word = verdict == RatingVerdict.Within ? "is within it" : "exceeds it";
        return new RatingCheck(verdict, value / limit, $"{stated} d.c.; the {quantity} of {Accept.Text(value)} {unit} {word}.");
    }
}
