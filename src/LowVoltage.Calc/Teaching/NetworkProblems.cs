using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on resistances in series and in parallel.</summary>
internal static class NetworkProblems
{
    internal static bool SeriesOneStep(ProblemDraft d)
    {
        DrawnGiven feed = d.Give("wire out", "R_1", (decimal)(5 + d.Random.Next(90)), "mΩ");
        DrawnGiven fuse = d.Give("fuse and holder", "R_2", (decimal)(2 + d.Random.Next(15)), "mΩ");
        DrawnGiven switched = d.Give("switch", "R_3", (decimal)(3 + d.Random.Next(25)), "mΩ");
        DrawnGiven back = d.Give("wire back", "R_4", (decimal)feed.Value + d.Random.Next(11), "mΩ");
        d.Say($"{d.World.InAtStart}, the current of {d.DrawLoad().One} passes a fuse with its holder ({fuse}), the wire out ({feed}), a switch ({switched}) and the wire back ({back}).");
        double[] parts = [feed.Value, fuse.Value, switched.Value, back.Value];
        double total = ResistorNetwork.Series([.. parts.Select(Make.Milliohm)]).Milliohms;
        Formula sum = feed.Symbol + fuse.Symbol + switched.Symbol + back.Symbol;
        d.Ask("What is the resistance of the whole way?", d.Step("the resistance of the whole way", "R", sum, total, "mΩ", OhmsLaw.Reference, "One after the other, resistances add."));
        d.Wrong(Mistake.ReturnForgotten, total - back.Value);
        d.Wrong(Mistake.ParallelForSeries, 1 / parts.Sum(r => 1 / r));
        d.Wrong(Mistake.MeanTaken, total / 4);
        d.Wrong(Mistake.PartForgotten, total - switched.Value);
        return true;
    }

    internal static bool SeriesSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad(LoadKind.Heater);
        DrawnGiven u = d.Give("voltage of the supply", "U", load.Volts, "V");
        DrawnGiven r = d.Give("resistance of the load", "R", load.Volts / load.Amperes, 3, "Ω");
        DrawnGiven lead = d.Give("resistance of each of the two leads", "R_1", Rounding.Figures(r.Value * (15 + d.Random.Next(60)) / 1000, 2), "Ω");
        d.Say($"{d.World.InAtStart}, {load.One}, a plain resistance of {r}, is connected to {u} through two long leads, one out and one back, of {lead} each.");
        double total = ResistorNetwork.Series(Make.Ohm(lead.Value), Make.Ohm(r.Value), Make.Ohm(lead.Value)).Ohms;
        Symbol all = d.Step("the resistance of the whole circuit", "R_s", lead.Symbol + r.Symbol + lead.Symbol, total, "Ω", OhmsLaw.Reference, "One after the other, resistances add.");
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(u.Value), Make.Ohm(total)).Current.Amperes;
        Symbol i = d.Step("the current", "I", u.Symbol / all, amperes, "A", OhmsLaw.Reference, "The same current passes all three.");
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(amperes), Make.Ohm(r.Value)).Voltage.Volts;
        d.Ask("What voltage reaches the load?", d.Step("the voltage at the load", "U_x", i * r.Symbol, volts, "V", OhmsLaw.Reference, "Its share of the supply voltage."), 4, 0.002 * volts);
        d.Wrong(Mistake.OneLeadOnly, u.Value * r.Value / (r.Value + lead.Value));
        d.Wrong(Mistake.DropForVolts, u.Value - volts);
        d.Wrong(Mistake.DropAdded, u.Value + (2 * amperes * lead.Value));
        d.Wrong(Mistake.CurrentWithoutLeads, u.Value - (u.Value / r.Value * 2 * lead.Value));
        return volts > 0.85 * u.Value;
    }

    internal static bool ParallelOneStep(ProblemDraft d)
    {
        DrawnGiven[] parts = [Draw(d, "R_1"), Draw(d, "R_2"), Draw(d, "R_3")];
        d.Say($"{d.World.InAtStart}, three {d.World.Site.Heater} of {parts[0]}, {parts[1]} and {parts[2]} are connected side by side to one switch.");
        double total = Parallel(parts);
        d.Ask("What is their resistance together?", d.Step(
            "the resistance of the three together", "R", 1 / ((1 / (Formula)parts[0].Symbol) + (1 / (Formula)parts[1].Symbol) + (1 / (Formula)parts[2].Symbol)), total, "Ω", OhmsLaw.Reference,
            "Side by side the conductances add."));
        d.Wrong(Mistake.SeriesForParallel, parts.Sum(part => part.Value));
        d.Wrong(Mistake.ReciprocalForgotten, parts.Sum(part => 1 / part.Value));
        d.Wrong(Mistake.MeanTaken, parts.Sum(part => part.Value) / 3);
        d.Wrong(Mistake.PartForgotten, Parallel([parts[0], parts[1]]));
        return total is > 0.3 and < 20;
    }

    internal static bool ParallelSeveralSteps(ProblemDraft d)
    {
        DrawnGiven u = d.Give("voltage", "U", d.Random.Pick(d.World.Supplies), "V");
        DrawnGiven n = d.Give("number of equal lamps", "n", (decimal)(2 + d.Random.Next(7)), "");
        DrawnGiven lamp = d.Give("resistance of one lamp, hot", "R_1", Rounding.Figures(u.Value * u.Value / (5 + d.Random.Next(36)), 3), "Ω");
        DrawnGiven fan = d.Give("resistance of the heater", "R_2", Rounding.Figures(u.Value * u.Value / (20 + d.Random.Next(81)), 3), "Ω");
        d.Say($"{d.World.InAtStart}, {n} equal lamps of {lamp} each (hot) and one heater of {fan} are all connected side by side to {u}.");
        ElectricResistance[] all = [Make.Ohm(fan.Value), .. Enumerable.Repeat(Make.Ohm(lamp.Value), (int)n.Value)];
        double ohms = ResistorNetwork.Parallel(all).Ohms;
        Symbol r = d.Step("the resistance of all together", "R", 1 / ((n.Symbol / lamp.Symbol) + (1 / (Formula)fan.Symbol)), ohms, "Ω", OhmsLaw.Reference, "Side by side the conductances add; equal lamps add theirs n times.");
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
