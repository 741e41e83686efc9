using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on resistance at another temperature than 20 °C.</summary>
internal static class TemperatureProblems
{
    private const decimal Coefficient = 0.00393m;

    internal static bool OneStep(ProblemDraft d)
    {
        DrawnGiven cold = d.Give("resistance at 20 °C", "R_0", d.Random.OnGrid(20m, 400m, 0.5m), "mΩ");
        DrawnGiven alpha = d.Give("temperature coefficient of copper, from 20 °C", "α", Coefficient, "1/K");
        DrawnGiven theta = d.Give("temperature of the wire", "θ", d.DrawTemperature(45, 90), d.TemperatureUnit);
        d.Say($"A copper lead {d.In} has a resistance of {cold} at {d.At20}. In service it warms to {theta}. The temperature coefficient of copper is {alpha}, referred to 20 °C.");
        d.SayConversion();
        Symbol hot = d.InCelsius(theta, "θ_x");
        Symbol result = Hot(d, cold.Symbol, alpha, hot, "mΩ");
        d.Ask("What is its resistance at that temperature?", result, 4, 0.005 * result.Value);
        d.Wrong(Mistake.TemperatureSign, cold.Value * (1 - (alpha.Value * (hot.Value - 20))));
        d.Wrong(Mistake.ReferenceTemperatureForgotten, cold.Value * (1 + (alpha.Value * hot.Value)));
        d.Wrong(Mistake.ColdForHot, cold.Value);
        d.Wrong(Mistake.RiseForValue, result.Value - cold.Value);
        Fahrenheit(d, cold.Value * (1 + (alpha.Value * (theta.Value - 20))));
        return true;
    }

    internal static bool SeveralSteps(ProblemDraft d)
    {
        LoadDraw load = d.DrawLoad();
        if (d.DrawWire(load.Amperes) is not { } row)
        {
            return false;
        }

        DrawnGiven i = d.Give("current", "I", load.Amperes, 3, "A");
        DrawnGiven l = d.Give("distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        DrawnGiven per = d.Give("resistance per length at 20 °C", "R′", d.PerLengthOf(row), d.PerLengthUnit);
        DrawnGiven alpha = d.Give("temperature coefficient of copper, from 20 °C", "α", Coefficient, "1/K");
        DrawnGiven theta = d.Give("temperature of the wire", "θ", d.DrawTemperature(45, 70), d.TemperatureUnit);
        d.Say($"{d.Subject(load)} is {l} from the {d.World.Feeder} (one way) and draws {i}. Both wires, out and back, are {row.Text} copper with a resistance of {per} at {d.At20}; in service they warm to {theta}. The temperature coefficient of copper is {alpha}, referred to 20 °C.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text, theta)], [ProblemDraft.Part(load, i)], ProblemDraft.Part(DiagramSymbol.Wire, l, row.Text, theta));
        d.SayConversion();
        double cold = (d.PerLength(per.Value) * d.LengthOf(2 * l.Value)).Ohms;
        Symbol r = d.Step("the resistance out and back at 20 °C", "R_0", per.Symbol * 2 * l.Symbol / 1000, cold, "Ω", null, "Resistance per length times twice the distance.");
        Symbol hot = d.InCelsius(theta, "θ_x");
        Symbol warm = Hot(d, r, alpha, hot, "Ω");
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(i.Value), Make.Ohm(warm.Value)).Voltage.Volts;
        d.Ask("How many volts are lost, out and back, with the wires hot?", d.Step("the voltage drop, hot", "ΔU", i.Symbol * warm, volts, "V", OhmsLaw.Reference, "Ohm's law for the wires."));
        d.Wrong(Mistake.ColdForHot, i.Value * cold);
        d.Wrong(Mistake.TemperatureSign, i.Value * cold * (1 - (alpha.Value * (hot.Value - 20))));
        d.Wrong(Mistake.OneWayTakenForLoop, volts / 2);
        d.Wrong(Mistake.ReferenceTemperatureForgotten, i.Value * cold * (1 + (alpha.Value * hot.Value)));
        d.Wrong(Mistake.PowerForDrop, i.Value * volts);
        return volts > 0.01 && volts < 0.1 * load.Volts;
    }

    private static Symbol Hot(ProblemDraft d, Symbol cold, DrawnGiven alpha, Symbol theta, string unit)
    {
        double value = TemperatureCorrection.ResistanceAt(Make.Ohm(cold.Value), Make.Celsius(20), Make.Celsius(theta.Value), alpha.Value, Make.Celsius(20)).Ohms;
        return d.Step("the resistance at that temperature", "R_x", cold * (1 + (alpha.Symbol * (theta - 20))), value, unit, ConductorMaterial.Copper.Reference, "Resistance rises in a straight line with temperature.");
    }

    private static void Fahrenheit(ProblemDraft d, double value)
    {
        if (d.Fahrenheit)
        {
            d.Wrong(Mistake.FahrenheitUsed, value);
        }
    }
}
