using UnitsNet;
using UnitsNet.Units;

namespace LowVoltage.Calc.Quantities;

/// <content>A quantity as a number in the unit that the library computes with: SI, except °C, mm² and per cent.</content>
internal static partial class Accept
{
    // UnitsNet throws where the converted number would be infinite, for a parameter of its own. Nothing that large is accepted in any unit, so it is
    // passed on as the infinity that it would be, to be refused by name; a TryX then returns false as it should.
    private const double Huge = 1e200;

    /// <summary>Whether a number is too large for UnitsNet to convert, whatever its unit.</summary>
    internal static bool IsHuge(double value) => value is > Huge or < -Huge;

    private static double Infinite(double value) => value > 0 ? double.PositiveInfinity : double.NegativeInfinity;

    internal static double Raw(in ElectricCurrent q) =>
        q.Unit == ElectricCurrentUnit.Ampere ? q.Value : IsHuge(q.Value) ? Infinite(q.Value) : q.Amperes;

    internal static double Raw(in ElectricPotential q) =>
        q.Unit == ElectricPotentialUnit.Volt ? q.Value : IsHuge(q.Value) ? Infinite(q.Value) : q.Volts;

    internal static double Raw(in ElectricResistance q) => q.Unit switch
    {
        ElectricResistanceUnit.Ohm => q.Value,
        ElectricResistanceUnit.Milliohm => q.Value * 1e-3,
        _ => IsHuge(q.Value) ? Infinite(q.Value) : q.Ohms,
    };

    // Power is a decimal in UnitsNet 5; a double is enough for 15 digits. A decimal ends at 7.9e28, which a conversion to a smaller unit may pass.
    internal static double Raw(in Power q) =>
        q.Unit == PowerUnit.Watt ? (double)q.Value
        : q.Value is > 1e15m or < -1e15m ? (double)q.Value * (double)new Power(1, q.Unit).Watts
        : (double)q.Watts;

    internal static double Raw(in Length q) => q.Unit switch
    {
        LengthUnit.Meter => q.Value,
        LengthUnit.Millimeter => q.Value * 1e-3,
        LengthUnit.Foot => q.Value * 0.3048,
        _ => IsHuge(q.Value) ? Infinite(q.Value) : q.Meters,
    };

    internal static double Raw(in Area q) =>
        q.Unit == AreaUnit.SquareMillimeter ? q.Value : IsHuge(q.Value) ? Infinite(q.Value) : q.SquareMeters * 1e6;

    internal static double Raw(in Duration q) =>
        q.Unit == DurationUnit.Second ? q.Value : IsHuge(q.Value) ? Infinite(q.Value) : q.Seconds;

    // UnitsNet goes by way of the kelvin and allocates for °F.
    internal static double Raw(in Temperature q) => q.Unit switch
    {
        TemperatureUnit.DegreeCelsius => q.Value,
        TemperatureUnit.DegreeFahrenheit => (q.Value - 32) * 5 / 9,
        _ => IsHuge(q.Value) ? Infinite(q.Value) : q.DegreesCelsius,
    };

    internal static double Raw(in ElectricResistivity q) => IsHuge(q.Value) ? Infinite(q.Value) : q.OhmMeters;

    // UnitsNet counts an ampere-hour as 3600 C to eleven digits.
    internal static double Raw(in ElectricCharge q) =>
        IsHuge(q.Value) ? Infinite(q.Value) : q.Unit == ElectricChargeUnit.AmpereHour ? q.Value * 3600 : q.Coulombs;

    internal static double Raw(in ElectricCapacitance q) => IsHuge(q.Value) ? Infinite(q.Value) : q.Farads;

    internal static double Raw(in ThermalConductivity q) => IsHuge(q.Value) ? Infinite(q.Value) : q.WattsPerMeterKelvin;

    internal static double Raw(in Speed q) => IsHuge(q.Value) ? Infinite(q.Value) : q.MetersPerSecond;

    internal static double Raw(in HeatTransferCoefficient q) => IsHuge(q.Value) ? Infinite(q.Value) : q.WattsPerSquareMeterKelvin;

    internal static double Raw(in TemperatureDelta q) => IsHuge(q.Value) ? Infinite(q.Value) : q.Kelvins;

    internal static double Raw(in Density q) => IsHuge(q.Value) ? Infinite(q.Value) : q.KilogramsPerCubicMeter;

    internal static double Raw(in VolumetricHeatCapacity q) => IsHuge(q.Value) ? Infinite(q.Value) : q.JoulesPerCubicMeterKelvin;

    // UnitsNet counts an elevation as a unit of pressure, by a power that has no value far below the sea or above the air.
    internal static double Raw(in Pressure q)
    {
        try
        {
            return q.Pascals;
        }
        catch (ArgumentException)
        {
            return Infinite(q.Value);
        }
    }

    internal static double Kelvins(in Temperature q) => IsHuge(q.Value) ? Infinite(q.Value) : q.Kelvins;

    /// <summary>A share in per cent.</summary>
    internal static double Raw(in Ratio q) => IsHuge(q.Value) ? Infinite(q.Value) : q.Percent;
}
