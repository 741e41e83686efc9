using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

[Properties(Arbitrary = [typeof(HeatCases)], MaxTest = 300)]
public class HeatBalanceInversesTests
{
    /// <summary>A given coefficient, the temperature that it leads to, and back.</summary>
    [Property]
    public bool CoefficientFrom_ATemperatureThatItLedTo_IsTheCoefficient(HeatCase x, byte which)
    {
        double coefficient = 1 + (4 * which), limit = x.Ambient + Math.Max(1, x.Rise);
        Surroundings given = Given(x.Ambient, coefficient);
        ElectricCurrent current = HeatBalance.CurrentFor(x.Wire, given, C(limit));
        double back = HeatBalance.CoefficientFrom(x.Wire, given.Ambient, current, C(limit)).WattsPerSquareMeterKelvin;
        return Math.Abs((back / coefficient) - 1) < 1e-6;
    }

    /// <summary>
    /// By hand: bare copper of 2 mm, 30 A, 20 °C around it, settled at 70 °C. R′ = (1/58e6)/(π/4·4e-6)·(1 + 0.00393·50) = 6.5665e-3 Ω/m, q′ = 900·R′ = 5.9099 W/m,
    /// h = 5.9099/(π·0.002·50) = 18.812 W/(m²·K).
    /// </summary>
    [Fact]
    public void CoefficientFrom_ByHand()
    {
        double h = HeatBalance.CoefficientFrom(Solid(2, 0), C(20), A(30), C(70)).WattsPerSquareMeterKelvin;
        Assert.InRange(h, 18.807, 18.817);
    }

    [Fact]
    public void CoefficientFrom_ColderThanAnyCoefficientAllows_IsRefused()
    {
        Wire wire = Solid(1.628, 0.6);
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.CoefficientFrom(wire, C(20), A(10), C(20)));
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.CoefficientFrom(wire, C(20), A(10), C(20.3)));
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.CoefficientFrom(Solid(2, 0), C(20), A(30), C(20.0001)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => HeatBalance.CoefficientFrom(wire, C(20), A(0), C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("ambient", () => HeatBalance.CoefficientFrom(wire, C(301), A(1), C(400)));
        Assert.Throws<ArgumentNullException>("wire", () => HeatBalance.CoefficientFrom(null!, C(20), A(1), C(70)));
    }

    /// <summary>Under a given coefficient the diameter has a closed form: d³ = 4·I²·ρ/(π²·h·Δθ).</summary>
    [Theory]
    [InlineData(10, 1)]
    [InlineData(40, 25)]
    [InlineData(300, 400)]
    public void SolidDiameterFor_GivenCoefficient_IsTheClosedForm(double coefficient, double amperes)
    {
        double rho = 1e-6 / 58 * (1 + (0.00393 * 70));
        double expected = Math.Pow(4 * amperes * amperes * rho / (Math.PI * Math.PI * coefficient * 60), 1 / 3.0);
        double found = HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, Given(30, coefficient), A(amperes), C(90)).Meters;
        Assert.Equal(1, found / expected, 9);
    }

    [Property]
    public bool SolidDiameterFor_InAir_CarriesTheCurrent(HeatCase x)
    {
        Wire bare = Solid(Math.Max(0.05, x.Diameter), 0);
        ElectricCurrent current = HeatBalance.CurrentFor(bare, x.Air, x.Limit);
        double found = HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, x.Air, current, x.Limit).Millimeters;
        return Math.Abs((found / bare.OuterDiameter.Millimeters) - 1) < 1e-6;
    }

    [Fact]
    public void SolidDiameterFor_BeyondItsRange_SaysWhatTheEndsCarry()
    {
        Surroundings air = Air(30);
        Assert.Throws<ArgumentNullException>("material", () => HeatBalance.SolidDiameterFor(null!, air, A(1), C(90)));
        Assert.Throws<ArgumentNullException>("surroundings", () => HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, null!, A(1), C(90)));
        Assert.Contains("0.01 mm and 100 mm", Assert.Throws<ArgumentOutOfRangeException>("current", () => HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, air, A(1e5), C(90))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("current", () => HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, air, A(1e-4), C(90)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, air, A(1), C(30)));
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.SolidDiameterFor(ConductorMaterial.Copper, air, A(1), C(1400)));
    }
}
