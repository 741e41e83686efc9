using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Air and atmosphere against textbook tables, convection against a textbook's worked example.</summary>
public class AirTextbookTests
{
    private static readonly Pressure SeaLevel = Pressure.FromPascals(101_325);

    [Fact]
    public void At_EveryRowOfTheTextbookTable_AgreesWithinTheStatedAccuracy()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("air-textbook.csv").Rows;
        Assert.Equal(14, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            // The table's densities are those of 1 bar.
            AirProperties air = AirProperties.At(Temperature.FromKelvins(row.Number("kelvin")), Pressure.FromBars(1));
            AssertRelative(row.Number("density"), air.Density.KilogramsPerCubicMeter, 0.003);
            AssertRelative(row.Number("cp") * 1000, air.SpecificHeatCapacity.JoulesPerKilogramKelvin, 0.005);
            AssertRelative(row.Number("mu") * 1e-7, air.DynamicViscosity.PascalSeconds, 0.025);
            AssertRelative(row.Number("nu") * 1e-6, air.KinematicViscosity.SquareMetersPerSecond, 0.025);
            AssertRelative(row.Number("k") * 1e-3, air.ThermalConductivity.WattsPerMeterKelvin, 0.015);
            AssertRelative(row.Number("prandtl"), air.PrandtlNumber, 0.04);
            AssertRelative(1 / row.Number("kelvin"), air.Expansion.PerKelvin, 1e-12);
        }
    }

    [Fact]
    public void PressureAt_EveryRowOfTheStandardAtmosphere_AgreesToThePrintedDigits()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("standard-atmosphere.csv").Rows)
        {
            double pascals = StandardAtmosphere.PressureAt(Length.FromMeters(row.Number("meters"))).Pascals;
            Assert.InRange(pascals, row.Number("pascals") - 1, row.Number("pascals") + 1);
        }
    }

    /// <summary>Heat Transfer, A Practical Approach (Çengel), example 9-1, from memory: Ra = 1.869e6, Pr = 0.7241: Nu = 17.40, h = 5.869 W/(m²·K), 443 W and 553 W from 6 m.</summary>
    [Fact]
    public void ChurchillChu_TextbookPipe_GivesThePrintedNusseltNumber()
    {
        double nusselt = NaturalConvection.ChurchillChu(1.869e6, 0.7241);
        Assert.InRange(nusselt, 17.395, 17.405);
        Assert.InRange(nusselt * 0.02699 / 0.08, 5.865, 5.875);
    }

    [Fact]
    public void Coefficient_TextbookPipe_AgreesThroughOurAir()
    {
        AirProperties film = AirProperties.At(Temperature.FromDegreesCelsius(45), SeaLevel);
        TemperatureDelta difference = TemperatureDelta.FromKelvins(50);
        Length diameter = Length.FromMeters(0.08);

        // The textbook's air has Pr = 0.724 and k = 0.02699 W/(m·K) where the table above has 0.704 and 0.0277.
        AssertRelative(1.869e6, NaturalConvection.RayleighNumber(film, difference, diameter), 0.04);
        AssertRelative(5.869, NaturalConvection.Coefficient(film, difference, diameter).WattsPerSquareMeterKelvin, 0.02);
    }

    /// <summary>The limit Nu = 0.36 as Ra vanishes is Churchill and Chu's own; Morgan's constants are exact at chosen points.</summary>
    [Fact]
    public void Correlations_AtTheirEnds_TakeTheirConstants()
    {
        Assert.Equal(0.36, NaturalConvection.ChurchillChu(0, 0.7), 12);
        Assert.Equal(0.675 * Math.Pow(1e-2, 0.058), NaturalConvection.Morgan(1e-2), 12);
        Assert.Equal(1.02, NaturalConvection.Morgan(1), 12);
        Assert.Equal(1.02 * Math.Pow(1e2, 0.148), NaturalConvection.Morgan(1e2), 12);
        Assert.Equal(0.850 * Math.Pow(1e4, 0.188), NaturalConvection.Morgan(1e4), 12);
        Assert.Equal(0.480 * Math.Pow(1e7, 0.250), NaturalConvection.Morgan(1e7), 10);
        Assert.Equal(0.125 * Math.Pow(1e12, 0.333), NaturalConvection.Morgan(1e12), 8);
    }

    /// <summary>
    /// Two correlations of one thing, each with data of its own: Churchill and Chu lies below Morgan where wires live, by up to a fifth, which
    /// is the safe side. The doc states it.
    /// </summary>
    [Theory]
    [InlineData(1e-1)]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(1e2)]
    [InlineData(1e3)]
    [InlineData(1e4)]
    public void ChurchillChu_WhereWiresLive_LiesBelowMorganByAFifthAtMost(double rayleigh) =>
        Assert.InRange(NaturalConvection.ChurchillChu(rayleigh, 0.7) / NaturalConvection.Morgan(rayleigh), 0.79, 1.0);

    private static void AssertRelative(double expected, double actual, double fraction) =>
        Assert.InRange(actual, expected * (1 - fraction), expected * (1 + fraction));
}
