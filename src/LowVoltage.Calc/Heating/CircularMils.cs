namespace LowVoltage.Calc.Heating;

/// <summary>The area unit of the American formulas: a circle of one thousandth of an inch.</summary>
internal static class CircularMils
{
    private const double SquareMillimetersEach = Math.PI / 4 * 0.0254 * 0.0254;

    /// <summary>Circular mils from mm².</summary>
    internal static double From(double squareMillimeters) => squareMillimeters / SquareMillimetersEach;
}
