using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>How warm the conductors of a circuit are: a stated temperature, or one that rises with the current.</summary>
/// <remarks>
/// <code>θ = θa + (θr − θa)·(I/Ir)²</code>
/// <para><b>Symbols.</b> θa ambient, θr temperature at the rated current Ir, I r.m.s. current of one conductor.</para>
/// <para>The rise is that of a constant loss resistance and a constant heat transfer. It is exact at I = 0 and I = Ir; below the rated
/// current it errs by little, above it it understates the temperature, since the loss grows with it. The published rating is what makes it right.</para>
/// <para><b>Accepts</b> −100 °C to 1000 °C, where the resistance of a metal is nearly a straight line of its temperature.</para>
/// </remarks>
public sealed class ConductorTemperature
{
    private const double LeastCelsius = -100;
    private const double MostCelsius = 1000;

    private ConductorTemperature(double ambientCelsius, double riseKelvins, double ratedAmperes)
    {
        AmbientCelsius = ambientCelsius;
        RiseKelvins = riseKelvins;
        RatedAmperes = ratedAmperes;
    }

    /// <summary>Where the model comes from.</summary>
    public static Reference Reference { get; } =
        Reference.CommonPractice("conductor temperature rise proportional to the square of the current, fixed by a published rating");

    /// <summary>False when the temperature is stated and the same at every current.</summary>
    public bool DependsOnCurrent => RiseKelvins > 0;

    internal double AmbientCelsius { get; }

    internal double RiseKelvins { get; }

    internal double RatedAmperes { get; }

    /// <summary>One temperature, whatever the current.</summary>
    /// <param name="temperature">Conductor temperature, −100 °C to 1000 °C.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static ConductorTemperature At(Temperature temperature) => new(Celsius(temperature, nameof(temperature)), 0, 1);

    /// <summary>A conductor that heats itself: ambient with no current, its rated temperature at its rated current.</summary>
    /// <param name="ambient">Ambient temperature, −100 °C to 1000 °C.</param>
    /// <param name="ratedCurrent">Current of one conductor that brings it to the rated temperature in this ambient, positive.</param>
    /// <param name="ratedTemperature">Conductor temperature at that current, above the ambient.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ConductorTemperature SelfHeated(Temperature ambient, ElectricCurrent ratedCurrent, Temperature ratedTemperature)
    {
        double cold = Celsius(ambient, nameof(ambient)), hot = Celsius(ratedTemperature, nameof(ratedTemperature));
        double amperes = Accept.Amperes(ratedCurrent, nameof(ratedCurrent));
        return hot > cold
            ? new ConductorTemperature(cold, hot - cold, amperes)
            : new ConductorTemperature(0, Accept.Refuse(nameof(ratedTemperature), hot, "°C", $"above the ambient of {Accept.Text(cold)} °C"), 1);
    }

    /// <summary>Conductor temperature at a current.</summary>
    /// <param name="current">r.m.s. current of one conductor, zero or greater.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or absurdly large.</exception>
    public Temperature AtCurrent(ElectricCurrent current) =>
        Temperature.FromDegreesCelsius(CelsiusAt(Accept.AmperesOrZero(current, nameof(current))));

    internal static double Celsius(in Temperature temperature, string name) =>
        Accept.Within(Accept.Celsius(temperature, name), LeastCelsius, MostCelsius, "°C", name);

    internal double CelsiusAt(double amperes)
    {
        double load = amperes / RatedAmperes;
        return AmbientCelsius + (RiseKelvins * load * load);
    }
}
