using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("VoltageDrop.Along", "ΔV = R′·L·I", 2)]
public readonly struct DropAlong : IFormula
{
    public double Raw(Case x) => x.OhmsPerMeter * x.Meters * x.Amperes;

    public double Typed(Case x) => VoltageDrop.Along(x.PerLength, x.Length, x.Current).Volts;
}

[Formula("VoltageDrop.OutAndBack", "R = R′f·Lf + R′r·Lr", 2)]
public readonly struct DropOutAndBack : IFormula
{
    public double Raw(Case x) => (x.OhmsPerMeter * x.Meters) + (x.OtherOhmsPerMeter * x.Meters);

    public double Typed(Case x) => VoltageDrop.OutAndBack(x.PerLength, x.Length, x.OtherPerLength, x.Length).Ohms;
}

[Formula("VoltageDrop.GreatestRun", "L = ΔV/(R′·I)", 2)]
public readonly struct GreatestRun : IFormula
{
    public double Raw(Case x) => x.AllowedVolts / x.OhmsPerMeter / x.Amperes;

    public double Typed(Case x) => VoltageDrop.GreatestRun(x.PerLength, x.Current, x.Allowed).Meters;
}

[Formula("VoltageDrop.GreatestResistance", "R = ΔV/I", 2)]
public readonly struct GreatestResistance : IUnitsFormula
{
    public double Raw(Case x) => x.AllowedVolts / x.Amperes;

    public double UnitsNet(Case x) => (x.Allowed / x.Current).Ohms;

    public double Typed(Case x) => VoltageDrop.GreatestResistance(x.Current, x.Allowed).Ohms;
}

[Formula("VoltageDrop.LeastArea, from a drop", "S = ρ·L·I/ΔV", 4)]
public readonly struct LeastAreaForDrop : IFormula
{
    public double Raw(Case x) => x.OhmMeters * 1e6 * x.Meters * x.Amperes / x.AllowedVolts;

    public double Typed(Case x) => VoltageDrop.LeastArea(x.Resistivity, x.Length, x.Current, x.Allowed).SquareMillimeters;
}

[Formula("VoltageDrop.LeastArea, from a resistance", "S = ρ·L/R", 3)]
public readonly struct LeastAreaForResistance : IFormula
{
    public double Raw(Case x) => x.OhmMeters * x.Meters / x.Ohms * 1e6;

    public double Typed(Case x) => VoltageDrop.LeastArea(x.Resistivity, x.Length, x.Resistance).SquareMillimeters;
}

[Formula("VoltageDrop.ResistanceOf", "R = ρ·L/S", 3)]
public readonly struct ResistanceOf : IFormula
{
    public double Raw(Case x) => x.OhmMeters * 1e6 * x.Meters / x.SquareMillimeters;

    public double Typed(Case x) => VoltageDrop.ResistanceOf(x.Resistivity, x.Length, x.Area).Ohms;
}

[Formula("VoltageDrop.Lost", "P = I²·R", 2)]
public readonly struct PowerLost : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes * x.Amperes * x.Ohms;

    public double UnitsNet(Case x) => (double)(x.Current * x.Resistance * x.Current).Watts;

    public double Typed(Case x) => (double)VoltageDrop.Lost(x.Current, x.Resistance).Watts;
}

[Formula("VoltageDrop.LostShare", "I·R/V", 3)]
public readonly struct LostShare : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes * x.Ohms / x.Volts;

    public double UnitsNet(Case x) => x.Current * x.Resistance / x.Voltage;

    public double Typed(Case x) => VoltageDrop.LostShare(x.Current, x.Resistance, x.Voltage).DecimalFractions;
}

[Formula("LinearResistance × Length", "R = R′·L", 1)]
public readonly struct LinearTimesLength : IFormula
{
    public double Raw(Case x) => x.OhmsPerMeter * x.Meters;

    public double Typed(Case x) => (x.PerLength * x.Length).Ohms;
}

[Formula("UniformRun.LeastArea", "S = ρ·I·L/ΔV", 4)]
public readonly struct UniformLeastArea : IFormula
{
    public double Raw(Case x) => x.OhmMeters * 1e6 * x.Amperes * x.Meters / x.AllowedVolts;

    public double Typed(Case x) => UniformRun.LeastArea(x.Resistivity, x.Length, x.Current, x.Allowed).SquareMillimeters;
}

[Formula("UniformRun.VoltageAt", "V − R′·x·(I − i·x/2)", 2)]
public readonly struct UniformVoltageAt : IFormula
{
    private static readonly UniformRun Run = UniformRun.Create(
        Quantities.LinearResistance.FromOhmsPerMeter(0.005), Quantities.LinearResistance.FromOhmsPerMeter(0.005), Length.FromMeters(10), ElectricCurrent.FromAmperes(5));

    public double Raw(Case x) => x.Volts - (0.01 * x.Meters * (5 - (0.25 * x.Meters)));

    public double Typed(Case x) => Run.VoltageAt(x.Voltage, x.Length).Volts;
}

[Formula("UniformRun.FedAtBothEnds, lowest voltage", "V at x = I₁/i, I₁ = i·L/2 + (V₁ − V₂)/(R′·L); all points of the run", 2, Baseline = "the formula alone")]
public readonly struct UniformBothEnds : IFormula
{
    private static readonly UniformRun Run = UniformRun.Create(
        Quantities.LinearResistance.FromOhmsPerMeter(0.05), Quantities.LinearResistance.FromOhmsPerMeter(0.05), Length.FromMeters(10), ElectricCurrent.FromAmperes(10));

    public double Raw(Case x)
    {
        double amperes = 5 + (x.Volts - x.LowVolts), at = Math.Min(Math.Max(amperes, 0), 10);
        return x.Volts - (0.1 * at * (amperes - (0.5 * at)));
    }

    public double Typed(Case x) => Run.FedAtBothEnds(x.Voltage, x.LowVoltage).Lowest.Voltage.Volts;
}

[Formula("TappedRun.FedAtOneEnd, voltage of the third tap", "V − R′·Σ L·ΣI; all points of the run", 1, Baseline = "the formula alone")]
public readonly struct TappedOneEnd : IFormula
{
    private static readonly TappedRun Run = TappedRun.Create(
        Quantities.LinearResistance.FromOhmsPerMeter(0.005), Quantities.LinearResistance.FromOhmsPerMeter(0.005),
        Tap.Create(Length.FromMeters(3), ElectricCurrent.FromAmperes(1)), Tap.Create(Length.FromMeters(4), ElectricCurrent.FromAmperes(2)), Tap.Create(Length.FromMeters(5), ElectricCurrent.FromAmperes(3)));

    private static readonly double[] Lengths = [3, 4, 5];
    private static readonly double[] Loads = [1, 2, 3];

    public double Raw(Case x)
    {
        double volts = x.Volts, amperes = 6;
        for (int i = 0; i < Lengths.Length; i++)
        {
            volts -= amperes * 0.01 * Lengths[i];
            amperes -= Loads[i];
        }

        return volts;
    }

    public double Typed(Case x) => Run.FedAtOneEnd(x.Voltage).Lowest.Voltage.Volts;
}

[Formula("UniformRun.FedAtOneEnd, lowest voltage", "V − R′·i·L²/2; all points of the run", 1, Baseline = "the formula alone")]
public readonly struct UniformOneEnd : IFormula
{
    private static readonly UniformRun Run = UniformRun.Create(
        Quantities.LinearResistance.FromOhmsPerMeter(0.005), Quantities.LinearResistance.FromOhmsPerMeter(0.005), Length.FromMeters(10), ElectricCurrent.FromAmperes(5));

    public double Raw(Case x) => x.Volts - (0.01 * 10 * (5 - (0.25 * 10)));

    public double Typed(Case x) => Run.FedAtOneEnd(x.Voltage).Lowest.Voltage.Volts;
}

[Formula("TappedRun.FedAtBothEnds, current of the near feed", "(V₁ − V₂ + Σ I·R beyond)/R", 2, Baseline = "the formula alone")]
public readonly struct TappedBothEnds : IFormula
{
    private static readonly TappedRun Run = TappedRun.Create(
        Quantities.LinearResistance.FromOhmsPerMeter(0.05), Quantities.LinearResistance.FromOhmsPerMeter(0.05),
        Tap.Create(Length.FromMeters(3), ElectricCurrent.FromAmperes(1)), Tap.Create(Length.FromMeters(4), ElectricCurrent.FromAmperes(2)), Tap.Create(Length.FromMeters(5), ElectricCurrent.FromAmperes(3)));

    private static readonly double[] Lengths = [3, 4, 5];
    private static readonly double[] Loads = [1, 2, 3];

    public double Raw(Case x)
    {
        double beyond = 12, sum = 0;
        for (int i = 0; i < Lengths.Length; i++)
        {
            beyond -= Lengths[i];
            sum += Loads[i] * 0.1 * beyond;
        }

        return (x.Volts - x.LowVolts + sum) / (0.1 * 12);
    }

    public double Typed(Case x) => Run.FedAtBothEnds(x.Voltage, x.LowVoltage).NearFeed.Amperes;
}

[Formula("TappedRun.LeastArea, one tap", "S = 2ρ·Σ L·ΣI/ΔV", 2)]
public readonly struct TappedLeastArea : IFormula
{
    private static readonly Tap Only = Tap.Create(Length.FromMeters(3), ElectricCurrent.FromAmperes(5));

    public double Raw(Case x) => 2 * x.OhmMeters * (5.0 * 3) / x.AllowedVolts * 1e6;

    public double Typed(Case x) => TappedRun.LeastArea(x.Resistivity, x.Allowed, Only).SquareMillimeters;
}
