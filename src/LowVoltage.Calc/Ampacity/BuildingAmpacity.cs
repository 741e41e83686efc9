using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>IEC 60364-5-52, two loaded copper conductors, method C, with Tables B.52.14 and B.52.17.</summary>
internal sealed class BuildingAmpacity : AmpacityBasis
{
    private const double CoolestRow = 30;
    private const double BetterInsulationCelsius = 105;

    internal BuildingAmpacity()
        : base("IEC 60364-5-52 method C", Iec60364MethodC.Reference)
    {
    }

    internal override PreparedRating Prepare(Site at)
    {
        AmpacityTable table = Iec60364MethodC.Table;
        if (!table.TryColumnAtMost(at.Insulation.ContinuousCelsius, out double column) || at.Insulation.ContinuousCelsius >= BetterInsulationCelsius)
        {
            return Without(false, new LateText("the table has no column for insulation of {0} °C", at.Insulation.ContinuousCelsius));
        }

        Temperature ambient = Temperature.FromDegreesCelsius(Math.Max(at.AmbientCelsius, CoolestRow));
        if (!Iec60364Ambient.TryFactor(ambient, Temperature.FromDegreesCelsius(column), out DeratingFactor? warmth))
        {
            return Without(true, new LateText("Table B.52.14 has no factor for {0} °C", at.AmbientCelsius));
        }

        return Iec60364Grouping.TryFactor(at.Circuits, Iec60364Arrangement.Bunched, out DeratingFactor? group)
            ? new TablePrepared(table, warmth, group) { Reference = Reference, RatedAmbientCelsius = ambient.DegreesCelsius, LimitCelsius = column }
            : Without(true, new LateText("the grouping factors end at 20 circuits, the bundle has {0}", at.Circuits));
    }

    private TablePrepared Without(bool place, LateText gap) => new(Iec60364MethodC.Table) { Reference = Reference, RatedAmbientCelsius = 30, Gap = gap, PlaceIsTooHard = place };
}
