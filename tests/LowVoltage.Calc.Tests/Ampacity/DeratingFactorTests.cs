using FsCheck.Xunit;
using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

public class DeratingFactorTests
{
    [Theory]
    [InlineData(59)]
    [InlineData(201)]
    public void Cfr33EngineSpace_OutsideItsRatings_IsRefused(double insulation)
    {
        Assert.False(Cfr33Part183EngineSpace.TryFactor(C(insulation), out DeratingFactor? factor));
        Assert.Null(factor);
        Assert.Equal("insulationRating", Assert.Throws<OutsidePublishedRangeException>(() => Cfr33Part183EngineSpace.Factor(C(insulation))).ParamName);
    }

    [Fact]
    public void Cfr33EngineSpace_BetweenRatings_UsesTheLower()
    {
        DeratingFactor factor = Cfr33Part183EngineSpace.Factor(C(104));
        Assert.Equal(0.82, factor.Value);
        Assert.Equal(90, factor.InsulationRating!.Value.DegreesCelsius);
        Assert.Equal(30, factor.BaseAmbient!.Value.DegreesCelsius);
        Assert.Equal(50, Cfr33Part183EngineSpace.Ambient.DegreesCelsius);
    }

    [Theory]
    [InlineData(3, 50, true)]
    [InlineData(3, 49.9, false)]
    [InlineData(2, 60, false)]
    public void Cfr33ConductorCount_LawAsksForItFromThreeConductorsAt50VoltsOn(int conductors, double volts, bool required)
    {
        Assert.Equal(required, Cfr33Part183ConductorCount.IsRequired(conductors, V(volts)));
        Assert.Equal(required || conductors < 3, Cfr33Part183ConductorCount.Factor(conductors, V(volts)).IsRequired);
    }

    [Fact]
    public void Counts_BelowOne_AreBadInput()
    {
        Assert.Throws<ArgumentOutOfRangeException>("conductors", () => Cfr33Part183ConductorCount.Factor(0, V(12)));
        Assert.Throws<ArgumentOutOfRangeException>("circuitVoltage", () => Cfr33Part183ConductorCount.Factor(3, V(0)));
        Assert.Throws<ArgumentOutOfRangeException>("conductors", () => NecConductorCount.Factor(-1));
        Assert.Throws<ArgumentOutOfRangeException>("wires", () => NasaBundle.Factor(0));
        Assert.Throws<ArgumentOutOfRangeException>("wires", () => FaaBundle.TryFactor(0, Percent(20), out _));
        Assert.Throws<ArgumentOutOfRangeException>("circuits", () => Iec60364Grouping.TryFactor(0, Iec60364Arrangement.Bunched, out _));
        Assert.Throws<ArgumentOutOfRangeException>("arrangement", () => Iec60364Grouping.TryFactor(2, (Iec60364Arrangement)2, out _));
    }

    [Fact]
    public void NecAmbient_BelowTenDegrees_CountsAsTheRowTenOrLess()
    {
        DeratingFactor cold = NecAmbient.Factor(C(-20), C(60));
        Assert.Equal(Math.Sqrt(50 / 30.0), cold.Value, 12); // printed 1.29
        Assert.EndsWith("counted as 10 °C", cold.Condition, StringComparison.Ordinal);
        Assert.DoesNotContain("counted", NecAmbient.Factor(C(10), C(60)).Condition, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 60, 30)]
    [InlineData(30, 40, 40)]
    [InlineData(0, 10, 5)]
    public void NecAmbient_NotBelowTheConductor_IsRefused(double ambient, double conductor, double baseAmbient)
    {
        Assert.False(NecAmbient.TryFactor(C(ambient), C(conductor), C(baseAmbient), out DeratingFactor? factor));
        Assert.Null(factor);
        Assert.Equal("ambient", Assert.Throws<OutsidePublishedRangeException>(() => NecAmbient.Factor(C(ambient), C(conductor), C(baseAmbient))).ParamName);
    }

    [Fact]
    public void Iec60364Ambient_BetweenRowsAndColumns_UsesTheSaferNeighbour()
    {
        DeratingFactor factor = Iec60364Ambient.Factor(C(41), C(85));
        Assert.Equal(0.79, factor.Value);
        Assert.Equal(70, factor.InsulationRating!.Value.DegreesCelsius);
        Assert.Equal("ambient 41 °C, row 45 °C, insulation of 70 °C", factor.Condition);
    }

    [Theory]
    [InlineData(9.9, 70)]
    [InlineData(60.1, 70)]
    [InlineData(80.1, 90)]
    [InlineData(30, 69)]
    [InlineData(30, 91)]
    public void Iec60364Ambient_OutsideTheTable_IsRefused(double ambient, double insulation)
    {
        Assert.False(Iec60364Ambient.TryFactor(C(ambient), C(insulation), out DeratingFactor? factor));
        Assert.Null(factor);
        Assert.Equal("ambient", Assert.Throws<OutsidePublishedRangeException>(() => Iec60364Ambient.Factor(C(ambient), C(insulation))).ParamName);
    }

    [Theory]
    [InlineData(50, 10)]
    [InlineData(95, 35)]
    [InlineData(104, 40)]
    [InlineData(113, 45)]
    [InlineData(140, 60)]
    public void AmbientFactors_InFahrenheit_FindTheSameRow(double fahrenheit, double celsius)
    {
        Temperature insulation = Temperature.FromDegreesFahrenheit(158); // 70 °C
        Assert.Equal(Iec60364Ambient.Factor(C(celsius), C(70)).Value, Iec60364Ambient.Factor(Temperature.FromDegreesFahrenheit(fahrenheit), insulation).Value);
        Assert.Equal(NecAmbient.Factor(C(celsius), C(70)).Value, NecAmbient.Factor(Temperature.FromDegreesFahrenheit(fahrenheit), insulation).Value);
    }

    [Fact]
    public void FaaFactors_InOtherUnits_FindTheSamePoint()
    {
        Assert.Equal(0.52, FaaBundle.Factor(35, Ratio.FromDecimalFractions(0.1 + 0.1)).Value);
        Assert.Equal(0.52, FaaBundle.Factor(35, Ratio.FromPercent(20.00000000001)).Value);
        Assert.Equal(0.79, FaaAltitude.Factor(Length.FromMeters(18_288)).Value, 12);
    }

    [Theory]
    [InlineData(10, Iec60364Arrangement.Bunched, 0.45)]
    [InlineData(13, Iec60364Arrangement.Bunched, 0.41)]
    [InlineData(17, Iec60364Arrangement.Bunched, 0.38)]
    public void Iec60364Grouping_BetweenCounts_UsesTheLarger(int circuits, Iec60364Arrangement arrangement, double expected)
    {
        DeratingFactor factor = Iec60364Grouping.Factor(circuits, arrangement);
        Assert.Equal(expected, factor.Value);
        Assert.Contains(", row ", factor.Condition, StringComparison.Ordinal);
        Assert.Contains("not single wires", factor.BundleMeaning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(21, Iec60364Arrangement.Bunched)]
    [InlineData(10, Iec60364Arrangement.SingleLayerOnSurface)]
    public void Iec60364Grouping_BeyondTheTable_IsRefused(int circuits, Iec60364Arrangement arrangement)
    {
        Assert.False(Iec60364Grouping.TryFactor(circuits, arrangement, out _));
        Assert.Throws<OutsidePublishedRangeException>(() => Iec60364Grouping.Factor(circuits, arrangement));
    }

    [Fact]
    public void FaaBundle_BetweenLoadings_IsLinear()
    {
        Assert.Equal((0.795 + 0.6675) / 2, FaaBundle.Factor(8, Percent(30)).Value, 12);
        Assert.Equal((0.25 * 0.465) + (0.75 * 0.43), FaaBundle.Factor(12, Percent(95)).Value, 12);
    }

    [Theory]
    [InlineData(21)]
    [InlineData(34)]
    public void FaaBundle_BetweenTheStatedPointsAbove20Wires_UsesTheLargerBundle(int wires)
    {
        DeratingFactor factor = FaaBundle.Factor(wires, Percent(20));
        Assert.Equal(0.52, factor.Value);
        Assert.Contains("point for 35 wires", factor.Condition, StringComparison.Ordinal);
        Assert.DoesNotContain("point", FaaBundle.Factor(35, Percent(20)).Condition, StringComparison.Ordinal);
        Assert.DoesNotContain("point", FaaBundle.Factor(20, Percent(20)).Condition, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, 19.9)]
    [InlineData(20, 21)]
    [InlineData(35, 40)]
    [InlineData(36, 20)]
    public void FaaBundle_WhereTheCurvesHaveNoPoint_IsRefused(int wires, double percent)
    {
        Assert.False(FaaBundle.TryFactor(wires, Percent(percent), out DeratingFactor? factor));
        Assert.Null(factor);
        Assert.Equal("wires", Assert.Throws<OutsidePublishedRangeException>(() => FaaBundle.Factor(wires, Percent(percent))).ParamName);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(100.1)]
    public void FaaBundle_ImpossibleLoading_IsBadInput(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>("loading", () => FaaBundle.TryFactor(5, Percent(percent), out _));

    [Fact]
    public void FaaAltitude_BetweenPoints_IsLinearInMetresToo()
    {
        Assert.Equal(0.955, FaaAltitude.Factor(Feet(10_000)).Value, 12);
        Assert.Equal(0.825, FaaAltitude.Factor(Length.FromMeters(47_500 * 0.3048)).Value, 12);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(60_001)]
    public void FaaAltitude_OutsideThePoints_IsRefused(double feet)
    {
        Assert.False(FaaAltitude.TryFactor(Feet(feet), out DeratingFactor? factor));
        Assert.Null(factor);
        Assert.Equal("altitude", Assert.Throws<OutsidePublishedRangeException>(() => FaaAltitude.Factor(Feet(feet))).ParamName);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(8, 0.75)] // (29 − 8)/28
    [InlineData(15, 0.5)]
    [InlineData(16, 0.5)]
    [InlineData(1000, 0.5)]
    public void NasaBundle_FollowsItsFormula(int wires, double expected) => Assert.Equal(expected, NasaBundle.Factor(wires).Value);

    [Fact]
    public void NasaInsulation_BetweenAndOutsideRatings_IsTheLowerOrRefused()
    {
        Assert.Equal(0.80, NasaInsulation.Factor(C(180)).Value);
        Assert.Contains("row 150 °C", NasaInsulation.Factor(C(180)).Condition, StringComparison.Ordinal);
        Assert.Equal(1, NasaInsulation.Factor(C(200)).Value);
        Assert.Throws<OutsidePublishedRangeException>(() => NasaInsulation.Factor(C(134)));
        Assert.Throws<OutsidePublishedRangeException>(() => NasaInsulation.Factor(C(261)));
    }

    [Theory]
    [InlineData(29, 30)]
    [InlineData(70, 30)]
    [InlineData(45, 50)]
    [InlineData(50, 40)]
    public void RoadVehicleAmbient_OutsideItsRange_IsRefused(double ambient, double baseAmbient)
    {
        Assert.False(RoadVehicleAmbient.TryFactor(C(ambient), C(baseAmbient), out _));
        Assert.Throws<OutsidePublishedRangeException>(() => RoadVehicleAmbient.Factor(C(ambient), C(baseAmbient)));
    }

    [Property]
    public void AmbientFactors_HotterAmbient_NeverRaises(int first, int second)
    {
        double a = 10 + (Math.Abs(first % 700) / 10.0), b = 10 + (Math.Abs(second % 700) / 10.0);
        double cooler = Math.Min(a, b), hotter = Math.Max(a, b);
        Assert.True(NecAmbient.Factor(C(hotter), C(90)).Value <= NecAmbient.Factor(C(cooler), C(90)).Value);
        Assert.True(Iec60364Ambient.Factor(C(hotter), C(90)).Value <= Iec60364Ambient.Factor(C(cooler), C(90)).Value);

        // The next hotter row is never above the equation by more than the rounding of the table.
        Assert.True(Iec60364Ambient.Factor(C(a), C(90)).Value <= NecAmbient.Factor(C(a), C(90)).Value + 0.005);
    }

    [Fact]
    public void Factors_SayWhatTheyAreInOneLine()
    {
        DeratingFactor count = NecConductorCount.Factor(4);
        Assert.StartsWith("0.8 for number of conductors (4 current-carrying conductors): NFPA 70", count.ToString(), StringComparison.Ordinal);
        Assert.Null(count.BaseAmbient);
        Assert.Null(count.InsulationRating);
        Assert.True(NecAmbient.TryFactor(C(40), C(75), out DeratingFactor? ambient));
        Assert.Contains("ambient temperature", ambient.ToString(), StringComparison.Ordinal);
        Assert.Contains("grouping of circuits", Iec60364Grouping.Factor(2, Iec60364Arrangement.Bunched).ToString(), StringComparison.Ordinal);
        Assert.Contains("bundle and its loading", FaaBundle.Factor(2, Percent(20)).ToString(), StringComparison.Ordinal);
        Assert.Contains("altitude", FaaAltitude.Factor(Feet(0)).ToString(), StringComparison.Ordinal);
        Assert.Contains("insulation rating", NasaInsulation.Factor(C(150)).ToString(), StringComparison.Ordinal);
    }

    [Property]
    public void AmbientFactor_BetterInsulation_NeverLowersInTheHeat(int ambient, int first, int second)
    {
        double air = 30 + Math.Abs(ambient % 29), a = 60 + Math.Abs(first % 140), b = 60 + Math.Abs(second % 140);
        Assert.True(NecAmbient.Factor(C(air), C(Math.Max(a, b))).Value >= NecAmbient.Factor(C(air), C(Math.Min(a, b))).Value);
    }

    [Property]
    public void CountFactors_MoreConductors_NeverRaise(int first, int second)
    {
        int a = 1 + Math.Abs(first % 60), b = 1 + Math.Abs(second % 60);
        int few = Math.Min(a, b), many = Math.Max(a, b);
        Assert.True(Cfr33Part183ConductorCount.Value(many) <= Cfr33Part183ConductorCount.Value(few));
        Assert.True(NecConductorCount.Value(many) <= NecConductorCount.Value(few));
        Assert.True(NasaBundle.Value(many) <= NasaBundle.Value(few));
        if (Iec60364Grouping.TryFactor(many, Iec60364Arrangement.Bunched, out DeratingFactor? more))
        {
            Assert.True(more.Value <= Iec60364Grouping.Factor(few, Iec60364Arrangement.Bunched).Value);
        }
    }

    [Property]
    public void FaaFactors_MoreWiresLoadingOrAltitude_NeverRaise(int wires, int loading, int altitude, int step)
    {
        int count = 1 + Math.Abs(wires % 18);
        double percent = 20 + (Math.Abs(loading % 790) / 10.0), feet = Math.Abs(altitude % 59_000), more = Math.Abs(step % 10) / 10.0;
        double here = FaaBundle.Factor(count, Percent(percent)).Value;
        Assert.InRange(here, 0.3425, 1);
        Assert.True(FaaBundle.Factor(count + 1, Percent(percent)).Value <= here + 1e-12);
        Assert.True(FaaBundle.Factor(count, Percent(percent + more)).Value <= here + 1e-12);
        Assert.True(FaaAltitude.Factor(Feet(feet + (1000 * more))).Value <= FaaAltitude.Factor(Feet(feet)).Value + 1e-12);
    }
}
