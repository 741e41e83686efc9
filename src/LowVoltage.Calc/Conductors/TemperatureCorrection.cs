using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>Resistance against temperature by a straight line, from any reference temperature, and its inverse.</summary>
/// <remarks>
/// <code>R2 = R1 · [1 + α(θ2 − θr)]/[1 + α(θ1 − θr)]</code>
/// <para>α per kelvin is the coefficient <b>at</b> θr: a coefficient belongs to its reference temperature. 0.00393 is copper at 20 °C; the same line
/// has 0.00427 at 0 °C, 0.00385 at 25 °C and 0.00323 at 75 °C. Pairing 0.00393 with 75 °C over-corrects by 22 %.</para>
/// <para><b>Valid</b> where both factors are positive, which is checked; α from −0.05 to 0.05, so carbon (negative) is included. How far a material follows
/// a straight line is for the caller to know; metals of <see cref="ConductorMaterial"/> state their range.</para>
/// </remarks>
public static partial class TemperatureCorrection
{
    /// <summary>α of copper at 75 °C in the note to NEC chapter 9 table 8, per kelvin.</summary>
    public const double NecCopperAt75 = 0.00323;

    /// <summary>α of aluminium at 75 °C in the note to NEC chapter 9 table 8, per kelvin.</summary>
    public const double NecAluminiumAt75 = 0.00330;

    private const double MostCoefficient = 0.05;

    /// <summary>The source of the NEC form.</summary>
    public static Reference NecReference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Locator = "Chapter 9, Table 8, note", Kind = ReferenceKind.Standard, Note = "R2 = R1·[1 + α·(T2 − 75)]; read in reprints of the note.",
    };

    /// <summary>Resistance at another temperature.</summary>
    /// <param name="known">R1. Positive.</param>
    /// <param name="knownAt">θ1, where R1 was measured.</param>
    /// <param name="temperature">θ2.</param>
    /// <param name="coefficient">α per kelvin, from −0.05 to 0.05.</param>
    /// <param name="coefficientAt">θr, the temperature that α belongs to.</param>
    /// <returns>R2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the line has reached zero at θ1 or θ2.</exception>
    public static ElectricResistance ResistanceAt(
        ElectricResistance known, Temperature knownAt, Temperature temperature, double coefficient, Temperature coefficientAt)
    {
        double alpha = Coefficient(coefficient);
        double reference = Accept.Celsius(coefficientAt, nameof(coefficientAt));
        double factor1 = Factor(alpha, Accept.Celsius(knownAt, nameof(knownAt)), reference, nameof(knownAt));
        double factor2 = Factor(alpha, Accept.Celsius(temperature, nameof(temperature)), reference, nameof(temperature));
        return ElectricResistance.FromOhms(Accept.Ohms(known, nameof(known)) * factor2 / factor1);
    }

    /// <summary>Resistance at another temperature, for a metal.</summary>
    /// <param name="known">R1. Positive.</param>
    /// <param name="knownAt">θ1, where R1 was measured; from −100 °C to the melting point.</param>
    /// <param name="temperature">θ2; from −100 °C to the melting point.</param>
    /// <param name="material">The metal.</param>
    /// <returns>R2.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance ResistanceAt(ElectricResistance known, Temperature knownAt, Temperature temperature, ConductorMaterial material)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        double factor1 = material.RatioTo20(material.AcceptCelsius(knownAt, nameof(knownAt)));
        double factor2 = material.RatioTo20(material.AcceptCelsius(temperature, nameof(temperature)));
        return ElectricResistance.FromOhms(Accept.Ohms(known, nameof(known)) * factor2 / factor1);
    }

    /// <summary>Temperature from a measured resistance: the inverse of the straight line.</summary>
    /// <param name="known">R1. Positive.</param>
    /// <param name="knownAt">θ1, where R1 was measured.</param>
    /// <param name="measured">R2, measured at the temperature sought. Positive.</param>
    /// <param name="coefficient">α per kelvin, from −0.05 to 0.05 and not zero.</param>
    /// <param name="coefficientAt">θr, the temperature that α belongs to.</param>
    /// <returns>θ2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, the line has reached zero at θ1, or the measured resistance belongs to no temperature between absolute zero and 10 000 °C.
    /// </exception>
    /// <remarks><code>θ2 = θr + [R2/R1 · (1 + α(θ1 − θr)) − 1]/α</code></remarks>
    public static Temperature TemperatureFrom(
        ElectricResistance known, Temperature knownAt, ElectricResistance measured, double coefficient, Temperature coefficientAt)
    {
        double alpha = NotZero(coefficient);
        double reference = Accept.Celsius(coefficientAt, nameof(coefficientAt));
        double factor1 = Factor(alpha, Accept.Celsius(knownAt, nameof(knownAt)), reference, nameof(knownAt));
        double ohms = Accept.Ohms(measured, nameof(measured));
        double celsius = reference + (((ohms / Accept.Ohms(known, nameof(known)) * factor1) - 1) / alpha);
        return celsius > Accept.AbsoluteZeroCelsius && celsius <= Accept.MostCelsius
            ? Temperature.FromDegreesCelsius(celsius)
            : throw new ArgumentOutOfRangeException(
                nameof(measured), ohms, $"measured must belong to a temperature between absolute zero and {Accept.Text(Accept.MostCelsius)} °C; {Accept.Text(ohms)} Ω would be {Accept.Text(celsius)} °C.");
    }

    /// <summary>The coefficient of the same line at another reference temperature.</summary>
    /// <param name="coefficient">α per kelvin at <paramref name="coefficientAt"/>, from −0.05 to 0.05.</param>
    /// <param name="coefficientAt">The temperature that α belongs to.</param>
    /// <param name="temperature">The other temperature, T.</param>
    /// <returns>αT per kelvin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the line has reached zero at T.</exception>
    /// <remarks><code>αT = 1/(1/α20 + T − 20 °C) = α20/[1 + α20(T − 20 °C)]</code></remarks>
    public static double CoefficientAt(double coefficient, Temperature coefficientAt, Temperature temperature)
    {
        double alpha = Coefficient(coefficient);
        double reference = Accept.Celsius(coefficientAt, nameof(coefficientAt));
        return alpha / Factor(alpha, Accept.Celsius(temperature, nameof(temperature)), reference, nameof(temperature));
    }

    /// <summary>The NEC form: from the 75 °C of its table 8 to another temperature.</summary>
    /// <param name="at75">The table's resistance, R1, at 75 °C. Positive.</param>
    /// <param name="temperature">T2, from −100 °C to 660 °C.</param>
    /// <param name="coefficient">α at 75 °C: <see cref="NecCopperAt75"/> or <see cref="NecAluminiumAt75"/>.</param>
    /// <returns>R2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks><code>R2 = R1 · [1 + α(T2 − 75 °C)]</code></remarks>
    public static ElectricResistance NecResistanceAt(ElectricResistance at75, Temperature temperature, double coefficient)
    {
        double celsius = Accept.Within(Accept.Celsius(temperature, nameof(temperature)), ConductorMaterial.LowestCelsius, 660, "°C", nameof(temperature));
        return ElectricResistance.FromOhms(Accept.Ohms(at75, nameof(at75)) * Factor(Coefficient(coefficient), celsius, 75, nameof(temperature)));
    }

    /// <summary>The temperature at which two resistors of different coefficients are equal.</summary>
    /// <param name="first">First resistance at the reference temperature. Positive.</param>
    /// <param name="firstCoefficient">Its α per kelvin at that temperature, from −0.05 to 0.05.</param>
    /// <param name="second">Second resistance at the reference temperature. Positive.</param>
    /// <param name="secondCoefficient">Its α per kelvin at that temperature, from −0.05 to 0.05.</param>
    /// <param name="knownAt">The reference temperature θr of both.</param>
    /// <returns>θ = θr + (R2 − R1)/(R1α1 − R2α2), or null where the lines do not cross above absolute zero with both resistances positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Temperature? TemperatureOfEqualResistance(
        ElectricResistance first, double firstCoefficient, ElectricResistance second, double secondCoefficient, Temperature knownAt)
    {
        double ohms1 = Accept.Ohms(first, nameof(first));
        double ohms2 = Accept.Ohms(second, nameof(second));
        double alpha1 = Accept.Within(firstCoefficient, -MostCoefficient, MostCoefficient, "1/K", nameof(firstCoefficient));
        double alpha2 = Accept.Within(secondCoefficient, -MostCoefficient, MostCoefficient, "1/K", nameof(secondCoefficient));
        double reference = Accept.Celsius(knownAt, nameof(knownAt));
        double rise = (ohms2 - ohms1) / ((ohms1 * alpha1) - (ohms2 * alpha2));
        double celsius = reference + rise;
        bool crosses = celsius > Accept.AbsoluteZeroCelsius && celsius <= Accept.MostCelsius && 1 + (alpha1 * rise) > 0;
        return crosses ? Temperature.FromDegreesCelsius(celsius) : null;
    }

    private static double Coefficient(double coefficient) => Accept.Within(coefficient, -MostCoefficient, MostCoefficient, "1/K", nameof(coefficient));

    private static double NotZero(double coefficient) =>
        Math.Abs(Coefficient(coefficient)) >= Accept.Least
            ? coefficient
            : Accept.Refuse(nameof(coefficient), coefficient, "1/K", "different from zero: a resistance that does not change says nothing about temperature");

    // A factor at or below zero is beyond the inferred zero of the line.
    private static double Factor(double alpha, double celsius, double reference, string name)
    {
        double factor = 1 + (alpha * (celsius - reference));
        return factor >= 1e-6
            ? factor
            : Accept.Refuse(name, celsius, "°C", $"on the side of {Accept.Text(reference - (1 / alpha))} °C where the straight line is above zero");
    }
}
