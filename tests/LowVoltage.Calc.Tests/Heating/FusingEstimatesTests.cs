using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Heating;

public class FusingEstimatesTests
{
    private static readonly Temperature Ambient = Temperature.FromDegreesCelsius(25);
    private static readonly Area Area = Area.FromSquareMillimeters(1);

    [Fact]
    public void Preece_CurrentAndDiameter_AreInverse()
    {
        foreach (PreeceMetal metal in PreeceMetal.All)
        {
            ElectricCurrent current = FusingEstimates.PreeceCurrent(metal, Length.FromMillimeters(0.8));
            Assert.Equal(0.8, FusingEstimates.PreeceDiameter(metal, current).Millimeters, 12);
            Assert.Equal(metal.Name, metal.ToString());
            Assert.Equal(ReferenceKind.Paper, metal.Reference.Kind);
        }
    }

    [Fact]
    public void Preece_OutsideTheTables_IsRefused()
    {
        _ = FusingEstimates.PreeceCurrent(PreeceMetal.Copper, Length.FromMillimeters(0.05));
        _ = FusingEstimates.PreeceCurrent(PreeceMetal.Copper, Length.FromMillimeters(12));
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => FusingEstimates.PreeceCurrent(PreeceMetal.Copper, Length.FromMillimeters(0.049)));
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => FusingEstimates.PreeceCurrent(PreeceMetal.Copper, Length.FromMillimeters(12.1)));
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "current", () => FusingEstimates.PreeceDiameter(PreeceMetal.Copper, ElectricCurrent.FromAmperes(0.1)));
        Assert.Contains("0.1 A", refused.Message, StringComparison.Ordinal);
        Assert.Contains("12 mm", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("current", () => FusingEstimates.PreeceDiameter(PreeceMetal.Copper, ElectricCurrent.FromAmperes(5000)));
        Assert.Throws<ArgumentNullException>("metal", () => FusingEstimates.PreeceCurrent(null!, Length.FromMillimeters(1)));
        Assert.Throws<ArgumentNullException>("metal", () => FusingEstimates.PreeceDiameter(null!, ElectricCurrent.FromAmperes(1)));
    }

    [Fact]
    public void Onderdonk_BeyondTenSeconds_IsRefused()
    {
        ElectricCurrent atTen = FusingEstimates.OnderdonkCurrent(Area, Duration.FromSeconds(10), Ambient);
        Assert.Equal(10, FusingEstimates.OnderdonkTime(Area, atTen * 1.000001, Ambient).Seconds, 4);
        Assert.False(FusingEstimates.TryOnderdonkTime(Area, atTen * 0.999, Ambient, out Duration none));
        Assert.Equal(0, none.Seconds);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "current", () => FusingEstimates.OnderdonkTime(Area, atTen * 0.999, Ambient));
        Assert.Contains("10 s", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => FusingEstimates.OnderdonkCurrent(Area, Duration.FromSeconds(10.1), Ambient));
        Assert.Throws<ArgumentOutOfRangeException>(
            "ambient", () => FusingEstimates.OnderdonkCurrent(Area, Duration.FromSeconds(1), Temperature.FromDegreesCelsius(1001)));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => FusingEstimates.OnderdonkCurrent(Area.Zero, Duration.FromSeconds(1), Ambient));
    }

    [Fact]
    public void Icea_OutOfRange_IsRefused()
    {
        Duration second = Duration.FromSeconds(1);
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => IceaShortCircuit.CopperCurrent(Area, second, Ambient, Ambient));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => IceaShortCircuit.AluminiumCurrent(Area, second, Ambient, Temperature.FromDegreesCelsius(658)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => IceaShortCircuit.CopperCurrent(Area, Duration.FromSeconds(6), Ambient, Temperature.FromDegreesCelsius(160)));
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => IceaShortCircuit.CopperCurrent(Area, second, Temperature.FromDegreesCelsius(-101), Ambient));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => IceaShortCircuit.CopperCurrent(Area.Zero, second, Ambient, Temperature.FromDegreesCelsius(160)));
    }

    [Fact]
    public void NonAdiabaticFactor_OfThinWires_MatchesTheWorkedValues()
    {
        // Worked from the published X and Y: 1.5 mm², 1 s, PVC copper: 1.13; 0.5 mm², 5 s: 1.59; t/S = 0.1: PVC 1.048, XLPE 1.068.
        NonAdiabaticCoefficients pvc = NonAdiabaticInsulation.PolyvinylChloride.Copper, xlpe = NonAdiabaticInsulation.CrossLinkedPolyethylene.Copper;
        Assert.Equal(1.13, NonAdiabaticFactor.Simplified(pvc, Area.FromSquareMillimeters(1.5), Duration.FromSeconds(1)), 2);
        Assert.Equal(1.59, NonAdiabaticFactor.Simplified(pvc, Area.FromSquareMillimeters(0.5), Duration.FromSeconds(5)), 2);
        Assert.Equal(1.048, NonAdiabaticFactor.Simplified(pvc, Area.FromSquareMillimeters(10), Duration.FromSeconds(1)), 3);
        Assert.Equal(1.068, NonAdiabaticFactor.Simplified(xlpe, Area.FromSquareMillimeters(10), Duration.FromSeconds(1)), 3);
        Assert.True(NonAdiabaticFactor.IsNegligible(Area.FromSquareMillimeters(10), Duration.FromSeconds(0.99)));
        Assert.False(NonAdiabaticFactor.IsNegligible(Area.FromSquareMillimeters(10), Duration.FromSeconds(1)));
    }

    [Fact]
    public void NonAdiabaticFactor_BadInput_IsRefused()
    {
        NonAdiabaticInsulation pvc = NonAdiabaticInsulation.PolyvinylChloride;
        Assert.Throws<ArgumentNullException>("material", () => NonAdiabaticFactor.General(null!, pvc, Area, Duration.FromSeconds(1)));
        Assert.Throws<ArgumentNullException>("insulation", () => NonAdiabaticFactor.General(ConductorMaterial.Copper, null!, Area, Duration.FromSeconds(1)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => NonAdiabaticFactor.Simplified(pvc.Copper, Area, Duration.FromSeconds(5.1)));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => NonAdiabaticFactor.Simplified(pvc.Copper, Area.Zero, Duration.FromSeconds(1)));
        Assert.Equal(1, NonAdiabaticFactor.Simplified(default, Area, Duration.FromSeconds(1)));
        Assert.True(pvc.Copper == pvc.Copper && pvc.Copper != pvc.Aluminium && pvc.Copper.Equals((object)pvc.Copper));
        Assert.Equal(pvc.Copper.GetHashCode(), pvc.Copper.GetHashCode());
        Assert.Equal("PVC, cables up to 3 kV", pvc.ToString());
        Assert.Equal(1.7e6, pvc.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin);
        Assert.Equal(ReferenceKind.FromMemory, pvc.Reference.Kind);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1e-10, 1.00000000005e-10)]
    [InlineData(0.5, 0.64872127070012815)]
    [InlineData(-0.5, -0.39346934028736658)]
    [InlineData(3, 19.085536923187668)]
    [InlineData(-3, -0.95021293163213606)]
    public void Expm1_MatchesTabulatedValues(double x, double expected) =>
        Assert.InRange(ExpLog.Expm1(x) - expected, -2e-15 * Math.Abs(expected), 2e-15 * Math.Abs(expected));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1e-10, 9.9999999995e-11)]
    [InlineData(1, 0.69314718055994531)]
    [InlineData(-0.5, -0.69314718055994531)]
    public void Log1p_MatchesTabulatedValues(double x, double expected) =>
        Assert.InRange(ExpLog.Log1p(x) - expected, -2e-15 * Math.Abs(expected), 2e-15 * Math.Abs(expected));
}
