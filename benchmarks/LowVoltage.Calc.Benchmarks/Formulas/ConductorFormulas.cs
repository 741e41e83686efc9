using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("Conductor.ResistancePerLength", "R′ = R′20·(1 + α·(θ − 20))", 1)]
public readonly struct ResistancePerLength : IFormula
{
    public double Raw(Case x) => Copper.OhmsPerMeter20 * Copper.RatioTo20(x.Celsius);

    public double Typed(Case x) => Copper.Wire.ResistancePerLength(x.Temperature).OhmsPerMeter;
}

[Formula("Conductor.Resistance", "R = R′20·(1 + α·(θ − 20))·L", 2)]
public readonly struct ResistanceOfLength : IFormula
{
    public double Raw(Case x) => Copper.OhmsPerMeter20 * Copper.RatioTo20(x.Celsius) * x.Meters;

    public double Typed(Case x) => Copper.Wire.Resistance(x.Length, x.Temperature).Ohms;
}

[Formula("Conductor.TemperatureFromResistance", "θ = 20 + (R/R20 − 1)/α", 2)]
public readonly struct TemperatureFromResistance : IFormula
{
    // A length so long that the resistances drawn belong to temperatures between −100 °C and the melting point.
    private static readonly Length Run = Length.FromMeters(300);

    public double Raw(Case x) => 20 + (((x.OtherOhms / (Copper.OhmsPerMeter20 * 300)) - 1) / Copper.Alpha);

    public double Typed(Case x) => Copper.Wire.TemperatureFromResistance(x.OtherResistance, Run).DegreesCelsius;
}

[Formula("Conductor.Mass", "m = m′·L", 1)]
public readonly struct MassOf : IUnitsFormula
{
    private static readonly LinearDensity PerLength = Copper.Wire.MassPerLength;

    public double Raw(Case x) => Copper.KilogramsPerMeter * x.Meters;

    public double UnitsNet(Case x) => (PerLength * x.Length).Kilograms;

    public double Typed(Case x) => Copper.Wire.Mass(x.Length).Kilograms;
}

[Formula("Conductor.CurrentDensity", "J = I/S", 1)]
public readonly struct DensityOfCurrent : IFormula
{
    public double Raw(Case x) => x.Amperes / (Copper.SquareMillimeters * 1e-6);

    public double Typed(Case x) => Copper.Wire.CurrentDensity(x.Current).AmperesPerSquareMeter;
}

[Formula("ConductorMaterial.ResistivityAt", "ρ = ρ20·(1 + α·(θ − 20))", 1)]
public readonly struct ResistivityAt : IFormula
{
    public double Raw(Case x) => Copper.Rho20 * Copper.RatioTo20(x.Celsius);

    public double Typed(Case x) => Copper.Metal.ResistivityAt(x.Temperature).OhmMeters;
}

[Formula("BarResistance.Resistance", "R = ρ·L/S", 3)]
public readonly struct BarResistanceOf : IFormula
{
    public double Raw(Case x) => x.OhmMeters * x.Meters / (x.SquareMillimeters * 1e-6);

    public double Typed(Case x) => BarResistance.Resistance(x.Resistivity, x.Length, x.Area).Ohms;
}

[Formula("BarResistance.Resistivity", "ρ = R·S/L", 3)]
public readonly struct BarResistivity : IFormula
{
    public double Raw(Case x) => x.Ohms * (x.SquareMillimeters * 1e-6) / x.Meters;

    public double Typed(Case x) => BarResistance.Resistivity(x.Resistance, x.Length, x.Area).OhmMeters;
}

[Formula("BarResistance.AreaFor", "S = ρ·L/R", 3)]
public readonly struct BarArea : IFormula
{
    public double Raw(Case x) => x.OhmMeters * x.Meters / x.Ohms;

    public double Typed(Case x) => BarResistance.AreaFor(x.Resistivity, x.Length, x.Resistance).SquareMeters;
}

[Formula("BarResistance.LengthFor", "L = R·S/ρ", 3)]
public readonly struct BarLength : IFormula
{
    public double Raw(Case x) => x.Ohms * (x.SquareMillimeters * 1e-6) / x.OhmMeters;

    public double Typed(Case x) => BarResistance.LengthFor(x.Resistivity, x.Area, x.Resistance).Meters;
}

[Formula("BarResistance.FieldStrength", "E = ρ·I/S", 3)]
public readonly struct BarField : IFormula
{
    public double Raw(Case x) => x.OhmMeters * x.Amperes / (x.SquareMillimeters * 1e-6);

    public double Typed(Case x) => BarResistance.FieldStrength(x.Resistivity, x.Current, x.Area).VoltsPerMeter;
}

[Formula("CircularMil.FromArea", "S over that of a circle of 1 mil", 1)]
public readonly struct CircularMilsOfArea : IUnitsFormula
{
    private static readonly Area One = Length.FromMils(1) * Length.FromMils(1) * (Math.PI / 4);

    public double Raw(Case x) => x.SquareMillimeters / (Math.PI / 4 * 0.0254 * 0.0254);

    public double UnitsNet(Case x) => x.Area / One;

    public double Typed(Case x) => CircularMil.FromArea(x.Area);
}

[Formula("CircularMil.FromDiameter", "(d/mil)²", 1)]
public readonly struct CircularMilsOfDiameter : IFormula
{
    public double Raw(Case x)
    {
        double mils = x.Millimeters / 0.0254;
        return mils * mils;
    }

    public double Typed(Case x) => CircularMil.FromDiameter(x.Diameter);
}

[Formula("TemperatureCorrection.ResistanceAt, of a metal", "R₁·(1 + α·(θ₂ − 20))/(1 + α·(θ₁ − 20))", 3)]
public readonly struct CorrectedForMetal : IFormula
{
    public double Raw(Case x) => x.Ohms * Copper.RatioTo20(x.HotCelsius) / Copper.RatioTo20(x.Celsius);

    public double Typed(Case x) => TemperatureCorrection.ResistanceAt(x.Resistance, x.Temperature, x.Hot, Copper.Metal).Ohms;
}

[Formula("TemperatureCorrection.ResistanceAt, of a coefficient", "R₁·(1 + α·(θ₂ − θ₀))/(1 + α·(θ₁ − θ₀))", 4)]
public readonly struct CorrectedByCoefficient : IUnitsFormula
{
    private static readonly Temperature At = Temperature.FromDegreesCelsius(20);

    public double Raw(Case x) => x.Ohms * (1 + (0.0039 * (x.HotCelsius - 20))) / (1 + (0.0039 * (x.Celsius - 20)));

    public double UnitsNet(Case x) => (x.Resistance * ((1 + (0.0039 * (x.Hot - At).Kelvins)) / (1 + (0.0039 * (x.Temperature - At).Kelvins)))).Ohms;

    public double Typed(Case x) => TemperatureCorrection.ResistanceAt(x.Resistance, x.Temperature, x.Hot, 0.0039, At).Ohms;
}

[Formula("TemperatureCorrection.TemperatureFrom", "θ₀ + (R₂/R₁·(1 + α·(θ₁ − θ₀)) − 1)/α", 4)]
public readonly struct TemperatureByCoefficient : IUnitsFormula
{
    private static readonly Temperature At = Temperature.FromDegreesCelsius(20);

    public double Raw(Case x) => 20 + (((x.LastOhms / x.OtherOhms * (1 + (0.0039 * (x.Celsius - 20)))) - 1) / 0.0039);

    public double UnitsNet(Case x) => (At + TemperatureDelta.FromKelvins(
        ((x.LastResistance / x.OtherResistance * (1 + (0.0039 * (x.Temperature - At).Kelvins))) - 1) / 0.0039)).DegreesCelsius;

    public double Typed(Case x) => TemperatureCorrection.TemperatureFrom(x.OtherResistance, x.Temperature, x.LastResistance, 0.0039, At).DegreesCelsius;
}

[Formula("TemperatureCorrection.CoefficientAt", "α/(1 + α·(θ − θ₀))", 2)]
public readonly struct CoefficientAt : IUnitsFormula
{
    private static readonly Temperature At = Temperature.FromDegreesCelsius(20);

    public double Raw(Case x) => 0.0039 / (1 + (0.0039 * (x.Celsius - 20)));

    public double UnitsNet(Case x) => 0.0039 / (1 + (0.0039 * (x.Temperature - At).Kelvins));

    public double Typed(Case x) => TemperatureCorrection.CoefficientAt(0.0039, At, x.Temperature);
}

[Formula("TemperatureCorrection.NecResistanceAt", "R·(1 + α·(θ − 75))", 2)]
public readonly struct NecResistance : IUnitsFormula
{
    private static readonly Temperature At = Temperature.FromDegreesCelsius(75);

    public double Raw(Case x) => x.Ohms * (1 + (0.00323 * (x.Celsius - 75)));

    public double UnitsNet(Case x) => (x.Resistance * (1 + (0.00323 * (x.Temperature - At).Kelvins))).Ohms;

    public double Typed(Case x) => TemperatureCorrection.NecResistanceAt(x.Resistance, x.Temperature, 0.00323).Ohms;
}

[Formula("TemperatureCorrection.TemperatureOfEqualResistance", "θ₀ + (R₂ − R₁)/(R₁·α₁ − R₂·α₂)", 3)]
public readonly struct EqualResistance : IUnitsFormula
{
    public double Raw(Case x) => x.Celsius + ((x.LastOhms - x.OtherOhms) / ((x.OtherOhms * 0.02) - (x.LastOhms * 0.001)));

    public double UnitsNet(Case x) => (x.Temperature + TemperatureDelta.FromKelvins(
        (x.LastResistance - x.OtherResistance) / ((x.OtherResistance * 0.02) - (x.LastResistance * 0.001)))).DegreesCelsius;

    public double Typed(Case x) => TemperatureCorrection.TemperatureOfEqualResistance(x.OtherResistance, 0.02, x.LastResistance, 0.001, x.Temperature)!.Value.DegreesCelsius;
}

[Formula("CircularMil.ToArea", "cmil·π/4·mil²", 0)]
public readonly struct AreaOfCircularMils : IFormula
{
    public double Raw(Case x) => x.Number * (Math.PI / 4 * 0.0254 * 0.0254);

    public double Typed(Case x) => CircularMil.ToArea(x.Number).SquareMillimeters;
}

[Formula("CircularMil.SquareMilsOf", "S/mil²", 1)]
public readonly struct SquareMils : IUnitsFormula
{
    private static readonly Area One = Length.FromMils(1) * Length.FromMils(1);

    public double Raw(Case x) => x.SquareMillimeters / (0.0254 * 0.0254);

    public double UnitsNet(Case x) => x.Area / One;

    public double Typed(Case x) => CircularMil.SquareMilsOf(x.Area);
}

[Formula("CircularMil.MilsOf", "L/mil", 1)]
public readonly struct MilsOfLength : IUnitsFormula
{
    private static readonly Length One = Length.FromMils(1);

    public double Raw(Case x) => x.Millimeters / 0.0254;

    public double UnitsNet(Case x) => x.Diameter / One;

    public double Typed(Case x) => CircularMil.MilsOf(x.Diameter);
}
