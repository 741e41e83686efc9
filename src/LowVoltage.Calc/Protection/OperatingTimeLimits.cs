using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The operating times that a standard demands of a fuse type, row by row.</summary>
/// <remarks>Rows that are from memory carry a reference of that kind; confirm them in the standard before relying on them.</remarks>
public sealed partial class OperatingTimeLimits
{
    // The only ratings that the standard knows, or null when its rows span a range.
    private readonly double[]? fixedRatings;

    private OperatingTimeLimits(string name, Reference reference, OperatingTimeGate[] gates, double[]? fixedRatings = null)
    {
        this.fixedRatings = fixedRatings;
        Name = name;
        Reference = reference.WithWeakest(gates.Select(gate => gate.Reference));
        Gates = gates;
    }

    /// <summary>The fuse type: <c>ISO 8820-3 types C and F</c>.</summary>
    public string Name { get; }

    /// <summary>The source of the set, of the kind of its weakest row; each row has its own besides.</summary>
    public Reference Reference { get; }

    /// <summary>All rows.</summary>
    public IReadOnlyList<OperatingTimeGate> Gates { get; }

    /// <summary>The curve of a rating.</summary>
    /// <param name="rating">Rated current. Positive.</param>
    /// <returns>The curve; null when the standard does not know this rating or states no longest time for it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rated current is outside its range.</exception>
    public TimeCurrentCurve? CurveFor(ElectricCurrent rating) => CurveFor(Accept.Amperes(rating, nameof(rating)));

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal TimeCurrentCurve? CurveFor(double ratingAmperes)
    {
        if (fixedRatings is not null && Array.IndexOf(fixedRatings, ratingAmperes) < 0)
        {
            return null;
        }

        List<TimeCurrentPoint> least = [], longest = [];
        TimeCurrentPoint? nonFusing = null;
        foreach (OperatingTimeGate gate in Gates)
        {
            if (!gate.Covers(ratingAmperes))
            {
                continue;
            }

            double amperes = gate.AmperesFor(ratingAmperes);
            if (gate.IsNonFusing)
            {
                nonFusing = new TimeCurrentPoint(amperes, gate.LeastSeconds!.Value);
                continue;
            }

            Add(least, amperes, gate.LeastSeconds);
            Add(longest, amperes, gate.LongestSeconds);
        }

        return longest.Count == 0 ? null : TimeCurrentCurveBuilder.Build(least, longest, nonFusing, breaker: false, conventionalOnly: longest.Count == 1);
    }

    private static void Add(List<TimeCurrentPoint> points, double amperes, double? seconds)
    {
        if (seconds is double value)
        {
            points.Add(new TimeCurrentPoint(amperes, value));
        }
    }

    private static OperatingTimeGate NonFusing(double leastRating, double mostRating, double percent, double seconds, Reference reference) => new()
    {
        LeastRatingAmperes = leastRating,
        MostRatingAmperes = mostRating,
        Percent = percent,
        LeastSeconds = seconds,
        IsNonFusing = true,
        Reference = reference,
    };

    private static OperatingTimeGate Gate(
        double leastRating, double mostRating, double percent, double? leastSeconds, double? longestSeconds, Reference reference) => new()
        {
            LeastRatingAmperes = leastRating,
            MostRatingAmperes = mostRating,
            Percent = percent,
            LeastSeconds = leastSeconds,
            LongestSeconds = longestSeconds,
            Reference = reference,
        };

    private static OperatingTimeGate GateInAmperes(
        double rating, double amperes, double? leastSeconds, double? longestSeconds, Reference reference) => new()
        {
            LeastRatingAmperes = rating,
            MostRatingAmperes = rating,
            Amperes = amperes,
            LeastSeconds = leastSeconds,
            LongestSeconds = longestSeconds,
            Reference = reference,
        };
}
