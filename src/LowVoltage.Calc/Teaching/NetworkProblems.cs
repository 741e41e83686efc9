using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on resistances in series and in parallel.</summary>
internal static class NetworkProblems
{
    internal static bool SeriesOneStep(ProblemDraft d)
    {
        DrawnGiven feed = d.Give("feed wire", "R_1", (decimal)(5 + d.Random.Next(90)), "mΩ");
        DrawnGiven fuse = d.Give("fuse and holder", "R_2", (decimal)(2 + d.Random.Next(15)), "mΩ");
        DrawnGiven switched = d.Give("switch", "R_3", (decimal)(3 + d.Random.Next(25)), "mΩ");
        DrawnGiven back = d.Give("return wire", "R_4", (decimal)feed.Value + d.Random.Next(11), "mΩ");
        LoadDraw load = d.DrawLoad();
        d.Say($"{d.Subject(load)} is fed through a fuse with its holder ({fuse}), the feed wire ({feed}) and a switch ({switched}); the current comes back through the return wire ({back}).");
        d.Sketch(
            d.Feeder(),
            [ProblemDraft.Part(DiagramSymbol.Fuse, fuse), ProblemDraft.Part(DiagramSymbol.Wire, "feed wire", feed), ProblemDraft.Part(DiagramSymbol.Switch, switched)],
            [ProblemDraft.Part(load)],
            ProblemDraft.Part(DiagramSymbol.Wire, "return wire", back));
        double[] parts = [feed.Value, fuse.Value, switched.Value, back.Value];
        double total = ResistorNetwork.Series([.. parts.Select(Make.Milliohm)]).Milliohms;
        Formula sum = feed.Symbol + fuse.Symbol + switched.Symbol + back.Symbol;
        d.Ask("What is the resistance of fuse, wires and switch together, out and back?", d.Step("the resistance out and back", "R", sum, total, "mΩ", OhmsLaw.Reference, "One after the other, resistances add."));
        d.Wrong(Mistake.ReturnForgotten, total - back.Value);
        d.Wrong(Mistake.ParallelForSeries, 1 / parts.Sum(r => 1 / r));
        d.Wrong(Mistake.MeanTaken, total / 4);
        d.Wrong(Mistake.PartForgotten, total - switched.Value);
        d.Wrong(Mistake.PartForgotten, total - fuse.Value);
        d.Wrong(Mistake.PartForgotten, total - feed.Value);
        return true;
    }

    internal static bool SeriesSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad(LoadKind.Heater);
        DrawnGiven u = d.Give("voltage of the supply", "U", d.DrawVolts(load.Volts), "V");
        DrawnGiven r = d.Give("resistance of the load", "R", load.Volts / load.Amperes, 3, "Ω");
        DrawnGiven lead = d.Give("resistance of each of the two leads", "R_1", Rounding.Figures(r.Value * (15 + d.Random.Next(60)) / 1000, 2), "Ω");
        d.Say($"{d.Subject(load)} behaves as a plain resistor of {r}. It is connected to {u} through two long leads, one out and one back, of {lead} each.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, lead)], [ProblemDraft.Part(load, r)], ProblemDraft.Part(DiagramSymbol.Wire, lead));
        double total = ResistorNetwork.Series(Make.Ohm(lead.Value), Make.Ohm(r.Value), Make.Ohm(lead.Value)).Ohms;
        Symbol all = d.Step("the resistance of the whole circuit", "R_s", lead.Symbol + r.Symbol + lead.Symbol, total, "Ω", OhmsLaw.Reference, "One after the other, resistances add.");
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(u.Value), Make.Ohm(total)).Current.Amperes;
        Symbol i = d.Step("the current", "I", u.Symbol / all, amperes, "A", OhmsLaw.Reference, "The same current passes all three.");
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(amperes), Make.Ohm(r.Value)).Voltage.Volts;
        d.Ask("What voltage reaches the load?", d.Step("the voltage at the load", "U_x", i * r.Symbol, volts, "V", OhmsLaw.Reference, "Its share of the supply voltage, by Ohm's law."), 4, 0.002 * volts);
        d.Wrong(Mistake.OneLeadOnly, u.Value * r.Value / (r.Value + lead.Value));
        d.Wrong(Mistake.DropForVolts, u.Value - volts);
        d.Wrong(Mistake.DropAdded, u.Value + (2 * amperes * lead.Value));
        d.Wrong(Mistake.CurrentWithoutLeads, u.Value - (u.Value / r.Value * 2 * lead.Value));
        return volts > 0.85 * u.Value;
    }

    internal static bool ParallelOneStep(ProblemDraft d)
    {
        DrawnGiven[] parts = [Draw(d, "R_1"), Draw(d, "R_2"), Draw(d, "R_3")];
        d.Say($"{d.InAtStart}, three {d.World.Site.Heater} of {parts[0]}, {parts[1]} and {parts[2]} are connected in parallel to one switch.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Switch)], [.. parts.Select(part => ProblemDraft.Part(DiagramSymbol.Heater, part))]);
        double total = Parallel(parts);
        d.Ask("What is their combined resistance?", d.Step(
            "the resistance of the three together", "R", 1 / ((1 / (Formula)parts[0].Symbol) + (1 / (Formula)parts[1].Symbol) + (1 / (Formula)parts[2].Symbol)), total, "Ω", OhmsLaw.Reference,
            "In parallel the conductances add."));
        d.Wrong(Mistake.SeriesForParallel, parts.Sum(part => part.Value));
        d.Wrong(Mistake.ReciprocalForgotten, parts.Sum(part => 1 / part.Value));
        d.Wrong(Mistake.MeanTaken, parts.Sum(part => part.Value) / 3);
        d.Wrong(Mistake.PartForgotten, Parallel([parts[0], parts[1]]));
        d.Wrong(Mistake.PartForgotten, Parallel([parts[0], parts[2]]));
        d.Wrong(Mistake.PartForgotten, Parallel([parts[1], parts[2]]));
        return total is > 0.3 and < 20;
    }

    internal static bool ParallelSeveralSteps(ProblemDraft d)
    {
        DrawnGiven u = d.Give("voltage", "U", d.DrawVolts(d.Random.Pick(d.World.Supplies)), "V");
        DrawnGiven n = d.Give("number of equal lamps", "n", (decimal)(2 + d.Random.Next(7)), "");
        DrawnGiven lamp = d.Give("resistance of one lamp, hot", "R_1", Rounding.Figures(u.Value * u.Value / (5 + d.Random.Next(36)), 3), "Ω");
        DrawnGiven fan = d.Give("resistance of the heater", "R_2", Rounding.Figures(u.Value * u.Value / (20 + d.Random.Next(81)), 3), "Ω");
        d.Say($"{d.InAtStart}, {n} identical lamps of {lamp} each (hot) and one heater of {fan} are all connected in parallel to {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(DiagramSymbol.Lamp, $"{n} × {lamp}"), ProblemDraft.Part(DiagramSymbol.Heater, fan)]);
        ElectricResistance[] all = [Make.Ohm(fan.Value), .. Enumerable.Repeat(Make.Ohm(lamp.Value), (int)n.Value)];
        double ohms = ResistorNetwork.Parallel(all).Ohms;
        Symbol r = d.Step("the resistance of all together", "R", 1 / ((n.Symbol / lamp.Symbol) + (1 / (Formula)fan.Symbol)), ohms, "Ω", OhmsLaw.Reference, "In parallel the conductances add; equal lamps add theirs n times.");
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(u.Value), Make.Ohm(ohms)).Current.Amperes;
        d.Ask("What current does the supply deliver?", d.Step("the current of all together", "I", u.Symbol / r, amperes, "A", OhmsLaw.Reference, "Ohm's law for the whole."));
        d.Wrong(Mistake.SeriesForParallel, u.Value / ((n.Value * lamp.Value) + fan.Value));
        d.Wrong(Mistake.PartForgotten, n.Value * u.Value / lamp.Value);
        d.Wrong(Mistake.MeanTaken, u.Value * (n.Value + 1) / ((n.Value * lamp.Value) + fan.Value));
        d.Wrong(Mistake.Multiplied, u.Value * ohms);
        return amperes is > 0.5 and < 40;
    }

    private static DrawnGiven Draw(ProblemDraft d, string name) => d.Give("one of the three", name, d.Random.OnGrid(4m, 24m, 0.2m), "Ω");

    private static double Parallel(IEnumerable<DrawnGiven> parts) => ResistorNetwork.Parallel([.. parts.Select(part => Make.Ohm(part.Value))]).Ohms;
}
