using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Any table as a basis: read for a place by its own rule.</summary>
internal sealed class TableAmpacity(AmpacityTable table) : AmpacityBasis(table.Name, table.Reference)
{
    internal AmpacityTable Table => table;

    internal override PreparedRating Prepare(Site at)
    {
        PlacedTable placed = table.At(new TablePlace(
            at.AmbientCelsius, at.Insulation.ContinuousCelsius, at.LoadedConductors, at.LoadingShare, at.AltitudeMeters, at.EngineSpace, at.CircuitVolts));
        return new TablePrepared(table, placed.Factors)
        {
            Reference = Reference,
            RatedAmbientCelsius = placed.RatedAmbientCelsius,
            LimitCelsius = placed.ColumnCelsius,
            Gap = new LateText(placed.Gap),
            PlaceIsTooHard = placed.PlaceIsTooHard,
        };
    }
}
