using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("ResistorNetwork.Series, three", "R₁ + R₂ + R₃", 3)]
public readonly struct SeriesOfThree : IUnitsFormula
{
    public double Raw(Case x) => x.Ohms + x.OtherOhms + x.LastOhms;

    public double UnitsNet(Case x) => (x.Resistance + x.OtherResistance + x.LastResistance).Ohms;

    public double Typed(Case x) => ResistorNetwork.Series(x.Resistance, x.OtherResistance, x.LastResistance).Ohms;
}

[Formula("ResistorNetwork.Parallel, three", "1/(1/R₁ + 1/R₂ + 1/R₃)", 3)]
public readonly struct ParallelOfThree : IUnitsFormula
{
    public double Raw(Case x) => 1 / ((1 / x.Ohms) + (1 / x.OtherOhms) + (1 / x.LastOhms));

    public double UnitsNet(Case x) => (x.Resistance / (1 + (x.Resistance / x.OtherResistance) + (x.Resistance / x.LastResistance))).Ohms;

    public double Typed(Case x) => ResistorNetwork.Parallel(x.Resistance, x.OtherResistance, x.LastResistance).Ohms;
}

[Formula("ResistorNetwork.DividedVoltage", "V·R₁/(R₁ + R₂)", 3)]
public readonly struct DividedVoltage : IUnitsFormula
{
    public double Raw(Case x) => x.Volts * (x.OtherOhms / (x.OtherOhms + x.LastOhms));

    public double UnitsNet(Case x) => (x.Voltage * (x.OtherResistance / (x.OtherResistance + x.LastResistance))).Volts;

    public double Typed(Case x) => ResistorNetwork.DividedVoltage(x.Voltage, x.OtherResistance, x.LastResistance).Volts;
}

[Formula("ResistorNetwork.DividedCurrent", "I/(R₁·(1/R₁ + 1/R₂))", 3)]
public readonly struct DividedCurrent : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes / (x.OtherOhms * ((1 / x.OtherOhms) + (1 / x.LastOhms)));

    public double UnitsNet(Case x) => (x.Current / (1 + (x.OtherResistance / x.LastResistance))).Amperes;

    public double Typed(Case x) => ResistorNetwork.DividedCurrent(x.Current, x.OtherResistance, x.LastResistance).Amperes;
}

[Formula("ResistorNetwork.UnknownSeriesPart", "R − R₁ − R₂", 3)]
public readonly struct UnknownPart : IUnitsFormula
{
    public double Raw(Case x) => x.LastOhms - (x.Ohms + x.OtherOhms);

    public double UnitsNet(Case x) => (x.LastResistance - (x.Resistance + x.OtherResistance)).Ohms;

    public double Typed(Case x) => ResistorNetwork.UnknownSeriesPart(x.LastResistance, x.Resistance, x.OtherResistance).Ohms;
}

[Formula("ResistorNetwork.Shunt", "R·Im/(I − Im)", 3)]
public readonly struct ShuntOf : IUnitsFormula
{
    public double Raw(Case x) => x.OtherOhms * (x.Amperes / (x.MoreAmperes - x.Amperes));

    public double UnitsNet(Case x) => (x.OtherResistance * (x.Current / (x.MoreCurrent - x.Current))).Ohms;

    public double Typed(Case x) => ResistorNetwork.Shunt(x.OtherResistance, x.Current, x.MoreCurrent).Ohms;
}
