using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What the wires would cost if every load might lose a little more, or less, on the way.</summary>
/// <remarks>Immutable. At the currents and for the model of <see cref="HarnessDesign.LowerBound"/>.</remarks>
public sealed class AllowanceCost
{
    internal AllowanceCost(double volts, double cost) => (More, Cost) = (ElectricPotential.FromVolts(volts), cost);

    /// <summary>How much more each load may lose; below zero, less.</summary>
    public ElectricPotential More { get; }

    /// <summary>The least cost with that: kg, or what the caller's price makes of it.</summary>
    public double Cost { get; }

    /// <summary>Both in one line.</summary>
    public override string ToString() => $"{Quantities.Accept.Text(More.Volts)} V: {Quantities.Accept.Short(Cost)}";
}
