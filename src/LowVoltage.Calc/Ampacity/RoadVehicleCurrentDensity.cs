using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The road-vehicle rule of a permitted current density: 10, 6, 4 and 3 A/mm² of nominal section as the size grows.</summary>
/// <remarks>
/// <code>I = J · S</code> with S the nominal section: 10 A/mm² for 1 mm² to 4 mm², 6 for 6 mm² to 16 mm², 4 for 25 mm² to 50 mm², 3 for 70 mm² and 95 mm².
/// A conservative practice: no insulation rating and no ambient is stated with it. It gives 40 A at 4 mm² and 36 A at 6 mm², as printed. Only the printed sizes are answered.
/// </remarks>
public static class RoadVehicleCurrentDensity
{
    private static readonly double[] Sizes = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95];
    private static readonly double[] Densities = [10, 10, 10, 10, 6, 6, 6, 4, 4, 4, 3, 3];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Road-vehicle handbook, permitted continuous current density", Edition = "as read 2026", Kind = ReferenceKind.Handbook,
        Note = "Guidance, read in a training article that repeats the table.",
    };

    /// <summary>The permitted continuous current of a size.</summary>
    /// <param name="size">Nominal size.</param>
    /// <param name="current">The current; zero when the size is not in the table.</param>
    /// <returns>Whether the size is in the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static bool TryCurrent(MetricSize size, out ElectricCurrent current)
    {
        bool found = TryAmperes(size.Need(nameof(size)).SquareMillimeters, out double amperes);
        current = found ? ElectricCurrent.FromAmperes(amperes) : default;
        return found;
    }

    /// <summary>The permitted continuous current of a size.</summary>
    /// <param name="size">Nominal size.</param>
    /// <returns>The current.</returns>
    /// <exception cref="OutsidePublishedRangeException">The size is not in the table.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ElectricCurrent Current(MetricSize size) => TryCurrent(size, out ElectricCurrent current)
        ? current
        : throw OutsidePublishedRangeException.For(
            nameof(size), size.ToString(), Reference.Title, string.Join(", ", Sizes.Select(Accept.Text)) + " mm²");

    internal static bool TryAmperes(double squareMillimeters, out double amperes)
    {
        int index = Array.IndexOf(Sizes, squareMillimeters);
        amperes = index < 0 ? 0 : Sizes[index] * Densities[index];
        return index >= 0;
    }
}
