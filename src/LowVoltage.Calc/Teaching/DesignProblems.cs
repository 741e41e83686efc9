using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Design problems: one circuit, wire and fuse to be chosen and defended; each topic asks for what belongs to it in the circuit chosen.</summary>
internal static partial class DesignProblems
{
    internal static Func<ProblemDraft, bool> For(ProblemTopic topic) => draft => Write(draft, topic);

    private static bool Write(ProblemDraft d, ProblemTopic topic)
    {
        if (DesignCircuit.Draw(d, topic == ProblemTopic.ChassisReturn) is not { } circuit)
        {
            return false;
        }

        d.Warn("A plan on paper. Real wiring follows the rules of its place and is looked over by somebody who answers for it.");
        return topic switch
        {
            ProblemTopic.SmallestSize => Size(d, circuit),
            ProblemTopic.FuseChoice => Fuse(d, circuit),
            ProblemTopic.AmpacityDerating => Derated(d, circuit),
            ProblemTopic.FuseOpeningTime => Time(d, circuit),
            ProblemTopic.WireGeometry => Density(d, circuit),
            ProblemTopic.AdiabaticHeating => Heat(d, circuit),
            ProblemTopic.WireResistance or ProblemTopic.SeriesResistance => Resistance(d, circuit),
            ProblemTopic.ParallelResistance => Doubled(d, circuit),
            ProblemTopic.TemperatureCorrection => Hot(d, circuit),
            ProblemTopic.Power => Lost(d, circuit),
            ProblemTopic.BatteryEnergy => Energy(d, circuit),
            ProblemTopic.VoltageAtLoad => AtLoad(d, circuit),
            ProblemTopic.BatteryResistance => WithBattery(d, circuit),
            ProblemTopic.ProspectiveCurrent => Prospective(d, circuit),
            ProblemTopic.JointDrop => WithJoints(d, circuit),
            ProblemTopic.LampVoltage => Percent(d, circuit),
            _ => Drop(d, circuit),
        };
    }

    private static bool Size(ProblemDraft d, DesignCircuit c)
    {
        d.AskStandard("Which size do you choose?", d.Choose("the size chosen", "S", c.Right.Row.Value, d.SizeUnit, null, "The smallest that meets both conditions."), c.Rows.Select(row => row.Value));
        return Finish(d, c, choice => choice.Row.Value);
    }

    private static bool Fuse(ProblemDraft d, DesignCircuit c)
    {
        Symbol rating = d.Choose("the fuse chosen", "I_f", c.Rating.Value, "A", FuseSeries.RoadVehicleBlade.Reference, "As found above; the wire is chosen for it.");
        d.AskStandard("Which fuse do you choose?", rating, FuseProblems.Standards);
        d.Wrong(Mistake.LoadingForgotten, FuseProblems.Rating(c.Right.Amperes));
        d.Wrong(Mistake.LoadingMultiplied, FuseProblems.Rating(c.Right.Amperes * c.Loading.Value));
        d.Wrong(Mistake.LoadingTwice, FuseProblems.Rating(c.Right.Amperes / c.Loading.Value / c.Loading.Value));
        d.Wrong(Mistake.WattsForAmperes, FuseProblems.Rating(c.P.Value / c.Loading.Value));
        d.Wrong(Mistake.RoundedDown, FuseSeries.RoadVehicleBlade.NextSmaller(Make.A(rating.Value))?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.TooLargeByOne, FuseSeries.RoadVehicleBlade.NextLarger(Make.A(rating.Value))?.Current.Amperes ?? double.NaN);
        d.Wrong(Mistake.FuseByTheTable, FuseProblems.Rating(c.TableAmperes.Value));
        return true;
    }

    private static bool Derated(ProblemDraft d, DesignCircuit c)
    {
        double table = c.TableAmperes.Value, f = c.Factor.Value;
        d.Ask("What current may the wire that you choose carry there?", d.Step("the current it may carry", "I_z", c.TableAmperes * c.Factor.Symbol, "A", null, "The table's current, once derated."));
        d.Wrong(Mistake.DeratingForgotten, table);
        d.Wrong(Mistake.DeratingInverted, table / f);
        d.Wrong(Mistake.DeratingComplement, table * (1 - f));
        d.Wrong(Mistake.DeratingTwice, table * f * f);
        return Finish(d, c, choice => (double)choice.Row.Amperes * f);
    }

    private static bool Density(ProblemDraft d, DesignCircuit c)
    {
        Symbol s = d.Choose("cross-section of the size chosen", "S", (double)c.Right.Row.Section, d.SectionUnit, null, "From the same row.");
        if (d.Gauges)
        {
            // United States practice counts circular mils per ampere, which says the same the other way up.
            d.Ask("How many circular mils per ampere does the wire that you choose give the load?", d.Step("the cross-section per ampere", "s", s / c.Current, "cmil/A", null, "Cross-section over current."));
            d.Wrong(Mistake.Inverted, c.Right.Amperes / (double)c.Right.Row.Section);
            return Finish(d, c, choice => (double)choice.Row.Section / choice.Amperes) && d.Answer.Value >= 240;
        }

        d.Ask("What current density does the load cause in the wire that you choose?", d.Step("the current density", "J", c.Current / s, "A/mm²", null, "Current over cross-section."));
        d.Wrong(Mistake.Inverted, (double)c.Right.Row.Section / c.Right.Amperes);
        return Finish(d, c, choice => choice.Amperes / (double)choice.Row.Section) && d.Answer.Value <= 8;
    }

    // The same question asked of the wires that mistakes lead to.
    private static bool Finish(ProblemDraft d, DesignCircuit c, Func<DesignChoice, double> value)
    {
        foreach ((Mistake mistake, DesignChoice choice) in DesignMistakes.Of(c))
        {
            d.Wrong(mistake, value(choice));
        }

        return true;
    }
}
