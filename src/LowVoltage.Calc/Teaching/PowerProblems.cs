using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on power.</summary>
internal static class PowerProblems
{
    internal static bool OneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven u = d.Give("voltage", "U", d.DrawVolts(load.Volts), "V");
        if (d.Random.Next(2) == 0)
        {
            DrawnGiven p = d.Give("power", "P", load.Watts, "W");
            d.Say($"{d.Subject(load)} takes {p} at {u}.");
            d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, p)]);
            double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
            d.Ask("What current does it draw?", d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Power is voltage times current."));
            d.Wrong(Mistake.WattsForAmperes, p.Value);
            d.Wrong(Mistake.Inverted, u.Value / p.Value);
            d.Wrong(Mistake.Multiplied, u.Value * p.Value);
            d.Wrong(Mistake.SquareAdded, p.Value / (u.Value * u.Value));
            return amperes is > 0.1 and < 60;
        }

        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        d.Say($"{d.Subject(load)} draws {i} at {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, i)]);
        double watts = (double)OhmsLaw.FromVoltageAndCurrent(Make.V(u.Value), Make.A(i.Value)).Power.Watts;
        d.Ask("What power does it take?", d.Step("the power", "P", u.Symbol * i.Symbol, watts, "W", OhmsLaw.Reference, "Power is voltage times current."));
        d.Wrong(Mistake.Divided, u.Value / i.Value);
        d.Wrong(Mistake.Inverted, i.Value / u.Value);
        d.Wrong(Mistake.SquareAdded, u.Value * i.Value * i.Value);
        d.Wrong(Mistake.ThousandTooMuch, watts / 1000);
        return watts is > 2 and < 500;
    }

    internal static bool SeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven u = d.Give("voltage at the load", "U", load.Volts, "V");
        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        DrawnGiven r = d.Give("resistance of the leads, out and back together", "R", (decimal)(8 + d.Random.Next(143)), "mΩ");
        d.Say($"{d.Subject(load)} takes {p} at {u}. Its leads, out and back together, have a resistance of {r}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, $"out and back {r}")], [ProblemDraft.Part(load, p, $"at {u}")]);
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "The leads carry the current of the load.");
        double watts = (double)VoltageDrop.Lost(Make.A(amperes), Make.Milliohm(r.Value)).Watts;
        d.Ask("How much power do the leads turn into heat?", d.Step(
            "the power lost in the leads", "P_v", Formula.Square(i) * r.Symbol / 1000, watts, "W", OhmsLaw.Reference, "Heat in a resistance is I²·R; the milliohms are divided by 1000."));
        d.Wrong(Mistake.SquareForgotten, amperes * r.Value / 1000);
        d.Wrong(Mistake.SupplyAcrossWire, u.Value * u.Value / (r.Value / 1000));
        d.Wrong(Mistake.MilliLost, watts * 1000);
        d.Wrong(Mistake.WattsForAmperes, p.Value * p.Value * r.Value / 1000);
        return watts is > 0.01 and < 60 && watts < 0.15 * p.Value;
    }
}
