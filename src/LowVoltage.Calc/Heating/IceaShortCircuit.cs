using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The North American form of the adiabatic equation (ICEA P-32-382): a second opinion on <see cref="AdiabaticHeating"/>.</summary>
/// <remarks>
/// <code>(I/A)²·t = c·log10((T2 + T0)/(T1 + T0))</code>
/// <para><b>Symbols.</b> A [circular mils]; t [s]; T1, T2 [°C]. Copper: c = 0.0297, T0 = 234 °C. Aluminium: c = 0.0125, T0 = 228 °C.</para>
/// <para><b>Accuracy.</b> The constants have three digits. In the terms of IEC 60949 K is 224.1 (copper) and 145.4 (aluminium), so currents come out
/// 0.8 % and 1.8 % below that standard's.</para>
/// </remarks>
public static class IceaShortCircuit
{
    private const double CopperCoefficient = 0.0297;
    private const double CopperOffset = 234;
    private const double AluminiumCoefficient = 0.0125;
    private const double AluminiumOffset = 228;
    private const double MostCopperCelsius = 1083;
    private const double MostAluminiumCelsius = 657;

    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "ICEA P-32-382",
        Edition = "2007",
        Kind = ReferenceKind.FromMemory,
        Note = "The copper coefficient as quoted in a cable data sheet; the aluminium coefficient 0.0125 from memory, which makes the kind of both.",
    };

    /// <summary>The current that takes a copper conductor to a temperature in a time.</summary>
    /// <param name="area">Section of the copper. Positive.</param>
    /// <param name="duration">Duration. Positive, at most 5 s.</param>
    /// <param name="initial">Temperature at the start, from −100 °C.</param>
    /// <param name="limit">Temperature at the end, above the initial one by at least 1e-12 K, at most 1083 °C.</param>
    /// <returns>The current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent CopperCurrent(Area area, Duration duration, Temperature initial, Temperature limit) =>
        Current(CopperCoefficient, CopperOffset, MostCopperCelsius, area, duration, initial, limit);

    /// <summary>The current that takes an aluminium conductor to a temperature in a time.</summary>
    /// <param name="area">Section of the aluminium. Positive.</param>
    /// <param name="duration">Duration. Positive, at most 5 s.</param>
    /// <param name="initial">Temperature at the start, from −100 °C.</param>
    /// <param name="limit">Temperature at the end, above the initial one by at least 1e-12 K, at most 657 °C.</param>
    /// <returns>The current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent AluminiumCurrent(Area area, Duration duration, Temperature initial, Temperature limit) =>
        Current(AluminiumCoefficient, AluminiumOffset, MostAluminiumCelsius, area, duration, initial, limit);

    private static ElectricCurrent Current(
        double coefficient, double offset, double most, in Area area, in Duration duration, in Temperature initial, in Temperature limit)
    {
        double seconds = Accept.Positive(Accept.Seconds(duration, nameof(duration)), AdiabaticHeating.LongestSeconds, "s", nameof(duration));
        double start = Accept.Within(Accept.Celsius(initial, nameof(initial)), AdiabaticHeating.LeastCelsius, most, "°C", nameof(initial));
        double end = Accept.Celsius(limit, nameof(limit));
        if (!(end - start >= Accept.Least && end <= most))
        {
            Accept.Refuse(nameof(limit), end, "°C", $"above the initial {Accept.Text(start)} °C {(end > start && end <= most ? $"by at least {Accept.Text(Accept.Least)} °C " : "")}and at most {Accept.Text(most)} °C");
        }

        double log10 = Numerics.ExpLog.Log1p((end - start) / (start + offset)) / Math.Log(10);
        return ElectricCurrent.FromAmperes(
            CircularMil.FromArea(area) * Math.Sqrt(coefficient * log10 / seconds));
    }
}
