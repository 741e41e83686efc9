using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Energy (watt-hours), charge (ampere-hours) and running time: how long a battery lasts.</summary>
/// <remarks>
/// <code>W = P·t    Q = I·t    t = C/I    t = C·V/P</code>
/// <para>Running times count the whole capacity at the stated voltage. A lead-acid battery gives less at a high current than its 20-hour rating.</para>
/// </remarks>
public static partial class ElectricalEnergy
{
    private const double MostCoulombs = 1e15;

    /// <summary>Energy of a power over a time, W = P·t.</summary>
    /// <param name="power">Power P, positive.</param>
    /// <param name="time">Time t, zero or greater.</param>
    /// <returns>The energy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Energy FromPower(Power power, Duration time) =>
        Energy.FromJoules(Accept.Watts(power, nameof(power)) * Accept.SecondsOrZero(time, nameof(time)));

    /// <summary>Energy lost in a resistance, W = I²·R·t.</summary>
    /// <param name="current">Current I, zero or greater.</param>
    /// <param name="resistance">Resistance R, zero or greater.</param>
    /// <param name="time">Time t, zero or greater.</param>
    /// <returns>The energy turned into heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Energy Lost(ElectricCurrent current, ElectricResistance resistance, Duration time)
    {
        double i = Accept.AmperesOrZero(current, nameof(current));
        return Energy.FromJoules(i * i * Accept.OhmsOrZero(resistance, nameof(resistance)) * Accept.SecondsOrZero(time, nameof(time)));
    }

    /// <summary>Charge that a current moves in a time, Q = I·t.</summary>
    /// <param name="current">Current I, zero or greater.</param>
    /// <param name="time">Time t, zero or greater.</param>
    /// <returns>The charge; read it in ampere-hours for a battery.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCharge Charge(ElectricCurrent current, Duration time) =>
        ElectricCharge.FromCoulombs(Accept.AmperesOrZero(current, nameof(current)) * Accept.SecondsOrZero(time, nameof(time)));

    /// <summary>How long a capacity lasts at a current, t = C/I.</summary>
    /// <param name="capacity">Capacity C, positive.</param>
    /// <param name="current">Current I, positive.</param>
    /// <returns>The running time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Duration RunningTime(ElectricCharge capacity, ElectricCurrent current) =>
        Duration.FromSeconds(Coulombs(capacity, nameof(capacity)) / Accept.Amperes(current, nameof(current)));

    /// <summary>How long a capacity lasts at a power, t = C·V/P.</summary>
    /// <param name="capacity">Capacity C, positive.</param>
    /// <param name="voltage">Mean voltage V while it runs down, positive.</param>
    /// <param name="power">Power P drawn from the battery, positive.</param>
    /// <returns>The running time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Duration RunningTime(ElectricCharge capacity, ElectricPotential voltage, Power power) =>
        Duration.FromSeconds(Coulombs(capacity, nameof(capacity)) * Accept.Volts(voltage, nameof(voltage)) / Accept.Watts(power, nameof(power)));

    internal static double Coulombs(ElectricCharge charge, string name)
    {
        double coulombs = Accept.Raw(charge);
        return Accept.Positive(coulombs, MostCoulombs, "C", name);
    }
}
