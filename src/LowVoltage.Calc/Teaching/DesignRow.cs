using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>A row of the table that a design problem prints: size, cross-section, resistance and the current of a published table.</summary>
/// <remarks>The cross-section is in mm², or for a gauge in circular mils, as its table prints it.</remarks>
internal sealed record DesignRow(string Text, double Value, decimal Section, decimal PerKilometer, decimal PerThousandFeet, decimal Amperes, ConductorSize Size)
{
    internal static DesignRow Of(double value, Conductor conductor, TableRating rating)
    {
        WireRow row = WireRow.Of(value, conductor, double.NaN);
        return new DesignRow(
            row.Text, value, Rounding.Figures(conductor.Size!.Value.TryGetAwg(out _) ? row.SquareMillimeters / CircularMil.SquareMillimeters : row.SquareMillimeters, 3), row.PerKilometer, row.PerThousandFeet, Rounding.Figures(rating.Current.Amperes, 4), conductor.Size!.Value);
    }
}
