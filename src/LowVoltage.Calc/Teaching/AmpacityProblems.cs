using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on derating: a table's current in a hotter place and beside other wires.</summary>
internal static class AmpacityProblems
{
    private const double WallInsulation = 70;

    private static readonly double[] Areas = [1.5, 2.5, 4, 6, 10, 16, 25];
    private static readonly int[] Numbers = [18, 16, 14, 12, 10, 8, 6, 4];
    private static readonly int[] CraftInsulations = [75, 80, 90, 105];

    internal static bool OneStep(ProblemDraft d) => Write(d, grouped: false);

    internal static bool SeveralSteps(ProblemDraft d) => Write(d, grouped: true);

    private static bool Write(ProblemDraft d, bool grouped)
    {
        (DeratedAmpacity rated, DeratingFactor warmth, DeratingFactor group, string size, string place, string company) = d.Gauges ? Craft(d) : Wall(d);
        DrawnGiven table = d.Give("current by the table", "I_t", (decimal)rated.Current.Amperes, "A");
        DrawnGiven hot = d.Give("factor for the hot place", "f_1", (decimal)warmth.Value, "");
        d.Say($"For {(size.StartsWith("8 ", StringComparison.Ordinal) || size.StartsWith("18 ", StringComparison.Ordinal) ? "an" : "a")} {size} copper wire {d.World.In}, with insulation for {d.PrintedCelsius((int)rated.Rating.InsulationRating.DegreesCelsius)}, {rated.Rating.Table.Name} gives {table} at {d.PrintedCelsius((int)rated.Rating.Table.BaseAmbient.DegreesCelsius)} and for a wire that lies alone. {place} its factor is {hot}.");
        DeratedAmpacity result = rated.With(warmth);
        Formula formula = table.Symbol * hot.Symbol;
        double twice = table.Value * hot.Value * hot.Value;
        if (grouped)
        {
            DrawnGiven beside = d.Give("factor for the bundle", "f_2", (decimal)group.Value, "");
            d.Say($"{company} its factor is {beside}.");
            Symbol first = d.Step("the current in the hot place", "I_h", formula, result.Current.Amperes, "A", warmth.Reference, "The table's current times the factor for the heat.");
            result = result.With(group);
            formula = first * beside.Symbol;
            twice *= beside.Value;
            d.Wrong(Mistake.OneFactorOnly, table.Value * (d.Random.Next(2) == 0 ? hot.Value : beside.Value));
            d.Wrong(Mistake.FactorsAveraged, table.Value * (hot.Value + beside.Value) / 2);
        }

        double amperes = result.Current.Amperes;
        d.Ask("What current may the wire carry there without end?", d.Step(
            "the current it may carry", "I_z", formula, amperes, "A", grouped ? group.Reference : warmth.Reference, "Each condition reduces what the wire may carry once."));
        d.Wrong(Mistake.DeratingForgotten, table.Value);
        d.Wrong(Mistake.DeratingTwice, twice);
        d.Wrong(Mistake.DeratingInverted, table.Value * table.Value / amperes);
        d.Wrong(Mistake.DeratingComplement, table.Value - amperes);
        return hot.Value < 1;
    }

    // IEC 60364-5-52: PVC, ambient and bunched circuits.
    private static (DeratedAmpacity Rated, DeratingFactor Warmth, DeratingFactor Group, string Size, string Place, string Company) Wall(ProblemDraft d)
    {
        MetricSize size = MetricSize.FromSquareMillimeters(d.Random.Pick(Areas));
        int ambient = 35 + (5 * d.Random.Next(5)), circuits = 2 + d.Random.Next(5);
        return (
            DeratedAmpacity.From(Iec60364MethodC.Table.Rating(size, Make.Celsius(WallInsulation))),
            Iec60364Ambient.Factor(Make.Celsius(ambient), Make.Celsius(WallInsulation)),
            Iec60364Grouping.Factor(circuits, Iec60364Arrangement.Bunched),
            $"{size}",
            $"At {d.PrintedCelsius(ambient)}",
            $"Beside {CountWords.Of(circuits - 1)} other loaded circuit{(circuits == 2 ? "" : "s")} in one bundle");
    }

    // 33 CFR 183.425: hot space at 50 °C and bundled conductors.
    private static (DeratedAmpacity Rated, DeratingFactor Warmth, DeratingFactor Group, string Size, string Place, string Company) Craft(ProblemDraft d)
    {
        AwgSize size = AwgSize.FromNumber(d.Random.Pick(Numbers));
        int insulation = d.Random.Pick(CraftInsulations), conductors = 4 + d.Random.Next(20);
        return (
            DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(size, Make.Celsius(insulation))),
            Cfr33Part183EngineSpace.Factor(Make.Celsius(insulation)),
            Cfr33Part183ConductorCount.Factor(conductors, Make.V(50)),
            $"{size}",
            $"In a hot machinery space of {d.PrintedCelsius(50)}",
            $"As one of {CountWords.Of(conductors)} loaded conductors in a bundle");
    }
}
