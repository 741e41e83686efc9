using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Heating;

[Properties(Arbitrary = [typeof(AdiabaticCases)], MaxTest = 500)]
public class AdiabaticHeatingProperties
{
    private const double Tight = 1e-12;
    private static readonly ConductorMaterial Copper = ConductorMaterial.Copper;

    [Property]
    public bool CurrentFor_AndTimeToReach_AreInverse(AdiabaticCase c) =>
        Close(c.Seconds, AdiabaticHeating.TimeToReach(Copper, c.Area, Current(c), c.Start, c.Limit).Seconds);

    [Property]
    public bool CurrentFor_AndAreaFor_AreInverse(AdiabaticCase c) =>
        Close(c.SquareMillimeters, AdiabaticHeating.AreaFor(Copper, Current(c), c.Duration, c.Start, c.Limit).SquareMillimeters);

    // The temperatures themselves hold 1e-12 of their distance from −β; a rise of 0.001 K on 100 °C cannot hold more than that.
    [Property]
    public bool FinalTemperature_AndCurrentFor_AreInverse(AdiabaticCase c) =>
        Math.Abs(AdiabaticHeating.FinalTemperature(Copper, c.Area, Current(c), c.Duration, c.Start).DegreesCelsius - c.Limit.DegreesCelsius)
        <= Tight * (c.Limit.DegreesCelsius + 234.5);

    [Property]
    public bool FinalTemperature_DoesNotDependOnUnits(AdiabaticCase c)
    {
        ElectricCurrent current = Current(c);
        double plain = AdiabaticHeating.FinalTemperature(Copper, c.Area, current, c.Duration, c.Start).DegreesCelsius;
        double other = AdiabaticHeating.FinalTemperature(
            Copper,
            c.Area.ToUnit(UnitsNet.Units.AreaUnit.SquareInch),
            current.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Kiloampere),
            c.Duration.ToUnit(UnitsNet.Units.DurationUnit.Millisecond),
            c.Start.ToUnit(UnitsNet.Units.TemperatureUnit.Kelvin)).DegreesCelsius;
        return Math.Abs(plain - other) <= 1e-10 * (plain + 273.15);
    }

    [Property]
    public bool Withstand_ScalesWithTheSquareOfTheSection(AdiabaticCase c)
    {
        double one = AdiabaticHeating.WithstandJouleIntegral(Copper, c.Area, c.Start, c.Limit).AmpereSquaredSeconds;
        double three = AdiabaticHeating.WithstandJouleIntegral(Copper, c.Area * 3, c.Start, c.Limit).AmpereSquaredSeconds;
        return Close(9 * one, three);
    }

    [Property]
    public bool FinalTemperature_DependsOnCurrentSquaredTimesTimeOverSectionSquaredOnly(AdiabaticCase c)
    {
        double one = AdiabaticHeating.FinalTemperature(Copper, c.Area, Current(c), c.Duration, c.Start).DegreesCelsius;
        double two = AdiabaticHeating.FinalTemperature(Copper, c.Area * 2, Current(c) * 4, c.Duration / 4, c.Start).DegreesCelsius;
        return Math.Abs(one - two) <= Tight * (one + 273.15);
    }

    [Property]
    public bool FinalTemperature_NeverFallsAsCurrentRisesNorRisesWithSection(AdiabaticCase c)
    {
        ElectricCurrent current = Current(c);
        double at = AdiabaticHeating.FinalTemperature(Copper, c.Area, current, c.Duration, c.Start).DegreesCelsius;
        double less = AdiabaticHeating.FinalTemperature(Copper, c.Area, current * 0.99, c.Duration, c.Start).DegreesCelsius;
        double thicker = AdiabaticHeating.FinalTemperature(Copper, c.Area * 1.01, current, c.Duration, c.Start).DegreesCelsius;
        return less < at && thicker < at && less > c.Initial;
    }

    [Property]
    public bool NonAdiabaticFactor_IsAboveOneAndGrowsWithTime(AdiabaticCase c)
    {
        NonAdiabaticInsulation pvc = NonAdiabaticInsulation.PolyvinylChloride;
        double at = NonAdiabaticFactor.General(Copper, pvc, c.Area, c.Duration);
        double sooner = NonAdiabaticFactor.General(Copper, pvc, c.Area, c.Duration / 2);
        double simple = NonAdiabaticFactor.Simplified(pvc.Copper, c.Area, c.Duration);
        return at > 1 && sooner < at && simple > 1 && Math.Abs(simple / at - 1) < 0.01;
    }

    [Property]
    public bool Expm1_AndLog1p_AreInverse(AdiabaticCase c)
    {
        double x = c.Rise * c.Seconds / 5; // 2e-8 to 800
        return Math.Abs(ExpLog.Log1p(ExpLog.Expm1(Math.Min(x, 700))) / Math.Min(x, 700) - 1) < 1e-13;
    }

    [Property]
    public bool Onderdonk_CurrentAndTime_AreInverse(AdiabaticCase c)
    {
        ElectricCurrent current = FusingEstimates.OnderdonkCurrent(c.Area, c.Duration, c.Start);
        return Close(c.Seconds, FusingEstimates.OnderdonkTime(c.Area, current, c.Start).Seconds);
    }

    private static ElectricCurrent Current(AdiabaticCase c) => AdiabaticHeating.CurrentFor(Copper, c.Area, c.Duration, c.Start, c.Limit);

    private static bool Close(double expected, double actual) => Math.Abs((actual / expected) - 1) <= Tight;
}
