using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on the smallest wire that keeps a drop within its limit.</summary>
internal static class SizeProblems
{
    internal static bool OneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven rho = d.Feet ? d.Give("resistivity of copper at 20 °C", "ρ", 10.4m, "Ω·cmil/ft") : d.Give("resistivity of copper at 20 °C", "ρ", 0.0172m, "Ω·mm²/m");
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven l = d.Give("length of conductor, out and back", "L", Rounding.Trimmed(2 * d.DrawDistance()), d.LengthUnit);
        DrawnGiven drop = d.Give("allowed drop", "ΔU", Rounding.Figures(load.Volts * (2 + d.Random.Next(4)) / 100.0, 2), "V");
        d.Say($"{d.Subject(load)} draws {i} through copper wire. The wires, out and back together, are {l} long, and no more than {drop} may be lost in them. The resistivity of copper is {rho} at {d.At20}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, $"out and back {l}", $"at most {drop} lost")], [ProblemDraft.Part(load, i)]);
        double section = Section(d, rho.Value, l.Value, i.Value, drop.Value);
        string unit = d.Feet ? "cmil" : "mm²";
        d.Ask("What is the smallest cross-section that the wire may have?", d.Step("the least cross-section", "S", rho.Symbol * l.Symbol * i.Symbol / drop.Symbol, section, unit, null, "ρ·L/S times I may be at most the allowed drop; solved for S."));
        d.Wrong(Mistake.LoopDoubled, 2 * section);
        d.Wrong(Mistake.ReturnForgotten, section / 2);
        d.Wrong(Mistake.Multiplied, rho.Value * l.Value * i.Value * drop.Value);
        d.Wrong(Mistake.ThousandTooMuch, 1000 * section);
        d.Wrong(Mistake.SquareAdded, i.Value * section);
        return section * (d.Feet ? CircularMil.SquareMillimeters : 1) is > 0.2 and < 50;
    }

    internal static bool SeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage", "U", load.Volts, "V");
        DrawnGiven share = d.Give("allowed drop, of the voltage", "p", (decimal)(2 + d.Random.Next(4)), "%");
        DrawnGiven l = d.Give("distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        IReadOnlyList<WireRow> rows = WireRow.Sizes(d.Gauges);
        d.Say($"{d.Subject(load)}, rated {p} at {u}, is {l} from the {d.World.Feeder} (one way). No more than {share} of the voltage may be lost, out and back. Take the current at {u} and copper at {d.At20}. These wires are available:");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, l, "? size")], [ProblemDraft.Part(load, p)], ProblemDraft.Part(DiagramSymbol.Wire, l, "? size"));
        d.Show(new ProblemTable(["size", d.PerLengthUnit], [.. rows.Select(row => (IReadOnlyList<string>)[row.Text, AnswerText.Digits((double)d.PerLengthOf(row), 3)])]));
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        Symbol drop = d.Step("the allowed drop in volts", "ΔU", share.Symbol / 100 * u.Symbol, "V", null, "The share of the voltage.");
        double ohms = VoltageDrop.GreatestResistance(Make.A(amperes), Make.V(drop.Value)).Ohms;
        Symbol r = d.Step("the resistance allowed out and back", "R", drop / i, ohms, "Ω", OhmsLaw.Reference, "Ohm's law for the wires.");
        Symbol most = d.Step("the resistance per length allowed", "R′_m", r / (2 * l.Symbol) * 1000, d.PerLengthUnit, null, "Over twice the distance, out and back.");
        if (First(d, rows, most.Value) is not { } fit || rows.Any(row => Rounding.IsTooNear(most.Value, (double)d.PerLengthOf(row))))
        {
            return false;
        }

        Symbol chosen = d.Choose("resistance per length of the smallest size that does not exceed it", "R′", (double)d.PerLengthOf(fit), d.PerLengthUnit, null, $"From the table: {fit.Text}.");
        d.Compare("whether it keeps within the limit", chosen, Relation.AtMost, most, "It is the first row of the table that does.");
        d.AskStandard("Which is the smallest size that will do?", d.Choose("the smallest size", "S", fit.Value, d.SizeUnit, null, "The size in that row."), rows.Select(row => row.Value));
        WrongSize(d, rows, Mistake.OneWayTakenForLoop, 2 * most.Value);
        WrongSize(d, rows, Mistake.DoubledTwice, most.Value / 2);
        WrongSize(d, rows, Mistake.WattsForAmperes, most.Value / u.Value);
        WrongSize(d, rows, Mistake.PercentTakenAsVolts, most.Value * share.Value / drop.Value);
        int at = IndexOf(rows, fit);
        d.Wrong(Mistake.RoundedDown, at > 0 ? rows[at - 1].Value : double.NaN);
        d.Wrong(Mistake.TooThick, at + 1 < rows.Count ? rows[at + 1].Value : double.NaN);
        return at > 0 && fit.SquareMillimeters < 36 && amperes / fit.SquareMillimeters < 6;
    }

    private static double Section(ProblemDraft d, double rho, double length, double amperes, double volts)
    {
        double ohmMm2PerMeter = d.Feet ? rho * CircularMil.SquareMillimeters / 0.3048 : rho;
        UnitsNet.Area least = VoltageDrop.LeastArea(Make.OhmMm2PerMeter(ohmMm2PerMeter), d.LengthOf(length), Make.A(amperes), Make.V(volts));
        return d.Feet ? CircularMil.FromArea(least) : least.SquareMillimeters;
    }

    private static WireRow? First(ProblemDraft d, IReadOnlyList<WireRow> rows, double most) => rows.FirstOrDefault(row => (double)d.PerLengthOf(row) <= most);

    private static void WrongSize(ProblemDraft d, IReadOnlyList<WireRow> rows, Mistake mistake, double most) => d.Wrong(mistake, First(d, rows, most)?.Value ?? double.NaN);

    private static int IndexOf(IReadOnlyList<WireRow> rows, WireRow row)
    {
        int at = 0;
        while (rows[at] != row)
        {
            at++;
        }

        return at;
    }
}
