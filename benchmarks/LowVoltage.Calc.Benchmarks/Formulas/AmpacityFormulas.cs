using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("NecAmbient.Factor", "√((θc − θa)/(θc − θb)), with its sentences", 2, Baseline = "the formula alone")]
public readonly struct NecAmbientFactor : IFormula
{
    private static readonly Temperature Rated = Temperature.FromDegreesCelsius(90);

    public double Raw(Case x) => Math.Sqrt((90 - x.Celsius) / (90 - 30));

    public double Typed(Case x) => NecAmbient.Factor(x.Temperature, Rated).Value;
}

[Formula("RoadVehicleAmbient.Factor", "√((70 − θa)/(70 − 30)), with its sentences", 2, Baseline = "the formula alone")]
public readonly struct RoadVehicleAmbientFactor : IFormula
{
    private static readonly Temperature Base = Temperature.FromDegreesCelsius(30);

    public double Raw(Case x) => Math.Sqrt((70 - x.Celsius) / (70 - 30));

    public double Typed(Case x) => RoadVehicleAmbient.Factor(x.Temperature, Base).Value;
}

[Formula("FaaBundle.Factor", "on a curve, linear between 20, 40 … 100 %; with its sentences", 1, Baseline = "the formula alone")]
public readonly struct FaaBundleFactor : IFormula
{
    private static readonly double[] TenWires = [0.755, 0.6225, 0.55, 0.5, 0.465];

    public double Raw(Case x)
    {
        int below = Math.Min((int)((x.Percent - 20) / 20), 3);
        double along = (x.Percent - 20 - (20 * below)) / 20;
        return (TenWires[below] * (1 - along)) + (TenWires[below + 1] * along);
    }

    public double Typed(Case x) => FaaBundle.Factor(10, x.Share).Value;
}

[Formula("BuildingVoltageDrop.IecSupplement", "min(0.5, 0.005·max(0, L − 100)) %", 1)]
public readonly struct IecSupplement : IFormula
{
    public double Raw(Case x) => Math.Min(0.5, 0.005 * Math.Max(0, x.RunMeters - 100));

    public double Typed(Case x) => BuildingVoltageDrop.IecSupplement(x.Run).Percent;
}

[Formula("VoltageDropAllowance.Limit", "3 % of V", 1)]
public readonly struct AllowanceLimit : IUnitsFormula
{
    public double Raw(Case x) => x.Volts * 0.03;

    public double UnitsNet(Case x) => (x.Voltage * 0.03).Volts;

    public double Typed(Case x) => BuildingVoltageDrop.NecBranch.Limit(x.Voltage).Volts;
}

[Formula("AmpacityTable.Rating", "a look-up in the small-craft table", 1, Baseline = "a loop over the sizes, by hand")]
public readonly struct TableLookup : IFormula
{
    private static readonly AwgSize Size = AwgSize.FromNumber(14);
    private static readonly Temperature Rated = Temperature.FromDegreesCelsius(75);
    private static readonly int[] Sizes = [18, 16, 14, 12, 10];
    private static readonly double[] Currents = [.. Sizes.Select(size => Cfr33Part183Table5.Table.Rating(AwgSize.FromNumber(size), Rated).Amperes)];

    public double Raw(Case x)
    {
        for (int i = 0; i < Sizes.Length; i++)
        {
            if (Sizes[i] == 14)
            {
                return Currents[i];
            }
        }

        return double.NaN;
    }

    public double Typed(Case x) => Cfr33Part183Table5.Table.Rating(Size, Rated).Current.Amperes;
}

[Formula("DeratedAmpacity.With, twice", "I·k₁·k₂, every step and remark kept", 0, Baseline = "the formula alone")]
public readonly struct DeratedTwice : IFormula
{
    private static readonly TableRating Rating = Cfr33Part183Table5.Table.Rating(AwgSize.FromNumber(14), Temperature.FromDegreesCelsius(75));
    private static readonly DeratingFactor Engine = Cfr33Part183EngineSpace.Factor(Temperature.FromDegreesCelsius(75));
    private static readonly DeratingFactor Count = Cfr33Part183ConductorCount.Factor(4, ElectricPotential.FromVolts(60));
    private static readonly double Amperes = Rating.Amperes, First = Engine.Value, Second = Count.Value;

    public double Raw(Case x) => Amperes * First * Second;

    public double Typed(Case x) => DeratedAmpacity.From(Rating).With(Engine).With(Count).Current.Amperes;
}

[Formula("FaaAltitude.Factor", "linear between points, with its sentences", 1, Baseline = "the formula alone")]
public readonly struct FaaAltitudeFactor : IFormula
{
    public double Raw(Case x)
    {
        double along = x.RunMeters / 0.3048 / 20_000;
        return (1.00 * (1 - along)) + (0.91 * along);
    }

    public double Typed(Case x) => FaaAltitude.Factor(x.Run).Value;
}

[Formula("Iec60364Ambient.Factor", "a look-up in a table, with its sentences", 2, Baseline = "kernel")]
public readonly struct IecAmbientFactor : IFormula
{
    private static readonly Temperature Rated = Temperature.FromDegreesCelsius(70);

    public double Raw(Case x) => Iec60364Ambient.TryValue(x.Celsius, 70, out double value, out _, out _) ? value : double.NaN;

    public double Typed(Case x) => Iec60364Ambient.Factor(x.Temperature, Rated).Value;
}
