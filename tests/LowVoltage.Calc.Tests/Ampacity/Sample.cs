using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>Short names for the quantities that the tests of this room write most.</summary>
internal static class Sample
{
    public static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static AwgSize Awg(int number) => AwgSize.FromNumber(number);

    public static AircraftWireSize Aircraft(int number) => AircraftWireSize.FromNumber(number);

    public static MetricSize Mm2(double value) => MetricSize.FromSquareMillimeters(value);

    public static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    public static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    public static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    public static Length Feet(double feet) => Length.FromFeet(feet);
}
