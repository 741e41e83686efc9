using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

public class AmpacityTableTests
{
    public static TheoryData<string> Names => [.. All.Select(table => table.Name)];

    private static AmpacityTable[] All =>
    [
        Cfr33Part183Table5.Table, FaaAc43Table11Dash9.Table, NasaEeeInst002.SingleWire, NasaEeeInst002.BundledWire, NecTable310Dash16.Table, NecTable310Dash17.Table,
        Iec60364MethodC.Table, Iec60364MethodF.Table, RoadVehicleSingleCore.Ambient30, RoadVehicleSingleCore.Ambient50,
        FaaFreeAir.Ambient25, FaaFreeAir.Ambient50, FaaFreeAir.Ambient60,
    ];

    [Fact]
    public void Rating_BetweenTwoColumns_UsesTheLowerAndSaysSo()
    {
        TableRating rating = Cfr33Part183Table5.Table.Rating(Awg(14), C(100));
        Assert.Equal(30, rating.Current.Amperes);
        Assert.Equal(90, rating.Column.DegreesCelsius);
        Assert.Equal(100, rating.InsulationRating.DegreesCelsius);
        Assert.True(rating.FromLowerColumn);
        Assert.Contains("next lower column for insulation of 100 °C", rating.ToString(), StringComparison.Ordinal);
        Assert.Contains("The 90 °C column is used", Assert.Single(DeratedAmpacity.From(rating).Remarks), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(59.9)]
    [InlineData(200.1)]
    public void Rating_InsulationOutsideTheColumns_IsRefused(double insulation)
    {
        Assert.False(Cfr33Part183Table5.Table.TryRating(Awg(14), C(insulation), out TableRating? rating));
        Assert.Null(rating);
        OutsidePublishedRangeException exception = Assert.Throws<OutsidePublishedRangeException>(() => Cfr33Part183Table5.Table.Rating(Awg(14), C(insulation)));
        Assert.Equal("size", exception.ParamName);
        Assert.Contains("14 AWG at " + insulation.ToString(System.Globalization.CultureInfo.InvariantCulture), exception.Message, StringComparison.Ordinal);
        Assert.Contains("60, 75, 80, 90, 105, 125, 200 °C", exception.Covers, StringComparison.Ordinal);
        Assert.Contains("18 AWG", exception.Covers, StringComparison.Ordinal);
        Assert.Contains("4/0 AWG", exception.Covers, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(5)]
    public void Rating_SizeWithoutARow_IsRefused(int number)
    {
        Assert.False(Cfr33Part183Table5.Table.TryRating(Awg(number), C(75), out _));
        Assert.Throws<OutsidePublishedRangeException>(() => Cfr33Part183Table5.Table.Rating(Awg(number), C(75)));
    }

    [Theory]
    [InlineData(0.75)]
    [InlineData(3)]
    [InlineData(150)]
    public void Rating_MetricSizeWithoutARow_IsRefused(double size)
    {
        Assert.False(RoadVehicleSingleCore.Ambient30.TryRating(Mm2(size), C(70), out _));
        OutsidePublishedRangeException exception = Assert.Throws<OutsidePublishedRangeException>(() => RoadVehicleSingleCore.Ambient30.Rating(Mm2(size), C(70)));
        Assert.Contains("1 mm², 1.5 mm²", exception.Covers, StringComparison.Ordinal);
    }

    [Fact]
    public void Rating_OfAnotherSizeSystem_IsRefusedEvenWhereTheNumberIsARow()
    {
        Assert.False(Cfr33Part183Table5.Table.TryRating(Mm2(10), C(75), out _));
        Assert.False(RoadVehicleSingleCore.Ambient30.TryRating(Awg(10), C(70), out _));
        Assert.False(Cfr33Part183Table5.Table.TryAmperes(SizeSystem.VehicleGauge, 10, 75, out _, out _));
        Assert.True(FaaAc43Table11Dash9.Table.TryAmperes(SizeSystem.AircraftWire, 10, 105, out double amperes, out double column));
        Assert.Equal((17, 105), (amperes, column));
        Assert.True(Iec60364MethodC.Table.Accepts(SizeSystem.Iec60228));
        Assert.False(Iec60364MethodC.Table.Accepts(SizeSystem.Kcmil));
    }

    // 20 AWG has 1022 circular mils, aircraft size 20 has 1216: the same number is not the same copper.
    [Fact]
    public void Rating_AwgSizeInATableOfAircraftWire_IsRefused()
    {
        AmpacityTable[] aircraft = [FaaAc43Table11Dash9.Table, FaaFreeAir.Ambient25, FaaFreeAir.Ambient50, FaaFreeAir.Ambient60];
        foreach (AmpacityTable table in aircraft)
        {
            foreach (double number in table.SizeKeys.ToArray())
            {
                Assert.False(table.TryRating(Awg((int)number), C(200), out _));
                Assert.True(table.TryRating(Aircraft((int)number), C(200), out _));
            }

            string said = Assert.Throws<OutsidePublishedRangeException>(() => table.Rating(Awg(12), C(200))).Message;
            Assert.Contains("12 AWG", said, StringComparison.Ordinal);
            Assert.Contains(" aircraft", said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rating_NoSize_IsRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Cfr33Part183Table5.Table.TryRating(default, C(75), out _));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Cfr33Part183Table5.Table.Rating(default, C(75)));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => FaaAc43Table11Dash3.TryFuse(default, out _));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => RoadVehicleCurrentDensity.TryCurrent(default, out _));
    }

    [Fact]
    public void Rating_BlankCell_IsRefusedAndTheTableSaysItHasSome()
    {
        Assert.False(NecTable310Dash16.Table.TryRating(Awg(18), C(75), out _));
        Assert.True(NecTable310Dash16.Table.TryRating(Awg(18), C(90), out _));
        Assert.EndsWith("(some cells are blank)", NecTable310Dash16.Table.Covers, StringComparison.Ordinal);
        Assert.DoesNotContain("blank", Cfr33Part183Table5.Table.Covers, StringComparison.Ordinal);
    }

    [Fact]
    public void Rating_TemperatureThatNoInsulationHas_IsBadInput() =>
        Assert.Throws<ArgumentOutOfRangeException>("insulationRating", () => Cfr33Part183Table5.Table.TryRating(Awg(14), C(-300), out _));

    [Theory]
    [InlineData(59, false, 0)]
    [InlineData(60, true, 60)]
    [InlineData(89, true, 80)]
    [InlineData(250, true, 200)]
    public void TryColumnAtMost_FindsTheHighestSafeColumn(double insulation, bool found, double expected)
    {
        Assert.Equal(found, Cfr33Part183Table5.Table.TryColumnAtMost(C(insulation), out Temperature column));
        Assert.Equal(found ? expected : default(Temperature).DegreesCelsius, column.DegreesCelsius);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryTable_GrowsWithTheSizeAndWithTheInsulationRating(string name)
    {
        AmpacityTable table = Array.Find(All, t => t.Name == name)!;
        Assert.Equal(name, table.ToString());
        Assert.NotEmpty(table.Conditions);
        Assert.NotEmpty(table.Reference.Title);
        Assert.NotEmpty(table.Notes);
        Assert.Equal(table.Columns.Length, table.InsulationRatings.Count);
        SizeSystem system = Array.Find([SizeSystem.AmericanWireGauge, SizeSystem.AircraftWire, SizeSystem.Iec60228], table.Accepts);
        double[] keys = table.SizeKeys.ToArray(), columns = table.Columns.ToArray();
        for (int row = 0; row < keys.Length; row++)
        {
            double before = 0;
            foreach (double column in columns)
            {
                if (table.TryAmperes(system, keys[row], column, out double here, out _))
                {
                    Assert.True(here >= before, $"{name}: {keys[row]} at {column} °C");
                    before = here;
                    bool smaller = row > 0 && table.TryAmperes(system, keys[row - 1], column, out double less, out _) && less > here;
                    Assert.False(smaller, $"{name}: {keys[row]} carries less than {keys[Math.Max(0, row - 1)]}");
                }
            }
        }
    }

    [Theory]
    [InlineData(140, 60)]
    [InlineData(167, 75)]
    [InlineData(194, 90)]
    [InlineData(221, 105)]
    [InlineData(257, 125)]
    [InlineData(392, 200)]
    public void Rating_InsulationInFahrenheitOrKelvin_FindsTheSameColumn(double fahrenheit, double celsius)
    {
        Assert.Equal(celsius, Cfr33Part183Table5.Table.Rating(Awg(14), Temperature.FromDegreesFahrenheit(fahrenheit)).Column.DegreesCelsius);
        Assert.Equal(celsius, Cfr33Part183Table5.Table.Rating(Awg(14), Temperature.FromKelvins(celsius + 273.15)).Column.DegreesCelsius);
        Assert.False(Cfr33Part183Table5.Table.Rating(Awg(14), Temperature.FromDegreesFahrenheit(fahrenheit)).FromLowerColumn);
    }

    [Fact]
    public void TryAmperes_AllocatesNothing()
    {
        AmpacityTable table = Cfr33Part183Table5.Table;
        double sum = 0;
        for (int i = 0; i < 100; i++)
        {
            _ = table.TryAmperes(SizeSystem.AmericanWireGauge, 14, 105, out double warm, out _);
            sum += warm;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            _ = table.TryAmperes(SizeSystem.AmericanWireGauge, 14, 105, out double current, out _);
            sum += current;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(1100 * 35, sum);
    }

    [Fact]
    public void ProtectorsAndDensity_OutsideTheTable_AreRefused()
    {
        Assert.Equal("size", Assert.Throws<OutsidePublishedRangeException>(() => FaaAc43Table11Dash3.Breaker(Aircraft(1))).ParamName);
        Assert.Throws<OutsidePublishedRangeException>(() => FaaAc43Table11Dash3.Fuse(Aircraft(24)));
        Assert.Throws<OutsidePublishedRangeException>(() => FaaAc43Table11Dash3.Fuse(Aircraft(-1)));
        Assert.Equal(7.5, FaaAc43Table11Dash3.Breaker(Aircraft(20)).Amperes);
        Assert.False(RoadVehicleCurrentDensity.TryCurrent(Mm2(120), out ElectricCurrent none));
        Assert.Equal(0, none.Amperes);
        Assert.Contains("95 mm²", Assert.Throws<OutsidePublishedRangeException>(() => RoadVehicleCurrentDensity.Current(Mm2(0.75))).Covers, StringComparison.Ordinal);
        Assert.Equal(36, RoadVehicleCurrentDensity.Current(Mm2(6)).Amperes);
    }

    [Fact]
    public void Exceptions_HaveTheUsualConstructors()
    {
        Exception cause = new InvalidOperationException();
        Assert.Equal("", new OutsidePublishedRangeException().Covers);
        Assert.Equal("text", new OutsidePublishedRangeException("text").Message);
        Assert.Same(cause, new OutsidePublishedRangeException("text", cause).InnerException);
        Assert.Equal("text", new FactorRefusedException("text").Message);
        Assert.Same(cause, new FactorRefusedException("text", cause).InnerException);
        Assert.Equal(FactorRefusal.OtherRuleSet, new FactorRefusedException().Reason);
    }
}
