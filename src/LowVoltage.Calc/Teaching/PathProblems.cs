using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on joints, on a return through a chassis, and on filament lamps.</summary>
internal static class PathProblems
{
    internal static bool JointOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven n = d.Give("number of joints", "n", (decimal)(3 + d.Random.Next(8)), "");
        DrawnGiven r = d.Give("resistance of one joint", "R_1", d.Random.OnGrid(0.5m, 9m, 0.5m), "mΩ");
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        d.Say($"{d.Subject(load)} draws {i}. On its way out and back the current passes through {n} joints, crimped or plugged, of {r} each.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Joint, $"{n} joints", $"{r} each")], [ProblemDraft.Part(load, i)]);
        double ohms = ResistorNetwork.Series([.. Enumerable.Repeat(Make.Milliohm(r.Value), (int)n.Value)]).Ohms;
        double millivolts = OhmsLaw.FromCurrentAndResistance(Make.A(i.Value), Make.Ohm(ohms)).Voltage.Millivolts;
        d.Ask("How many millivolts are lost in the joints together?", d.Step("the drop in the joints", "ΔU", n.Symbol * r.Symbol * i.Symbol, millivolts, "mV", OhmsLaw.Reference, "In series the joints add; milliohms times amperes are millivolts."));
        d.Wrong(Mistake.OneJointOnly, millivolts / n.Value);
        d.Wrong(Mistake.ParallelForSeries, millivolts / n.Value / n.Value);
        d.Wrong(Mistake.PowerForDrop, millivolts * i.Value);
        d.Wrong(Mistake.ThousandTooMuch, millivolts / 1000);
        return millivolts > 2 && millivolts < 40 * load.Volts;
    }

    internal static bool JointSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage at the load", "U", load.Volts, "V");
        DrawnGiven r = d.Give("resistance of the bad joint", "R", (decimal)(15 + d.Random.Next(136)), "mΩ");
        d.Say($"{d.InAtStart}, a joint in the wiring to {load.One} has corroded, and its resistance is now {r}. The load takes {p} at {u}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Joint, "bad joint", r)], [ProblemDraft.Part(load, p, $"at {u}")]);
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "The joint carries the current of the load.");
        double watts = (double)VoltageDrop.Lost(Make.A(amperes), Make.Milliohm(r.Value)).Watts;
        d.Ask("How much heat, in watts, does the joint give off?", d.Step("the heat of the joint", "P_v", Formula.Square(i) * r.Symbol / 1000, watts, "W", OhmsLaw.Reference, "Heat in a resistance is I²·R; the milliohms are divided by 1000."));
        d.Wrong(Mistake.SquareForgotten, amperes * r.Value / 1000);
        d.Wrong(Mistake.SupplyAcrossJoint, u.Value * u.Value * 1000 / r.Value);
        d.Wrong(Mistake.MilliLost, watts * 1000);
        d.Wrong(Mistake.WattsForAmperes, p.Value * p.Value * r.Value / 1000);
        return watts is > 0.05 and < 30 && watts < 0.15 * p.Value;
    }

    internal static bool ChassisOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawChassisLoad();
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven feed = d.Give("resistance of the feed wire", "R_1", (decimal)(10 + d.Random.Next(111)), "mΩ");
        DrawnGiven chassis = d.Give("resistance of the return path", "R_2", (decimal)(3 + d.Random.Next(40)), "mΩ");
        d.Say($"{d.ChassisAtStart}, {load.One} draws {i}. The feed wire has a resistance of {feed}; the {d.World.Site.Chassis.Noun} carries the current back and has a resistance of {chassis}, joints included.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, feed)], [ProblemDraft.Part(load, i)], d.ChassisPart(chassis));
        double volts = Drop(i.Value, feed.Value, chassis.Value);
        d.Ask("How many volts are lost, out and back?", d.Step("the voltage drop", "ΔU", i.Symbol * (feed.Symbol + chassis.Symbol) / 1000, volts, "V", OhmsLaw.Reference, "Feed wire and return path are in series; the milliohms are divided by 1000."));
        Mistakes(d, i.Value, feed.Value, chassis.Value);
        d.Wrong(Mistake.MilliLost, volts * 1000);
        return volts > 0.01 && volts < 0.1 * load.Volts;
    }

    internal static bool ChassisSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawChassisLoad();
        if (d.DrawWire(load.Amperes) is not { } row)
        {
            return false;
        }

        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        DrawnGiven u = d.Give("voltage", "U", load.Volts, "V");
        DrawnGiven l = d.Give("length of the feed wire", "L", d.DrawDistance(), d.LengthUnit);
        DrawnGiven per = d.Give("resistance per length", "R′", d.PerLengthOf(row), d.PerLengthUnit);
        DrawnGiven chassis = d.Give("resistance of the return path", "R_2", (decimal)(3 + d.Random.Next(40)), "mΩ");
        d.Say($"{d.ChassisAtStart}, {load.One} rated {p} at {u} is fed through {l} of {row.Text} copper wire with a resistance of {per}; the {d.World.Site.Chassis.Noun} carries the current back and has a resistance of {chassis}, joints included. Take the current at {u}.");
        d.Sketch(d.Feeder(u), [ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text, per)], [ProblemDraft.Part(load, p)], d.ChassisPart(chassis));
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        double ohms = (d.PerLength(per.Value) * d.LengthOf(l.Value)).Ohms;
        Symbol feed = d.Step("the resistance of the feed wire", "R_1", per.Symbol * l.Symbol / 1000, ohms, "Ω", null, "Once only: the return path has its own resistance.");
        double volts = Drop(amperes, ohms * 1000, chassis.Value);
        d.Ask("How many volts are lost, out and back?", d.Step("the voltage drop", "ΔU", i * (feed + (chassis.Symbol / 1000)), volts, "V", OhmsLaw.Reference, "Feed wire and return path are in series."));
        Mistakes(d, amperes, ohms * 1000, chassis.Value);
        d.Wrong(Mistake.WattsForAmperes, volts * u.Value);
        return volts > 0.01 && volts < 0.1 * load.Volts;
    }

    internal static bool LampOneStep(ProblemDraft d)
    {
        (DrawnGiven rated, DrawnGiven u, LoadDraw load) = Lamp(d);
        DrawnGiven i = d.Give("current at the rated voltage", "I_0", load.Amperes, 3, "A");
        d.Say($"{d.Subject(load)} draws {i} at its rated voltage of {rated}. Near that voltage, its current varies as the voltage to the power {Exponent(d, out DrawnGiven x)}. It is now run at {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, $"{i} at {rated}")]);
        double amperes = Load.Lamp(Make.W(i.Value * rated.Value), Make.V(rated.Value)).CurrentAt(Make.V(u.Value), LoadState.Running).Amperes;
        d.Ask("What current does it draw now?", d.Step("the current now", "I", i.Symbol * Formula.Power(u.Symbol / rated.Symbol, x.Symbol), amperes, "A", LampLoad.CurrentReference, "A filament is cooler at a lower voltage and hotter at a higher one, and its resistance goes with that."), 3, 0.005 * amperes);
        d.Wrong(Mistake.LampAsResistor, i.Value * u.Value / rated.Value);
        d.Wrong(Mistake.Unchanged, i.Value);
        d.Wrong(Mistake.RatioInverted, i.Value * Math.Pow(rated.Value / u.Value, x.Value));
        d.Wrong(Mistake.SquaredRatio, i.Value * (u.Value / rated.Value) * (u.Value / rated.Value));
        return amperes is > 0.1 and < 25;
    }

    internal static bool LampSeveralSteps(ProblemDraft d)
    {
        (DrawnGiven rated, DrawnGiven u, LoadDraw load) = Lamp(d);
        DrawnGiven p = d.Give("rated power", "P_0", load.Watts, "W");
        d.Say($"{d.Subject(load)} is rated {p} at {rated}. Near that voltage, its current varies as the voltage to the power {Exponent(d, out DrawnGiven x)}. It is now run at {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, $"{p} at {rated}")]);
        double full = OhmsLaw.FromVoltageAndPower(Make.V(rated.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current at the rated voltage", "I_0", p.Symbol / rated.Symbol, full, "A", OhmsLaw.Reference, "Power over voltage.");
        double amperes = Load.Lamp(Make.W(p.Value), Make.V(rated.Value)).CurrentAt(Make.V(u.Value), LoadState.Running).Amperes;
        Symbol now = d.Step("the current now", "I", i * Formula.Power(u.Symbol / rated.Symbol, x.Symbol), amperes, "A", LampLoad.CurrentReference, "A filament is cooler at a lower voltage and hotter at a higher one, and its resistance goes with that.");
        double watts = (double)OhmsLaw.FromVoltageAndCurrent(Make.V(u.Value), Make.A(amperes)).Power.Watts;
        d.Ask("What power does it take now?", d.Step("the power now", "P", u.Symbol * now, watts, "W", OhmsLaw.Reference, "Voltage times current."), 3, 0.005 * watts);
        d.Wrong(Mistake.LampAsResistor, p.Value * (u.Value / rated.Value) * (u.Value / rated.Value));
        d.Wrong(Mistake.Unchanged, p.Value);
        d.Wrong(Mistake.CurrentUnchanged, u.Value * full);
        d.Wrong(Mistake.RatioInverted, p.Value * Math.Pow(rated.Value / u.Value, 1 + x.Value));
        return watts is > 3 and < 300;
    }

    private static string Exponent(ProblemDraft d, out DrawnGiven exponent)
    {
        exponent = d.Give("exponent of the current", "x", 0.55m, "");
        return exponent.ToString();
    }

    private static (DrawnGiven Rated, DrawnGiven Now, LoadDraw Load) Lamp(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        int[] watts = [5, 10, 21, 25, 35, 45, 55, 60, 70, 100];
        LoadDraw lamp = new("filament lamp", LoadKind.Lamp, d.Random.Pick([.. watts.Where(most => most <= d.World.Site.MostLampWatts)]), load.Volts);
        decimal share = d.Random.Next(2) == 0 ? d.Random.OnGrid(0.90m, 0.95m, 0.001m) : d.Random.OnGrid(1.05m, 1.10m, 0.001m);
        return (d.Give("rated voltage", "U_0", lamp.Volts, "V"), d.Give("voltage now", "U", Rounding.Trimmed(Math.Round(lamp.Volts * share, 2)), "V"), lamp);
    }

    private static void Mistakes(ProblemDraft d, double amperes, double feed, double chassis)
    {
        d.Wrong(Mistake.ReturnForgotten, amperes * feed / 1000);
        d.Wrong(Mistake.ReturnTakenAsWire, amperes * 2 * feed / 1000);
        d.Wrong(Mistake.FeedForgotten, amperes * chassis / 1000);
        d.Wrong(Mistake.PowerForDrop, amperes * amperes * (feed + chassis) / 1000);
    }

    // The drop of the path as the library adds it up: a wire out and a chassis back.
    private static double Drop(double amperes, double feed, double chassis)
    {
        Conductor wire = Conductor.Stated(Quantities.LinearResistance.FromOhmsPerMeter(feed / 1000), Make.Mm2(1000), ConductorMaterial.Copper);
        CircuitPath path = CircuitPath.Create(Segment.Create(wire, UnitsNet.Length.FromMeters(1)), ReturnPath.Chassis(Make.Milliohm(chassis)));
        return OhmsLaw.FromCurrentAndResistance(Make.A(amperes), path.ResistanceAt(Make.Celsius(20))).Voltage.Volts;
    }
}
