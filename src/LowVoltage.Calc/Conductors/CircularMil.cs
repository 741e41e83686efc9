using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>The circular mil: the area of a circle one mil (0.001 in) in diameter. UnitsNet has no such unit.</summary>
/// <remarks>
/// <code>cmil = d² with d in mils;  1 cmil = π/4 square mils = 5.067075e-4 mm²</code>
/// Exact by definition. Beware of texts that use 0.785 for π/4: 0.05 % low.
/// </remarks>
public static partial class CircularMil
{
    internal const double MillimetersPerMil = 0.0254;

    internal const double SquareMillimeters = Math.PI / 4 * MillimetersPerMil * MillimetersPerMil;

    private const double MostCircularMils = Accept.MostSquareMillimeters / SquareMillimeters;

    /// <summary>Circular mils in a cross-section of any shape.</summary>
    /// <param name="area">The cross-section. Positive, at most 1e6 mm².</param>
    /// <returns>Circular mils.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside that range.</exception>
    public static double FromArea(Area area) => Accept.SquareMillimeters(area, nameof(area)) / SquareMillimeters;

    /// <summary>Circular mils in a round wire.</summary>
    /// <param name="diameter">The diameter. Positive.</param>
    /// <returns>Circular mils.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive, or above 1e7 m.</exception>
    public static double FromDiameter(Length diameter)
    {
        double mils = Mils(diameter, nameof(diameter));
        return mils * mils;
    }

    /// <summary>The cross-section that a number of circular mils stands for.</summary>
    /// <param name="circularMils">Circular mils. Positive, at most 1.97e9.</param>
    /// <returns>The cross-section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside that range.</exception>
    public static Area ToArea(double circularMils) =>
        Area.FromSquareMillimeters(Accept.Positive(circularMils, MostCircularMils, "cmil", nameof(circularMils)) * SquareMillimeters);

    /// <summary>Square mils in a cross-section: circular mils times π/4.</summary>
    /// <param name="area">The cross-section. Positive, at most 1e6 mm².</param>
    /// <returns>Square mils.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside that range.</exception>
    public static double SquareMilsOf(Area area) =>
        Accept.SquareMillimeters(area, nameof(area)) / (MillimetersPerMil * MillimetersPerMil);

    /// <summary>A length in mils (thousandths of an inch).</summary>
    /// <param name="length">The length. Positive.</param>
    /// <returns>Mils.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive, or above 1e7 m.</exception>
    public static double MilsOf(Length length) => Mils(length, nameof(length));

    private static double Mils(in Length length, string name) => Accept.Meters(length, name) * 1000 / MillimetersPerMil;
}
