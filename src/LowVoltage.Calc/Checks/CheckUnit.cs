using UnitsNet;

namespace LowVoltage.Calc.Checks;

/// <summary>The units of the checks as quantities.</summary>
internal static class CheckUnit
{
    internal static IQuantity Quantity(string unit, double value) => unit switch
    {
        "V" => ElectricPotential.FromVolts(value),
        "A" => ElectricCurrent.FromAmperes(value),
        "W" => Power.FromWatts(value),
        "mm²" => Area.FromSquareMillimeters(value),
        "°C" => Temperature.FromDegreesCelsius(value),
        "s" => Duration.FromSeconds(value),
        "m" => Length.FromMeters(value),
        "" => Ratio.FromDecimalFractions(value),
        _ => throw new InvalidOperationException($"No quantity for the unit {unit}."),
    };
}
