using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The most power that a load can take from a voltage behind a resistance.</summary>
/// <remarks>
/// <code>P = V²/(4R) at load resistance R, current V/(2R) and half the voltage</code>
/// <para>As much power again is lost in R. A load that needs more cannot be fed through R at all: see <see cref="OperatingPoint"/>.</para>
/// <para><b>Source.</b> Lessons in Electric Circuits, Volume I - DC, chapter 10.</para>
/// </remarks>
public static class MaximumPowerTransfer
{
    /// <summary>The most power, and the load that takes it.</summary>
    /// <param name="voltage">Voltage V with no load, positive.</param>
    /// <param name="resistance">Resistance R between that voltage and the load (source, wires, joints), positive.</param>
    /// <returns>Voltage at the load, its current, its resistance and its power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OhmsLawPoint Into(ElectricPotential voltage, ElectricResistance resistance)
    {
        double v = Accept.Volts(voltage, nameof(voltage)), r = Accept.Ohms(resistance, nameof(resistance));
        return new OhmsLawPoint(v / 2, v / (2 * r), r, v * v / (4 * r), OhmsLawPair.VoltageAndResistance);
    }
}
