using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Two historical rules for the current that melts a bare wire. Melting is not the damage limit of an insulated wire.</summary>
/// <remarks>
/// <para><b>Preece</b> (1880s): steady current that brings a straight bare wire in free air near melting, <c>I = a·d^1.5</c>, d in inches.
/// Low for thin wires in short holders, high for thick ones.</para>
/// <para><b>Onderdonk</b> (reported 1928): time to melt a bare copper wire with no heat lost,
/// <c>33·(I/A)²·t = log10((Tm − Ta)/(234 + Ta) + 1)</c>, A in circular mils, t in s, Tm = 1083 °C, Ta in °C. It is the adiabatic equation of
/// IEC 60949 up to the melting point (K = 226.4). Neither latent heat nor loss. Customarily used up to 10 s (some say 1 s); longer times are refused.
/// Texts that print 234 − Ta have a sign error and give currents 5 % too high at 25 °C.</para>
/// <para>Insulation is lost long before: heating copper from 25 °C to 160 °C takes half the current that melts it in the same time.
/// For insulated wire use <see cref="AdiabaticHeating"/> with the insulation's limit.</para>
/// </remarks>
public static class FusingEstimates
{
    private const double MillimetersPerInch = 25.4;
    private const double LeastMillimeters = 0.05;
    private const double MostMillimeters = 12;
    private const double OnderdonkCoefficient = 33;
    private const double OnderdonkOffset = 234;
    private const double OnderdonkMelting = 1083;
    private const double OnderdonkLongestSeconds = 10;

    // The ends of a range belong to it, whatever the last digit of a power or a square says.
    private const double Rounding = 1e-12;

    /// <summary>The source of Preece's law.</summary>
    public static Reference PreeceReference { get; } = new()
    {
        Title = "W. H. Preece, On the heating effects of electric currents, Proceedings of the Royal Society",
        Edition = "1880s",
        Kind = ReferenceKind.Paper,
        Note = "Coefficients as engineering tables reproduce them; the papers were not read. Bare straight wire in free air, steady current.",
    };

    /// <summary>The source of Onderdonk's rule.</summary>
    public static Reference OnderdonkReference { get; } = new()
    {
        Title = "E. R. Stauffacher, Short-time current carrying capacity of copper wire, General Electric Review",
        Edition = "1928",
        Kind = ReferenceKind.Paper,
        Note = "Earliest known mention; no paper by Onderdonk is known. The form with 234 + Ta, which the adiabatic equation confirms.",
    };

    /// <summary>Preece: the steady current that melts a bare wire in free air.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="diameter">Diameter, d: 0.05 mm to 12 mm, the span of the published tables.</param>
    /// <returns>I = a·d^1.5.</returns>
    /// <exception cref="ArgumentNullException">The metal is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static ElectricCurrent PreeceCurrent(PreeceMetal metal, Length diameter)
    {
        _ = metal ?? throw new ArgumentNullException(nameof(metal));
        double inches = Diameter(Accept.Meters(diameter, nameof(diameter)) * 1000, nameof(diameter)) / MillimetersPerInch;
        return ElectricCurrent.FromAmperes(metal.Coefficient * inches * Math.Sqrt(inches));
    }

    /// <summary>Preece: the diameter that a steady current melts.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="current">The current; the diameter must come out between 0.05 mm and 12 mm.</param>
    /// <returns>d = (I/a)^(2/3).</returns>
    /// <exception cref="ArgumentNullException">The metal is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range of the tables.</exception>
    public static Length PreeceDiameter(PreeceMetal metal, ElectricCurrent current)
    {
        _ = metal ?? throw new ArgumentNullException(nameof(metal));
        double amperes = Accept.Amperes(current, nameof(current));
        double millimeters = Math.Pow(amperes / metal.Coefficient, 2.0 / 3) * MillimetersPerInch;
        double end = Math.Max(LeastMillimeters, Math.Min(millimeters, MostMillimeters));
        return Math.Abs(millimeters - end) <= Rounding * end
            ? Length.FromMillimeters(end)
            : throw new ArgumentOutOfRangeException(
                nameof(current), amperes,
                $"current must belong to a diameter from {Accept.Text(LeastMillimeters)} mm to {Accept.Text(MostMillimeters)} mm; "
                + $"{Accept.Text(amperes)} A belongs to {Accept.Text(millimeters)} mm of {metal.Name}.");
    }

    /// <summary>Onderdonk: the current that melts a bare copper wire in a time.</summary>
    /// <param name="area">Section of the copper, A. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 10 s.</param>
    /// <param name="ambient">Temperature of the wire at the start, Ta: −100 °C to 1000 °C.</param>
    /// <returns>I = A·√(log10((1083 − Ta)/(234 + Ta) + 1)/(33·t)).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent OnderdonkCurrent(Area area, Duration duration, Temperature ambient)
    {
        double seconds = Accept.Positive(Accept.Seconds(duration, nameof(duration)), OnderdonkLongestSeconds, "s", nameof(duration));
        return ElectricCurrent.FromAmperes(CircularMil.FromArea(area) * Math.Sqrt(OnderdonkSeconds(ambient) / seconds));
    }

    /// <summary>Onderdonk: the time in which a current melts a bare copper wire.</summary>
    /// <param name="area">Section of the copper, A. Positive.</param>
    /// <param name="current">The current. Positive, large enough to melt the wire within 10 s.</param>
    /// <param name="ambient">Temperature of the wire at the start, Ta: −100 °C to 1000 °C.</param>
    /// <returns>t, at most 10 s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the time would exceed 10 s.</exception>
    public static Duration OnderdonkTime(Area area, ElectricCurrent current, Temperature ambient) =>
        TryOnderdonkTime(area, current, ambient, out Duration duration)
            ? duration
            : throw new ArgumentOutOfRangeException(
                nameof(current), Accept.Raw(current),
                $"current must melt the wire within {Accept.Text(OnderdonkLongestSeconds)} s, the end of Onderdonk's range; "
                + $"{Accept.Text(Accept.Raw(current))} A does not.");

    /// <summary>Onderdonk: the time in which a current melts a bare copper wire, when that is within the rule's range.</summary>
    /// <param name="area">Section of the copper, A. Positive.</param>
    /// <param name="current">The current. Positive.</param>
    /// <param name="ambient">Temperature of the wire at the start, Ta: −100 °C to 1000 °C.</param>
    /// <param name="duration">The time, or zero when the result is false.</param>
    /// <returns>False when the time would exceed 10 s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static bool TryOnderdonkTime(Area area, ElectricCurrent current, Temperature ambient, out Duration duration)
    {
        double ratio = CircularMil.FromArea(area) / Accept.Amperes(current, nameof(current));
        double seconds = ratio * ratio * OnderdonkSeconds(ambient);
        bool valid = seconds <= OnderdonkLongestSeconds * (1 + Rounding);
        duration = valid ? Duration.FromSeconds(Math.Min(seconds, OnderdonkLongestSeconds)) : Duration.Zero;
        return valid;
    }

    // (I/A)²·t that melts the wire, in A²·s per square circular mil.
    private static double OnderdonkSeconds(in Temperature ambient)
    {
        double start = Accept.Within(Accept.Celsius(ambient, nameof(ambient)), AdiabaticHeating.LeastCelsius, 1000, "°C", nameof(ambient));
        return Math.Log10(((OnderdonkMelting - start) / (OnderdonkOffset + start)) + 1) / OnderdonkCoefficient;
    }

    private static double Diameter(double millimeters, string name) =>
        Accept.Within(millimeters, LeastMillimeters, MostMillimeters, "mm", name);
}
