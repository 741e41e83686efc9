using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>Conductors whose resistance the caller states.</content>
public sealed partial class Conductor
{
    // What a conductor of a size may hold of the size's nominal metal: a metric name stands for as little as 86 % of it.
    private const double LeastShareOfSize = 0.8;
    private const double MostShareOfSize = 1.25;

    /// <summary>A conductor of a resistance per length that the caller knows, measured or from a data sheet.</summary>
    /// <param name="resistance">Resistance per length at 20 °C. From 1e-12 Ω/m.</param>
    /// <param name="area">Cross-section of the metal. Positive, at most 1e6 mm².</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A number is outside its range, or the resistance is more than 10 % below what that area of that metal can have.
    /// </exception>
    public static Conductor Stated(LinearResistance resistance, Area area, ConductorMaterial material)
    {
        double squareMillimeters = Accept.SquareMillimeters(area, nameof(area));
        return Given(
            $"{Accept.Text(squareMillimeters)} mm² {Need(material).Name}, {Accept.Text(resistance.OhmsPerKilometer)} Ω/km",
            null,
            resistance,
            squareMillimeters,
            CircleDiameter(squareMillimeters),
            material,
            Reference.CommonPractice("resistance per length stated by the caller"));
    }

    /// <summary>A conductor from a maker's data sheet: a size of its own name, resistance, section and diameter.</summary>
    /// <param name="name">What it is called: <c>4 mm² tinned, class 6</c>.</param>
    /// <param name="resistance">Resistance per length at 20 °C, the largest that the sheet allows. From 1e-12 Ω/m.</param>
    /// <param name="area">Cross-section of the metal. Positive, at most 1e6 mm².</param>
    /// <param name="diameter">Diameter over the metal: from that of a solid wire of the section to three times as much.</param>
    /// <param name="material">The metal, which says how resistance and heat change with temperature.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>The conductor, without a size of a standard: tables that go by sizes do not cover it.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the resistance is more than 10 % below what that area of that metal can have.</exception>
    public static Conductor Create(string name, LinearResistance resistance, Area area, Length diameter, ConductorMaterial material, Reference reference) =>
        Given(Named(name), null, resistance, Accept.SquareMillimeters(area, nameof(area)), Over(diameter, area), Need(material), reference);

    /// <summary>A conductor from a maker's data sheet, sold as a size that tables know.</summary>
    /// <param name="name">What it is called: <c>10 AWG tinned, fine strands</c>.</param>
    /// <param name="size">The size it is sold as. Tables of current are read by it.</param>
    /// <param name="resistance">Resistance per length at 20 °C, the largest that the sheet allows. From 1e-12 Ω/m.</param>
    /// <param name="area">Cross-section of the metal: 80 % to 125 % of the nominal section of the size.</param>
    /// <param name="diameter">Diameter over the metal: from that of a solid wire of the section to three times as much.</param>
    /// <param name="material">The metal, which says how resistance and heat change with temperature.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The size is a <c>default</c>, a number is outside its range, or the resistance is more than 10 % below what that area of that metal can have.
    /// </exception>
    public static Conductor Create(
        string name, ConductorSize size, LinearResistance resistance, Area area, Length diameter, ConductorMaterial material, Reference reference)
    {
        double nominal = size.Need(nameof(size)).NominalArea.SquareMillimeters;
        _ = Accept.Within(Accept.SquareMillimeters(area, nameof(area)), nominal * LeastShareOfSize, nominal * MostShareOfSize, "mm²", nameof(area));
        return Given(Named(name), size, resistance, Accept.SquareMillimeters(area, nameof(area)), Over(diameter, area), Need(material), reference);
    }

    private static Conductor Given(
        string name, ConductorSize? size, LinearResistance resistance, double squareMillimeters, double diameter, ConductorMaterial material, Reference reference)
    {
        double least = material.OhmMeters20 * 1e6 / squareMillimeters / 1.10;
        return new Conductor
        {
            Name = name,
            Size = size,
            System = size?.System ?? SizeSystem.Geometry,
            Basis = ResistanceBasis.Stated,
            Material = material,
            AreaSquareMillimeters = squareMillimeters,
            DiameterMillimeters = diameter,
            OhmsPerMeter20 = Accept.Within(resistance.OhmsPerMeter, Math.Max(least, Accept.Least), Accept.MostOhms, "Ω/m", nameof(resistance)),
            Reference = reference ?? throw new ArgumentNullException(nameof(reference)),
        };
    }

    // Strands and the air between them are wider than a solid wire, and not without end.
    private static double Over(in Length diameter, in Area area)
    {
        double solid = CircleDiameter(Accept.SquareMillimeters(area, nameof(area)));
        return Accept.Within(Accept.Meters(diameter, nameof(diameter)) * 1000, solid * (1 - 1e-9), solid * 3, "mm", nameof(diameter));
    }

    private static string Named(string name)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        return string.IsNullOrWhiteSpace(name) ? throw new ArgumentException("A name is needed; it was empty.", nameof(name)) : name;
    }
}
