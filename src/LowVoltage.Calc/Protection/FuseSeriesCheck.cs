using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Protection;

/// <summary>Checks what a caller says of a fuse series.</summary>
internal static class FuseSeriesCheck
{
    /// <summary>The rated currents in A, after every check but those of voltage and breaking capacity.</summary>
    internal static double[] Amperes(FuseSeriesDefinition definition)
    {
        _ = definition ?? throw new ArgumentNullException(nameof(definition));
        _ = definition.Name ?? throw new ArgumentNullException(nameof(definition), "The definition's Name is null.");
        _ = definition.Kind ?? throw new ArgumentNullException(nameof(definition), "The definition's Kind is null.");
        _ = definition.Reference ?? throw new ArgumentNullException(nameof(definition), "The definition's Reference is null.");
        _ = definition.Ratings ?? throw new ArgumentNullException(nameof(definition), "The definition's Ratings are null.");
        Known(definition.VoltageBasis, nameof(definition.VoltageBasis));
        Known(definition.BreakingCapacityBasis, nameof(definition.BreakingCapacityBasis));
        if (definition.Ratings.Count == 0)
        {
            throw new ArgumentException($"{definition.Name} must have at least one rating; it has none.", nameof(definition));
        }

        if (definition.Curves is not null && definition.Curves.Count != definition.Ratings.Count)
        {
            throw new ArgumentException(
                $"{definition.Name} must have a curve (or null) for each of its {definition.Ratings.Count} ratings; it has {definition.Curves.Count}.",
                nameof(definition));
        }

        double[] amperes = Rising(definition);
        for (int i = 0; i < amperes.Length && definition.Curves is not null; i++)
        {
            Carries(definition.Curves[i], amperes[i], $"{nameof(definition.Curves)}[{Accept.Text(i)}] of {definition.Name}", nameof(definition));
        }

        return amperes;
    }

    /// <summary>A device carries its rating: a curve by which it opens below that belongs to another one, and would pass for holding a load that opens it.</summary>
    internal static void Carries(TimeCurrentCurve? curve, double rating, string what, string name)
    {
        double opens = curve is null ? double.PositiveInfinity : Math.Min(curve.FusingAmperes, curve.LeastLine?.FirstX ?? double.PositiveInfinity);
        if (opens < rating * (1 - 1e-9))
        {
            throw new ArgumentException(
                $"{what} opens the device of {Accept.Text(rating)} A at {Accept.Text(opens)} A; accepted is a curve that begins at the rating or above it.", name);
        }
    }

    private static double[] Rising(FuseSeriesDefinition definition)
    {
        double[] amperes = new double[definition.Ratings.Count];
        for (int i = 0; i < amperes.Length; i++)
        {
            amperes[i] = Accept.Amperes(definition.Ratings[i], nameof(definition.Ratings));
            if (i > 0 && !(amperes[i] > amperes[i - 1]))
            {
                throw new ArgumentException(
                    $"The ratings of {definition.Name} must rise; {Accept.Text(amperes[i])} A follows {Accept.Text(amperes[i - 1])} A.", nameof(definition));
            }
        }

        return amperes;
    }

    private static void Known(RatingBasis basis, string name)
    {
        if (basis is not (RatingBasis.NotStated or RatingBasis.DirectCurrent or RatingBasis.AlternatingCurrent))
        {
            throw new ArgumentOutOfRangeException(name, basis, $"{name} must be a value of RatingBasis; it was {Accept.Text((int)basis)}.");
        }
    }
}
