using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>A wire with its published current and the factors of the same rules: boats by their law, buildings and vehicles by tables of their own.</summary>
internal sealed record RatedWire(DeratedAmpacity Rated, DeratingFactor Warmth, DeratingFactor Group, string Size, string Table, string Place, string Company)
{
    private const double Pvc = 70;

    private static readonly double[] Areas = [1.5, 2.5, 4, 6, 10, 16, 25, 35];
    private static readonly int[] Numbers = [18, 16, 14, 12, 10, 8, 6, 4];
    private static readonly int[] CraftInsulations = [75, 80, 90, 105];
    private static readonly int[] NecInsulations = [60, 75, 90];

    internal static RatedWire Draw(ProblemDraft d) => d.Gauges
        ? d.World.IsBoat ? Craft(d) : Nec(d)
        : d.World.IsBuilding ? Building(d) : Vehicle(d);

    // IEC 60364-5-52: PVC, ambient and bunched circuits.
    private static RatedWire Building(ProblemDraft d)
    {
        MetricSize size = MetricSize.FromSquareMillimeters(d.Random.Pick(Areas));
        int ambient = 35 + (5 * d.Random.Next(5)), circuits = 2 + d.Random.Next(5);
        return new RatedWire(
            DeratedAmpacity.From(Iec60364MethodC.Table.Rating(size, Make.Celsius(Pvc))),
            Iec60364Ambient.Factor(Make.Celsius(ambient), Make.Celsius(Pvc)),
            Iec60364Grouping.Factor(circuits, Iec60364Arrangement.Bunched),
            $"{size}", "The table of IEC 60364-5-52, method C,", Warm(d, ambient), Beside(circuits));
    }

    // The handbook table of single-core vehicle wire; its factors as its own basis takes them.
    private static RatedWire Vehicle(ProblemDraft d)
    {
        MetricSize size = MetricSize.FromSquareMillimeters(d.Random.Pick(Areas));
        int ambient = 33 + d.Random.Next(28), circuits = 2 + d.Random.Next(5);
        return new RatedWire(
            DeratedAmpacity.From(RoadVehicleSingleCore.Ambient30.Rating(size, Make.Celsius(Pvc))),
            Printed(RoadVehicleAmbient.Factor(Make.Celsius(ambient), RoadVehicleSingleCore.Ambient30.BaseAmbient)),
            Iec60364Grouping.Factor(circuits, Iec60364Arrangement.Bunched),
            $"{size}", "A handbook's table of single wires", Warm(d, ambient), Beside(circuits));
    }

    // 33 CFR 183.425: hot space at 50 °C and bundled conductors.
    private static RatedWire Craft(ProblemDraft d)
    {
        AwgSize size = AwgSize.FromNumber(d.Random.Pick(Numbers));
        int insulation = d.Random.Pick(CraftInsulations), conductors = 4 + d.Random.Next(20);
        return new RatedWire(
            DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(size, Make.Celsius(insulation))),
            Cfr33Part183EngineSpace.Factor(Make.Celsius(insulation)),
            Cfr33Part183ConductorCount.Factor(conductors, Make.V(50)),
            $"{size}", "33 CFR 183.425, Table 5,", Warm(d, 50), Among(d, conductors));
    }

    private static RatedWire Nec(ProblemDraft d)
    {
        int insulation = d.Random.Pick(NecInsulations), conductors = 4 + d.Random.Next(9);
        decimal air = d.DrawTemperature(33, 54);
        double ambient = d.Fahrenheit ? ((double)air - 32) / 1.8 : (double)air;
        AwgSize size = AwgSize.FromNumber(d.Random.Pick([.. Numbers.Where(number => number <= 14)]));
        return new RatedWire(
            DeratedAmpacity.From(NecTable310Dash16.Table.Rating(size, Make.Celsius(insulation))),
            Printed(NecAmbient.Factor(Make.Celsius(ambient), Make.Celsius(insulation))),
            NecConductorCount.Factor(conductors),
            $"{size}", "NEC Table 310.16", $"{d.World.Site.Warm} {AnswerText.Of(air, d.TemperatureUnit)}", Among(d, conductors));
    }

    // To the two decimals that a statement prints, and that tables of such factors print too.
    private static DeratingFactor Printed(DeratingFactor exact) => new((double)Rounding.Figures(exact.Value, 2), exact.Kind, exact.RuleSet, exact.Reference)
    {
        BaseAmbientCelsius = exact.BaseAmbientCelsius,
        InsulationCelsius = exact.InsulationCelsius,
        Holds = exact.Holds,
    };

    private static string Warm(ProblemDraft d, int celsius) => $"{d.World.Site.Warm} {d.PrintedCelsius(celsius)}";

    private static string Among(ProblemDraft d, int conductors) => $"{d.World.Site.Bundle} one of {CountWords.Of(conductors)} current-carrying conductors in a bundle";

    private static string Beside(int circuits) => circuits == 2
        ? "One other loaded circuit runs in the same bundle"
        : $"{char.ToUpperInvariant(CountWords.Of(circuits - 1)[0])}{CountWords.Of(circuits - 1).Substring(1)} other loaded circuits run in the same bundle";
}
