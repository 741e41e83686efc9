using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>What a fuse series is made from: ratings and, as far as known, what they are rated for.</summary>
/// <remarks>Leave out what is not known. A check that needs it then says that it could not be made, and never passes.</remarks>
public sealed class FuseSeriesDefinition
{
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

    /// <summary>A curve for each rating, in the order of the ratings, for those who have their maker's; null entries where there is none. Goes before <see cref="Limits"/>.</summary>
    public IReadOnlyList<TimeCurrentCurve?>? Curves { get; init; }

    /// <summary>The breaking capacity is at least this multiple of the rated current (IEC 60127: ten); zero when it does not depend on it.</summary>
    internal double BreakingMultiple { get; init; }

    internal IReadOnlyList<double>? BodyMillimeters { get; init; }

    internal FuseSeriesDefinition With(OperatingTimeLimits limits) => new()
    {
        Name = Name,
        Kind = Kind,
        Reference = Reference,
        Ratings = Ratings,
        VoltageRating = VoltageRating,
        VoltageBasis = VoltageBasis,
        BreakingCapacity = BreakingCapacity,
        BreakingCapacityBasis = BreakingCapacityBasis,
        BreakingCapacityReference = BreakingCapacityReference,
        BreakingMultiple = BreakingMultiple,
        BodyMillimeters = BodyMillimeters,
        Rerating = Rerating,
        Limits = limits,
    };
}
