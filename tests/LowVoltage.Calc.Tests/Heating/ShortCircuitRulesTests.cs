using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class ShortCircuitRulesTests
{
    /// <summary>ICEA P-32-382: (I/A)²·t = 0.0297·log10((T2 + 234)/(T1 + 234)), A in circular mils (0.001 in across); aluminium 0.0125 and 228.</summary>
    [Theory]
    [InlineData(0.5, 75, 150)]
    [InlineData(3, 75, 150)]
    [InlineData(5, 20, 657)]
    public void IceaCurrent_IsTheFormula(double seconds, double from, double to)
    {
        Area square = Area.FromSquareMillimeters(10);
        double mils = 10 / (Math.PI / 4 * 0.0254 * 0.0254);
        double copper = mils * Math.Sqrt(0.0297 * Math.Log10((to + 234) / (from + 234)) / seconds);
        double aluminium = mils * Math.Sqrt(0.0125 * Math.Log10((to + 228) / (from + 228)) / seconds);
        Assert.Equal(copper, IceaShortCircuit.CopperCurrent(square, S(seconds), C(from), C(to)).Amperes, 1e-12 * copper);
        Assert.Equal(aluminium, IceaShortCircuit.AluminiumCurrent(square, S(seconds), C(from), C(to)).Amperes, 1e-12 * aluminium);
    }

    [Fact]
    public void IceaCurrent_UpToTheMeltingPoint_IsGiven()
    {
        Area square = Area.FromSquareMillimeters(10);
        Assert.True(IceaShortCircuit.CopperCurrent(square, S(1), C(75), C(1083)).Amperes > 0);
        Assert.True(IceaShortCircuit.AluminiumCurrent(square, S(1), C(75), C(657)).Amperes > 0);
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => IceaShortCircuit.AluminiumCurrent(square, S(1), C(75), C(657.001)));
    }

    [Fact]
    public void NonAdiabaticCoefficients_EqualWhenBothAre()
    {
        NonAdiabaticCoefficients one = new(0.41, 0.12), same = new(0.41, 0.12), otherX = new(0.57, 0.12), otherY = new(0.41, 0.16);
        Assert.True(one == same && one.Equals((object)same) && one.GetHashCode() == same.GetHashCode());
        Assert.True(one != otherX && one != otherY);
        Assert.False(one.Equals((object)0.41));
    }

    /// <summary>The current that just reaches the melting point gives it back, whatever the last digit says; a billionth more melts the wire.</summary>
    [Fact]
    public void FinalTemperature_OfTheCurrentToTheMeltingPoint_IsTheMeltingPoint()
    {
        ConductorMaterial copper = ConductorMaterial.Copper;
        for (double area = 0.1; area < 100; area *= 1.37)
        {
            Area square = Area.FromSquareMillimeters(area);
            ElectricCurrent current = AdiabaticHeating.CurrentFor(copper, square, S(0.7), C(20), C(1083));
            Assert.Equal(1083, AdiabaticHeating.FinalTemperature(copper, square, current, S(0.7), C(20)).DegreesCelsius, 1e-9);
            Assert.False(AdiabaticHeating.TryFinalTemperature(copper, square, A(current.Amperes * (1 + 1e-9)), S(0.7), C(20), out Temperature melting));
            Assert.Equal(1083.0, melting.DegreesCelsius, 1e-9);
        }
    }
}
