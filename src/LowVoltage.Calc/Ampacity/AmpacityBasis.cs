using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Where a design takes the continuous current of a wire from: a published table with its own factors, a heat balance, or the lower of two.</summary>
/// <remarks>
/// A basis rates the sizes that its source covers and no others; a size that it does not cover cannot pass. Immutable and thread-safe.
/// </remarks>
public abstract class AmpacityBasis
{
    private protected AmpacityBasis(string name, Reference reference)
    {
        Name = name;
        Reference = reference;
    }

    /// <summary>What the basis is called.</summary>
    public string Name { get; }

    /// <summary>Its source.</summary>
    public Reference Reference { get; }

    /// <summary>33 CFR 183.425 Table 5 with its notes: small craft, AWG sizes.</summary>
    public static AmpacityBasis SmallCraftTable { get; } = new SmallCraftAmpacity();

    /// <summary>FAA AC 43.13-1B Table 11-9, which already contains bundle, altitude and ambient: aircraft wire.</summary>
    public static AmpacityBasis AircraftTable { get; } = new AircraftAmpacity();

    /// <summary>The road-vehicle single-core table at 30 °C with its ambient law, the FAA factor for two wires and the IEC grouping factors.</summary>
    public static AmpacityBasis RoadVehicleTable { get; } = new RoadVehicleAmpacity();

    /// <summary>IEC 60364-5-52, two loaded conductors, method C, with its ambient and grouping factors.</summary>
    public static AmpacityBasis BuildingTable { get; } = new BuildingAmpacity();

    /// <summary>A heat balance of the wire, alone or in a round bundle, in still air.</summary>
    public static AmpacityBasis HeatBalance { get; } = new HeatBalanceAmpacity();

    /// <summary>Any published table, or one of the caller's, with the factors that belong to it.</summary>
    /// <param name="table">The table: <see cref="NecTable310Dash16.Table"/>, <see cref="Iec60364MethodF.Table"/>, one made by <see cref="AmpacityTable.Create"/> …</param>
    /// <returns>The basis.</returns>
    /// <exception cref="ArgumentNullException">The table is null.</exception>
    /// <remarks>
    /// Factors that are carried for a table are applied, none raises a current: 33 CFR 183 notes 1 and 2; NEC ambient and conductor count; IEC 60364-5-52 ambient and bunched circuits; the road-vehicle
    /// ambient law with the FAA factor for two wires and the IEC grouping of circuits on top; FAA bundle and altitude. Where a table holds for one conductor alone, for vacuum or for a fixed bundle, it rates nothing
    /// else. A table of the caller's stands as it is: up to its ambient and its number of loaded conductors, unless
    /// <see cref="FromTable(AmpacityTable, AmbientDerating, GroupingDerating)"/> gives it factors.
    /// </remarks>
    public static AmpacityBasis FromTable(AmpacityTable table) => new TableAmpacity(table ?? throw new ArgumentNullException(nameof(table)));

    /// <summary>A table of the caller's with the caller's factors for warmer air and for more wires together.</summary>
    /// <param name="table">The table, made by <see cref="AmpacityTable.Create"/>.</param>
    /// <param name="ambient">Its factors for air above its own; their first row is that air. Null where there are none: the table then ends at its own air.</param>
    /// <param name="grouping">Its factors for more conductors or circuits than its own; their first row is that number. Null where there are none: the table then ends at its own number.</param>
    /// <returns>The basis, whose name and reference say the factors.</returns>
    /// <exception cref="ArgumentNullException">The table is null.</exception>
    /// <exception cref="ArgumentException">There are factors, and the table is a published one, which has its own; or the first row of a factor is not the table's own air or number.</exception>
    /// <remarks>
    /// <code>I = I(table) · f(air) · f(number)</code>
    /// Multiplying the two is the practice of the published tables. No factor raises a current; where a row is missing nothing is rated, and the check says which.
    /// </remarks>
    public static AmpacityBasis FromTable(AmpacityTable table, AmbientDerating? ambient, GroupingDerating? grouping)
    {
        _ = table ?? throw new ArgumentNullException(nameof(table));
        if ((ambient is not null || grouping is not null) && table.RuleSet != RuleSet.Caller)
        {
            throw new ArgumentException($"table must be one of the caller's to take factors; {table.Name} has its own, which it is read with when ambient and grouping are null.", nameof(table));
        }

        if (ambient is not null && ambient.BaseCelsius != table.BaseAmbientCelsius)
        {
            throw new ArgumentException(
                $"ambient must begin with the table's own air, {Accept.Text(table.BaseAmbientCelsius)} °C for {table.Name}; {ambient.Name} begins at {Accept.Text(ambient.BaseCelsius)} °C.", nameof(ambient));
        }

        if (grouping is not null && grouping.BaseCount != grouping.CountOf(table))
        {
            throw new ArgumentException(
                $"grouping must begin with the table's own number, {(grouping.CountOf(table) == 0 ? "one conductor alone, which is no circuit," : grouping.Counted(grouping.CountOf(table)))} for {table.Name}; "
                + $"{grouping.Name} begins at {grouping.Counted(grouping.BaseCount)}.",
                nameof(grouping));
        }

        return new TableAmpacity(table, ambient, grouping);
    }

    /// <summary>The lower of two bases wherever both rate a size; a size that only one of them covers takes that one.</summary>
    /// <param name="first">One basis.</param>
    /// <param name="second">The other.</param>
    /// <returns>The basis.</returns>
    /// <exception cref="ArgumentNullException">A basis is null.</exception>
    public static AmpacityBasis LowerOf(AmpacityBasis first, AmpacityBasis second) =>
        new LowerAmpacity(first ?? throw new ArgumentNullException(nameof(first)), second ?? throw new ArgumentNullException(nameof(second)));

    /// <summary>The continuous current of a conductor in a place.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="insulation">Its insulation, with the usual wall.</param>
    /// <param name="place">Where it runs; one conductor alone where no number of loaded conductors is stated.</param>
    /// <param name="current">The current; zero when the basis does not cover the case.</param>
    /// <returns>Whether the basis covers this conductor in this place.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public bool TryRate(Conductor conductor, InsulationMaterial insulation, Place place, out ElectricCurrent current)
    {
        _ = conductor ?? throw new ArgumentNullException(nameof(conductor));
        bool rated = Prepare(Alone(insulation, place)).TryAmperes(conductor, out double amperes);
        current = ElectricCurrent.FromAmperes(amperes);
        return rated;
    }

    /// <summary>The steps from the published table to the current, for a basis that is a table.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="insulation">Its insulation.</param>
    /// <param name="place">Where it runs; one conductor alone where no number of loaded conductors is stated.</param>
    /// <returns>The steps; null for a heat balance, or where the table does not cover the case.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public DeratedAmpacity? Derate(Conductor conductor, InsulationMaterial insulation, Place place)
    {
        _ = conductor ?? throw new ArgumentNullException(nameof(conductor));
        return Prepare(Alone(insulation, place)).Derate(conductor);
    }

    // No basis here asks for the voltage below 50 V; twelve stands for any of it.
    private static Site Alone(InsulationMaterial insulation, Place place) => new(
        place ?? throw new ArgumentNullException(nameof(place)), insulation ?? throw new ArgumentNullException(nameof(insulation)), null, 1, 12);

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>Whether the source treats engine spaces as a case of its own.</summary>
    internal virtual bool KnowsEngineSpaces => false;

    internal abstract PreparedRating Prepare(Site at);
}
