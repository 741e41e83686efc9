using UnitsNet;

namespace LowVoltage.Calc.Networks;

/// <summary>What a network is, seen from two of its nodes: one voltage behind one resistance.</summary>
/// <remarks>Exact for resistances and sources. With a load of constant power the resistance is that of a small change. Immutable.</remarks>
public sealed class TheveninEquivalent
{
    private readonly double volts;
    private readonly double ohms;

    internal TheveninEquivalent(double volts, double ohms)
    {
        this.volts = volts;
        this.ohms = ohms;
    }

    /// <summary>Voltage between the nodes with nothing more between them.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(volts);

    /// <summary>Resistance behind that voltage.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(ohms);

    /// <summary>Current of a dead short between the nodes; <c>null</c> when no resistance bounds it.</summary>
    public ElectricCurrent? ShortCircuitCurrent => ohms > 0 ? ElectricCurrent.FromAmperes(volts / ohms) : null;
}
