using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>A path of known resistance, without wires.</summary>
public class StatedResistanceTests
{
    private static readonly ConductorTemperature Any = ConductorTemperature.At(C(60));

    // 12 V behind 10 mΩ, 40 mΩ of path, 10 A: 0.5 V are lost, 0.4 V of them in the path.
    [Fact]
    public void Solve_OfAStatedResistance_IsOhmsLaw()
    {
        Source source = Source.BehindResistance(V(12), MilliOhm(10));
        OperatingPoint point = OperatingPoint.Solve(source, CircuitPath.OfResistance(MilliOhm(40)), Load.ConstantCurrent(A(10)), Any);
        Assert.Equal(11.5, point.VoltageAtLoad.Volts, 12);
        Assert.Equal(0.4, point.Drop.Volts, 12);
        Assert.Equal(4, point.PathLoss.Watts, 12);
        PathElement only = Assert.Single(point.Elements);
        Assert.Same(only, point.Weakest);
        Assert.Contains(point.Assumptions, line => line.Contains("stated whole, 40 mΩ", StringComparison.Ordinal));
        Assert.DoesNotContain(point.Assumptions, line => line.Contains("60 °C", StringComparison.Ordinal));
        Assert.Contains("40", point.Explain().ToString(), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => point.HottestConductor);
    }

    [Fact]
    public void Resistance_DoesNotDependOnTemperature()
    {
        CircuitPath path = CircuitPath.OfResistance(MilliOhm(40)).WithFeedJoints(Joint.Create("switch", MilliOhm(2)));
        Assert.Equal(42, path.ResistanceAt(C(20)).Milliohms, 9);
        Assert.Equal(42, path.ResistanceAt(C(120)).Milliohms, 9);
        ProspectiveCurrent fault = ProspectiveCurrent.AtEnd(Source.BehindResistance(V(12), MilliOhm(6)), path, C(70), C(20));
        Assert.Equal(250, fault.Greatest!.Value.Amperes, 9);
        Assert.Equal(ReturnKind.Stated, path.Return.Kind);
        Assert.Empty(path.Feed);
    }

    // Range over the supply, as any path.
    [Fact]
    public void SupplyRange_OfAStatedResistance_Exists() =>
        Assert.Equal(0.4, SupplyRange.Solve(LeadAcid(), CircuitPath.OfResistance(MilliOhm(40)), Load.ConstantCurrent(A(10)), Any).MostDrop!.Drop.Volts, 12);

    [Fact]
    public void Verify_OfAResistanceWithoutWires_IsRefused()
    {
        Assert.Throws<ArgumentException>("path", () => CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(5))), CircuitPath.OfResistance(MilliOhm(40)), Blade(7.5), DesignRules.Bench));
        Assert.Throws<ArgumentException>("lead", () => UpstreamProtection.Fuse(Blade(40)).WithLead(CircuitPath.OfResistance(MilliOhm(4))));
        Assert.Throws<ArgumentOutOfRangeException>("outAndBack", () => CircuitPath.OfResistance(MilliOhm(-1)));
    }
}
