using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>Factors for wires together that the caller states: which row counts, what is counted, and which rows are refused.</summary>
public class GroupingDeratingTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet (invented)", Edition = "2026", Kind = ReferenceKind.Handbook };

    private static GroupingDerating Conductors(int[] counts, double[] factors) => GroupingDerating.ByConductors("bundle factors", Sheet, counts, factors);

    private static string Refused<T>(string parameter, int[] counts, double[] factors)
        where T : ArgumentException => Assert.Throws<T>(parameter, () => Conductors(counts, factors)).Message;

    [Theory]
    [InlineData(1, 1, "1 loaded conductor")]
    [InlineData(2, 0.88, "2 loaded conductors")]
    [InlineData(3, 0.75, "3 loaded conductors, row 4")]
    [InlineData(4, 0.75, "4 loaded conductors")]
    public void TryFactor_BetweenRows_TakesTheLargerOne(int count, double expected, string condition)
    {
        Assert.True(Conductors([1, 2, 4], [1, 0.88, 0.75]).TryFactor(count, out DeratingFactor? factor));
        Assert.Equal((expected, condition), (factor.Value, factor.Condition));
        Assert.Equal((DeratingKind.ConductorCount, RuleSet.Caller, Sheet, "loaded conductors together"), (factor.Kind, factor.RuleSet, factor.Reference, factor.BundleMeaning));
    }

    [Fact]
    public void TryFactor_FewerThanTheFirstRowOrMoreThanTheLast_IsOneOrNone()
    {
        GroupingDerating circuits = GroupingDerating.ByCircuits("loom factors", Sheet, [2, 3], [1, 0.9]);
        Assert.True(circuits.TryFactor(1, out DeratingFactor? one));
        Assert.Equal((1.0, DeratingKind.Grouping, "1 circuit, row 2"), (one.Value, one.Kind, one.Condition));
        Assert.False(circuits.TryFactor(4, out DeratingFactor? none));
        Assert.Null(none);
        Assert.Equal((2, 3, true, "loom factors", "loom factors"), (circuits.BaseCount, circuits.LargestCount, circuits.CountsCircuits, circuits.Name, circuits.ToString()));
        Assert.False(Conductors([1], [1]).CountsCircuits);
        Assert.Throws<ArgumentOutOfRangeException>("count", () => circuits.TryFactor(0, out _));
        Assert.Throws<ArgumentOutOfRangeException>("count", () => circuits.TryFactor(1001, out _));
    }

    [Fact]
    public void Create_RowThatDoesNotFit_IsRefusedWithItsReason()
    {
        Assert.StartsWith("factors[2], for 4 loaded conductors, is 0.9, which is above the 0.88 of the row before it; no factor rises.", Refused<ArgumentException>("factors", [1, 2, 4], [1, 0.88, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("factors[0], for 2 loaded conductors, must be 1, because the first row stands for the table's own currents; it was 0.88.", Refused<ArgumentException>("factors", [2, 4], [0.88, 0.75]), StringComparison.Ordinal);
        Assert.StartsWith("factors[1], for 2 loaded conductors, must be from 1E-12 to 1; it was -0.5.", Refused<ArgumentOutOfRangeException>("factors", [1, 2], [1, -0.5]), StringComparison.Ordinal);
        Assert.StartsWith("conductors[1] is 2 loaded conductors, which is not above the 2 loaded conductors before it.", Refused<ArgumentException>("conductors", [2, 2], [1, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("conductors[0] must be from 1 to 1000 loaded conductors; it was 0 loaded conductors.", Refused<ArgumentOutOfRangeException>("conductors", [0, 2], [1, 0.9]), StringComparison.Ordinal);
        Assert.StartsWith("At least one row is needed; there was none.", Refused<ArgumentException>("conductors", [], []), StringComparison.Ordinal);
        Assert.StartsWith(
            "circuits[1] must be from 1 to 1000 circuits; it was 1001 circuits.",
            Assert.Throws<ArgumentOutOfRangeException>("circuits", () => GroupingDerating.ByCircuits("x", Sheet, [1, 1001], [1, 0.9])).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Create_WithoutNameSourceOrLists_IsRefusedByName()
    {
        Assert.Throws<ArgumentException>("name", () => GroupingDerating.ByCircuits("", Sheet, [1], [1]));
        Assert.Throws<ArgumentNullException>("reference", () => GroupingDerating.ByConductors("x", null!, [1], [1]));
        Assert.Throws<ArgumentNullException>("conductors", () => GroupingDerating.ByConductors("x", Sheet, null!, [1]));
        Assert.Throws<ArgumentNullException>("circuits", () => GroupingDerating.ByCircuits("x", Sheet, null!, [1]));
        Assert.Throws<ArgumentNullException>("factors", () => GroupingDerating.ByConductors("x", Sheet, [1], null!));
    }
}
