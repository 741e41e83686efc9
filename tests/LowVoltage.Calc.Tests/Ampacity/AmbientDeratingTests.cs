using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>Factors for warm air that the caller states: which row counts, and which rows are refused.</summary>
public class AmbientDeratingTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet (invented)", Edition = "2026", Kind = ReferenceKind.Handbook };

    private static AmbientDerating Rows(double[] celsius, double[] factors) => AmbientDerating.Create("air factors", Sheet, [.. celsius.Select(C)], factors);

    private static string Refused<T>(string parameter, double[] celsius, double[] factors)
        where T : ArgumentException => Assert.Throws<T>(parameter, () => Rows(celsius, factors)).Message;

    [Theory]
    [InlineData(-40, 1, "ambient -40 °C, row 30 °C")]
    [InlineData(30, 1, "ambient 30 °C")]
    [InlineData(30.1, 0.91, "ambient 30.1 °C, row 40 °C")]
    [InlineData(40, 0.91, "ambient 40 °C")]
    [InlineData(45, 0.82, "ambient 45 °C, row 50 °C")]
    [InlineData(50, 0.82, "ambient 50 °C")]
    public void TryFactor_BetweenRows_TakesTheWarmerOne(double air, double expected, string condition)
    {
        Assert.True(Rows([30, 40, 50], [1, 0.91, 0.82]).TryFactor(C(air), out DeratingFactor? factor));
        Assert.Equal(expected, factor.Value);
        Assert.Equal(condition, factor.Condition);
        Assert.Equal((DeratingKind.Ambient, RuleSet.Caller, Sheet, 30.0), (factor.Kind, factor.RuleSet, factor.Reference, factor.BaseAmbient!.Value.DegreesCelsius));
    }

    // 122 °F comes out of kelvins a hair off 50 °C; it is the last row all the same.
    [Fact]
    public void TryFactor_AboveTheLastRow_IsNone()
    {
        AmbientDerating rows = Rows([30, 40, 50], [1, 0.91, 0.82]);
        Assert.False(rows.TryFactor(C(50.01), out DeratingFactor? none));
        Assert.Null(none);
        Assert.True(rows.TryFactor(Temperature.FromKelvins(Temperature.FromDegreesFahrenheit(122).Kelvins), out DeratingFactor? last));
        Assert.Equal(0.82, last.Value);
        Assert.Throws<ArgumentOutOfRangeException>("ambient", () => rows.TryFactor(C(-300), out _));
        Assert.Equal((30.0, 50.0, "air factors", Sheet, "air factors"), (rows.BaseAmbient.DegreesCelsius, rows.Highest.DegreesCelsius, rows.Name, rows.Reference, rows.ToString()));
    }

    [Fact]
    public void Create_RowThatDoesNotFit_IsRefusedWithItsReason()
    {
        Assert.StartsWith("factors[2], for 50 °C, is 0.95, which is above the 0.91 of the row before it; no factor rises.", Refused<ArgumentException>("factors", [30, 40, 50], [1, 0.91, 0.95]), StringComparison.Ordinal);
        Assert.StartsWith("factors[0], for 30 °C, must be 1, because the first row stands for the table's own currents; it was 0.9.", Refused<ArgumentException>("factors", [30, 40], [0.9, 0.8]), StringComparison.Ordinal);
        Assert.StartsWith("factors[1], for 40 °C, must be from 1E-12 to 1; it was NaN.", Refused<ArgumentOutOfRangeException>("factors", [30, 40], [1, double.NaN]), StringComparison.Ordinal);
        Assert.StartsWith("factors[1], for 40 °C, must be from 1E-12 to 1; it was 0.", Refused<ArgumentOutOfRangeException>("factors", [30, 40], [1, 0]), StringComparison.Ordinal);
        Assert.StartsWith("factors[0], for 20 °C, must be from 1E-12 to 1; it was 1.1.", Refused<ArgumentOutOfRangeException>("factors", [20, 30], [1.1, 1]), StringComparison.Ordinal);
        Assert.StartsWith("factors must be one for each row; there are 1 for 2 rows.", Refused<ArgumentException>("factors", [30, 40], [1]), StringComparison.Ordinal);
        Assert.StartsWith("ambients[1] is 30 °C, which is not above the 30 °C before it.", Refused<ArgumentException>("ambients", [30, 30], [1, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("ambients[1] is 20 °C, which is not above the 30 °C before it.", Refused<ArgumentException>("ambients", [30, 20], [1, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("ambients[1] must be from -60 to 400 °C; it was 401 °C.", Refused<ArgumentOutOfRangeException>("ambients", [30, 401], [1, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("ambients[0] must be from -60 to 400 °C; it was -61 °C.", Refused<ArgumentOutOfRangeException>("ambients", [-61], [1]), StringComparison.Ordinal);
        Assert.StartsWith("At least one row is needed; there was none.", Refused<ArgumentException>("ambients", [], []), StringComparison.Ordinal);
    }

    [Fact]
    public void Create_WithoutNameSourceOrLists_IsRefusedByName()
    {
        Assert.Throws<ArgumentException>("name", () => AmbientDerating.Create(" ", Sheet, [C(30)], [1]));
        Assert.Throws<ArgumentNullException>("name", () => AmbientDerating.Create(null!, Sheet, [C(30)], [1]));
        Assert.Throws<ArgumentNullException>("reference", () => AmbientDerating.Create("x", null!, [C(30)], [1]));
        Assert.Throws<ArgumentNullException>("ambients", () => AmbientDerating.Create("x", Sheet, null!, [1]));
        Assert.Throws<ArgumentNullException>("factors", () => AmbientDerating.Create("x", Sheet, [C(30)], null!));
    }
}
