using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>The sizes at hand in a design problem, with the published currents that fit the world they are for.</summary>
/// <param name="Rows">The sizes, from the thinnest.</param>
/// <param name="Published">The table behind the currents.</param>
/// <param name="Rules">The rules that a complete design of such a circuit starts from.</param>
/// <param name="Ampacity">The currents that a complete design reckons with.</param>
internal sealed record DesignTable(IReadOnlyList<DesignRow> Rows, AmpacityTable Published, DesignRules Rules, AmpacityBasis Ampacity)
{
    private const double PvcColumn = 70;
    private const double SixtyDegrees = 60;

    private static readonly DesignTable Vehicle = Metric(
        [1, 1.5, 2.5, 4, 6, 10, 16, 25], size => Conductor.Iso6722(size), RoadVehicleSingleCore.Ambient30, DesignRules.RoadVehicle, AmpacityBasis.RoadVehicleTable);

    private static readonly DesignTable Building = Metric(
        [1.5, 2.5, 4, 6, 10, 16, 25], size => Conductor.Iec60228(size, Iec60228Class.Flexible), Iec60364MethodC.Table, DesignRules.Bench, AmpacityBasis.BuildingTable);

    private static readonly DesignTable Craft = Gauge([16, 14, 12, 10, 8, 6, 4, 2], Cfr33Part183Table5.Table, AmpacityBasis.SmallCraftTable);

    // The designer has no rule set for this table: the heat balance checks its choices.
    private static readonly DesignTable Nec = Gauge([14, 12, 10, 8, 6, 4, 2], NecTable310Dash16.Table, AmpacityBasis.HeatBalance);

    /// <summary>Whether a complete design with these currents must come to the same size; the heat balance is another rule and only has to agree that the choice will do.</summary>
    internal bool DecidesAlike => Ampacity != AmpacityBasis.HeatBalance;

    /// <summary>Boats by their law, buildings by the rules for buildings, vehicles and what is like them by a handbook; gauges by the NEC where no boat is.</summary>
    internal static DesignTable For(ProblemDraft d) => d.Gauges
        ? d.World.IsBoat ? Craft : Nec
        : d.World.IsBuilding ? Building : Vehicle;

    /// <summary>A place that is warm (metric) or crowded (gauges), and the factor that the rules of the table give for it.</summary>
    internal DesignPlace DrawPlace(ProblemDraft d)
    {
        if (d.Gauges)
        {
            int conductors = this == Craft ? 4 + d.Random.Next(20) : 4 + d.Random.Next(9);
            double bundled = this == Craft ? Cfr33Part183ConductorCount.Factor(conductors, Make.V(50)).Value : NecConductorCount.Factor(conductors).Value;
            return new DesignPlace(30, conductors, $"{d.Bundle} one of {CountWords.Of(conductors)} current-carrying conductors, so it may carry only", bundled);
        }

        int celsius = 35 + (5 * d.Random.Next(5));
        Temperature hot = Make.Celsius(celsius);
        double factor = this == Building ? Iec60364Ambient.Factor(hot, Make.Celsius(PvcColumn)).Value : RoadVehicleAmbient.Factor(hot, Published.BaseAmbient).Value;
        return new DesignPlace(celsius, 2, $"{d.Warm} {d.PrintedCelsius(celsius)}, so the wire may carry only", (double)Rounding.Figures(factor, 2));
    }

    private static DesignTable Metric(double[] areas, Func<MetricSize, Conductor> conductor, AmpacityTable table, DesignRules rules, AmpacityBasis ampacity) =>
        new([.. areas.Select(area => DesignRow.Of(area, conductor(MetricSize.FromSquareMillimeters(area)), table.Rating(MetricSize.FromSquareMillimeters(area), Make.Celsius(PvcColumn))))], table, rules, ampacity);

    private static DesignTable Gauge(int[] numbers, AmpacityTable table, AmpacityBasis ampacity) =>
        new([.. numbers.Select(number => DesignRow.Of(number, Conductor.Stranded(AwgSize.FromNumber(number), ConductorMaterial.Copper), table.Rating(AwgSize.FromNumber(number), Make.Celsius(SixtyDegrees))))], table, DesignRules.SmallCraft, ampacity);
}
