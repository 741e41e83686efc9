using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Ohm's law and the power relations: from any two of voltage, current, resistance and power, all four.</summary>
/// <remarks>
/// <code>V = I·R    P = V·I = I²·R = V²/R</code>
/// <para><b>Symbols.</b> V volt, I ampere, R ohm, P watt.</para>
/// <para><b>Valid for</b> a resistance at one temperature. A lamp or a motor has another resistance at another voltage.</para>
/// <para><b>Accuracy.</b> Rounding of a double, about 1e-15 relative.</para>
/// </remarks>
public static class OhmsLaw
{
    /// <summary>Where the relations stand.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Lessons in Electric Circuits, Volume I - DC",
        Locator = "chapter 2",
        Kind = ReferenceKind.Handbook,
        Note = "Ohm's law and Joule's law; any physics textbook has them.",
    };

    /// <summary>From voltage and current: R = V/I, P = V·I.</summary>
    /// <param name="voltage">Voltage V, positive.</param>
    /// <param name="current">Current I, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromVoltageAndCurrent(ElectricPotential voltage, ElectricCurrent current)
    {
        double v = Accept.Volts(voltage, nameof(voltage)), i = Accept.Amperes(current, nameof(current));
        return new OhmsLawPoint(v, i, v / i, v * i, OhmsLawPair.VoltageAndCurrent);
    }

    /// <summary>From voltage and resistance: I = V/R, P = V²/R.</summary>
    /// <param name="voltage">Voltage V, positive.</param>
    /// <param name="resistance">Resistance R, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromVoltageAndResistance(ElectricPotential voltage, ElectricResistance resistance)
    {
        double v = Accept.Volts(voltage, nameof(voltage)), r = Accept.Ohms(resistance, nameof(resistance));
        return new OhmsLawPoint(v, v / r, r, v * v / r, OhmsLawPair.VoltageAndResistance);
    }

    /// <summary>From voltage and power: I = P/V, R = V²/P.</summary>
    /// <param name="voltage">Voltage V, positive.</param>
    /// <param name="power">Power P, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromVoltageAndPower(ElectricPotential voltage, Power power)
    {
        double v = Accept.Volts(voltage, nameof(voltage)), p = Accept.Watts(power, nameof(power));
        return new OhmsLawPoint(v, p / v, v * v / p, p, OhmsLawPair.VoltageAndPower);
    }

    /// <summary>From current and resistance: V = I·R, P = I²·R.</summary>
    /// <param name="current">Current I, positive.</param>
    /// <param name="resistance">Resistance R, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromCurrentAndResistance(ElectricCurrent current, ElectricResistance resistance)
    {
        double i = Accept.Amperes(current, nameof(current)), r = Accept.Ohms(resistance, nameof(resistance));
        return new OhmsLawPoint(i * r, i, r, i * i * r, OhmsLawPair.CurrentAndResistance);
    }

    /// <summary>From current and power: V = P/I, R = P/I².</summary>
    /// <param name="current">Current I, positive.</param>
    /// <param name="power">Power P, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromCurrentAndPower(ElectricCurrent current, Power power)
    {
        double i = Accept.Amperes(current, nameof(current)), p = Accept.Watts(power, nameof(power));
        return new OhmsLawPoint(p / i, i, p / (i * i), p, OhmsLawPair.CurrentAndPower);
    }

    /// <summary>From resistance and power: V = √(P·R), I = √(P/R).</summary>
    /// <param name="resistance">Resistance R, positive.</param>
    /// <param name="power">Power P, positive.</param>
    /// <returns>All four numbers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive or is absurdly large.</exception>
    public static OhmsLawPoint FromResistanceAndPower(ElectricResistance resistance, Power power)
    {
        double r = Accept.Ohms(resistance, nameof(resistance)), p = Accept.Watts(power, nameof(power));
        return new OhmsLawPoint(Math.Sqrt(p * r), Math.Sqrt(p / r), r, p, OhmsLawPair.ResistanceAndPower);
    }
}
