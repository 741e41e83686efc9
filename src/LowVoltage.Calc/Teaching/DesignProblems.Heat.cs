using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <content>Questions on heat, energy and the time that a fuse takes.</content>
internal static partial class DesignProblems
{
    private static bool Time(ProblemDraft d, DesignCircuit c)
    {
        // The standard gives no times for the smallest ratings.
        if (c.Right.Rating < FuseProblems.LeastTimed)
        {
            return false;
        }

        d.Say("Such a fuse opens in 0.15 s to 5 s at 2 times its rating and in 0.04 s to 0.5 s at 3.5 times; in between, the longest time follows a straight line on logarithmic axes.");
        DrawnGiven m = d.Give("overload as a multiple of the rating of the fuse chosen", "m", Rounding.Trimmed(d.Random.OnGrid(2.2m, 3.3m, 0.05m)), "");
        d.Say($"A fault in the load drives {m} times the rating of your fuse.");
        d.Warn(FuseProblems.Paper);
        Symbol m1 = d.Choose("the multiple below", "m_1", 2, "", null, "From the statement."), t1 = d.Choose("its longest time", "t_1", 5, "s", null, "From the statement.");
        Symbol m2 = d.Choose("the multiple above", "m_2", 3.5, "", null, "From the statement."), t2 = d.Choose("its longest time", "t_2", 0.5, "s", null, "From the statement.");
        Symbol slope = d.Step("the slope on logarithmic axes", "n", Formula.Logarithm(t2 / t1) / Formula.Logarithm(m2 / m1), "", null, "Change of the logarithm of time over that of current.");
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(Make.A(c.Right.Rating));
        double longest = fuse.OperatingTime(Make.A(c.Right.Rating * m.Value)).Longest.Seconds;
        d.Ask("How long may the fuse that you choose take at most to open?", d.Step("the longest time", "t", t1 * Formula.Power(m.Symbol / m1, slope), longest, "s", OperatingTimeLimits.RoadVehicleBlade.Reference, "The same for every rating of the series."), 3, 0.02 * longest);
        d.Wrong(Mistake.LinearForLogarithmic, 5 + (-4.5 * (m.Value - 2) / 1.5));
        d.Wrong(Mistake.NotInterpolated, 5);
        d.Wrong(Mistake.NextGate, 0.5);
        d.Wrong(Mistake.LeastForLongest, fuse.OperatingTime(Make.A(c.Right.Rating * m.Value)).Least.Seconds);
        return true;
    }

    private static bool Heat(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven k = d.Give("k of copper with PVC", "k_c", HeatingProblems.K(d, 115), d.Gauges ? "A·√s/cmil" : "A·√s/mm²");
        DrawnGiven i = d.Give("short-circuit current", "I_p", (decimal)(150 + (10 * d.Random.Next(60))), "A");
        d.Say($"A short circuit just behind the fuse would draw {i}; as long as no heat escapes, the wire withstands I²·t = k²·S² with k = {k}.");
        d.Warn(FuseProblems.Paper);
        Symbol s = d.Choose("cross-section of the size chosen", "S", (double)c.Right.Row.Section, d.SectionUnit, null, "From the same row.");
        Symbol t = d.Step("the time", "t", Formula.Square(k.Symbol) * Formula.Square(s) / Formula.Square(i.Symbol), "s", Heating.AdiabaticHeating.Reference, "The equation solved for the time.");
        d.Ask("Within what time must the fuse open to protect the wire that you choose?", t);
        d.Wrong(Mistake.SquareForgotten, k.Value * s.Value / i.Value);
        d.Wrong(Mistake.SectionNotSquared, t.Value / s.Value);
        return Finish(d, c, choice => t.Value * Math.Pow((double)choice.Row.Section / s.Value, 2)) && t.Value is > 0.02 and < 5 && i.Value <= d.World.Site.MostFaultAmperes;
    }

    private static bool Lost(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double watts = (double)VoltageDrop.Lost(Make.A(c.Right.Amperes), Make.Ohm(r.Value)).Watts;
        d.Ask("How many watts are lost, out and back, with the wire that you choose?", d.Step("the power lost", "P_v", Formula.Square(c.Current) * r, watts, "W", OhmsLaw.Reference, "Heat in a resistance is I²·R."));
        d.Wrong(Mistake.SquareForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.SupplyAcrossWire, c.U.Value * c.U.Value / r.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Amperes * choice.Ohms);
    }

    private static bool Energy(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven t = d.Give("hours a day", "t", d.Random.OnGrid(1m, 12m, 0.5m), "h");
        d.Say($"The load runs {t} a day.");
        Symbol r = c.StepResistance();
        double lost = ElectricalEnergy.Lost(Make.A(c.Right.Amperes), Make.Ohm(r.Value), UnitsNet.Duration.FromHours(t.Value)).WattHours;
        d.Ask("How many watt-hours a day are lost, out and back, with the wire that you choose?", d.Step("the energy lost in a day", "W_v", Formula.Square(c.Current) * r * t.Symbol, lost, "Wh", OhmsLaw.Reference, "I²·R for that time."));
        d.Wrong(Mistake.SquareForgotten, c.Right.Amperes * r.Value * t.Value);
        d.Wrong(Mistake.WattsForAmperes, c.P.Value * c.P.Value * r.Value * t.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Amperes * choice.Ohms * t.Value);
    }
}
