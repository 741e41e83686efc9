using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>The usual wall thickness of a wire's insulation, for heat calculations where nobody has measured it.</summary>
/// <remarks>
/// <para>Thin-wall road-vehicle cable by nominal section (ISO 6722-1, from memory). A size between two rows takes the thinner wall, sizes above the last row take the last.
/// The wall matters little: insulating a thin wire makes its surface larger and so cools it, and a thin wall is the cautious assumption there.</para>
/// </remarks>
public static class InsulationWall
{
    // mm², mm: nominal section and nominal thin wall.
    private static readonly double[] Sections = [0, 0.5, 0.75, 2, 3, 10, 16, 35, 50, 70, 95, 120];
    private static readonly double[] Walls = [0.25, 0.28, 0.30, 0.35, 0.40, 0.60, 0.65, 0.80, 0.89, 1.00, 1.13, 1.20];

    /// <summary>Where the walls come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "ISO 6722-1", Edition = Editions.Iso6722, Locator = "thin-wall insulation", Kind = ReferenceKind.FromMemory,
        Note = "Ten sizes agree with a retrieved sheet of outer diameters. Used for wires of every system where the wall is not stated.",
    };

    /// <summary>The usual wall for a conductor.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <returns>The wall thickness.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    public static Length UsualFor(Conductor conductor) =>
        Length.FromMillimeters(UsualMillimeters((conductor ?? throw new ArgumentNullException(nameof(conductor))).AreaSquareMillimeters));

    internal static double UsualMillimeters(double squareMillimeters)
    {
        int row = Sections.Length - 1;
        while (row > 0 && Sections[row] > squareMillimeters)
        {
            row--;
        }

        return Walls[row];
    }
}
