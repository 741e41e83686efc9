using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B Table 11-9 as it stands: 70 °C, 60 000 ft, 33 wires at 20 % of the bundle's capacity (9 wires from size 8 up).</summary>
/// <remarks>
/// The table contains bundle, altitude and ambient, so no factor is applied. It is used only where the place is no harder than its own conditions: for the bundle, where the
/// factor of figure 11-5 is at least that of the table's bundle.
/// </remarks>
internal sealed class AircraftAmpacity : AmpacityBasis
{
    private const double TableLoadingPercent = 20;
    private const int SmallSizesWires = 33;
    private const int LargeSizesWires = 9;
    private const double TableAmbientCelsius = 70;
    private const double TableAltitudeMeters = 60_000 * 0.3048;

    // Figure 11-5 at 33 wires and 20 %, on the line between its points (20 wires, 0.615) and (35 wires, 0.52). The curve is convex, so the line
    // reads high there and asks for an easier bundle than the table's: the safe side.
    private const double SmallSizesFactor = 0.615 - ((0.615 - 0.52) * 13 / 15);

    internal AircraftAmpacity()
        : base("FAA AC 43.13-1B Table 11-9", FaaAc43Table11Dash9.Reference)
    {
    }

    internal override PreparedRating Prepare(Site at)
    {
        AmpacityTable table = FaaAc43Table11Dash9.Table;
        if (!table.TryColumnAtMost(at.Insulation.ContinuousCelsius, out double column))
        {
            return Without(false, new LateText("the table has no column for insulation of {0} °C", at.Insulation.ContinuousCelsius));
        }

        if (at.AmbientCelsius > TableAmbientCelsius || at.AltitudeMeters > TableAltitudeMeters)
        {
            return Without(true, new LateText("the table holds up to 70 °C and 60 000 ft"));
        }

        double percent = Math.Max(TableLoadingPercent, at.LoadingShare * 100);
        if (!FaaBundle.TryValue(at.LoadedConductors, percent, out double factor))
        {
            return Without(true, new LateText("figure 11-5 has no point for {0} wires at {1} % of the bundle's capacity", at.LoadedConductors, percent));
        }

        // The table's own bundle is covered by the table itself: the figure has no points from 21 to 34 wires.
        bool small = factor >= SmallSizesFactor || (percent <= TableLoadingPercent && at.LoadedConductors <= SmallSizesWires);
        FaaBundle.TryValue(LargeSizesWires, TableLoadingPercent, out double largeSizesFactor);
        return new AircraftPrepared(new TablePrepared(table) { Reference = Reference, RatedAmbientCelsius = TableAmbientCelsius, LimitCelsius = column }, small, factor >= largeSizesFactor)
        {
            Reference = Reference,
            RatedAmbientCelsius = TableAmbientCelsius,
            LimitCelsius = column,
            PlaceIsTooHard = !small,
            Gap = small
                ? default
                : new LateText(() => $"the bundle is harder than the table's: figure 11-5 gives {Accept.Text(factor)} for {at.LoadedConductors} wires at {Accept.Text(percent)} %, the table stands for {Accept.Text(SmallSizesFactor)}"),
        };
    }

    private TablePrepared Without(bool place, LateText gap) => new(FaaAc43Table11Dash9.Table) { Reference = Reference, RatedAmbientCelsius = TableAmbientCelsius, Gap = gap, PlaceIsTooHard = place };
}

/// <summary>Table 11-9 with the bundle condition, which differs from size 8 up.</summary>
internal sealed class AircraftPrepared(TablePrepared table, bool smallSizes, bool largeSizes) : PreparedRating
{
    private const double FirstLargeSize = 8;

    internal override bool TryAmperes(Conductor conductor, out double amperes)
    {
        amperes = 0;
        bool large = ConductorKey.TryGet(conductor, out double key) && key <= FirstLargeSize;
        return (large ? largeSizes : smallSizes) && table.TryAmperes(conductor, out amperes);
    }

    internal override DeratedAmpacity? Derate(Conductor conductor) => TryAmperes(conductor, out _) ? table.Derate(conductor) : null;

    internal override Symbol Write(RatingLetters letters, Conductor conductor, string name) => table.Write(letters, conductor, name);
}
