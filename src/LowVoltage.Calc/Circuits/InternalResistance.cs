using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A source seen as a voltage behind a resistance: its resistance from measurements, and its voltage under load or on charge.</summary>
/// <remarks>
/// <code>discharging V = E − I·r    charging V = E + I·r    two points r = (V1 − V2)/(I2 − I1)</code>
/// <para><b>Symbols.</b> E open-circuit voltage, r internal resistance, V voltage at the terminals, I current.</para>
/// <para><b>Source.</b> College Physics 2e, section 21.2. A battery is only roughly such a source: the value belongs to the current, the
/// temperature, the state of charge and the seconds at which it was measured.</para>
/// </remarks>
public static partial class InternalResistance
{
    /// <summary>From the open-circuit voltage and the voltage at a discharge current: r = (E − V)/I.</summary>
    /// <param name="openCircuit">Voltage with no current, E, positive.</param>
    /// <param name="loaded">Voltage at the current, V, zero to E.</param>
    /// <param name="current">Discharge current I, positive.</param>
    /// <returns>The internal resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance FromDischarge(ElectricPotential openCircuit, ElectricPotential loaded, ElectricCurrent current)
    {
        double e = Accept.Volts(openCircuit, nameof(openCircuit)), v = Accept.VoltsOrZero(loaded, nameof(loaded));
        return ElectricResistance.FromOhms((e - Accept.Within(v, 0, e, "V", nameof(loaded))) / Accept.Amperes(current, nameof(current)));
    }

    /// <summary>From the open-circuit voltage and the voltage at a charging current: r = (V − E)/I.</summary>
    /// <param name="openCircuit">Voltage with no current, E, positive.</param>
    /// <param name="charging">Voltage while the current flows in, V, at least E.</param>
    /// <param name="current">Charging current I, positive.</param>
    /// <returns>The internal resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance FromCharge(ElectricPotential openCircuit, ElectricPotential charging, ElectricCurrent current)
    {
        double e = Accept.Volts(openCircuit, nameof(openCircuit)), v = Accept.Volts(charging, nameof(charging));
        return ElectricResistance.FromOhms((Accept.Within(v, e, Accept.MostVolts, "V", nameof(charging)) - e) / Accept.Amperes(current, nameof(current)));
    }

    /// <summary>From two voltages at two discharge currents: r = (V1 − V2)/(I2 − I1).</summary>
    /// <param name="firstVoltage">Voltage at the first current, positive.</param>
    /// <param name="firstCurrent">First current, zero or greater.</param>
    /// <param name="secondVoltage">Voltage at the second current, zero to the first voltage.</param>
    /// <param name="secondCurrent">Second current, above the first.</param>
    /// <returns>The internal resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance FromTwoPoints(
        ElectricPotential firstVoltage, ElectricCurrent firstCurrent, ElectricPotential secondVoltage, ElectricCurrent secondCurrent)
    {
        double v1 = Accept.Volts(firstVoltage, nameof(firstVoltage)), i1 = Accept.AmperesOrZero(firstCurrent, nameof(firstCurrent));
        double v2 = Accept.Within(Accept.VoltsOrZero(secondVoltage, nameof(secondVoltage)), 0, v1, "V", nameof(secondVoltage));
        double i2 = Accept.Amperes(secondCurrent, nameof(secondCurrent));
        return i2 > i1
            ? ElectricResistance.FromOhms((v1 - v2) / (i2 - i1))
            : ElectricResistance.FromOhms(Accept.Refuse(nameof(secondCurrent), i2, "A", $"above the first current, {Accept.Text(i1)} A"));
    }

    /// <summary>Voltage at the terminals while a current is drawn: V = E − I·r. Zero and negative mean that the source cannot give that current.</summary>
    /// <param name="openCircuit">Voltage with no current, E, positive.</param>
    /// <param name="resistance">Internal resistance r, zero or greater.</param>
    /// <param name="current">Current drawn, I, zero or greater.</param>
    /// <returns>The voltage at the terminals; may be negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricPotential TerminalVoltage(ElectricPotential openCircuit, ElectricResistance resistance, ElectricCurrent current) =>
        ElectricPotential.FromVolts(Accept.Volts(openCircuit, nameof(openCircuit))
            - (Accept.OhmsOrZero(resistance, nameof(resistance)) * Accept.AmperesOrZero(current, nameof(current))));

    /// <summary>Voltage at the terminals while a current flows in: V = E + I·r.</summary>
    /// <param name="openCircuit">Voltage with no current, E, positive.</param>
    /// <param name="resistance">Internal resistance r, zero or greater.</param>
    /// <param name="current">Charging current I, zero or greater.</param>
    /// <returns>The voltage at the terminals.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricPotential ChargingVoltage(ElectricPotential openCircuit, ElectricResistance resistance, ElectricCurrent current) =>
        ElectricPotential.FromVolts(Accept.Volts(openCircuit, nameof(openCircuit))
            + (Accept.OhmsOrZero(resistance, nameof(resistance)) * Accept.AmperesOrZero(current, nameof(current))));
}
