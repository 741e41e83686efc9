using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

/// <summary>Largest resistances and diameters of road-vehicle conductors at 20 °C. All from memory. A zero is "not known".</summary>
internal static class Iso6722Table
{
    // mm²; mΩ/m: bare copper, tinned copper; largest conductor diameter mm.
    private static readonly (double SquareMillimeters, double Bare, double Tinned, double LargestDiameter)[] Rows =
    [
        (0.13, 136, 140, 0.55),
        (0.22, 84.8, 86.5, 0.70),
        (0.35, 54.4, 55.5, 0.90),
        (0.5, 37.1, 38.2, 1.10),
        (0.75, 24.7, 25.4, 1.30),
        (1, 18.5, 19.1, 1.50),
        (1.25, 14.9, 0, 0),
        (1.5, 12.7, 13.0, 1.80),
        (2, 9.42, 9.69, 2.00),
        (2.5, 7.60, 7.82, 2.20),
        (3, 6.15, 6.36, 2.40),
        (4, 4.71, 4.85, 2.80),
        (5, 3.94, 0, 0),
        (6, 3.14, 3.23, 3.40),
        (8, 2.38, 0, 0),
        (10, 1.82, 1.85, 4.50),
        (12, 1.52, 0, 0),
        (16, 1.16, 1.18, 5.80),
        (20, 0.955, 0, 0),
        (25, 0.743, 0.757, 7.20),
        (30, 0.647, 0, 0),
        (35, 0.527, 0.538, 8.50),
        (40, 0.473, 0, 0),
        (50, 0.368, 0.375, 10.50),
        (60, 0.315, 0, 0),
        (70, 0.259, 0.264, 12.50),
        (95, 0.196, 0.200, 14.80),
        (120, 0.153, 0.156, 16.50),
    ];

    internal static Reference Reference { get; } = new()
    {
        Title = "ISO 6722-1",
        Edition = Editions.Iso6722,
        Kind = ReferenceKind.FromMemory,
        Note = "Every value from memory; the 15 sizes shared with IEC 60228 equal that standard's class 5 limit divided by 1.05 within 0.8 %. 13 of the plain resistances and 10 of the "
            + "diameters agree with an independent transcription, 2026-11. 0.35 mm² follows the editions from 2006 on (54.4; 52.0 in 2002). Largest diameters of 16, 25 and 35 mm²: 5.8, 7.2 and "
            + "8.5 mm here; a handbook reprint of an older edition, thick wall, prints 6.3, 7.8 and 9.0 mm. The smaller are kept, which cool less.",
    };

    /// <summary>The limit in Ω/km and the conductor diameter in mm; false where the table has no value.</summary>
    internal static bool TryFind(MetricSize size, bool tinned, out double ohmsPerKilometer, out double diameter)
    {
        int index = Rows.Length - 1;
        while (index >= 0 && !Rows[index].SquareMillimeters.Equals(size.SquareMillimeters))
        {
            index--;
        }

        ohmsPerKilometer = index < 0 ? 0 : tinned ? Rows[index].Tinned : Rows[index].Bare;
        diameter = index < 0 ? 0 : Diameter(index);
        return ohmsPerKilometer > 0;
    }

    // The first and the last row have a diameter. Between two that do, its square grows with the section.
    private static double Diameter(int index)
    {
        int below = index;
        int above = index;
        while (Rows[below].LargestDiameter <= 0)
        {
            below--;
        }

        while (Rows[above].LargestDiameter <= 0)
        {
            above++;
        }

        if (below == above)
        {
            return Rows[index].LargestDiameter;
        }

        (double area1, double area2) = (Rows[below].SquareMillimeters, Rows[above].SquareMillimeters);
        double share = (Rows[index].SquareMillimeters - area1) / (area2 - area1);
        double square1 = Rows[below].LargestDiameter * Rows[below].LargestDiameter;
        double square2 = Rows[above].LargestDiameter * Rows[above].LargestDiameter;
        return Math.Sqrt(square1 + (share * (square2 - square1)));
    }
}
