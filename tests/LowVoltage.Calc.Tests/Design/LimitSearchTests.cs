using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class LimitSearchTests
{
    [Fact]
    public void Find_WhereTheMarginIsStraight_AsksFarLessThanHalvingWould()
    {
        // 5 A may drop 3 % of 12 V: 0.36 V = 5·(0.021 Ω + l·R′), about 6.5 m; straight in the length.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(5)));
        double expected = ((0.36 / 5) - CheckCase.Lead - CheckCase.Chassis) / CheckCase.WireOhms(5, 1);
        BranchState at = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), CheckCase.Table).State();
        int questions = 0;
        BranchState lay(double meters)
        {
            questions++;
            return at.WithMeters(meters, 0);
        }

        DesignLimit<double> found = LimitSearch.Find(
            1e-3, 1e4, 1e-6, lay, meters => CircuitDesigner.Verify(CheckCase.Asked(Load.ConstantCurrent(A(5)), feed: meters), RoadVehicle(2.5), Blade(10), CheckCase.Table), meters => meters, "a feed", "m");
        Assert.InRange(found.Value!.Value, expected - 2e-6, expected + 1e-7);
        Assert.Equal(CheckKind.VoltageDrop, found.Governing!.Value.Kind);

        // Seven decades in 24 strides: 14 of them go past 6.5 m, and leave metres, which halving would bring to a micrometre in 22 more.
        int strides = (int)Math.Ceiling(Math.Log(expected / 1e-3) / Math.Log(1e7) * 24);
        Assert.Equal(14, strides);
        Assert.InRange(questions, strides + 2, strides + 15);
    }

    /// <summary>The main fuse carries the load too, and its lead runs in the circuit's air: at each limit the whole verification passes, and beyond it does not.</summary>
    [Fact]
    public void Limits_BehindAMainFuse_CountItsChecks()
    {
        UpstreamProtection main = UpstreamProtection.Fuse(FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(40)))
            .WithUpstream(MilliOhm(2)).WithDistance(M(0.15), sheathed: true).WithLead(CircuitPath.Create(Segment.Create(Class5(16), M(1)), ReturnPath.Wire(M(1))));
        CircuitRequirements asked = new(Circuit(Load.ConstantCurrent(A(5)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100)), feed: 2)) { Upstream = MilliOhm(6), UpstreamProtection = [main] };
        Conductor wire = Class5(10);
        FuseRating fuse = Blade(10);
        CircuitDesign start = CircuitDesigner.Verify(asked, wire, fuse, DesignRules.Bench);
        Assert.DoesNotContain(start.Checks, check => check.Outcome == CheckOutcome.Fail);

        double air = CircuitDesigner.HottestAmbient(asked, wire, fuse, DesignRules.Bench).Value!.Value.DegreesCelsius;
        CircuitDesign hot(double celsius) => CircuitDesigner.Verify(asked.WithPlace(asked.Place.WithAmbient(C(celsius))), wire, fuse, DesignRules.Bench);
        Assert.NotEqual(Verdict.Fail, hot(air).Verdict);
        Assert.Equal(Verdict.Fail, hot(air + 0.1).Verdict);

        double amperes = CircuitDesigner.LargestCurrent(asked, wire, fuse, DesignRules.Bench).Value!.Value.Amperes;
        CircuitDesign loaded(double current) => CircuitDesigner.Verify(asked.WithLoad(Load.ConstantCurrent(A(current))), wire, fuse, DesignRules.Bench);
        Assert.NotEqual(Verdict.Fail, loaded(amperes).Verdict);
        Assert.Equal(Verdict.Fail, loaded(amperes * 1.001).Verdict);
    }
}
