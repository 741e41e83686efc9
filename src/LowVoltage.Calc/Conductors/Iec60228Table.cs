using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

/// <summary>Largest resistances of IEC 60228 at 20 °C. A zero is "not in the table".</summary>
internal static class Iec60228Table
{
    // mm²; Ω/km: class 1 plain, coated, aluminium; class 2 plain, coated, aluminium; class 2 least wires; class 5 plain, coated, largest wire mm; class 6 largest wire mm.
    private static readonly Row[] Rows =
    [
        new(0.5, 36.0, 36.7, 0, 36.0, 36.7, 0, 7, 39.0, 40.1, 0.21, 0.16),
        new(0.75, 24.5, 24.8, 0, 24.5, 24.8, 0, 7, 26.0, 26.7, 0.21, 0.16),
        new(1, 18.1, 18.2, 0, 18.1, 18.2, 0, 7, 19.5, 20.0, 0.21, 0.16),
        new(1.5, 12.1, 12.2, 0, 12.1, 12.2, 0, 7, 13.3, 13.7, 0.26, 0.16),
        new(2.5, 7.41, 7.56, 0, 7.41, 7.56, 0, 7, 7.98, 8.21, 0.26, 0.16),
        new(4, 4.61, 4.70, 0, 4.61, 4.70, 0, 7, 4.95, 5.09, 0.31, 0.16),
        new(6, 3.08, 3.11, 0, 3.08, 3.11, 0, 7, 3.30, 3.39, 0.31, 0.21),
        new(10, 1.83, 1.84, 3.08, 1.83, 1.84, 3.08, 7, 1.91, 1.95, 0.41, 0.21),
        new(16, 1.15, 1.16, 1.91, 1.15, 1.16, 1.91, 7, 1.21, 1.24, 0.41, 0.21),
        new(25, 0.727, 0, 1.20, 0.727, 0.734, 1.20, 7, 0.780, 0.795, 0.41, 0.21),
        new(35, 0.524, 0, 0.868, 0.524, 0.529, 0.868, 7, 0.554, 0.565, 0.41, 0.21),
        new(50, 0.387, 0, 0.641, 0.387, 0.391, 0.641, 19, 0.386, 0.393, 0.41, 0.31),
        new(70, 0.268, 0, 0.443, 0.268, 0.270, 0.443, 19, 0.272, 0.277, 0.51, 0.31),
        new(95, 0.193, 0, 0.320, 0.193, 0.195, 0.320, 19, 0.206, 0.210, 0.51, 0.31),
        new(120, 0.153, 0, 0.253, 0.153, 0.154, 0.253, 37, 0.161, 0.164, 0.51, 0.31),
        new(150, 0.124, 0, 0.206, 0.124, 0.126, 0.206, 37, 0.129, 0.132, 0.51, 0.31),
        new(185, 0.101, 0, 0.164, 0.0991, 0.100, 0.164, 37, 0.106, 0.108, 0.51, 0.41),
        new(240, 0.0775, 0, 0.125, 0.0754, 0.0762, 0.125, 37, 0.0801, 0.0817, 0.51, 0.41),
        new(300, 0.0620, 0, 0.100, 0.0601, 0.0607, 0.100, 61, 0.0641, 0.0654, 0.51, 0.41),
        new(400, 0.0465, 0, 0.0778, 0.0470, 0.0475, 0.0778, 61, 0.0486, 0.0495, 0.51, 0),
    ];

    internal static Reference Reference { get; } = new()
    {
        Title = "IEC 60228",
        Edition = "2004",
        Locator = "Tables 1 to 4",
        Kind = ReferenceKind.Standard,
        Note = "Largest resistance at 20 °C, read in five agreeing reprints; wire diameters of class 6, and its end at 300 mm², from memory. The 2023 edition was not compared.",
    };

    /// <summary>The limit in Ω/km and the number of strands that sets the diameter; false where the table has no value.</summary>
    internal static bool TryFind(MetricSize size, Iec60228Class conductorClass, Iec60228Metal metal, out double ohmsPerKilometer, out int strands)
    {
        int index = Rows.Length - 1;
        while (index >= 0 && !Rows[index].SquareMillimeters.Equals(size.SquareMillimeters))
        {
            index--;
        }

        Row row = index >= 0 ? Rows[index] : default;
        ohmsPerKilometer = row.Limit(conductorClass, metal);
        strands = row.Strands(conductorClass);
        return ohmsPerKilometer > 0;
    }

    private readonly struct Row(
        double squareMillimeters,
        double solidPlain,
        double solidCoated,
        double solidAluminium,
        double strandedPlain,
        double strandedCoated,
        double strandedAluminium,
        int leastWires,
        double flexiblePlain,
        double flexibleCoated,
        double flexibleWire,
        double extraFlexibleWire)
    {
        public double SquareMillimeters => squareMillimeters;

        public double Limit(Iec60228Class conductorClass, Iec60228Metal metal) => conductorClass switch
        {
            Iec60228Class.Solid => Of(metal, solidPlain, solidCoated, solidAluminium),
            Iec60228Class.Stranded => Of(metal, strandedPlain, strandedCoated, strandedAluminium),
            Iec60228Class.Flexible => Of(metal, flexiblePlain, flexibleCoated, 0),
            Iec60228Class.ExtraFlexible => extraFlexibleWire > 0 ? Of(metal, flexiblePlain, flexibleCoated, 0) : 0,
            _ => throw new ArgumentOutOfRangeException(nameof(conductorClass), conductorClass, $"conductorClass must be 1, 2, 5 or 6; it was {Quantities.Accept.Text((int)conductorClass)}."),
        };

        public int Strands(Iec60228Class conductorClass) => conductorClass switch
        {
            Iec60228Class.Solid => 1,
            Iec60228Class.Stranded => leastWires,
            Iec60228Class.Flexible => Filling(flexibleWire),
            _ => Filling(extraFlexibleWire),
        };

        // The fewest wires of the largest diameter allowed that make up the nominal section.
        private int Filling(double wireMillimeters) =>
            wireMillimeters > 0 ? (int)Math.Ceiling(squareMillimeters / (Math.PI / 4 * wireMillimeters * wireMillimeters)) : 0;

        private static double Of(Iec60228Metal metal, double plain, double coated, double aluminium) => metal switch
        {
            Iec60228Metal.PlainCopper => plain,
            Iec60228Metal.CoatedCopper => coated,
            Iec60228Metal.Aluminium => aluminium,
            _ => throw new ArgumentOutOfRangeException(nameof(metal), metal, $"metal must be plain copper, coated copper or aluminium; it was {Quantities.Accept.Text((int)metal)}."),
        };
    }
}
