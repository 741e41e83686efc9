using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("ElectricalEnergy.FromPower", "W = P·t", 2)]
public readonly struct EnergyFromPower : IUnitsFormula
{
    public double Raw(Case x) => x.Watts * x.Seconds;

    public double UnitsNet(Case x) => (x.Power * x.Duration).Joules;

    public double Typed(Case x) => ElectricalEnergy.FromPower(x.Power, x.Duration).Joules;
}

[Formula("ElectricalEnergy.Lost", "W = I²·R·t", 3)]
public readonly struct EnergyLost : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes * x.Amperes * x.Ohms * x.Seconds;

    public double UnitsNet(Case x) => (x.Current * x.Resistance * x.Current * x.Duration).Joules;

    public double Typed(Case x) => ElectricalEnergy.Lost(x.Current, x.Resistance, x.Duration).Joules;
}

[Formula("ElectricalEnergy.Charge", "Q = I·t", 2)]
public readonly struct ChargeOf : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes * x.Seconds;

    public double UnitsNet(Case x) => (x.Current * x.Duration).Coulombs;

    public double Typed(Case x) => ElectricalEnergy.Charge(x.Current, x.Duration).Coulombs;
}

[Formula("ElectricalEnergy.RunningTime, at a current", "t = Q/I", 2)]
public readonly struct RunningTimeAtCurrent : IUnitsFormula
{
    public double Raw(Case x) => x.Coulombs / x.Amperes;

    public double UnitsNet(Case x) => (x.Charge / x.Current).Seconds;

    public double Typed(Case x) => ElectricalEnergy.RunningTime(x.Charge, x.Current).Seconds;
}

[Formula("ElectricalEnergy.RunningTime, at a power", "t = Q·V/P", 3)]
public readonly struct RunningTimeAtPower : IUnitsFormula
{
    public double Raw(Case x) => x.Coulombs * x.Volts / x.Watts;

    public double UnitsNet(Case x) => (x.Charge * x.Voltage / x.Power).Seconds;

    public double Typed(Case x) => ElectricalEnergy.RunningTime(x.Charge, x.Voltage, x.Power).Seconds;
}

[Formula("InternalResistance.FromDischarge", "R = (E − V)/I", 3)]
public readonly struct ResistanceFromDischarge : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts - x.LowVolts) / x.Amperes;

    public double UnitsNet(Case x) => ((x.Voltage - x.LowVoltage) / x.Current).Ohms;

    public double Typed(Case x) => InternalResistance.FromDischarge(x.Voltage, x.LowVoltage, x.Current).Ohms;
}

[Formula("InternalResistance.FromCharge", "R = (V − E)/I", 3)]
public readonly struct ResistanceFromCharge : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts - x.LowVolts) / x.Amperes;

    public double UnitsNet(Case x) => ((x.Voltage - x.LowVoltage) / x.Current).Ohms;

    public double Typed(Case x) => InternalResistance.FromCharge(x.LowVoltage, x.Voltage, x.Current).Ohms;
}

[Formula("InternalResistance.FromTwoPoints", "R = (V₁ − V₂)/(I₂ − I₁)", 4)]
public readonly struct ResistanceFromTwoPoints : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts - x.LowVolts) / (x.MoreAmperes - x.Amperes);

    public double UnitsNet(Case x) => ((x.Voltage - x.LowVoltage) / (x.MoreCurrent - x.Current)).Ohms;

    public double Typed(Case x) => InternalResistance.FromTwoPoints(x.Voltage, x.Current, x.LowVoltage, x.MoreCurrent).Ohms;
}

[Formula("InternalResistance.TerminalVoltage", "V = E − R·I", 3)]
public readonly struct TerminalVoltage : IUnitsFormula
{
    public double Raw(Case x) => x.Volts - (x.Ohms * x.Amperes);

    public double UnitsNet(Case x) => (x.Voltage - (x.Resistance * x.Current)).Volts;

    public double Typed(Case x) => InternalResistance.TerminalVoltage(x.Voltage, x.Resistance, x.Current).Volts;
}

[Formula("InternalResistance.ChargingVoltage", "V = E + R·I", 3)]
public readonly struct ChargingVoltage : IUnitsFormula
{
    public double Raw(Case x) => x.Volts + (x.Ohms * x.Amperes);

    public double UnitsNet(Case x) => (x.Voltage + (x.Resistance * x.Current)).Volts;

    public double Typed(Case x) => InternalResistance.ChargingVoltage(x.Voltage, x.Resistance, x.Current).Volts;
}

[Formula("OpposingSources.Solve", "I = (V₁ − V₂)/R", 3)]
public readonly struct Opposing : IUnitsFormula
{
    public double Raw(Case x) => (x.Volts - x.LowVolts) / x.Ohms;

    public double UnitsNet(Case x) => ((x.Voltage - x.LowVoltage) / x.Resistance).Amperes;

    public double Typed(Case x) => OpposingSources.Solve(x.Voltage, x.LowVoltage, x.Resistance).Current.Amperes;
}

[Formula("SharedNeutral.Solve, positive side", "V − I·Ro − (I₁ − I₂)·Rm", 5)]
public readonly struct NeutralShared : IUnitsFormula
{
    public double Raw(Case x) => x.Volts - (x.Amperes * x.Ohms) - ((x.Amperes - x.MoreAmperes) * x.Ohms);

    public double UnitsNet(Case x) => (x.Voltage - (x.Current * x.Resistance) - ((x.Current - x.MoreCurrent) * x.Resistance)).Volts;

    public double Typed(Case x) => SharedNeutral.Solve(x.Voltage, x.Current, x.MoreCurrent, x.Resistance, x.Resistance).PositiveVoltage.Volts;
}

[Formula("SharedNeutral.Broken, positive side", "2V·R₁/(R₁ + R₂)", 3)]
public readonly struct NeutralBroken : IUnitsFormula
{
    public double Raw(Case x) => 2 * x.Volts * (x.OtherOhms / (x.OtherOhms + x.LastOhms));

    public double UnitsNet(Case x) => (2 * x.Voltage * (x.OtherResistance / (x.OtherResistance + x.LastResistance))).Volts;

    public double Typed(Case x) => SharedNeutral.Broken(x.Voltage, x.OtherResistance, x.LastResistance).PositiveVoltage.Volts;
}

[Formula("LeadAcidCharge.VoltageAt", "rest voltage at a state of charge, plus its change with temperature", 1)]
public readonly struct LeadAcidVoltage : IFormula
{
    public double Raw(Case x) => 11.89 + ((12.06 - 11.89) * 0.1 / 0.25) + (6 * 0.0002 * (x.Celsius - (48 / 1.8)));

    public double Typed(Case x) => LeadAcidCharge.VoltageAt(0.1, x.Temperature).Volts;
}

[Formula("ConductorTemperature.AtCurrent", "θ = θa + Δθ·(I/Ir)²", 1)]
public readonly struct SelfHeated : IUnitsFormula
{
    private static readonly Temperature Ambient = Temperature.FromDegreesCelsius(30);
    private static readonly TemperatureDelta Rise = TemperatureDelta.FromKelvins(40);
    private static readonly ElectricCurrent Rated = ElectricCurrent.FromAmperes(15);
    private static readonly ConductorTemperature Model = ConductorTemperature.SelfHeated(Ambient, Rated, Temperature.FromDegreesCelsius(70));

    public double Raw(Case x)
    {
        double load = x.Amperes / 15;
        return 30 + (40 * load * load);
    }

    public double UnitsNet(Case x)
    {
        double load = x.Current / Rated;
        return (Ambient + (Rise * load * load)).DegreesCelsius;
    }

    public double Typed(Case x) => Model.AtCurrent(x.Current).DegreesCelsius;
}

[Formula("Load.CurrentAt, constant power", "I = P/V", 1)]
public readonly struct PowerLoadCurrent : IUnitsFormula
{
    private static readonly Power Rated = Power.FromWatts(60);
    private static readonly Load Draw = Load.ConstantPower(Rated);

    public double Raw(Case x) => 60 / x.Volts;

    public double UnitsNet(Case x) => (Rated / x.Voltage).Amperes;

    public double Typed(Case x) => Draw.CurrentAt(x.Voltage, LoadState.Running).Amperes;
}

[Formula("Load.CurrentAt, lamp", "I = Ir·(V/Vr)^0.55", 1)]
public readonly struct LampCurrent : IFormula
{
    private static readonly Load Lamp = Load.Lamp(Power.FromWatts(60), ElectricPotential.FromVolts(12));

    public double Raw(Case x) => 5 * Math.Pow(x.Volts / 12, 0.55);

    public double Typed(Case x) => Lamp.CurrentAt(x.Voltage, LoadState.Running).Amperes;
}

[Formula("Load.InrushFrom, lamp", "V/(R + Rcold), with its source", 2, Baseline = "the formula alone")]
public readonly struct LampInrush : IFormula
{
    private static readonly Load Lamp = Load.Lamp(Power.FromWatts(60), ElectricPotential.FromVolts(12));

    public double Raw(Case x) => x.Volts / (x.Ohms + (12.0 / 5 / 14));

    public double Typed(Case x) => Lamp.InrushFrom(x.Voltage, x.Resistance)[0].Peak.Amperes;
}

[Formula("Battery.LeadAcid, resistance", "R = (12.6 − 7.2)/I, with its sentences", 1, Baseline = "the formula alone")]
public readonly struct LeadAcidResistance : IFormula
{
    public double Raw(Case x) => (12.6 - 7.2) / x.FaultAmperes;

    public double Typed(Case x) => Battery.LeadAcid(x.Fault).NominalResistance.Ohms;
}

[Formula("Battery.LithiumIronPhosphate, resistance", "R = 4·40 mΩ·Ah/Q, with its sentences", 1, Baseline = "the formula alone")]
public readonly struct LithiumResistance : IFormula
{
    public double Raw(Case x) => 4 * 0.040 * 3600 / x.Coulombs;

    public double Typed(Case x) => Battery.LithiumIronPhosphate(4, x.Charge).NominalResistance.Ohms;
}
