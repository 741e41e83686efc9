using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on Ohm's law.</summary>
internal static class OhmsLawProblems
{
    internal static bool OneStep(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad(LoadKind.Heater);
        return d.Random.Next(3) switch
        {
            0 => Current(d, load),
            1 => Voltage(d, load),
            _ => Resistance(d, load),
        };
    }

    internal static bool SeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad(LoadKind.Heater);
        DrawnGiven u = d.Give("voltage at the first measurement", "U_1", d.DrawVolts(load.Volts), "V");
        DrawnGiven i = d.Give("current at the first measurement", "I_1", load.Amperes, 3, "A");
        decimal share = d.Random.Next(2) == 0 ? d.Random.OnGrid(0.75m, 0.92m, 0.01m) : d.Random.OnGrid(1.06m, 1.2m, 0.01m);
        DrawnGiven low = d.Give("voltage now", "U_2", Rounding.Trimmed(Math.Round((decimal)u.Value * share, 1)), "V");
        d.Say($"{d.Subject(load)} behaves as a plain resistor and draws {i} at {u}. Later the voltage is {low}.");
        d.Sketch(d.Feeder($"{u}, then {low}"), [], [ProblemDraft.Part(load, $"{i} at {u}")]);
        double ohms = OhmsLaw.FromVoltageAndCurrent(Make.V(u.Value), Make.A(i.Value)).Resistance.Ohms;
        Symbol r = d.Step("the resistance", "R", u.Symbol / i.Symbol, ohms, "Ω", OhmsLaw.Reference, "The first measurement gives the resistance, which stays.");
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(low.Value), Make.Ohm(ohms)).Current.Amperes;
        Symbol result = d.Step("the current now", "I_2", low.Symbol / r, amperes, "A", OhmsLaw.Reference, "The same resistance at the new voltage.");
        d.Ask("What current does it draw now?", result);
        d.Wrong(Mistake.RatioInverted, i.Value * u.Value / low.Value);
        d.Wrong(Mistake.SquaredRatio, i.Value * (low.Value / u.Value) * (low.Value / u.Value));
        d.Wrong(Mistake.Unchanged, i.Value);
        d.Wrong(Mistake.Multiplied, low.Value * ohms);
        d.Wrong(Mistake.Inverted, ohms / low.Value);
        return amperes is > 0.05 and < 60;
    }

    private static bool Current(ProblemDraft d, LoadDraw load)
    {
        DrawnGiven u = d.Give("voltage", "U", d.DrawVolts(load.Volts), "V");
        DrawnGiven r = d.Give("resistance", "R", load.Volts / load.Amperes, 3, "Ω");
        d.Say($"{d.Subject(load)} behaves as a plain resistor of {r}. It is connected to {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, r)]);
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(u.Value), Make.Ohm(r.Value)).Current.Amperes;
        d.Ask("What current does it draw?", d.Step("the current", "I", u.Symbol / r.Symbol, amperes, "A", OhmsLaw.Reference, "Ohm's law, solved for the current."));
        d.Wrong(Mistake.Inverted, r.Value / u.Value);
        d.Wrong(Mistake.Multiplied, u.Value * r.Value);
        d.Wrong(Mistake.SquareAdded, u.Value * u.Value / r.Value);
        d.Wrong(Mistake.ThousandTooMuch, amperes / 1000);
        return amperes is > 0.05 and < 60;
    }

    private static bool Voltage(ProblemDraft d, LoadDraw load)
    {
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven r = d.Give("resistance", "R", load.Volts / load.Amperes, 2, "Ω");
        d.Say($"{d.Subject(load)} behaves as a plain resistor of {r}, and a current of {i} flows through it.");
        d.Sketch(d.Feeder(), [], [ProblemDraft.Part(load, r, i)]);
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(i.Value), Make.Ohm(r.Value)).Voltage.Volts;
        d.Ask("What is the voltage across it?", d.Step("the voltage", "U", i.Symbol * r.Symbol, volts, "V", OhmsLaw.Reference, "Ohm's law as it stands."));
        d.Wrong(Mistake.Divided, r.Value / i.Value);
        d.Wrong(Mistake.Inverted, i.Value / r.Value);
        d.Wrong(Mistake.SquareAdded, i.Value * i.Value * r.Value);
        d.Wrong(Mistake.ThousandTooMuch, volts / 1000);
        return volts is > 2 and < 60;
    }

    private static bool Resistance(ProblemDraft d, LoadDraw load)
    {
        DrawnGiven u = d.Give("voltage", "U", d.DrawVolts(load.Volts), "V");
        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        d.Say($"{d.Subject(load)} draws {i} at {u}.");
        d.Sketch(d.Feeder(u), [], [ProblemDraft.Part(load, i)]);
        double ohms = OhmsLaw.FromVoltageAndCurrent(Make.V(u.Value), Make.A(i.Value)).Resistance.Ohms;
        d.Ask("What is its resistance?", d.Step("the resistance", "R", u.Symbol / i.Symbol, ohms, "Ω", OhmsLaw.Reference, "Ohm's law, solved for the resistance."));
        d.Wrong(Mistake.Inverted, i.Value / u.Value);
        d.Wrong(Mistake.Multiplied, u.Value * i.Value);
        d.Wrong(Mistake.SquareAdded, u.Value / (i.Value * i.Value));
        d.Wrong(Mistake.ThousandTooMuch, ohms / 1000);
        return ohms is > 0.2 and < 500;
    }
}
