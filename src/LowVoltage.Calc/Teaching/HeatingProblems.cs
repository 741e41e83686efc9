using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on the heat of a short circuit, none of which escapes.</summary>
internal static class HeatingProblems
{
    private static readonly double[] Areas = [0.75, 1, 1.5, 2.5, 4, 6, 10];

    // k of copper and the two ends it is for, by insulation.
    private static readonly (string Insulation, int K)[] Factors = [("PVC", 115), ("XLPE", 143), ("60 °C rubber", 141)];

    internal static bool OneStep(ProblemDraft d)
    {
        (string insulation, int k) = d.Random.Pick(Factors);
        DrawnGiven factor = d.Give("k of copper in this insulation", "k", k, "A·√s/mm²");
        DrawnGiven s = d.Give("cross-section", "S", (decimal)d.Random.Pick(Areas), "mm²");
        DrawnGiven i = d.Give("fault current", "I", (decimal)(100 + (10 * d.Random.Next(90))), "A");
        d.Say($"{d.World.InAtStart}, a short circuit drives {i} through a copper wire of {s} with {insulation} insulation. As long as no heat escapes, the wire withstands I²·t = k²·S² with k = {factor}.");
        d.Warn(FuseProblems.Paper);
        double seconds = factor.Value * factor.Value * s.Value * s.Value / (i.Value * i.Value);
        Symbol t = d.Step("the time", "t", Formula.Square(factor.Symbol) * Formula.Square(s.Symbol) / Formula.Square(i.Symbol), "s", AdiabaticHeating.Reference, "The equation solved for the time.");
        d.Ask("Within what time must the fuse open to save it?", t);
        d.Wrong(Mistake.SquareForgotten, factor.Value * s.Value / i.Value);
        d.Wrong(Mistake.Inverted, 1 / seconds);
        d.Wrong(Mistake.SectionNotSquared, factor.Value * factor.Value * s.Value / (i.Value * i.Value));
        d.Wrong(Mistake.ThousandTooMuch, seconds / 1000);
        return seconds is > 0.02 and < 5 && i.Value <= d.World.Site.MostFaultAmperes;
    }

    internal static bool SeveralSteps(ProblemDraft d)
    {
        bool copper = d.Random.Next(3) > 0;
        DrawnGiven rho = d.Give("resistivity at 20 °C", "ρ", copper ? 0.01724m : 0.02826m, "Ω·mm²/m");
        DrawnGiven alpha = d.Give("temperature coefficient, from 20 °C", "α", copper ? 0.00393m : 0.00403m, "1/K");
        DrawnGiven heat = d.Give("heat capacity by volume", "c", copper ? 3.45m : 2.5m, "J/(cm³·K)");
        DrawnGiven s = d.Give("cross-section", "S", (decimal)d.Random.Pick(Areas), "mm²");
        DrawnGiven i = d.Give("fault current", "I", (decimal)(100 + (10 * d.Random.Next(90))), "A");
        DrawnGiven t = d.Give("time until the fuse opens", "t", d.Random.OnGrid(0.05m, 1.5m, 0.05m), "s");
        DrawnGiven start = d.Give("temperature before", "θ_i", d.DrawTemperature(20, 70), d.TemperatureUnit);
        d.Say($"{d.World.InAtStart}, a short circuit drives {i} through {(copper ? "a copper" : "an aluminium")} wire of {s} for {t}, until the fuse opens. Before that, the wire is at {start}. Its metal has a resistivity of {rho} at 20 °C, a temperature coefficient of {alpha} from 20 °C and a heat capacity of {heat}. No heat escapes.");
        d.SayConversion();
        d.Warn(FuseProblems.Paper);
        double celsius = d.Fahrenheit ? Temperature.FromDegreesFahrenheit(start.Value).DegreesCelsius : start.Value;
        ConductorMaterial metal = Metal(rho.Value, alpha.Value, heat.Value);
        if (!AdiabaticHeating.TryFinalTemperature(metal, Make.Mm2(s.Value), Make.A(i.Value), Make.S(t.Value), Make.Celsius(celsius), out Temperature final))
        {
            return false;
        }

        Symbol initial = d.InCelsius(start, "θ_x");
        Symbol beta = d.Step("the temperature at which the resistance would vanish, below zero", "β", (1 / (Formula)alpha.Symbol) - 20, "K", ConductorMaterial.Copper.Reference, "The straight line of resistance, drawn back to zero.");
        Symbol constant = d.Step("the constant of the metal, squared", "K²", heat.Symbol * (beta + 20) / rho.Symbol, "A²·s/mm⁴", AdiabaticHeating.Reference, "How much I²·t a section of one mm² takes up.");
        Symbol exponent = d.Step("the exponent", "x", Formula.Square(i.Symbol) * t.Symbol / (constant * Formula.Square(s.Symbol)), "", null, "The I²·t of the fault over that of the section.");
        double hot = final.DegreesCelsius;
        Symbol end = d.Step("the temperature when the fuse opens", "θ_e", ((initial + beta) * Formula.Exponential(exponent)) - beta, hot, "°C", AdiabaticHeating.Reference, "The heat equation solved for the end.");
        d.Ask("How hot is the wire, in °C, when the fuse opens?", end, 3, 0.015 * (hot - celsius));
        d.Wrong(Mistake.RiseForValue, hot - celsius);
        d.Wrong(Mistake.SquareForgotten, Final(initial.Value, beta.Value, i.Value * t.Value / (constant.Value * s.Value * s.Value)));
        d.Wrong(Mistake.SectionNotSquared, Final(initial.Value, beta.Value, exponent.Value * s.Value));
        d.Wrong(Mistake.ColdWhileHeating, initial.Value + (exponent.Value * (beta.Value + 20)));
        d.Wrong(Mistake.FahrenheitUsed, d.Fahrenheit ? Final(start.Value, beta.Value, exponent.Value) : double.NaN);
        return hot > celsius + 40 && hot < 400 && i.Value <= d.World.Site.MostFaultAmperes && (copper || s.Value >= 6);
    }

    // Above what three figures can still tell in whole degrees nobody would believe the number.
    private static double Final(double initial, double beta, double exponent) =>
        exponent < 2 && ((initial + beta) * Math.Exp(exponent)) - beta is < 999 and var final ? final : double.NaN;

    // The metal as the statement describes it: nothing of it comes from elsewhere. Density and melting point do not enter.
    private static ConductorMaterial Metal(double rho, double alpha, double heat) => ConductorMaterial.Create(
        "metal of the problem", Make.OhmMm2PerMeter(rho), alpha, Density.FromKilogramsPerCubicMeter(8000), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heat * 1e6),
        Make.Celsius(600), Reference.CommonPractice("the values of the statement"));
}
