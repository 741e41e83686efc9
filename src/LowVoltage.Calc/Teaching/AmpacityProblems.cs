using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on derating: a table's current in a hotter place and beside other wires.</summary>
internal static class AmpacityProblems
{
    internal static bool OneStep(ProblemDraft d) => Write(d, grouped: false);

    internal static bool SeveralSteps(ProblemDraft d) => Write(d, grouped: true);

    private static bool Write(ProblemDraft d, bool grouped)
    {
        RatedWire wire = RatedWire.Draw(d);
        DrawnGiven table = d.Give("current by the table", "I_t", (decimal)wire.Rated.Current.Amperes, "A");
        DrawnGiven hot = d.Give("factor for the hot place", "f_1", (decimal)wire.Warmth.Value, "");
        int insulation = (int)Math.Round(wire.Rated.Rating.InsulationRating.DegreesCelsius), air = (int)Math.Round(wire.Rated.Rating.Table.BaseAmbient.DegreesCelsius);
        d.Say($"{d.FedBy(d.DrawLoad(), $"{ProblemDraft.Article(wire.Size)} {wire.Size} copper wire with insulation rated {d.PrintedRating(insulation)}")}. {wire.Table} gives the wire {table} at {d.PrintedRating(air)} with no other circuit beside it. {wire.Place}; the derating factor for that is {hot}.");
        DeratedAmpacity result = wire.Rated.With(wire.Warmth);
        Formula formula = table.Symbol * hot.Symbol;
        double twice = table.Value * hot.Value * hot.Value;
        if (grouped)
        {
            DrawnGiven beside = d.Give("factor for the bundle", "f_2", (decimal)wire.Group.Value, "");
            d.Say($"{wire.Company}; the factor for that is {beside}.");
            Symbol first = d.Step("the current in the hot place", "I_h", formula, result.Current.Amperes, "A", wire.Warmth.Reference, "The table's current times the factor for the heat.");
            // The handbook of vehicle wire has no factors for bundles; those of IEC 60364 stand in, as in the library's own basis.
            result = wire.Group.RuleSet == wire.Rated.Rating.Table.RuleSet ? result.With(wire.Group) : result.WithForeignFactor(wire.Group);
            formula = first * beside.Symbol;
            twice *= beside.Value;
            d.Wrong(Mistake.OneFactorOnly, table.Value * hot.Value);
            d.Wrong(Mistake.OneFactorOnly, table.Value * beside.Value);
            d.Wrong(Mistake.FactorsAveraged, table.Value * (hot.Value + beside.Value) / 2);
        }

        double amperes = result.Current.Amperes;
        d.Ask("What current may the wire carry there continuously?", d.Step(
            "the current it may carry", "I_z", formula, amperes, "A", grouped ? wire.Group.Reference : wire.Warmth.Reference, "Each condition reduces what the wire may carry once."));
        d.Wrong(Mistake.DeratingForgotten, table.Value);
        d.Wrong(Mistake.DeratingTwice, twice);
        d.Wrong(Mistake.DeratingTwice, grouped ? amperes * wire.Group.Value : double.NaN);
        d.Wrong(Mistake.DeratingInverted, table.Value * table.Value / amperes);
        d.Wrong(Mistake.DeratingComplement, table.Value - amperes);
        return hot.Value < 1 && (!grouped || wire.Group.Value < 1);
    }

}
