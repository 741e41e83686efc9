using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <content>Questions on resistance: cold, hot, of two pairs, in a short circuit.</content>
internal static partial class DesignProblems
{
    private static bool Resistance(ProblemDraft d, DesignCircuit c)
    {
        d.Ask("What is the resistance, out and back, with the wire that you choose?", c.StepResistance());
        return Finish(d, c, choice => choice.Ohms);
    }

    private static bool Doubled(ProblemDraft d, DesignCircuit c)
    {
        d.Say("Later a second, identical pair of wires is laid beside the first and joined to it at both ends.");
        Symbol r = c.StepResistance();
        double half = ResistorNetwork.Parallel(Make.Ohm(r.Value), Make.Ohm(r.Value)).Ohms;
        d.Ask("What is the resistance, out and back, of the two pairs together, with the wire that you choose?", d.Step("the resistance of both pairs", "R_p", r / 2, half, "Ω", OhmsLaw.Reference, "Two equal resistances in parallel: half of one."));
        d.Wrong(Mistake.SeriesForParallel, 2 * r.Value);
        return Finish(d, c, choice => choice.Ohms / 2);
    }

    private static bool Hot(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven alpha = d.Give("temperature coefficient of copper, from 20 °C", "α", 0.00393m, "1/K");
        DrawnGiven theta = d.Give("temperature of the wire", "θ", d.DrawTemperature(50, 70), d.TemperatureUnit);
        d.Say($"In service the wire warms to {theta}; the temperature coefficient of copper is {alpha}, referred to 20 °C.");
        d.SayConversion();
        Symbol r = c.StepResistance(), hot = d.InCelsius(theta, "θ_x");
        double value = Conductors.TemperatureCorrection.ResistanceAt(Make.Ohm(r.Value), Make.Celsius(20), Make.Celsius(hot.Value), alpha.Value, Make.Celsius(20)).Ohms;
        d.Ask("What is the resistance, out and back, of the wire that you choose when it is hot?", d.Step(
            "the resistance, hot", "R_x", r * (1 + (alpha.Symbol * (hot - 20))), value, "Ω", Conductors.ConductorMaterial.Copper.Reference, "Resistance rises in a straight line with temperature."));
        d.Wrong(Mistake.ColdForHot, r.Value);
        d.Wrong(Mistake.TemperatureSign, (2 * r.Value) - value);
        d.Wrong(Mistake.ReferenceTemperatureForgotten, r.Value * (1 + (alpha.Value * hot.Value)));
        return Finish(d, c, choice => value * choice.Ohms / r.Value);
    }

    private static bool Prospective(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven inner = d.Give("internal resistance of the battery", "R_i", d.Random.OnGrid(4m, 24m, 1m), "mΩ");
        d.Say($"The battery behind it has {c.U} and an internal resistance of {inner}.");
        d.Warn(FuseProblems.Paper);
        Symbol r = c.StepResistance();
        double amperes = OhmsLaw.FromVoltageAndResistance(Make.V(c.U.Value), ResistorNetwork.Series(Make.Ohm(r.Value), Make.Milliohm(inner.Value))).Current.Amperes;
        d.Ask("What current would a short circuit at the load draw through the cold wire that you choose?", d.Step(
            "the prospective current", "I_p", c.U.Symbol / (r + (inner.Symbol / 1000)), amperes, "A", OhmsLaw.Reference, "Battery and wires are in series."));
        d.Wrong(Mistake.SourceForgotten, c.U.Value / r.Value);
        d.Wrong(Mistake.WireResistanceForgotten, c.U.Value / inner.Value * 1000);
        d.Wrong(Mistake.ReturnForgotten, c.U.Value / ((r.Value / 2) + (inner.Value / 1000)));
        return Finish(d, c, choice => c.U.Value / (choice.Ohms + (inner.Value / 1000)));
    }
}
