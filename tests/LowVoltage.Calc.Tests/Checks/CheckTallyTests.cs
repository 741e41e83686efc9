using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>What the search counts on its way: it goes on beyond what no size cures, and stops at the first failure that one could.</summary>
public class CheckTallyTests
{
    [Fact]
    public void WirePasses_StopsAtAFailureThatCopperCures()
    {
        // 40 A on 2.5 mm²: the drop fails first; current and temperature behind it are not asked.
        CheckTally tally = default;
        Assert.False(tally.WirePasses(CheckCase.Verify(Load.ConstantCurrent(A(40)), Blade(10)).State()));
        Assert.Equal((1, 0, 0), (tally.Failed, tally.Undetermined, tally.Incurable));
    }

    [Fact]
    public void WirePasses_GoesOnBeyondWhatNoSizeCures()
    {
        // 11.89 V at the source itself: the load that needs just that gets less through any wire.
        CheckTally tally = default;
        Assert.True(tally.WirePasses(CheckCase.Verify(Load.ConstantCurrent(A(2)).WithMinimumVoltage(V(11.89)), Blade(5)).State()));
        Assert.Equal((1, 0, 1), (tally.Failed, tally.Undetermined, tally.Incurable));
    }

    [Fact]
    public void QuickFusePasses_CountsWhatNoSizeCures_AndLeavesTheRestForLater()
    {
        // 4000 A at the terminals of a lead of nothing: more than a blade fuse breaks.
        BranchState at = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(5)), upstreamMilliOhms: 0), Blade(10)).State();
        CheckTally tally = default;
        Assert.True(tally.QuickFusePasses(at));
        Assert.Equal((1, 0, 1), (tally.Failed, tally.Undetermined, tally.Incurable));
        Assert.True(tally.RestOfFusePasses(at));
        Assert.Equal((1, 0, 1), (tally.Failed, tally.Undetermined, tally.Incurable));
        Assert.Equal(AskedFor.Everything, at.AskedFor);
    }

    [Fact]
    public void Passes_GoesOnBeyondWhatIsUndetermined()
    {
        // AWG 2 is not in the table: current and temperature are undetermined, and the fuse against the wire.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(5)));
        BranchState at = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(10), CheckCase.Table).State();
        CheckTally tally = default;
        Assert.True(tally.WirePasses(at));
        Assert.Equal((0, 2, 0), (tally.Failed, tally.Undetermined, tally.Incurable));
        Assert.True(tally.QuickFusePasses(at));
        Assert.Equal((0, 3, 0), (tally.Failed, tally.Undetermined, tally.Incurable));
    }
}
