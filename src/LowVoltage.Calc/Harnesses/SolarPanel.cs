using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A solar panel by the three points of its data sheet.</summary>
/// <remarks>
/// <code>I = I_sc − I_0·(exp(U/a) − 1)    a = (V_oc − V_mp)/ln(I_sc/(I_sc − I_mp))    I_0 = I_sc/(exp(V_oc/a) − 1)</code>
/// <para><b>Symbols.</b> I_sc short-circuit current, V_oc open-circuit voltage, V_mp and I_mp the point of the largest power.</para>
/// <para><b>Source.</b> The ideal diode equation of a solar cell, without series and shunt resistance (a textbook formula, from memory). It passes through V_oc, and through the point of
/// the largest power to within exp(−V_oc/a). <b>Range.</b> Between those points it follows a panel to a few per cent; a panel gives nothing above V_oc, and takes nothing here: a blocking diode is assumed.</para>
/// </remarks>
public sealed class SolarPanel
{
    private SolarPanel(double shortAmperes, double openVolts, double bestVolts, double bestAmperes)
    {
        (ShortAmperes, OpenVolts, BestVolts, BestAmperes) = (shortAmperes, openVolts, bestVolts, bestAmperes);
        SlopeVolts = (openVolts - bestVolts) / Math.Log(shortAmperes / (shortAmperes - bestAmperes));
        SaturationAmperes = shortAmperes / (Math.Exp(openVolts / SlopeVolts) - 1);
    }

    /// <summary>Short-circuit current.</summary>
    public ElectricCurrent ShortCircuitCurrent => ElectricCurrent.FromAmperes(ShortAmperes);

    /// <summary>Open-circuit voltage.</summary>
    public ElectricPotential OpenCircuitVoltage => ElectricPotential.FromVolts(OpenVolts);

    /// <summary>Voltage at the largest power.</summary>
    public ElectricPotential VoltageAtMaximumPower => ElectricPotential.FromVolts(BestVolts);

    /// <summary>Current at the largest power.</summary>
    public ElectricCurrent CurrentAtMaximumPower => ElectricCurrent.FromAmperes(BestAmperes);

    internal double ShortAmperes { get; }

    internal double OpenVolts { get; }

    internal double BestVolts { get; }

    internal double BestAmperes { get; }

    /// <summary>a, V.</summary>
    internal double SlopeVolts { get; }

    /// <summary>I_0, A.</summary>
    internal double SaturationAmperes { get; }

    /// <summary>A panel from its data sheet, at the light and cell temperature that the sheet states.</summary>
    /// <param name="shortCircuitCurrent">I_sc, positive.</param>
    /// <param name="openCircuitVoltage">V_oc, positive.</param>
    /// <param name="voltageAtMaximumPower">V_mp, half to 0.97 of V_oc.</param>
    /// <param name="currentAtMaximumPower">I_mp, half to 0.99 of I_sc.</param>
    /// <returns>The panel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static SolarPanel Create(
        ElectricCurrent shortCircuitCurrent, ElectricPotential openCircuitVoltage, ElectricPotential voltageAtMaximumPower, ElectricCurrent currentAtMaximumPower)
    {
        double amperes = Accept.Amperes(shortCircuitCurrent, nameof(shortCircuitCurrent)), volts = Accept.Volts(openCircuitVoltage, nameof(openCircuitVoltage));
        return new SolarPanel(
            amperes,
            volts,
            Accept.Within(Accept.Volts(voltageAtMaximumPower, nameof(voltageAtMaximumPower)), 0.5 * volts, 0.97 * volts, "V", nameof(voltageAtMaximumPower)),
            Accept.Within(Accept.Amperes(currentAtMaximumPower, nameof(currentAtMaximumPower)), 0.5 * amperes, 0.99 * amperes, "A", nameof(currentAtMaximumPower)));
    }

    /// <summary>What the panel gives at a voltage; nothing from the open-circuit voltage on.</summary>
    /// <param name="voltage">Voltage at its terminals, zero or greater.</param>
    /// <returns>The current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative or absurdly large.</exception>
    public ElectricCurrent CurrentAt(ElectricPotential voltage)
    {
        double volts = Accept.VoltsOrZero(voltage, nameof(voltage));
        return ElectricCurrent.FromAmperes(volts >= OpenVolts ? 0 : ShortAmperes - (SaturationAmperes * (Math.Exp(volts / SlopeVolts) - 1)));
    }

    /// <inheritdoc/>
    public override string ToString() => $"solar panel, {Accept.Text(OpenVolts)} V open, {Accept.Text(ShortAmperes)} A in short circuit";
}
