using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The road-vehicle single-core table (PVC limited to 70 °C) with its ambient law; two cables together with the factor of the FAA curve, bundles with the IEC grouping factor on top: foreign rules, which are reported.</summary>
/// <remarks>Cable rated from 80 °C up carries more than the table says, but the table has no column for it: it is left to another basis.</remarks>
internal sealed class RoadVehicleAmpacity : AmpacityBasis
{
    private const double BetterInsulationCelsius = 80;

    internal RoadVehicleAmpacity()
        : base("road-vehicle single-core table", RoadVehicleSingleCore.Reference)
    {
    }

    internal override PreparedRating Prepare(Site at)
    {
        AmpacityTable table = RoadVehicleSingleCore.Ambient30;
        if (!table.TryColumnAtMost(at.Insulation.ContinuousCelsius, out double column) || at.Insulation.ContinuousCelsius >= BetterInsulationCelsius)
        {
            return Without(false, new LateText("the table has no column for insulation of {0} °C", at.Insulation.ContinuousCelsius));
        }

        Temperature ambient = Temperature.FromDegreesCelsius(Math.Max(at.AmbientCelsius, table.BaseAmbientCelsius));
        if (!RoadVehicleAmbient.TryFactor(ambient, table.BaseAmbient, out DeratingFactor? warmth))
        {
            return Without(true, new LateText("the table is for a conductor of at most 70 °C, the air is at {0} °C", at.AmbientCelsius));
        }

        return Iec60364Grouping.TryFactor(at.Circuits, Iec60364Arrangement.Bunched, out DeratingFactor? group)
            ? new TablePrepared(table, warmth, TableRules.RoadVehicleTogether(at.LoadedConductors, group)) { Reference = Reference, RatedAmbientCelsius = ambient.DegreesCelsius, LimitCelsius = column }
            : Without(true, new LateText("the grouping factors end at 20 circuits, the bundle has {0}", at.Circuits));
    }

    private TablePrepared Without(bool place, LateText gap) => new(RoadVehicleSingleCore.Ambient30) { Reference = Reference, RatedAmbientCelsius = 30, Gap = gap, PlaceIsTooHard = place };
}
