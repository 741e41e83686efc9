using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("OhmsLaw.FromVoltageAndCurrent", "R = V/I, P = V·I", 2)]
public readonly struct FromVoltageAndCurrent : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts / x.Amperes) + (x.Volts * x.Amperes);

    public double UnitsNet(Case x) => (x.Voltage / x.Current).Ohms + (double)(x.Voltage * x.Current).Watts;

    public double Typed(Case x) => Sum(OhmsLaw.FromVoltageAndCurrent(x.Voltage, x.Current));

    private static double Sum(OhmsLawPoint point) => point.Resistance.Ohms + (double)point.Power.Watts;
}

[Formula("OhmsLaw.FromVoltageAndResistance", "I = V/R, P = V²/R", 2)]
public readonly struct FromVoltageAndResistance : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts / x.OtherOhms) + (x.Volts * x.Volts / x.OtherOhms);

    public double UnitsNet(Case x)
    {
        ElectricCurrent current = x.Voltage / x.OtherResistance;
        return current.Amperes + (double)(x.Voltage * current).Watts;
    }

    public double Typed(Case x)
    {
        OhmsLawPoint point = OhmsLaw.FromVoltageAndResistance(x.Voltage, x.OtherResistance);
        return point.Current.Amperes + (double)point.Power.Watts;
    }
}

[Formula("OhmsLaw.FromVoltageAndPower", "I = P/V, R = V²/P", 2)]
public readonly struct FromVoltageAndPower : IUnitsFormula
{
    public double Raw(Case x) => (x.Watts / x.Volts) + (x.Volts * x.Volts / x.Watts);

    public double UnitsNet(Case x)
    {
        ElectricCurrent current = x.Power / x.Voltage;
        return current.Amperes + (x.Voltage / current).Ohms;
    }

    public double Typed(Case x)
    {
        OhmsLawPoint point = OhmsLaw.FromVoltageAndPower(x.Voltage, x.Power);
        return point.Current.Amperes + point.Resistance.Ohms;
    }
}

[Formula("OhmsLaw.FromCurrentAndResistance", "V = I·R, P = I²·R", 2)]
public readonly struct FromCurrentAndResistance : IUnitsFormula
{
    public double Raw(Case x) => (x.Amperes * x.OtherOhms) + (x.Amperes * x.Amperes * x.OtherOhms);

    public double UnitsNet(Case x)
    {
        ElectricPotential voltage = x.Current * x.OtherResistance;
        return voltage.Volts + (double)(voltage * x.Current).Watts;
    }

    public double Typed(Case x)
    {
        OhmsLawPoint point = OhmsLaw.FromCurrentAndResistance(x.Current, x.OtherResistance);
        return point.Voltage.Volts + (double)point.Power.Watts;
    }
}

[Formula("OhmsLaw.FromCurrentAndPower", "V = P/I, R = P/I²", 2)]
public readonly struct FromCurrentAndPower : IUnitsFormula
{
    public double Raw(Case x) => (x.Watts / x.Amperes) + (x.Watts / (x.Amperes * x.Amperes));

    public double UnitsNet(Case x)
    {
        ElectricPotential voltage = x.Power / x.Current;
        return voltage.Volts + (voltage / x.Current).Ohms;
    }

    public double Typed(Case x)
    {
        OhmsLawPoint point = OhmsLaw.FromCurrentAndPower(x.Current, x.Power);
        return point.Voltage.Volts + point.Resistance.Ohms;
    }
}

[Formula("OhmsLaw.FromResistanceAndPower", "V = √(P·R), I = √(P/R)", 2)]
public readonly struct FromResistanceAndPower : IFormula
{
    public double Raw(Case x) => Math.Sqrt(x.Watts * x.OtherOhms) + Math.Sqrt(x.Watts / x.OtherOhms);

    public double Typed(Case x)
    {
        OhmsLawPoint point = OhmsLaw.FromResistanceAndPower(x.OtherResistance, x.Power);
        return point.Voltage.Volts + point.Current.Amperes;
    }
}

[Formula("MaximumPowerTransfer.Into", "P = V²/(4R), I = V/(2R)", 2)]
public readonly struct MaximumPower : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts * x.Volts / (4 * x.Ohms)) + (x.Volts / (2 * x.Ohms));

    public double UnitsNet(Case x)
    {
        ElectricPotential half = x.Voltage / 2;
        ElectricCurrent current = half / x.Resistance;
        return (double)(half * current).Watts + current.Amperes;
    }

    public double Typed(Case x)
    {
        OhmsLawPoint point = MaximumPowerTransfer.Into(x.Voltage, x.Resistance);
        return (double)point.Power.Watts + point.Current.Amperes;
    }
}
