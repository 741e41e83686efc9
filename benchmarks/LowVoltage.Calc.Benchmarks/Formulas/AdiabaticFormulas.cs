using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("AdiabaticHeating.KFactor", "k = K·√ln((θf + β)/(θi + β))", 2)]
public readonly struct KFactor : IFormula
{
    public double Raw(Case x) => Math.Sqrt(Copper.ConstantSquared * Copper.Log(x.Celsius, x.LimitCelsius));

    public double Typed(Case x) => AdiabaticHeating.KFactor(Copper.Metal, x.Temperature, x.Limit);
}

[Formula("AdiabaticHeating.AreaFor", "S = I·√t/k", 4)]
public readonly struct AdiabaticArea : IFormula
{
    public double Raw(Case x) => x.FaultAmperes * Math.Sqrt(x.Seconds) / Math.Sqrt(Copper.ConstantSquared * Copper.Log(x.Celsius, x.LimitCelsius));

    public double Typed(Case x) => AdiabaticHeating.AreaFor(Copper.Metal, x.Fault, x.Duration, x.Temperature, x.Limit).SquareMillimeters;
}

[Formula("AdiabaticHeating.FinalTemperature, of a metal", "θi + (θi + β)·(exp(I²t/(K·S)²) − 1)", 4)]
public readonly struct AdiabaticFinal : IFormula
{
    public double Raw(Case x) => x.Celsius + ((x.Celsius + Copper.Beta) * (Math.Exp(
        x.FaultAmperes * x.FaultAmperes * x.Seconds / (Copper.ConstantSquared * x.SquareMillimeters * x.SquareMillimeters)) - 1));

    public double Typed(Case x) => AdiabaticHeating.FinalTemperature(Copper.Metal, x.Area, x.Fault, x.Duration, x.Temperature).DegreesCelsius;
}

[Formula("AdiabaticHeating.FinalTemperature, of a wire", "the same for a wire's own section", 3)]
public readonly struct AdiabaticFinalOfWire : IFormula
{
    public double Raw(Case x) => x.Celsius + ((x.Celsius + Copper.Beta) * (Math.Exp(x.FaultAmperes * x.FaultAmperes * x.Seconds
        / (Copper.ConstantSquared * Copper.EffectiveSquareMillimeters * Copper.EffectiveSquareMillimeters)) - 1));

    public double Typed(Case x) => AdiabaticHeating.FinalTemperature(Copper.Wire, x.Fault, x.Duration, x.Temperature).DegreesCelsius;
}

[Formula("AdiabaticHeating.TimeToReach", "t = K²·S²·ln((θf + β)/(θi + β))/I²", 4)]
public readonly struct AdiabaticTime : IFormula
{
    public double Raw(Case x)
    {
        double ratio = x.SquareMillimeters / x.FaultAmperes;
        return Copper.ConstantSquared * ratio * ratio * Copper.Log(x.Celsius, x.LimitCelsius);
    }

    public double Typed(Case x) => AdiabaticHeating.TimeToReach(Copper.Metal, x.Area, x.Fault, x.Temperature, x.Limit).Seconds;
}

[Formula("AdiabaticHeating.CurrentFor", "I = k·S/√t", 4)]
public readonly struct AdiabaticCurrent : IFormula
{
    public double Raw(Case x) => Math.Sqrt(Copper.ConstantSquared * Copper.Log(x.Celsius, x.LimitCelsius)) * x.SquareMillimeters / Math.Sqrt(x.Seconds);

    public double Typed(Case x) => AdiabaticHeating.CurrentFor(Copper.Metal, x.Area, x.Duration, x.Temperature, x.Limit).Amperes;
}

[Formula("AdiabaticHeating.WithstandJouleIntegral", "k²·S²", 3)]
public readonly struct AdiabaticWithstand : IFormula
{
    public double Raw(Case x) => Copper.ConstantSquared * x.SquareMillimeters * x.SquareMillimeters * Copper.Log(x.Celsius, x.LimitCelsius);

    public double Typed(Case x) => AdiabaticHeating.WithstandJouleIntegral(Copper.Metal, x.Area, x.Temperature, x.Limit).AmpereSquaredSeconds;
}

[Formula("FusingEstimates.PreeceCurrent", "I = a·d^1.5", 1)]
public readonly struct PreeceCurrent : IFormula
{
    public double Raw(Case x)
    {
        double inches = x.Millimeters / 25.4;
        return 10244 * inches * Math.Sqrt(inches);
    }

    public double Typed(Case x) => FusingEstimates.PreeceCurrent(PreeceMetal.Copper, x.Diameter).Amperes;
}

[Formula("FusingEstimates.PreeceDiameter", "d = (I/a)^(2/3)", 1)]
public readonly struct PreeceDiameter : IFormula
{
    public double Raw(Case x) => Math.Pow(x.MoreAmperes / 10244, 2.0 / 3) * 25.4;

    public double Typed(Case x) => FusingEstimates.PreeceDiameter(PreeceMetal.Copper, x.MoreCurrent).Millimeters;
}

[Formula("FusingEstimates.OnderdonkCurrent", "I = A·√(lg((1083 − θ)/(234 + θ) + 1)/(33·t))", 3)]
public readonly struct OnderdonkCurrent : IFormula
{
    public double Raw(Case x) => x.SquareMillimeters / (Math.PI / 4 * 0.0254 * 0.0254)
        * Math.Sqrt(Math.Log10(((1083 - x.Celsius) / (234 + x.Celsius)) + 1) / 33 / x.Seconds);

    public double Typed(Case x) => FusingEstimates.OnderdonkCurrent(x.Area, x.Duration, x.Temperature).Amperes;
}

[Formula("FusingEstimates.OnderdonkTime", "t = (A/I)²·lg((1083 − θ)/(234 + θ) + 1)/33", 3)]
public readonly struct OnderdonkTime : IFormula
{
    public double Raw(Case x)
    {
        double ratio = x.SquareMillimeters / (Math.PI / 4 * 0.0254 * 0.0254) / x.FaultAmperes;
        return ratio * ratio * Math.Log10(((1083 - x.Celsius) / (234 + x.Celsius)) + 1) / 33;
    }

    public double Typed(Case x) => FusingEstimates.OnderdonkTime(x.Area, x.Fault, x.Temperature).Seconds;
}

[Formula("IceaShortCircuit.CopperCurrent", "I = A·√(0.0297·lg((θf + 234)/(θi + 234))/t)", 4)]
public readonly struct IceaCopper : IFormula
{
    public double Raw(Case x) => x.SquareMillimeters / (Math.PI / 4 * 0.0254 * 0.0254)
        * Math.Sqrt(0.0297 * Math.Log10((x.LimitCelsius + 234) / (x.Celsius + 234)) / x.Seconds);

    public double Typed(Case x) => IceaShortCircuit.CopperCurrent(x.Area, x.Duration, x.Temperature, x.Limit).Amperes;
}

[Formula("NonAdiabaticFactor.Simplified", "ε = √(1 + X·√(t/S) + Y·t/S)", 2)]
public readonly struct NonAdiabaticSimplified : IFormula
{
    public double Raw(Case x)
    {
        double ratio = x.Seconds / x.SquareMillimeters;
        return Math.Sqrt(1 + (0.29 * Math.Sqrt(ratio)) + (0.06 * ratio));
    }

    public double Typed(Case x) => NonAdiabaticFactor.Simplified(NonAdiabaticInsulation.PolyvinylChloride.Copper, x.Area, x.Duration);
}

[Formula("NonAdiabaticFactor.General", "the same, X and Y from the materials", 2)]
public readonly struct NonAdiabaticGeneral : IFormula
{
    private static readonly double HeatCapacity = Copper.Metal.HeatCapacityJoulesPerCubicMeterKelvin;

    public double Raw(Case x)
    {
        double ratio = x.Seconds / x.SquareMillimeters;
        double first = 0.7 * 2464 / HeatCapacity * Math.Sqrt(1.7e6 / 5.0), second = 0.7 * 0.7 * 1.22 / HeatCapacity * (1.7e6 / 5.0);
        return Math.Sqrt(1 + (first * Math.Sqrt(ratio)) + (second * ratio));
    }

    public double Typed(Case x) => NonAdiabaticFactor.General(Copper.Metal, NonAdiabaticInsulation.PolyvinylChloride, x.Area, x.Duration);
}

[Formula("AdiabaticHeating.MaterialConstant", "K = √(c·(β + 20)/ρ20)", 0)]
public readonly struct MaterialConstant : IFormula
{
    public double Raw(Case x) => Math.Sqrt(Copper.Metal.HeatCapacityJoulesPerCubicMeterKelvin * (Copper.Beta + 20) * 1e-12 / Copper.Rho20);

    public double Typed(Case x) => AdiabaticHeating.MaterialConstant(Copper.Metal);
}

[Formula("IceaShortCircuit.AluminiumCurrent", "I = A·√(0.0125·lg((θf + 228)/(θi + 228))/t)", 4)]
public readonly struct IceaAluminium : IFormula
{
    public double Raw(Case x) => x.SquareMillimeters / (Math.PI / 4 * 0.0254 * 0.0254)
        * Math.Sqrt(0.0125 * Math.Log10((x.LimitCelsius + 228) / (x.Celsius + 228)) / x.Seconds);

    public double Typed(Case x) => IceaShortCircuit.AluminiumCurrent(x.Area, x.Duration, x.Temperature, x.Limit).Amperes;
}
