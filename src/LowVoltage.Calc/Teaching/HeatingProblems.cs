using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on the heat of a short circuit, none of which escapes.</summary>
internal static class HeatingProblems
{
    // k of copper and the two ends it is for, by insulation: for mm², and the same for circular mils.
    private static readonly (string Insulation, decimal K)[] Factors = [("PVC", 115m), ("XLPE", 143m), ("60 °C rubber", 141m)];

    internal static bool OneStep(ProblemDraft d)
    {
        (string insulation, decimal k) = d.Random.Pick(Factors);
        LoadDraw load = d.DrawLoad();
        WireRow row = DrawSize(d, 0.7, 11);
        DrawnGiven factor = d.Give("k of copper in this insulation", "k", K(d, k), d.Gauges ? "A·√s/cmil" : "A·√s/mm²");
        DrawnGiven s = d.Give("cross-section", "S", d.SectionOf(row), d.SectionUnit);
        DrawnGiven i = d.Give("fault current", "I", (decimal)(100 + (5 * d.Random.Next(180))), "A");
        string rubber = d.Fahrenheit ? insulation.Replace("60 °C", "140 °F") : insulation;
        d.Say($"{d.InAtStart}, {load.One} is fed through {d.WireOf(row, s)} with {rubber} insulation. A short circuit drives {i} through it. As long as no heat escapes, the wire withstands I²·t = k²·S² with k = {factor}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Fuse), ProblemDraft.Part(DiagramSymbol.Wire, s, rubber)], [ProblemDraft.Part(DiagramSymbol.Fault, i)]);
        d.Warn(FuseProblems.Paper);
        double seconds = factor.Value * factor.Value * s.Value * s.Value / (i.Value * i.Value);
        Symbol t = d.Step("the time", "t", Formula.Square(factor.Symbol) * Formula.Square(s.Symbol) / Formula.Square(i.Symbol), "s", AdiabaticHeating.Reference, "The equation solved for the time.");
        d.Ask("Within what time must the fuse open to protect the wire?", t);
        d.Wrong(Mistake.SquareForgotten, factor.Value * s.Value / i.Value);
        d.Wrong(Mistake.Inverted, 1 / seconds);
        d.Wrong(Mistake.SectionNotSquared, factor.Value * factor.Value * s.Value / (i.Value * i.Value));
        d.Wrong(Mistake.ThousandTooMuch, seconds / 1000);
        return seconds is > 0.02 and < 5 && i.Value <= d.World.Site.MostFaultAmperes;
    }

    internal static bool SeveralSteps(ProblemDraft d) => d.Gauges ? Customary(d) : Metric(d);

    /// <summary>k, for mm² as published; for circular mils the same, to three figures.</summary>
    internal static decimal K(ProblemDraft d, decimal metric) => d.Gauges ? Rounding.Figures((double)metric * CircularMil.SquareMillimeters, 3) : metric;

    private static bool Metric(ProblemDraft d)
    {
        bool copper = d.Random.Next(3) > 0;
        DrawnGiven rho = d.Give("resistivity at 20 °C", "ρ", copper ? 0.01724m : 0.02826m, "Ω·mm²/m");
        DrawnGiven alpha = d.Give("temperature coefficient, from 20 °C", "α", copper ? 0.00393m : 0.00403m, "1/K");
        DrawnGiven heat = d.Give("heat capacity by volume", "c", copper ? 3.45m : 2.5m, "J/(cm³·K)");
        (DrawnGiven s, DrawnGiven i, DrawnGiven t, DrawnGiven start) = Fault(d, copper);
        d.Say($"The metal has a resistivity of {rho} at {d.At20}, a temperature coefficient of {alpha} referred to 20 °C and a heat capacity of {heat}. No heat escapes.");
        d.SayConversion();
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
        Ask(d, end, celsius);
        d.Wrong(Mistake.SquareForgotten, Told(d, Final(initial.Value, beta.Value, i.Value * t.Value / (constant.Value * s.Value * s.Value))));
        d.Wrong(Mistake.SectionNotSquared, Told(d, Final(initial.Value, beta.Value, exponent.Value * s.Value)));
        d.Wrong(Mistake.ColdWhileHeating, Told(d, initial.Value + (exponent.Value * (beta.Value + 20))));
        d.Wrong(Mistake.FahrenheitUsed, d.Fahrenheit ? Final(start.Value, beta.Value, exponent.Value) : double.NaN);
        return IsPlausible(d, hot, celsius, i) && (copper || s.Value >= 6);
    }

    // The form of North American handbooks: circular mils and a logarithm to the base 10.
    private static bool Customary(ProblemDraft d)
    {
        bool copper = d.Random.Next(3) > 0;
        DrawnGiven a = d.Give(copper ? "coefficient of copper" : "coefficient of aluminum", "a", copper ? 0.0297m : 0.0125m, "A²·s/cmil²");
        DrawnGiven b = d.Give("temperature at which the resistance would vanish, below zero", "b", copper ? 234m : 228m, "°C");
        (DrawnGiven s, DrawnGiven i, DrawnGiven t, DrawnGiven start) = Fault(d, copper);
        d.Say($"No heat escapes, so that (I/S)²·t = a·log((θ_e + b)/(θ_i + b)), with the logarithm to the base 10, a = {a}, b = {b} and both temperatures in °C.");
        d.SayConversion();
        double celsius = d.Fahrenheit ? Temperature.FromDegreesFahrenheit(start.Value).DegreesCelsius : start.Value;
        Symbol initial = d.InCelsius(start, "θ_x");
        Symbol exponent = d.Step("the exponent", "x", Formula.Square(i.Symbol / s.Symbol) * t.Symbol / a.Symbol, "", IceaShortCircuit.Reference, "The equation solved for the logarithm.");
        Symbol end = d.Step("the temperature when the fuse opens", "θ_e", ((initial + b.Symbol) * Formula.Power(10, exponent)) - b.Symbol, "°C", IceaShortCircuit.Reference, "The power of ten undoes the logarithm.");
        double hot = end.Value;
        Ask(d, end, celsius);
        double Decade(double from, double power) => Final(from, b.Value, power * Math.Log(10));
        d.Wrong(Mistake.SquareForgotten, Told(d, Decade(initial.Value, i.Value / s.Value * t.Value / a.Value)));
        d.Wrong(Mistake.NaturalLogarithm, Told(d, Final(initial.Value, b.Value, exponent.Value)));
        d.Wrong(Mistake.OffsetForgotten, Told(d, initial.Value * Math.Pow(10, exponent.Value)));
        d.Wrong(Mistake.OffsetLeft, Told(d, hot + b.Value));
        d.Wrong(Mistake.FahrenheitUsed, d.Fahrenheit ? Decade(start.Value, exponent.Value) : double.NaN);
        return IsPlausible(d, hot, celsius, i) && (copper || s.Value >= 10_000);
    }

    private static (DrawnGiven S, DrawnGiven I, DrawnGiven T, DrawnGiven Start) Fault(ProblemDraft d, bool copper)
    {
        WireRow row = DrawSize(d, 0.7, 11);
        LoadDraw load = d.DrawLoad();
        DrawnGiven s = d.Give("cross-section", "S", d.SectionOf(row), d.SectionUnit);
        DrawnGiven i = d.Give("fault current", "I", (decimal)(100 + (5 * d.Random.Next(180))), "A");
        DrawnGiven t = d.Give("time until the fuse opens", "t", d.Random.OnGrid(0.05m, 1.5m, 0.01m), "s");
        DrawnGiven start = d.Give("temperature before", "θ_i", d.DrawTemperature(20, 70), d.TemperatureUnit);
        string metal = copper ? "copper" : d.Gauges ? "aluminum" : "aluminium";
        d.Say($"{d.InAtStart}, a short circuit drives {i} through {d.WireOf(row, s).Replace("copper", metal)} to {load.One} for {t}, until the fuse opens. Before that, the wire is at {start}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Fuse, $"opens after {t}"), ProblemDraft.Part(DiagramSymbol.Wire, s, metal, start)], [ProblemDraft.Part(DiagramSymbol.Fault, i)]);
        d.Warn(FuseProblems.Paper);
        return (s, i, t, start);
    }

    private static void Ask(ProblemDraft d, Symbol end, double start)
    {
        double hot = end.Value, rise = hot - start, scale = d.Fahrenheit ? 1.8 : 1;
        d.Ask($"How hot is the wire, in {d.TemperatureUnit}, when the fuse opens?", d.InPrinted(end, "the temperature when the fuse opens, as asked", "θ_f"), 3, 0.015 * rise * scale);
        d.Wrong(Mistake.RiseForValue, rise * scale);
    }

    private static bool IsPlausible(ProblemDraft d, double hot, double start, DrawnGiven amperes) =>
        hot > start + 40 && hot < 400 && amperes.Value <= d.World.Site.MostFaultAmperes;

    private static WireRow DrawSize(ProblemDraft d, double least, double most) =>
        d.Random.Pick([.. WireRow.Sizes(d.Gauges).Where(row => row.SquareMillimeters > least && row.SquareMillimeters < most)]);

    // In the unit of the problem; above what three figures can tell to the degree, nobody would write it.
    private static double Told(ProblemDraft d, double celsius) => d.Printed(celsius) is < 999 and var told ? told : double.NaN;

    // Above what three figures can still tell in whole degrees nobody would believe the number.
    private static double Final(double initial, double beta, double exponent) =>
        exponent < 2 && ((initial + beta) * Math.Exp(exponent)) - beta is < 999 and var final ? final : double.NaN;

    // The metal as the statement describes it: nothing of it comes from elsewhere. Density and melting point do not enter.
    private static ConductorMaterial Metal(double rho, double alpha, double heat) => ConductorMaterial.Create(
        "metal of the problem", Make.OhmMm2PerMeter(rho), alpha, Density.FromKilogramsPerCubicMeter(8000), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heat * 1e6),
        Make.Celsius(600), Reference.CommonPractice("the values of the statement"));
}
