using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>33 CFR 183.425 Table 5: up to 30 °C as printed, up to 50 °C and in engine spaces with note 1, bundles with note 2.</summary>
/// <remarks>
/// Note 1 is used for any place warmer than 30 °C, the safer of the two printed cases. Note 2 is law from 50 V up only; it is applied below as well, as a practice, and reported.
/// </remarks>
internal sealed class SmallCraftAmpacity : AmpacityBasis
{
    private const double BaseCelsius = 30;
    private const double EngineSpaceCelsius = 50;

    internal SmallCraftAmpacity()
        : base("33 CFR 183.425 Table 5", Cfr33Part183Table5.Reference)
    {
    }

    internal override bool KnowsEngineSpaces => true;

    internal override PreparedRating Prepare(Site at)
    {
        AmpacityTable table = Cfr33Part183Table5.Table;
        if (!table.TryColumnAtMost(at.Insulation.ContinuousCelsius, out double column))
        {
            return Without(false, new LateText("the table has no column for insulation of {0} °C", at.Insulation.ContinuousCelsius));
        }

        if (at.AmbientCelsius > EngineSpaceCelsius)
        {
            return Without(true, new LateText("the table ends at 50 °C, the air is at {0} °C", at.AmbientCelsius));
        }

        Temperature rating = Temperature.FromDegreesCelsius(column);
        DeratingFactor count = Cfr33Part183ConductorCount.Factor(at.LoadedConductors, ElectricPotential.FromVolts(at.CircuitVolts));
        return at.EngineSpace || at.AmbientCelsius > BaseCelsius
            ? new TablePrepared(table, Cfr33Part183EngineSpace.Factor(rating), count) { Reference = Reference, RatedAmbientCelsius = EngineSpaceCelsius, LimitCelsius = column, Note = at.EngineSpace ? default : WarmNote(at.AmbientCelsius) }
            : new TablePrepared(table, count) { Reference = Reference, RatedAmbientCelsius = BaseCelsius, LimitCelsius = column };
    }

    private static LateText WarmNote(double celsius) => new(
        "The table knows two places, 30 °C and the engine space at 50 °C. Air at {0} °C is above the first, so it is counted as the second, although it was not stated to be an engine space.", celsius);

    private TablePrepared Without(bool place, LateText gap) => new(Cfr33Part183Table5.Table) { Reference = Reference, RatedAmbientCelsius = BaseCelsius, Gap = gap, PlaceIsTooHard = place };
}
