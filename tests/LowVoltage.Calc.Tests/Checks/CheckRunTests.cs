using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class CheckRunTests
{
    // 40 A in 2.5 mm² on 10 A: the wire carries 32 A; the fuse carries 8 A. 0.36 V allowed.
    private static readonly CircuitDesign Overloaded = CheckCase.Verify(Load.ConstantCurrent(A(40)).WithMinimumVoltage(V(11.89)), Blade(10));

    [Fact]
    public void Asked_CountsWhatFailsAndWhatNoSizeCures()
    {
        BranchState at = Overloaded.State();
        CheckRun run = CheckRun.Keeping();
        run.AskWire(at);

        // Mechanical minimum passes; drop, load voltage, current and temperature fail; no size makes the source itself higher than its 11.89 V.
        Assert.Equal((5, 4, 0, 1, 3), (run.Count, run.Failed, run.Undetermined, run.Incurable, run.Curable));
        Assert.Equal(
            [CheckKind.MechanicalMinimum, CheckKind.VoltageDrop, CheckKind.LoadVoltage, CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature], run.Results.Select(r => r.Kind));
        Assert.Equal(CheckKind.VoltageDrop, run.Worst.Kind);
        Assert.Equal(CheckKind.VoltageDrop, run.WorstCurable.Kind);
        run.AskFuse(at);
        run.AskSupply(at);
        Assert.Equal(Overloaded.Checks, run.Results);
        Assert.Equal(Overloaded.Checks.Count(c => c.Outcome == CheckOutcome.Fail), run.Failed);
        Assert.Equal(CheckKind.All.Select(k => k.Id).Where(id => Overloaded.Find(CheckKind.Find(id)!) is not null), run.Results.Select(r => r.Kind!.Id));
    }

    [Fact]
    public void Incurable_IsWhatNoSizeHelps()
    {
        // 4000 A at the terminals of a stated lead of nothing: more than the fuse breaks, whatever the wire.
        CircuitDesign strong = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(5)), upstreamMilliOhms: 0), Blade(10));
        CheckRun run = default;
        run.AskFuse(strong.State());
        Assert.Equal((1, 1, 0), (run.Failed, run.Incurable, run.Curable));
        Assert.Equal(CheckKind.BreakingCapacity, run.Worst.Kind);
        Assert.Null(run.WorstCurable.Kind);
    }

    [Fact]
    public void Undetermined_TheFirstIsKept()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(5)));
        CircuitDesign unrated = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), CheckCase.Nameless, CheckCase.Table);
        CheckRun run = default;
        run.AskWire(unrated.State());
        Assert.Equal((CheckKind.ContinuousCurrent, 2), (run.FirstUndetermined.Kind, run.Undetermined));
        run.AskFuse(unrated.State());
        Assert.Equal((CheckKind.ContinuousCurrent, 0), (run.FirstUndetermined.Kind, run.Failed));
        Assert.Equal(unrated.Undetermined.Count, run.Undetermined);
    }

    [Fact]
    public void Keeping_GrowsForACircuitThatIsAskedEverything()
    {
        // A motor with a minimum voltage in parallel wires, at sea: more than the usual number.
        Load motor = Load.Motor(A(6), A(20), A(20), Duration.FromSeconds(0.01)).WithMinimumVoltage(V(9));
        CircuitRequirements asked = CheckCase.Asked(motor, feed: 1);
        DesignRules rules = new(CheckCase.Overloads) { FusePractice = new Calc.Protection.FusePractice { Distance = Calc.Protection.SourceDistance.Cfr33 } };
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(1), 2), asked.Return), Blade(15), rules);
        CheckKind?[] kinds = [.. design.Checks.Select(c => c.Kind)];
        Assert.True(kinds.Length > 13, $"{kinds.Length}");
        Assert.Equal(CheckKind.All.Where(kind => kinds.Contains(kind)), kinds);
    }
}
