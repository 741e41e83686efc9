using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>What a fuse series is made from: ratings and, as far as known, what they are rated for.</summary>
/// <remarks>Leave out what is not known. A check that needs it then says that it could not be made, and never passes.</remarks>
public sealed class FuseSeriesDefinition
{
    /// <summary>A definition to be filled by an initialiser; <see cref="Create"/> does without.</summary>
    public FuseSeriesDefinition()
    {
    }

    [SetsRequiredMembers]
    private FuseSeriesDefinition(FuseSeriesDefinition other)
    {
        Name = other.Name;
        Kind = other.Kind;
        Reference = other.Reference;
        Ratings = other.Ratings;
        VoltageRating = other.VoltageRating;
        VoltageBasis = other.VoltageBasis;
        BreakingCapacity = other.BreakingCapacity;
        BreakingCapacityBasis = other.BreakingCapacityBasis;
        BreakingCapacityReference = other.BreakingCapacityReference;
        BreakingMultiple = other.BreakingMultiple;
        BodyMillimeters = other.BodyMillimeters;
        Limits = other.Limits;
        Rerating = other.Rerating;
        Curves = other.Curves;
    }

    /// <summary>The standard or other name: <c>ISO 8820-3 type C</c>.</summary>
    public required string Name { get; init; }

    /// <summary>What one of them is called: <c>blade fuse</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Source of the ratings.</summary>
    public required Reference Reference { get; init; }

    /// <summary>Rated currents, rising.</summary>
    public required IReadOnlyList<ElectricCurrent> Ratings { get; init; }

    /// <summary>Rated voltage; null when not known.</summary>
    public ElectricPotential? VoltageRating { get; init; }

    /// <summary>What the voltage rating was stated for.</summary>
    public RatingBasis VoltageBasis { get; init; }

    /// <summary>Breaking capacity at the rated voltage; null when not known.</summary>
    public ElectricCurrent? BreakingCapacity { get; init; }

    /// <summary>What the breaking capacity was stated for.</summary>
    public RatingBasis BreakingCapacityBasis { get; init; }

    /// <summary>Source of the breaking capacity; null means that of the ratings.</summary>
    public Reference? BreakingCapacityReference { get; init; }

    /// <summary>Operating-time limits of a standard; null when none.</summary>
    public OperatingTimeLimits? Limits { get; init; }

    /// <summary>How the fuses carry less of their rating in hotter air; null when not known.</summary>
    public AmbientRerating? Rerating { get; init; }

    /// <summary>A curve for each rating, in the order of the ratings, for those who have their maker's; null entries where there is none. Goes before <see cref="Limits"/>. A curve begins at its rating or above it: what opens below its rating is another device's.</summary>
    public IReadOnlyList<TimeCurrentCurve?>? Curves { get; init; }

    /// <summary>The breaking capacity is at least this multiple of the rated current (IEC 60127: ten); zero when it does not depend on it.</summary>
    internal double BreakingMultiple { get; init; }

    internal IReadOnlyList<double>? BodyMillimeters { get; init; }

    /// <summary>The same with other limits and without curves, which would go before them.</summary>
    internal FuseSeriesDefinition With(OperatingTimeLimits limits) => new(this) { Limits = limits, Curves = null };

    /// <summary>A definition, for every .NET language; the rest by <c>With…</c>.</summary>
    /// <param name="name">The standard or other name.</param>
    /// <param name="kind">What one of them is called.</param>
    /// <param name="ratings">Rated currents, rising.</param>
    /// <param name="reference">Source of the ratings.</param>
    /// <returns>The definition; <see cref="FuseSeries.Create"/> checks it.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FuseSeriesDefinition Create(string name, string kind, IReadOnlyList<ElectricCurrent> ratings, Reference reference) => new()
    {
        Name = name ?? throw new ArgumentNullException(nameof(name)),
        Kind = kind ?? throw new ArgumentNullException(nameof(kind)),
        Ratings = ratings ?? throw new ArgumentNullException(nameof(ratings)),
        Reference = reference ?? throw new ArgumentNullException(nameof(reference)),
    };

    /// <summary>The same with a rated voltage.</summary>
    /// <param name="voltageRating">Rated voltage.</param>
    /// <param name="voltageBasis">What it was stated for.</param>
    /// <returns>A copy with it.</returns>
    public FuseSeriesDefinition WithVoltageRating(ElectricPotential voltageRating, RatingBasis voltageBasis) => new(this) { VoltageRating = voltageRating, VoltageBasis = voltageBasis };

    /// <summary>The same with a breaking capacity.</summary>
    /// <param name="breakingCapacity">Breaking capacity at the rated voltage.</param>
    /// <param name="breakingCapacityBasis">What it was stated for.</param>
    /// <param name="breakingCapacityReference">Its source; null means that of the ratings.</param>
    /// <returns>A copy with it.</returns>
    public FuseSeriesDefinition WithBreakingCapacity(ElectricCurrent breakingCapacity, RatingBasis breakingCapacityBasis, Reference? breakingCapacityReference = null) =>
        new(this) { BreakingCapacity = breakingCapacity, BreakingCapacityBasis = breakingCapacityBasis, BreakingCapacityReference = breakingCapacityReference };

    /// <summary>The same with operating-time limits of a standard.</summary>
    /// <param name="limits">The limits.</param>
    /// <returns>A copy with them.</returns>
    /// <exception cref="ArgumentNullException">The limits are null.</exception>
    public FuseSeriesDefinition WithLimits(OperatingTimeLimits limits) => new(this) { Limits = limits ?? throw new ArgumentNullException(nameof(limits)) };

    /// <summary>The same with a re-rating in hotter air.</summary>
    /// <param name="rerating">How the fuses carry less of their rating.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentNullException">The re-rating is null.</exception>
    public FuseSeriesDefinition WithRerating(AmbientRerating rerating) => new(this) { Rerating = rerating ?? throw new ArgumentNullException(nameof(rerating)) };

    /// <summary>The same with a maker's curve for each rating.</summary>
    /// <param name="curves">A curve for each rating, in the order of the ratings; null entries where there is none.</param>
    /// <returns>A copy with them.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    public FuseSeriesDefinition WithCurves(IReadOnlyList<TimeCurrentCurve?> curves) => new(this) { Curves = curves ?? throw new ArgumentNullException(nameof(curves)) };
}
