using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>The practice of a field: which wires and fuses to choose from, how a wire is rated, what may be lost, how a fuse is loaded.</summary>
/// <remarks>
/// Five presets; each value carries its source or says that it is common practice. A variation is a copy with changes:
/// <c>new DesignRules(DesignRules.RoadVehicle) { DropLimit = DropLimit.Percent(2) }</c>. Immutable.
/// </remarks>
public sealed partial class DesignRules
{
    private readonly double minimumSquareMillimeters;

    /// <summary>A copy of other rules, to be changed in its initialiser.</summary>
    /// <param name="basis">The rules to start from.</param>
    /// <exception cref="ArgumentNullException">The rules are null.</exception>
    [System.Diagnostics.CodeAnalysis.SetsRequiredMembers]
    public DesignRules(DesignRules basis)
    {
        _ = basis ?? throw new ArgumentNullException(nameof(basis));
        Name = basis.Name;
        Conductors = basis.Conductors;
        Fuses = basis.Fuses;
        Ampacity = basis.Ampacity;
        DropLimit = basis.DropLimit;
        FusePractice = basis.FusePractice;
        minimumSquareMillimeters = basis.minimumSquareMillimeters;
        MinimumSectionReference = basis.MinimumSectionReference;
    }

    /// <summary>Rules from nothing; every part must be given.</summary>
    public DesignRules()
    {
    }

    /// <summary>The field: <c>road vehicle</c>.</summary>
    public required string Name { get; init => field = value ?? throw new ArgumentNullException(nameof(Name)); }

    /// <summary>The wires to choose from, small to large.</summary>
    public required ConductorSeries Conductors { get; init => field = value ?? throw new ArgumentNullException(nameof(Conductors)); }

    /// <summary>The fuses to choose from.</summary>
    public required FuseSeries Fuses { get; init => field = value ?? throw new ArgumentNullException(nameof(Fuses)); }

    /// <summary>Where the continuous current of a wire comes from.</summary>
    public required AmpacityBasis Ampacity { get; init => field = value ?? throw new ArgumentNullException(nameof(Ampacity)); }

    /// <summary>The voltage that may be lost, unless a circuit has its own allowance.</summary>
    public required DropLimit DropLimit { get; init => field = value ?? throw new ArgumentNullException(nameof(DropLimit)); }

    /// <summary>How fuses are chosen.</summary>
    public FusePractice FusePractice { get; init => field = value ?? throw new ArgumentNullException(nameof(FusePractice)); } = new();

    /// <summary>Smallest nominal section allowed on mechanical grounds.</summary>
    public required Area MinimumSection
    {
        get => Area.FromSquareMillimeters(minimumSquareMillimeters);
        init => minimumSquareMillimeters = Accept.SquareMillimeters(value, nameof(MinimumSection));
    }

    /// <summary>Source of <see cref="MinimumSection"/>.</summary>
    public required Reference MinimumSectionReference { get; init => field = value ?? throw new ArgumentNullException(nameof(MinimumSectionReference)); }

    internal double MinimumSquareMillimeters => minimumSquareMillimeters;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
