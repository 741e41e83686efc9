using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on voltage drop and on what reaches the load.</summary>
internal static class DropProblems
{
    internal static bool DropOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        if (d.DrawWire(load.Amperes) is not { } row)
        {
            return false;
        }

        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven l = d.Give("length of conductor, out and back", "L", Rounding.Trimmed(2 * d.DrawDistance()), d.LengthUnit);
        DrawnGiven per = d.Give("resistance per length", "R′", d.PerLengthOf(row), d.PerLengthUnit);
        d.Say($"{d.Subject(load)} draws {i} through {row.Text} copper wire. The wires, out and back together, are {l} long and have a resistance of {per}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, row.Text, $"out and back {l}", per)], [ProblemDraft.Part(load, i)], ProblemDraft.Part(DiagramSymbol.Wire, row.Text));
        double volts = VoltageDrop.Along(d.PerLength(per.Value), d.LengthOf(l.Value), Make.A(i.Value)).Volts;
        d.Ask("How many volts are lost in the wire?", d.Step("the voltage drop", "ΔU", i.Symbol * per.Symbol * l.Symbol / 1000, volts, "V", OhmsLaw.Reference, "Current times resistance per length times length."));
        d.Wrong(Mistake.LoopDoubled, 2 * volts);
        d.Wrong(Mistake.ReturnForgotten, volts / 2);
        d.Wrong(Mistake.PerThousandLost, 1000 * volts);
        d.Wrong(Mistake.PowerForDrop, i.Value * volts);
        return volts > 0.02 && volts < 0.1 * load.Volts;
    }

    internal static bool DropSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        if (d.DrawWire(load.Amperes) is not { } row)
        {
            return false;
        }

        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage", "U", load.Volts, "V");
        DrawnGiven l = d.Give("distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        DrawnGiven per = d.Give("resistance per length", "R′", d.PerLengthOf(row), d.PerLengthUnit);
        d.Say($"{d.Subject(load)}, rated {p} at {u}, is {l} from the {d.World.Feeder} (one way). Both wires, out and back, are {row.Text} copper with a resistance of {per}. Take the current at {u}.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text, per)], [ProblemDraft.Part(load, p)], ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text));
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        Symbol loop = d.Step("the length of conductor", "L_s", 2 * l.Symbol, d.LengthUnit, null, "The current runs out and back.");
        double volts = VoltageDrop.Along(d.PerLength(per.Value), d.LengthOf(loop.Value), Make.A(amperes)).Volts;
        d.Ask("How many volts are lost, out and back?", d.Step("the voltage drop", "ΔU", i * per.Symbol * loop / 1000, volts, "V", OhmsLaw.Reference, "Current times resistance per length times length."));
        d.Wrong(Mistake.OneWayTakenForLoop, volts / 2);
        d.Wrong(Mistake.WattsForAmperes, volts * u.Value);
        d.Wrong(Mistake.PerThousandLost, volts * 1000);
        d.Wrong(Mistake.PowerForDrop, volts * amperes);
        return volts > 0.02 && volts < 0.1 * load.Volts;
    }

    internal static bool AtLoadOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven u = d.Give("voltage at the supply", "U", d.DrawVolts(load.Volts), "V");
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven r = d.Give("resistance of each of the two leads", "R", Rounding.Figures(u.Value / load.Amperes * (8 + d.Random.Next(42)), 2), "mΩ");
        d.Say($"{d.InAtStart}, the {d.World.Feeder} delivers {u}. {load.OneAtStart} draws {i} through two leads, out and back, of {r} each.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, r)], [ProblemDraft.Part(load, i)], ProblemDraft.Part(DiagramSymbol.Wire, r));
        double volts = InternalResistance.TerminalVoltage(Make.V(u.Value), Make.Milliohm(2 * r.Value), Make.A(i.Value)).Volts;
        d.Ask("What voltage reaches the load?", d.Step("the voltage at the load", "U_x", u.Symbol - (i.Symbol * 2 * r.Symbol / 1000), volts, "V", OhmsLaw.Reference, "Both leads drop I·R."), 4, 0.001 * volts);
        d.Wrong(Mistake.OneLeadOnly, u.Value - (i.Value * r.Value / 1000));
        d.Wrong(Mistake.DropForVolts, u.Value - volts);
        d.Wrong(Mistake.DropAdded, u.Value + (u.Value - volts));
        return volts > 0.88 * u.Value && r.Value <= MostLead(d);
    }

    internal static bool AtLoadSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad(LoadKind.Electronics);
        DrawnGiven p = d.Give("power of the load, constant", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage at the supply", "U", d.DrawVolts(load.Volts), "V");
        DrawnGiven r = d.Give("resistance of the leads, out and back together", "R", Rounding.Figures((double)load.Volts * load.Volts / load.Watts * (45 + d.Random.Next(50)), 2), "mΩ");
        d.Say($"{d.Subject(load)} has a built-in converter and takes a constant {p}, whatever its voltage. The {d.World.Feeder} delivers {u}; the leads, out and back together, have a resistance of {r}.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, $"out and back {r}")], [ProblemDraft.Part(load, $"constant {p}")]);
        OperatingPoint point = Solve(u.Value, r.Value, p.Value);
        double amperes = point.Current.Amperes, volts = point.VoltageAtLoad.Volts, ohms = r.Value / 1000;
        Symbol lead = d.Step("the resistance of the leads in ohms", "R_l", r.Symbol / 1000, "Ω", null, "1000 mΩ are 1 Ω.");
        Formula root = Formula.SquareRoot(Formula.Square(u.Symbol) - (4 * lead * p.Symbol));
        Symbol i = d.Step("the current", "I", (u.Symbol - root) / (2 * lead), amperes, "A", OhmsLaw.Reference,
            "From P = (U − I·R)·I, a quadratic in I; of its two roots the load works at the smaller current.");
        d.Ask("What voltage reaches the load?", d.Step("the voltage at the load", "U_x", u.Symbol - (i * lead), volts, "V", OhmsLaw.Reference, "The supply less the drop."), 4, 0.001 * volts);
        d.Wrong(Mistake.CurrentAtSupply, u.Value - (p.Value / u.Value * ohms));
        d.Wrong(Mistake.DropForVolts, u.Value - volts);
        d.Wrong(Mistake.DropAdded, u.Value + (u.Value - volts));
        OperatingPoint twice = Solve(u.Value, 2 * r.Value, p.Value);
        d.Wrong(Mistake.LoopDoubled, twice.Exists ? twice.VoltageAtLoad.Volts : 0);
        return point.Exists && volts > 0.85 * u.Value && r.Value <= 2 * MostLead(d);
    }

    // One lead of 0.5 mm², as far as this world goes, in mΩ; always below 1 Ω.
    private static double MostLead(ProblemDraft d) => 39 * d.World.MostMeters;

    // A pair of ideal leads of that resistance, at 20 °C, for which it is stated.
    private static OperatingPoint Solve(double volts, double milliohms, double watts)
    {
        Conductor lead = Conductor.Stated(Quantities.LinearResistance.FromOhmsPerMeter(milliohms / 1000), Make.Mm2(1000), ConductorMaterial.Copper);
        CircuitPath path = CircuitPath.Create(Segment.Create(lead, UnitsNet.Length.FromMeters(1)), ReturnPath.Chassis(Make.Ohm(0)));
        return OperatingPoint.Solve(Source.Ideal(Make.V(volts)), path, Load.ConstantPower(Make.W(watts)), ConductorTemperature.At(Make.Celsius(20)));
    }
}
