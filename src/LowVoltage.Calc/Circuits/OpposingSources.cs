using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Two voltages against each other in one loop: a charger into a battery, a battery against a flat one.</summary>
/// <remarks>
/// <code>I = (V1 − V2)/R    V1 gives V1·I    V2 takes V2·I    R turns I²·R into heat</code>
/// <para>A <c>default</c> holds no answer, and every member says so.</para>
/// <para><b>Source.</b> Kirchhoff's voltage law; University Physics Volume 2, section 10.3.</para>
/// </remarks>
public readonly partial struct OpposingSources
{
    private readonly double amperes;
    private readonly double first;
    private readonly double second;
    private readonly double ohms;

    private OpposingSources(double amperes, double first, double second, double ohms)
    {
        this.amperes = amperes;
        this.first = first;
        this.second = second;
        this.ohms = ohms;
    }

    /// <summary>Current in the direction that the first source drives; negative when the second is the higher.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Made(amperes));

    /// <summary>Power given by the first source; negative when it is being charged.</summary>
    public Power GivenByFirst => Power.FromWatts(Made(first * amperes));

    /// <summary>Power taken by the second source; negative when it gives power.</summary>
    public Power TakenBySecond => Power.FromWatts(Made(second * amperes));

    /// <summary>Power turned into heat in the loop.</summary>
    public Power Lost => Power.FromWatts(Made((first - second) * amperes));

    /// <summary>Solves the loop.</summary>
    /// <param name="first">Voltage of the source that drives the current in the direction counted, zero or greater.</param>
    /// <param name="second">Voltage of the source against it, zero or greater.</param>
    /// <param name="resistance">All the resistance of the loop, positive.</param>
    /// <returns>Current and powers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OpposingSources Solve(ElectricPotential first, ElectricPotential second, ElectricResistance resistance)
    {
        double v1 = Accept.VoltsOrZero(first, nameof(first)), v2 = Accept.VoltsOrZero(second, nameof(second));
        return new OpposingSources((v1 - v2) / Accept.Ohms(resistance, nameof(resistance)), v1, v2, resistance.Ohms);
    }

    // A loop has a resistance above zero, so that zero tells the default.
    private double Made(double value) => ohms > 0 ? value : throw NoValue.Read(nameof(OpposingSources));
}
