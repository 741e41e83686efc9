using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>An answer made of given numbers: margin, words, order and equality.</summary>
public class CheckResultTests
{
    private static readonly Reference Source = Reference.CommonPractice("made up for a test");

    [Theory]
    [InlineData(nameof(CheckKind.VoltageDrop), 0.27, 0.36, 0.25)]
    [InlineData(nameof(CheckKind.VoltageDrop), 0.45, 0.36, -0.25)]
    [InlineData(nameof(CheckKind.LoadVoltage), 11, 10, 0.1)]
    [InlineData(nameof(CheckKind.LoadVoltage), 9, 10, -0.1)]
    [InlineData(nameof(CheckKind.ConductorTemperature), -30, -20, 0.5)]
    [InlineData(nameof(CheckKind.ConductorTemperature), -10, -20, -0.5)]
    public void Margin_IsTheShareOfTheLimitThatIsLeft(string id, double value, double limit, double margin) =>
        Near(margin, Of(id, value, limit, margin > 0).Margin, 1e-12);

    [Fact]
    public void Margin_OfALimitOfZero_IsNothingOrAllOfIt()
    {
        Assert.Equal(0, Of("FuseDistance", 0, 0, true).Margin);
        Assert.Equal(-1, Of("FuseDistance", 0.1, 0, false).Margin);
    }

    [Fact]
    public void WithoutNumbers_ThereIsNoMarginAndNoQuantity()
    {
        CheckResult words = Of("FaultOpensFuse", double.NaN, double.NaN, true), half = Of("VoltageDrop", 0.3, double.NaN, true), other = Of("VoltageDrop", double.NaN, 0.3, true);
        Assert.Equal((null, null, null, null, null), (words.Value, words.Limit, words.Margin, words.Quantity, words.LimitQuantity));
        Assert.Equal((0.3, null, null, null), (half.Value, half.Limit, half.Margin, half.LimitQuantity));
        Assert.Equal(V(0.3), half.Quantity);
        Assert.Equal((null, 0.3, null, null), (other.Value, other.Limit, other.Margin, other.LimitQuantity));
        Assert.False(half.HasNumbers || other.HasNumbers || words.HasNumbers || words.HasValue || other.HasValue);
    }

    [Fact]
    public void Quantity_OfEveryKind_HasItsUnit()
    {
        foreach (CheckKind kind in CheckKind.All)
        {
            CheckResult result = Of(kind.Id, 2, 3, true);
            IQuantity quantity = result.Quantity!, limit = result.LimitQuantity!;
            Near(2, In(quantity), 1e-12, kind.Id);
            Near(3, In(limit), 1e-12, kind.Id);
        }

        Assert.Equal("No quantity for the unit lx.", Assert.Throws<InvalidOperationException>(() => CheckUnit.Quantity("lx", 1)).Message);
    }

    [Fact]
    public void Tighter_IsTheOneWithLessToSpare()
    {
        CheckResult some = Of("VoltageDrop", 0.27, 0.36, true), more = Of("LoadVoltage", 15, 10, true), beyond = Of("ContinuousCurrent", 11, 10, false);
        Assert.True(some.IsTighterThan(more) && beyond.IsTighterThan(some));
        Assert.False(more.IsTighterThan(some) || some.IsTighterThan(beyond) || some.IsTighterThan(some));

        // A failure without a number is as far beyond as one of a whole limit; a pass without one has all there is to spare.
        CheckResult fails = Of("FaultOpensFuse", double.NaN, double.NaN, false), passes = Of("FaultOpensFuse", double.NaN, double.NaN, true);
        Assert.Equal((-1, double.PositiveInfinity), (fails.Tightness, passes.Tightness));
        Assert.Equal(0, new CheckResult(Kind("FaultOpensFuse"), double.NaN, double.NaN, CheckOutcome.Undetermined, Source, default).Tightness);
        Assert.True(fails.IsTighterThan(beyond) && more.IsTighterThan(passes));

        // The temperature in service says what the current says: it only decides among its like.
        CheckResult hot = Of("ConductorTemperature", 100, 70, false), cool = Of("ConductorTemperature", 40, 70, true);
        Assert.False(hot.IsTighterThan(some));
        Assert.True(some.IsTighterThan(hot) && hot.IsTighterThan(cool));
        Assert.True(some.IsTighterThan(default) && !default(CheckResult).IsTighterThan(some));
    }

    [Fact]
    public void Equality_LooksAtEveryPart()
    {
        CheckResult one = Of("VoltageDrop", 0.27, 0.36, true, SupplyLevel.Minimum);
        Assert.True(one == Of("VoltageDrop", 0.27, 0.36, true, SupplyLevel.Minimum));
        CheckResult[] others =
        [
            Of("LoadVoltage", 0.27, 0.36, true, SupplyLevel.Minimum),
            Of("VoltageDrop", 0.28, 0.36, true, SupplyLevel.Minimum),
            Of("VoltageDrop", 0.27, 0.37, true, SupplyLevel.Minimum),
            Of("VoltageDrop", 0.27, 0.36, false, SupplyLevel.Minimum),
            Of("VoltageDrop", 0.27, 0.36, true, SupplyLevel.Maximum),
            Of("VoltageDrop", 0.27, 0.36, true),
            new(Kind("VoltageDrop"), 0.27, 0.36, CheckOutcome.Pass, Reference.CommonPractice("another"), new CheckSubject { Level = SupplyLevel.Minimum }),
        ];
        Assert.All(others, other => Assert.True(one != other && !one.Equals(other)));

        // By the stretch and by the note, too.
        CheckResult place = new(Kind("MechanicalMinimum"), 1, 1, CheckOutcome.Pass, Source, CheckSubject.At(StretchName.Feed));
        Assert.NotEqual(place, new(Kind("MechanicalMinimum"), 1, 1, CheckOutcome.Pass, Source, CheckSubject.At(StretchName.Return)));
        CheckResult note = new(Kind("OvercurrentProtection"), double.NaN, double.NaN, CheckOutcome.Undetermined, Source, CheckSubject.Of(1));
        Assert.NotEqual(note, new(Kind("OvercurrentProtection"), double.NaN, double.NaN, CheckOutcome.Undetermined, Source, CheckSubject.Of(0)));
        Assert.Equal(one.GetHashCode(), Of("VoltageDrop", 0.27, 0.36, true, SupplyLevel.Minimum).GetHashCode());
        Assert.NotEqual(one.GetHashCode(), others[1].GetHashCode());
    }

    [Fact]
    public void Level_IsNoneOrOneOfThree()
    {
        Assert.Null(Of("VoltageDrop", 1, 2, true).Level);
        Assert.All(Enum.GetValues<SupplyLevel>(), level => Assert.Equal(level, Of("VoltageDrop", 1, 2, true, level).Level));
    }

    private static double In(IQuantity quantity) => quantity switch
    {
        ElectricPotential v => v.Volts,
        ElectricCurrent a => a.Amperes,
        Power w => (double)w.Watts,
        UnitsNet.Area area => area.SquareMillimeters,
        Temperature t => t.DegreesCelsius,
        Duration s => s.Seconds,
        Length m => m.Meters,
        Ratio r => r.DecimalFractions,
        _ => double.NaN,
    };

    internal static CheckResult Of(string id, double value, double limit, bool passes, SupplyLevel? level = null) =>
        new(Kind(id), value, limit, passes ? CheckOutcome.Pass : CheckOutcome.Fail, Source, new CheckSubject { Level = level, Number = 1 });

    internal static Check Kind(string id) => (Check)CheckKind.Find(id)!;
}
