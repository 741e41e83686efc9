using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>A short circuit at one moment: the current, what has flowed, and how hot every conductor is.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class FaultState
{
    private readonly double seconds;
    private readonly double amperes;
    private readonly double joules;
    private readonly double[] celsius;

    internal FaultState(in FaultKernel kernel, double joules, bool melts)
        : this(kernel.SecondsTo(joules), kernel.AmperesAt(joules), joules, Temperatures(kernel, joules), kernel.HottestAt(joules), melts)
    {
    }

    internal FaultState(double seconds, double amperes, double joules, double[] celsius, int hottest, bool melts)
    {
        this.seconds = seconds;
        this.amperes = amperes;
        this.joules = joules;
        this.celsius = celsius;
        HottestSegment = hottest;
        IsMelting = melts;
    }

    /// <summary>Time since the fault began. When the metal melts before the moment that was asked for, the time of melting.</summary>
    public Duration Time => Duration.FromSeconds(seconds);

    /// <summary>The current at this moment.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(amperes);

    /// <summary>∫I²dt since the fault began: what has been let through.</summary>
    public JouleIntegral LetThrough => JouleIntegral.FromAmpereSquaredSeconds(joules);

    /// <summary>Index of the hottest segment.</summary>
    public int HottestSegment { get; }

    /// <summary>Temperature of the hottest conductor.</summary>
    public Temperature HottestTemperature => Temperature.FromDegreesCelsius(celsius[HottestSegment]);

    /// <summary>Whether a conductor reached its melting point: the state is that of this moment, and the model ends there.</summary>
    public bool IsMelting { get; }

    internal double Seconds => seconds;

    internal double Amperes => amperes;

    internal double Joules => joules;

    internal double HottestCelsius => celsius[HottestSegment];

    /// <summary>Temperature of a conductor.</summary>
    /// <param name="segment">Index of the segment in the loop.</param>
    /// <returns>Its temperature at this moment.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment.</exception>
    public Temperature TemperatureOf(int segment) =>
        Temperature.FromDegreesCelsius(celsius[Accept.Count(segment, 0, celsius.Length - 1, nameof(segment))]);

    /// <summary>The state in words: <c>0.05 s: 1020 A, 57000 A²s, 93 °C</c>.</summary>
    public override string ToString() =>
        $"{Accept.Text(seconds)} s: {Accept.Text(amperes)} A, {Accept.Text(joules)} A²s, {Accept.Text(HottestCelsius)} °C{(IsMelting ? " (melting)" : "")}";

    private static double[] Temperatures(in FaultKernel kernel, double joules)
    {
        double[] celsius = new double[kernel.Count];
        for (int i = 0; i < celsius.Length; i++)
        {
            celsius[i] = kernel.CelsiusAt(i, joules);
        }

        return celsius;
    }
}
