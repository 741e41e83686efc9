using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>
/// A fault on a source at its limit, back through a wire that 100 A of other circuits share. The wires are so thick (120 mm², 0.153 mΩ/m, ISO 6722, from memory) that the fault does not warm
/// them: the current that the fuse opens at is the one that the fault began with.
/// </summary>
public class LimitedSupplyFaultTests
{
    [Fact]
    public void SupplyAtItsLimit_EndsWithTheCurrentItBeganWith()
    {
        BranchState at = Laid(Source.CurrentLimited(V(12), A(30)));
        Near(30, at.FarEnd.FirstAmperes, 1e-9);
        Opens(at);
    }

    [Fact]
    public void BatteryBehindASupplyAtItsLimit_EndsWithTheCurrentItBeganWith() => Opens(Laid(Source.InSeries(LeadAcid(), Source.CurrentLimited(V(12), A(5)))));

    // dθ = ρ·J/(σ·S²), 3.5e-7 K for each A²s in 120 mm² of copper (IEC 60949, from memory): a second of 130 A warms it by 6 mK.
    private static void Opens(BranchState at)
    {
        Assert.Equal(FarEndEnding.Opens, at.FarEnd.Ending);
        Near(at.FarEnd.FirstAmperes, at.FarEnd.LastAmperes, 1e-4);
        Assert.Equal(at.FarEnd.LastAmperes, at.LeastFaultAmperes);
    }

    private static BranchState Laid(Source source)
    {
        ReturnPath back = ReturnPath.Shared([Segment.Create(RoadVehicle(120), M(50))], A(100));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), source, feed: 3, back: back, conductors: 1);
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(120), M(3)), back), Blade(10), CheckCase.Table).State();
    }
}
