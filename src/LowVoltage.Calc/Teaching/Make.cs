using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Short names for the quantities that recipes hand to the calculations.</summary>
internal static class Make
{
    internal static ElectricCurrent A(double value) => ElectricCurrent.FromAmperes(value);

    internal static ElectricPotential V(double value) => ElectricPotential.FromVolts(value);

    internal static ElectricResistance Ohm(double value) => ElectricResistance.FromOhms(value);

    internal static ElectricResistance Milliohm(double value) => ElectricResistance.FromMilliohms(value);

    internal static Power W(double value) => Power.FromWatts(value);

    internal static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    internal static Duration S(double value) => Duration.FromSeconds(value);

    internal static Area Mm2(double value) => Area.FromSquareMillimeters(value);

    internal static ElectricResistivity OhmMm2PerMeter(double value) => ElectricResistivity.FromOhmMeters(value * 1e-6);
}
