using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on batteries: internal resistance, prospective current, charge and energy.</summary>
internal static class BatteryProblems
{
    // Whole hours would leave nothing to convert.
    private static readonly int[] Minutes = [.. Enumerable.Range(3, 47).Select(fives => 5 * fives).Where(minutes => minutes % 60 != 0)];
    private static readonly int[] Capacities = [50, 60, 75, 80, 90, 100, 120, 150, 180, 200];

    internal static bool ResistanceOneStep(ProblemDraft d)
    {
        DrawnGiven rest = d.Give("voltage at rest", "U_0", d.Random.OnGrid(12.3m, 12.9m, 0.01m), "V");
        DrawnGiven i = d.Give("test current", "I", (decimal)(20 + d.Random.Next(181)), "A");
        DrawnGiven loaded = d.Give("voltage under load", "U_1", Math.Round((decimal)rest.Value - ((decimal)i.Value * d.Random.OnGrid(0.004m, 0.020m, 0.0005m)), 2), "V");
        d.Say($"{d.Subject(Battery)} shows {rest} at rest and {loaded} while it delivers {i}.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery, $"{rest} at rest", $"{loaded} under load"), [], [ProblemDraft.Part(DiagramSymbol.Resistor, "test load", i)]);
        double ohms = InternalResistance.FromDischarge(Make.V(rest.Value), Make.V(loaded.Value), Make.A(i.Value)).Milliohms;
        d.Warn(FuseProblems.Paper);
        d.Ask("What is its internal resistance?", d.Step("the internal resistance", "R_i", (rest.Symbol - loaded.Symbol) / i.Symbol * 1000, ohms, "mΩ", OhmsLaw.Reference, "The voltage that is missing, over the current; times 1000 for milliohms."));
        d.Wrong(Mistake.OpenVoltageOnly, rest.Value / i.Value * 1000);
        d.Wrong(Mistake.LoadedVoltageOnly, loaded.Value / i.Value * 1000);
        d.Wrong(Mistake.MilliLost, ohms / 1000);
        d.Wrong(Mistake.Multiplied, (rest.Value - loaded.Value) * i.Value * 1000);
        // A difference below a volt would not bear three figures.
        return ohms is > 3 and < 25 && loaded.Value > 9.6 && rest.Value - loaded.Value >= 1;
    }

    internal static bool ResistanceSeveralSteps(ProblemDraft d)
    {
        ColdCrankingTest test = ColdCrankingTest.Of(ColdCrankingStandard.SaeJ537);
        DrawnGiven cranking = d.Give("cold-cranking current", "I_k", (decimal)(400 + (5 * d.Random.Next(101))), "A");
        DrawnGiven rest = d.Give("voltage at rest", "U_0", 12.6m, "V");
        DrawnGiven end = d.Give("least voltage at the end of the test", "U_e", (decimal)test.EndVoltage.Volts, "V");
        DrawnGiven i = d.Give("current of the starter", "I", (decimal)(120 + d.Random.Next(181)), "A");
        d.Say($"{d.Starter} is marked {cranking} cold cranking: when new and cold, it delivers that current throughout the test and still holds at least {end}; at rest it has {rest}. This gives the highest internal resistance that it can have. On an equally cold day, the starter motor draws {i}.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery, $"{rest} at rest", "? at the terminals"), [], [ProblemDraft.Part(DiagramSymbol.Motor, "starter motor", i)]);
        d.Warn(FuseProblems.Paper);
        double ohms = InternalResistance.FromDischarge(Make.V(rest.Value), Make.V(end.Value), Make.A(cranking.Value)).Ohms;
        Symbol r = d.Step("the internal resistance", "R_i", (rest.Symbol - end.Symbol) / cranking.Symbol, ohms, "Ω", test.Reference, "At the end of the test the voltage has fallen by I·R at most.");
        double volts = InternalResistance.TerminalVoltage(Make.V(rest.Value), Make.Ohm(ohms), Make.A(i.Value)).Volts;
        d.Ask("What is the lowest voltage at its terminals?", d.Step("the voltage at the terminals", "U_k", rest.Symbol - (i.Symbol * r), volts, "V", OhmsLaw.Reference, "The voltage at rest less the drop inside."), 4, 0.005 * volts);
        d.Wrong(Mistake.DropForVolts, rest.Value - volts);
        d.Wrong(Mistake.DropAdded, rest.Value + (i.Value * ohms));
        d.Wrong(Mistake.OpenVoltageOnly, rest.Value - (i.Value * rest.Value / cranking.Value));
        d.Wrong(Mistake.LoadedVoltageOnly, rest.Value - (i.Value * end.Value / cranking.Value));
        return volts > 8 && i.Value < cranking.Value;
    }

    internal static bool ProspectiveOneStep(ProblemDraft d)
    {
        DrawnGiven u = d.Give("voltage of the battery", "U", d.Random.OnGrid(12.4m, 13.2m, 0.02m), "V");
        DrawnGiven r = d.Give("internal resistance", "R_i", d.Random.OnGrid(3m, 20m, 0.1m), "mΩ");
        d.Say($"{d.Subject(Battery)} has a voltage of {u} and an internal resistance of {r}.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery, u, r), [], [ProblemDraft.Part(DiagramSymbol.Fault, "short circuit")]);
        d.Warn(FuseProblems.Paper);
        double amperes = ProspectiveCurrent.AtSource(Source.BehindResistance(Make.V(u.Value), Make.Milliohm(r.Value))).Greatest!.Value.Amperes;
        d.Ask("What current would a short circuit across its terminals draw?", d.Step("the prospective current", "I_p", u.Symbol / r.Symbol * 1000, amperes, "A", OhmsLaw.Reference, "Only its own resistance limits it; the milliohms are divided by 1000."));
        d.Wrong(Mistake.MilliLost, amperes / 1000);
        d.Wrong(Mistake.Multiplied, u.Value * r.Value);
        d.Wrong(Mistake.Inverted, r.Value / u.Value);
        d.Wrong(Mistake.SquareAdded, u.Value * amperes);
        return amperes is > 400 and < 5000;
    }

    internal static bool ProspectiveSeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        if (d.DrawWire(load.Amperes) is not { } row)
        {
            return false;
        }

        DrawnGiven u = d.Give("voltage of the battery", "U", load.Volts + d.Random.OnGrid(0m, 1.2m, 0.1m), "V");
        DrawnGiven r = d.Give("internal resistance", "R_i", d.Random.OnGrid(3m, 24m, 0.5m), "mΩ");
        DrawnGiven l = d.Give("distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        DrawnGiven per = d.Give("resistance per length, cold", "R′", d.PerLengthOf(row), d.PerLengthUnit);
        d.Say($"{d.Subject(Battery)} has a voltage of {u} and an internal resistance of {r}. Two {row.Text} copper wires with a resistance of {per} run out and back to {load.One} {l} away (one way). The wires are cold, and a short circuit joins their far ends.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery, u, r), [ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text, per)], [ProblemDraft.Part(DiagramSymbol.Fault, "short circuit")], ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text));
        d.Warn(FuseProblems.Paper);
        double loop = (d.PerLength(per.Value) * d.LengthOf(2 * l.Value)).Ohms, inner = r.Value / 1000;
        Symbol leads = d.Step("the resistance of the leads, out and back", "R_l", per.Symbol * 2 * l.Symbol / 1000, loop, "Ω", null, "Resistance per length times twice the distance.");
        Symbol all = d.Step("the resistance of the whole loop", "R", (r.Symbol / 1000) + leads, ResistorNetwork.Series(Make.Milliohm(r.Value), Make.Ohm(loop)).Ohms, "Ω", OhmsLaw.Reference, "Battery and leads are in series.");
        double amperes = AtEnd(u.Value, inner, d.PerLength(per.Value), d.LengthOf(2 * l.Value));
        d.Ask("What short-circuit current flows?", d.Step("the prospective current", "I_p", u.Symbol / all, amperes, "A", OhmsLaw.Reference, "Ohm's law for the loop."));
        d.Wrong(Mistake.SourceForgotten, u.Value / loop);
        d.Wrong(Mistake.OneWayTakenForLoop, u.Value / (inner + (loop / 2)));
        d.Wrong(Mistake.WireResistanceForgotten, u.Value / inner);
        d.Wrong(Mistake.MilliLost, u.Value / (r.Value + loop));
        return amperes is > 20 and < 2500;
    }

    internal static bool EnergyOneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven t = d.Give("time", "t", d.Random.Pick(Minutes), "min");
        d.Say($"{d.Subject(load)} draws {i} for {t}.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery), [], [ProblemDraft.Part(load, $"{i} for {t}")]);
        double charge = ElectricalEnergy.Charge(Make.A(i.Value), UnitsNet.Duration.FromMinutes(t.Value)).AmpereHours;
        d.Ask("How many ampere-hours does it use?", d.Step("the charge", "Q", i.Symbol * t.Symbol / 60, charge, "Ah", null, "Current times time in hours; 60 minutes are an hour."));
        d.Wrong(Mistake.MinutesForHours, i.Value * t.Value);
        d.Wrong(Mistake.Divided, i.Value / (t.Value / 60));
        d.Wrong(Mistake.Inverted, t.Value / 60 / i.Value);
        d.Wrong(Mistake.SecondsForMinutes, charge / 60);
        return charge is > 0.1 and < 80;
    }

    internal static bool EnergySeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        DrawnGiven c = d.Give("capacity", "C", (decimal)d.Random.Pick(Capacities), "Ah");
        DrawnGiven share = d.Give("share that may be used", "k", (decimal)(40 + d.Random.Next(51)), "%");
        DrawnGiven u = d.Give("voltage", "U", load.Volts, "V");
        DrawnGiven p = d.Give("power of the load", "P", load.Watts, "W");
        d.Say($"{d.Subject(load)} takes {p} and runs from a battery of {c} at {u}. Only {share} of the charge may be used.");
        d.Sketch(ProblemDraft.Part(DiagramSymbol.Battery, $"{c} at {u}", $"{share} of it"), [], [ProblemDraft.Part(load, p)]);
        Symbol usable = d.Step("the charge that may be used", "Q", c.Symbol * share.Symbol / 100, "Ah", null, "The share of the capacity.");
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(u.Value), Make.W(p.Value)).Current.Amperes;
        Symbol i = d.Step("the current", "I", p.Symbol / u.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        double hours = ElectricalEnergy.RunningTime(UnitsNet.ElectricCharge.FromAmpereHours(usable.Value), Make.V(u.Value), Make.W(p.Value)).Hours;
        d.Ask("How many hours can it run if the voltage stays the same?", d.Step("the running time", "t", usable / i, hours, "h", null, "Charge over current."));
        d.Wrong(Mistake.ShareForgotten, hours * 100 / share.Value);
        d.Wrong(Mistake.WattsForAmperes, usable.Value / p.Value);
        d.Wrong(Mistake.ShareComplement, hours * (100 - share.Value) / share.Value);
        d.Wrong(Mistake.Inverted, 1 / hours);
        d.Wrong(Mistake.Multiplied, usable.Value * amperes);
        return hours is > 1 and < 150;
    }

    private static LoadDraw Battery { get; } = new("battery", LoadKind.Electronics, 1, 1);

    private static double AtEnd(double volts, double inner, Quantities.LinearResistance per, UnitsNet.Length loop)
    {
        Conductor wire = Conductor.Stated(per, Make.Mm2(1000), ConductorMaterial.Copper);
        CircuitPath path = CircuitPath.Create(Segment.Create(wire, loop), ReturnPath.Chassis(Make.Ohm(0)));
        UnitsNet.Temperature cold = Make.Celsius(20);
        return ProspectiveCurrent.AtEnd(Source.BehindResistance(Make.V(volts), Make.Ohm(inner)), path, cold, cold).Greatest!.Value.Amperes;
    }
}
