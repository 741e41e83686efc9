using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace LowVoltage.Calc.Quantities;

/// <summary>
/// The public edge: turns a quantity into the plain double that the kernels use, and refuses what no wiring job has.
/// </summary>
/// <remarks>
/// The ranges are wide (they end where a result could no longer be represented, not where wiring becomes unusual), so that
/// textbook problems pass. Common units are tested before the library converts, which halves the cost of a call.
/// The suffix of a method names the unit of its result.
/// </remarks>
internal static partial class Accept
{
    internal const double MostAmperes = 1e7;
    internal const double MostVolts = 1e6;
    internal const double MostOhms = 1e9;
    internal const double MostWatts = 1e12;
    internal const double MostMeters = 1e7;
    internal const double MostSquareMillimeters = 1e6;
    internal const double MostSeconds = 1e10;
    internal const double AbsoluteZeroCelsius = -273.15;
    internal const double MostCelsius = 1e4;

    // The smallest magnitude of a positive quantity: keeps quotients of two accepted values finite (and Power, a decimal, from overflowing).
    internal const double Least = 1e-12;

    internal static double Amperes(in ElectricCurrent current, string name) =>
        Positive(Raw(current), MostAmperes, "A", name);

    internal static double AmperesOrZero(in ElectricCurrent current, string name) =>
        NotNegative(Raw(current), MostAmperes, "A", name);

    internal static double Volts(in ElectricPotential potential, string name) =>
        Positive(Raw(potential), MostVolts, "V", name);

    internal static double VoltsOrZero(in ElectricPotential potential, string name) =>
        NotNegative(Raw(potential), MostVolts, "V", name);

    internal static double Ohms(in ElectricResistance resistance, string name) =>
        Positive(Raw(resistance), MostOhms, "Ω", name);

    internal static double OhmsOrZero(in ElectricResistance resistance, string name) =>
        NotNegative(Raw(resistance), MostOhms, "Ω", name);

    internal static double Watts(in Power power, string name) =>
        Positive(Raw(power), MostWatts, "W", name);

    internal static double Meters(in Length length, string name) =>
        Positive(Raw(length), MostMeters, "m", name);

    internal static double MetersOrZero(in Length length, string name) =>
        NotNegative(Raw(length), MostMeters, "m", name);

    internal static double SquareMillimeters(in Area area, string name) =>
        Positive(Raw(area), MostSquareMillimeters, "mm²", name);

    internal static double Seconds(in Duration duration, string name) =>
        Positive(Raw(duration), MostSeconds, "s", name);

    internal static double SecondsOrZero(in Duration duration, string name) =>
        NotNegative(Raw(duration), MostSeconds, "s", name);

    /// <summary>A temperature in °C, above absolute zero.</summary>
    internal static double Celsius(in Temperature temperature, string name)
    {
        double celsius = Raw(temperature);
        return celsius > AbsoluteZeroCelsius && celsius <= MostCelsius
            ? celsius
            : Refuse(name, celsius, "°C", $"above {Text(AbsoluteZeroCelsius)} °C (absolute zero) and at most {Text(MostCelsius)} °C");
    }

    /// <summary>A temperature in °C within a range that a model states.</summary>
    internal static double CelsiusWithin(in Temperature temperature, double least, double most, string name) =>
        Within(Raw(temperature), least, most, "°C", name);

    /// <summary>A length in m that may be negative, such as an altitude.</summary>
    internal static double MetersWithin(in Length length, double least, double most, string name) =>
        Within(Raw(length), least, most, "m", name);

    internal static double Positive(double value, double most, string unit, string name) =>
        value >= Least && value <= most
            ? value
            : Refuse(name, value, unit, value > 0 && value < Least ? $"at least {Text(Least)}{Spaced(unit)}" : $"greater than zero and at most {Text(most)}{Spaced(unit)}");

    internal static double NotNegative(double value, double most, string unit, string name) =>
        value >= 0 && value <= most
            ? value
            : Refuse(name, value, unit, $"zero or greater and at most {Text(most)}{Spaced(unit)}");

    internal static double Within(double value, double least, double most, string unit, string name) =>
        value >= least && value <= most
            ? value
            : Refuse(name, value, unit, $"from {Text(least)}{Spaced(unit)} to {Text(most)}{Spaced(unit)}");

    internal static int Count(int value, int least, int most, string name) =>
        value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"{name} must be from {Text(least)} to {Text(most)}; it was {Text(value)}.");

    /// <summary>Throws for a value that is outside its range; the message names parameter, value, unit and range.</summary>
    [DoesNotReturn]
    internal static double Refuse(string name, double value, string unit, string accepted) =>
        throw new ArgumentOutOfRangeException(name, value, $"{name} must be {accepted}; it was {Text(value)}{Spaced(unit)}.");

    /// <summary>A number as text in messages: invariant, and never through UnitsNet, whose first formatting costs a third of a second.</summary>
    internal static string Text(double value) => Unsigned(value).ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>A whole number as text in messages: a culture may write even a minus sign in its own way.</summary>
    internal static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number of four digits, for sentences that a person reads; up to a million without an exponent.</summary>
    internal static string Short(double value) => Math.Abs(value) is >= 9999.5 and < 1e6
        ? (Math.Round(value / 10) * 10).ToString("0", CultureInfo.InvariantCulture)
        : Unsigned(value).ToString("G4", CultureInfo.InvariantCulture);

    // A zero has no minus sign on paper.
    private static double Unsigned(double value) => value == 0 ? 0 : value;

    private static string Spaced(string unit) => unit.Length == 0 ? unit : " " + unit;
}
