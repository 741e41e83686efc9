using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Quantities as keys of a table: what a unit conversion leaves in the last digits must not move a value to another row.</summary>
/// <remarks>A conversion through kelvins can turn 167 °F into a hair off 75 °C; it is the 75 °C column all the same. Rounded to 1e-9 of the unit.</remarks>
internal static class TableKey
{
    private const int Digits = 9;

    internal static double Celsius(in Temperature temperature, string name) => Rounded(Accept.Celsius(temperature, name));

    internal static double Rounded(double value) => Math.Round(value, Digits);
}
