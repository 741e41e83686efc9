using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Questions to the balance that are answered without a search, against the search; the powers of Churchill and Chu as a series, against the powers.</summary>
public class HoldsAtLeastTests
{
    [Theory]
    [InlineData(0.5, 20)]
    [InlineData(4, 40)]
    [InlineData(120, 60)]
    public void HoldsAtLeast_AroundTheCurrentThatHoldsIt_TellsTheTwoSidesApart(double squareMillimeters, double ambient)
    {
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(squareMillimeters)), InsulationMaterial.CrossLinkedPolyethylene);
        HeatBalanceKernel balance = HeatBalanceKernel.For(wire, new Surroundings { Ambient = Temperature.FromDegreesCelsius(ambient) });
        for (double celsius = ambient + 5; celsius < 150; celsius += 7)
        {
            double amperes = balance.AmperesFor(celsius);
            Assert.True(balance.HoldsAtLeast(amperes * (1 + 1e-9), celsius));
            Assert.False(balance.HoldsAtLeast(amperes * (1 - 1e-9), celsius));
        }

        Assert.True(balance.HoldsAtLeast(0, ambient));
    }

    [Fact]
    public void TrySteady_AnyCurrent_AgreesWithTheConductorFromItsLoss()
    {
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(2.5)), InsulationMaterial.PolyvinylChloride);
        HeatBalanceKernel balance = HeatBalanceKernel.For(wire, new Surroundings { Ambient = Temperature.FromDegreesCelsius(30) });
        for (double amperes = 0; amperes < 120; amperes += 3)
        {
            Assert.True(HeatBalance.TrySteady(balance, amperes, out double surface, out double conductor));
            Assert.Equal(balance.ConductorAt(surface), conductor, 1e-9 * conductor);
        }
    }

    [Fact]
    public void SixthRootTerm_NearAirAndBeyond_IsTheFormulaWithItsPowers()
    {
        for (double prandtl = 0.6; prandtl < 0.85; prandtl += 0.0037)
        {
            double z = Math.Pow(0.559 / prandtl, 9 / 16.0), expected = 0.387 * Math.Pow(1000, 1 / 6.0) / Math.Pow(1 + z, 8 / 27.0);
            Assert.Equal(expected, NaturalConvection.SixthRootTerm(1000, prandtl, out double slope), 1e-12);
            Assert.Equal(z / (6 * (1 + z)), slope, 1e-12);
        }
    }
}
