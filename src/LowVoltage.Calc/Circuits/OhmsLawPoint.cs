using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Voltage, current, resistance and power of one resistance: four numbers of which any two give the others.</summary>
/// <remarks>Made by <see cref="OhmsLaw"/>; a <c>default</c> holds no answer, and every member says so. Immutable.</remarks>
public readonly partial struct OhmsLawPoint
{
    private readonly double volts;
    private readonly double amperes;
    private readonly double ohms;
    private readonly double watts;
    private readonly OhmsLawPair given;
    private readonly bool made;

    internal OhmsLawPoint(double volts, double amperes, double ohms, double watts, OhmsLawPair given)
    {
        this.volts = volts;
        this.amperes = amperes;
        this.ohms = ohms;
        this.watts = watts;
        this.given = given;
        made = true;
    }

    /// <summary>Voltage across the resistance, V.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Made(volts));

    /// <summary>Current through the resistance, I.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Made(amperes));

    /// <summary>The resistance, R.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(Made(ohms));

    /// <summary>Power turned into heat, P.</summary>
    public Power Power => Power.FromWatts(Made(watts));

    private double Made(double value) => made ? value : throw NoValue.Read(nameof(OhmsLawPoint));
}
