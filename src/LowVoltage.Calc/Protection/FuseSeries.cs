using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>A series of fuse ratings of one standard, or several series combined for a designer to choose from.</summary>
/// <remarks>
/// Immutable and thread-safe; choosing allocates nothing. A rating counts as "at least" a current that exceeds it by no more than 1e-9 of it, so
/// that a current computed to be 30 A finds the 30 A fuse whatever its last digit.
/// </remarks>
public sealed partial class FuseSeries
{
    private const double Rounding = 1e-9;

    private readonly FuseRating[] ratings;
    private readonly FuseSeriesDefinition? definition;

    private FuseSeries(FuseSeriesDefinition definition, double[] amperes)
    {
        this.definition = definition;
        Name = definition.Name;
        Kind = definition.Kind;
        Reference = definition.Reference;
        Volts = definition.VoltageRating is ElectricPotential voltage ? Accept.Volts(voltage, nameof(definition.VoltageRating)) : null;
        VoltageBasis = Volts is null ? RatingBasis.NotStated : definition.VoltageBasis;
        double? breaking = definition.BreakingCapacity is ElectricCurrent capacity ? Accept.Amperes(capacity, nameof(definition.BreakingCapacity)) : null;
        BreakingCapacityBasis = breaking is null ? RatingBasis.NotStated : definition.BreakingCapacityBasis;
        BreakingCapacityReference = breaking is null ? null : definition.BreakingCapacityReference ?? definition.Reference;
        Limits = definition.Limits;
        Rerating = definition.Rerating;
        ratings = new FuseRating[amperes.Length];
        for (int i = 0; i < amperes.Length; i++)
        {
            ratings[i] = new FuseRating(
                this,
                amperes[i],
                breaking is double least ? Math.Max(least, definition.BreakingMultiple * amperes[i]) : null,
                definition.BodyMillimeters?[i],
                definition.Curves is not null ? definition.Curves[i] : Limits?.CurveFor(amperes[i]));
        }

        Ratings = ratings;
    }

    private FuseSeries(string name, FuseRating[] ratings)
    {
        Name = name;
        Kind = "fuse";
        Reference = Reference.CommonPractice("combination of series chosen by the caller; each rating carries its own series and source");
        this.ratings = ratings;
        Ratings = ratings;
    }

    /// <summary>The standard's name and type, or the name of the combination.</summary>
    public string Name { get; }

    /// <summary>What one of them is called: <c>blade fuse</c>.</summary>
    public string Kind { get; }

    /// <summary>Source of the ratings.</summary>
    public Reference Reference { get; }

    /// <summary>All ratings, by rising current. In a combination equal currents stand in the order of the series.</summary>
    public IReadOnlyList<FuseRating> Ratings { get; }

    /// <summary>Rated voltage; null where not known, and in a combination, where each rating has its own.</summary>
    public ElectricPotential? VoltageRating => Volts is double volts ? ElectricPotential.FromVolts(volts) : null;

    /// <summary>What the voltage rating was stated for.</summary>
    public RatingBasis VoltageBasis { get; }

    /// <summary>The breaking capacity that every rating has at least; null where not known, and in a combination, where each rating has its own.</summary>
    public ElectricCurrent? BreakingCapacity => BreakingCapacityReference is null ? null : ratings[0].BreakingCapacity;

    /// <summary>What the breaking capacity was stated for.</summary>
    public RatingBasis BreakingCapacityBasis { get; }

    /// <summary>Source of the breaking capacity; null where none is known.</summary>
    public Reference? BreakingCapacityReference { get; }

    /// <summary>The standard's operating-time limits; null where none are carried.</summary>
    public OperatingTimeLimits? Limits { get; }

    /// <summary>How the fuses carry less of their rating in hotter air; null where nothing is published for them, and in a combination, where each rating has its own series.</summary>
    public AmbientRerating? Rerating { get; }

    internal double? Volts { get; }

    internal FuseRating[] RatingsArray => ratings;

    /// <summary>What the series was made from; null for a combination.</summary>
    internal FuseSeriesDefinition? Definition => definition;

    /// <summary>The series of a combination, as they were given; empty for a series by itself.</summary>
    internal IReadOnlyList<FuseSeries> Parts { get; private init; } = [];

    /// <summary>A series of the caller's.</summary>
    /// <param name="definition">Name, ratings and what is known of them.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentNullException">The definition, its name, kind, reference or ratings are null.</exception>
    /// <exception cref="ArgumentException">There is no rating, the ratings do not rise, or the curves are not one for each rating.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rating, the voltage, the breaking capacity or a basis is outside its range.</exception>
    public static FuseSeries Create(FuseSeriesDefinition definition) => new(definition, FuseSeriesCheck.Amperes(definition));

    /// <summary>One series to choose from out of several, keeping each rating's own series, voltage and breaking capacity.</summary>
    /// <param name="name">Name of the combination.</param>
    /// <param name="series">The series; where two hold the same current the earlier one comes first and is chosen.</param>
    /// <returns>The combination.</returns>
    /// <exception cref="ArgumentNullException">The name, the list or a series is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    public static FuseSeries Combine(string name, params FuseSeries[] series)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        _ = series ?? throw new ArgumentNullException(nameof(series));
        if (series.Length == 0)
        {
            throw new ArgumentException("series must hold at least one series; it was empty.", nameof(series));
        }

        // OrderBy is stable, which keeps equal currents in the order of the series.
        return new FuseSeries(
            name, [.. series.SelectMany(s => s?.ratings ?? throw new ArgumentNullException(nameof(series))).OrderBy(r => r.Amperes)])
        { Parts = [.. series] };
    }

    /// <summary>The same series with operating-time limits of the caller's choice.</summary>
    /// <param name="limits">The limits; a rating that they do not cover gets no curve.</param>
    /// <returns>A new series with new ratings.</returns>
    /// <exception cref="ArgumentNullException">The limits are null.</exception>
    /// <exception cref="InvalidOperationException">The series is a combination; give its members their limits before they are combined.</exception>
    public FuseSeries WithLimits(OperatingTimeLimits limits)
    {
        _ = limits ?? throw new ArgumentNullException(nameof(limits));
        return definition is null
            ? throw new InvalidOperationException($"{Name} is a combination of series; give its members their limits before they are combined.")
            : Create(definition.With(limits));
    }

    /// <summary>The smallest rating that is at least a current.</summary>
    /// <param name="current">The current. Positive.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range or above the largest rating.</exception>
    public FuseRating SmallestAtLeast(ElectricCurrent current) =>
        TrySmallestAtLeast(current, out FuseRating? rating) ? rating : throw Outside(current, "at most", ratings[ratings.Length - 1], "largest");

    /// <summary>The smallest rating that is at least a current, when there is one.</summary>
    /// <param name="current">The current. Positive.</param>
    /// <param name="rating">The rating, or null.</param>
    /// <returns>False when the current is above the largest rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public bool TrySmallestAtLeast(ElectricCurrent current, [NotNullWhen(true)] out FuseRating? rating)
    {
        rating = SmallestAtLeast(Accept.Amperes(current, nameof(current)));
        return rating is not null;
    }

    /// <summary>The largest rating that is at most a current.</summary>
    /// <param name="current">The current. Positive.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range or below the smallest rating.</exception>
    public FuseRating LargestAtMost(ElectricCurrent current) =>
        TryLargestAtMost(current, out FuseRating? rating) ? rating : throw Outside(current, "at least", ratings[0], "smallest");

    /// <summary>The largest rating that is at most a current, when there is one.</summary>
    /// <param name="current">The current. Positive.</param>
    /// <param name="rating">The rating, or null.</param>
    /// <returns>False when the current is below the smallest rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public bool TryLargestAtMost(ElectricCurrent current, [NotNullWhen(true)] out FuseRating? rating)
    {
        rating = LargestAtMost(Accept.Amperes(current, nameof(current)));
        return rating is not null;
    }

    /// <summary>The next rating above a current.</summary>
    /// <param name="current">The current. Positive; it need not be a rating.</param>
    /// <returns>The rating; null when there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public FuseRating? NextLarger(ElectricCurrent current)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        foreach (FuseRating rating in ratings)
        {
            if (rating.Amperes > amperes * (1 + Rounding))
            {
                return rating;
            }
        }

        return null;
    }

    /// <summary>The next rating below a current.</summary>
    /// <param name="current">The current. Positive; it need not be a rating.</param>
    /// <returns>The rating; null when there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public FuseRating? NextSmaller(ElectricCurrent current)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        FuseRating? found = null;
        foreach (FuseRating rating in ratings)
        {
            if (rating.Amperes >= amperes * (1 - Rounding))
            {
                break;
            }

            found = found is not null && found.Amperes == rating.Amperes ? found : rating;
        }

        return found;
    }

    /// <summary>Whether a current is a rating of the series.</summary>
    /// <param name="current">The current. Positive.</param>
    /// <returns>True when it is, to 1e-9.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public bool Contains(ElectricCurrent current)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        return SmallestAtLeast(amperes) is FuseRating rating && rating.Amperes <= amperes * (1 + Rounding);
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>The smallest rating of at least a current in A, or null. Does not allocate.</summary>
    internal FuseRating? SmallestAtLeast(double amperes)
    {
        foreach (FuseRating rating in ratings)
        {
            if (rating.Amperes >= amperes * (1 - Rounding))
            {
                return rating;
            }
        }

        return null;
    }

    /// <summary>The largest rating of at most a current in A, or null; of equal ones the first. Does not allocate.</summary>
    internal FuseRating? LargestAtMost(double amperes)
    {
        FuseRating? found = null;
        foreach (FuseRating rating in ratings)
        {
            if (rating.Amperes > amperes * (1 + Rounding))
            {
                break;
            }

            found = found is not null && found.Amperes == rating.Amperes ? found : rating;
        }

        return found;
    }

    private ArgumentOutOfRangeException Outside(in ElectricCurrent current, string bound, FuseRating rating, string end)
    {
        double amperes = Accept.Raw(current);
        return new ArgumentOutOfRangeException(
            nameof(current), amperes,
            $"current must be {bound} {Accept.Text(rating.Amperes)} A, the {end} rating of {Name}; it was {Accept.Text(amperes)} A.");
    }
}
