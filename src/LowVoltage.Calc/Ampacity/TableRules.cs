using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How each table that is carried is read for a place: its own factors, and where it does not hold.</summary>
/// <remarks>Where the place is easier than the table's own (cooler, fewer wires) the table stands as it is: no factor raises a current here.</remarks>
internal static class TableRules
{
    private const double EngineSpaceCelsius = 50;
    private const double MetersPerFoot = 0.3048;

    /// <summary>A table without factors of its own: up to its ambient and its number of conductors.</summary>
    internal static PlacedTable AsItStands(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : place.AmbientCelsius > table.BaseAmbientCelsius ? TooHot(table, place)
        : place.LoadedConductors > table.Conductors ? TooMany(table, place, table.Conductors)
        : new PlacedTable(table, column);

    /// <summary>A table of the caller's with factors of the caller's: in warmer air and for more conductors as far as their rows go.</summary>
    internal static PlacedTable WithFactors(AmpacityTable table, in TablePlace place, AmbientDerating? ambient, GroupingDerating? grouping)
    {
        if (!Column(table, place, out double column, out PlacedTable? none))
        {
            return none;
        }

        DeratingFactor? warmth = null, group = null;
        double row = table.BaseAmbientCelsius;
        if (ambient is null ? place.AmbientCelsius > table.BaseAmbientCelsius : !ambient.TryFactor(place.AmbientCelsius, out warmth, out row))
        {
            return ambient is null ? TooHot(table, place) : Hard(table, $"the rows of {ambient.Name} end at {Accept.Text(ambient.HighestCelsius)} °C, the air is at {Accept.Text(place.AmbientCelsius)} °C");
        }

        if (row >= column)
        {
            return Hard(table, $"for air at {Accept.Text(place.AmbientCelsius)} °C the row of {Accept.Text(row)} °C of {ambient!.Name} counts, which leaves insulation of {Accept.Text(column)} °C no room to warm up");
        }

        if (grouping is null ? place.LoadedConductors > table.Conductors : !grouping.TryFactorOf(grouping.CountOf(place), out group))
        {
            return grouping is null ? TooMany(table, place, table.Conductors)
                : Hard(table, $"the rows of {grouping.Name} end at {grouping.Counted(grouping.LargestCount)}, {Accept.Text(grouping.CountOf(place))} lie together");
        }

        return new PlacedTable(table, column, [.. new[] { warmth, group }.OfType<DeratingFactor>()]) { RatedAmbientCelsius = Ambient(table, place).DegreesCelsius };
    }

    /// <summary>33 CFR 183.425 Table 5: up to 30 °C as printed, up to 50 °C and in engine spaces with note 1; the number of conductors by note 2.</summary>
    internal static PlacedTable Cfr33(AmpacityTable table, in TablePlace place)
    {
        if (!Column(table, place, out double column, out PlacedTable? none))
        {
            return none;
        }

        if (place.AmbientCelsius > EngineSpaceCelsius)
        {
            return Hard(table, $"the table ends at 50 °C, the air is at {Accept.Text(place.AmbientCelsius)} °C");
        }

        DeratingFactor count = Cfr33Part183ConductorCount.Factor(place.LoadedConductors, ElectricPotential.FromVolts(place.CircuitVolts));
        return place.EngineSpace || place.AmbientCelsius > table.BaseAmbientCelsius
            ? new PlacedTable(table, column, Cfr33Part183EngineSpace.Factor(Temperature.FromDegreesCelsius(column)), count) { RatedAmbientCelsius = EngineSpaceCelsius }
            : new PlacedTable(table, column, count);
    }

    /// <summary>NEC Table 310.16: the ambient equation and the number of conductors.</summary>
    internal static PlacedTable Nec(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : NecAmbient.TryFactor(Ambient(table, place), Temperature.FromDegreesCelsius(column), table.BaseAmbient, out DeratingFactor? warmth)
            ? new PlacedTable(table, column, warmth, NecConductorCount.Factor(place.LoadedConductors)) { RatedAmbientCelsius = Ambient(table, place).DegreesCelsius }
            : TooHot(table, place);

    /// <summary>NEC Table 310.17: the ambient equation, one conductor alone.</summary>
    internal static PlacedTable NecAlone(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : place.LoadedConductors > 1 ? TooMany(table, place, 1)
        : NecAmbient.TryFactor(Ambient(table, place), Temperature.FromDegreesCelsius(column), table.BaseAmbient, out DeratingFactor? warmth) ? new PlacedTable(table, column, warmth) { RatedAmbientCelsius = Ambient(table, place).DegreesCelsius }
        : TooHot(table, place);

    /// <summary>IEC 60364-5-52: Tables B.52.14 and B.52.17, bunched circuits.</summary>
    internal static PlacedTable Iec60364(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : !Iec60364Ambient.TryFactor(Ambient(table, place), Temperature.FromDegreesCelsius(column), out DeratingFactor? warmth) ? TooHot(table, place)
        : Iec60364Grouping.TryFactor(place.Circuits, Iec60364Arrangement.Bunched, out DeratingFactor? group) ? new PlacedTable(table, column, warmth, group) { RatedAmbientCelsius = Ambient(table, place).DegreesCelsius }
        : Hard(table, $"the grouping factors end at 20 circuits, the bundle has {Accept.Text(place.Circuits)}");

    /// <summary>Road-vehicle table: one cable alone; two by the FAA curve's factor for two wires, more with the IEC grouping factor of so many circuits on top.</summary>
    /// <remarks>The step from one cable to two is then 0.825; a pair in still air by heat transfer comes to 0.84 to 0.87 of the single cable.</remarks>
    internal static PlacedTable RoadVehicle(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : !RoadVehicleAmbient.TryFactor(Ambient(table, place), table.BaseAmbient, out DeratingFactor? warmth) ? TooHot(table, place)
        : Iec60364Grouping.TryFactor(place.Circuits, Iec60364Arrangement.Bunched, out DeratingFactor? group)
            ? new PlacedTable(table, column, warmth, RoadVehicleTogether(place.LoadedConductors, group)) { RatedAmbientCelsius = Ambient(table, place).DegreesCelsius }
        : Hard(table, $"the grouping factors end at 20 circuits, the bundle has {Accept.Text(place.Circuits)}");

    /// <summary>The table is for one cable. The grouping factors start from a pair, so the step from one to two is another source's, and comes on top.</summary>
    internal static DeratingFactor RoadVehicleTogether(int conductors, DeratingFactor group)
    {
        if (conductors < 2)
        {
            return group;
        }

        DeratingFactor pair = FaaBundle.Factor(2, Ratio.FromPercent(100));
        return new DeratingFactor(pair.Value * group.Value, DeratingKind.Grouping, group.Value < 1 ? group.RuleSet : pair.RuleSet, group.Value < 1 ? group.Reference : pair.Reference)
        {
            BundleMeaning = group.BundleMeaning,
            Holds = new LateText(() => $"from one cable to two {Accept.Text(pair.Value)} by {pair.Reference.Title}, {pair.Reference.Locator}; then {Accept.Text(group.Value)} for {group.Condition}"),
        };
    }

    /// <summary>FAA free-air points: figures 11-5 and 11-6, up to the ambient of the point.</summary>
    internal static PlacedTable FaaFreeAir(AmpacityTable table, in TablePlace place)
    {
        if (!Column(table, place, out double column, out PlacedTable? none))
        {
            return none;
        }

        if (place.AmbientCelsius > table.BaseAmbientCelsius)
        {
            return TooHot(table, place);
        }

        double percent = Math.Max(20, place.LoadingShare * 100);
        if (!FaaBundle.TryFactor(place.LoadedConductors, Ratio.FromPercent(percent), out DeratingFactor? bundle))
        {
            return Hard(table, $"figure 11-5 has no point for {Accept.Text(place.LoadedConductors)} wires at {Accept.Text(percent)} % of the bundle's capacity");
        }

        return FaaAltitude.TryFactor(Length.FromMeters(Math.Max(0, place.AltitudeMeters)), out DeratingFactor? thin)
            ? new PlacedTable(table, column, bundle, thin)
            : Hard(table, $"figure 11-6 has no factor for {Accept.Text(place.AltitudeMeters)} m");
    }

    /// <summary>FAA Table 11-9, which contains 70 °C, 60 000 ft and a bundle: it holds for all sizes where the place is no harder than the table's bundle of nine wires at 20 %.</summary>
    /// <remarks>Sizes 24 to 10 hold for 33 wires: <c>AmpacityBasis.AircraftTable</c> tells the two apart.</remarks>
    internal static PlacedTable FaaDerated(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : place.AmbientCelsius > table.BaseAmbientCelsius || place.AltitudeMeters > 60_000 * MetersPerFoot ? Hard(table, "the table holds up to 70 °C and 60 000 ft")
        : FaaBundle.TryValue(9, 20, out double own) && FaaBundle.TryValue(place.LoadedConductors, Math.Max(20, place.LoadingShare * 100), out double asked) && asked >= own
            ? new PlacedTable(table, column)
            : Hard(table, "the bundle is harder than the table's: 9 wires at 20 % of their joint capacity");

    /// <summary>NASA currents of wire in vacuum: one wire, or any number where the table contains the bundle.</summary>
    internal static PlacedTable Vacuum(AmpacityTable table, in TablePlace place) => !Column(table, place, out double column, out PlacedTable? none) ? none
        : place.AmbientCelsius > table.BaseAmbientCelsius ? TooHot(table, place)
        : place.LoadedConductors > 1 && !table.Settles(DeratingKind.ConductorCount) ? TooMany(table, place, 1)
        : new PlacedTable(table, column);

    private static bool Column(AmpacityTable table, in TablePlace place, out double column, [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out PlacedTable? none)
    {
        bool found = table.TryColumnAtMost(place.InsulationCelsius, out column);
        none = found ? null : new PlacedTable(table, 0) { Gap = $"the table has no column for insulation of {Accept.Text(place.InsulationCelsius)} °C" };
        return found;
    }

    // A cool place does not raise a current.
    private static Temperature Ambient(AmpacityTable table, in TablePlace place) => Temperature.FromDegreesCelsius(Math.Max(place.AmbientCelsius, table.BaseAmbientCelsius));

    private static PlacedTable TooHot(AmpacityTable table, in TablePlace place) =>
        Hard(table, $"the table, for air at {Accept.Text(table.BaseAmbientCelsius)} °C, has no answer for air at {Accept.Text(place.AmbientCelsius)} °C");

    private static PlacedTable TooMany(AmpacityTable table, in TablePlace place, int most) =>
        Hard(table, $"the table holds for {(most == 1 ? "one conductor alone" : $"{Accept.Text(most)} conductors together")}, {Accept.Text(place.LoadedConductors)} lie together");

    private static PlacedTable Hard(AmpacityTable table, string gap) => new(table, 0) { Gap = gap, PlaceIsTooHard = true };
}
