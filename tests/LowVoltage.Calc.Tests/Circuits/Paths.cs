using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests;

/// <summary>Paths that several tests use.</summary>
internal static class Paths
{
    public static Conductor Awg(int number) => Conductor.Solid(AwgSize.FromNumber(number), ConductorMaterial.Copper);

    /// <summary>A path whose resistance, about 2e-15 Ω, is below every tolerance here.</summary>
    public static CircuitPath Negligible { get; } = CircuitPath.Create(
        Segment.Create(Awg(-3), Length.FromMeters(1e-11)), ReturnPath.Chassis(ElectricResistance.Zero));

    /// <summary>A path of a stated resistance.</summary>
    public static CircuitPath Of(double ohms) => Negligible.WithFeedJoints(Joint.Create("resistance", ElectricResistance.FromOhms(ohms)));

    public static CircuitPath Wires(int awg, double feedMeters, double returnMeters) =>
        CircuitPath.Create(Segment.Create(Awg(awg), Length.FromMeters(feedMeters)), ReturnPath.Wire(Length.FromMeters(returnMeters)));

    public static ConductorTemperature At(double celsius) => ConductorTemperature.At(Temperature.FromDegreesCelsius(celsius));

    public static ConductorTemperature SelfHeated(double ambient, double amperes, double celsius) => ConductorTemperature.SelfHeated(
        Temperature.FromDegreesCelsius(ambient), ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(celsius));

    public static Source Battery(double volts, double ohms) =>
        Source.BehindResistance(ElectricPotential.FromVolts(volts), ElectricResistance.FromOhms(ohms));
}
