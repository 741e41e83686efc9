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

    // What is varied need not be the length: here the length follows it by some law, and passes the limit of about 6.5 m where it is 50.
    [Theory]
    [InlineData("square", true)]
    [InlineData("square root", true)]
    [InlineData("ninth power", false)]
    [InlineData("step", false)]
    [InlineData("flat, then steep", false)]
    public void Find_WhateverTheShapeOfTheMargin_EndsWithinTheWidth(string shape, bool smooth)
    {
        double longest = ((0.36 / 5) - CheckCase.Lead - CheckCase.Chassis) / CheckCase.WireOhms(5, 1);
        double length(double x) => shape switch
        {
            "square" => longest * Math.Pow(x / 50, 2),
            "square root" => longest * Math.Sqrt(x / 50),
            "ninth power" => longest * Math.Pow(x / 50, 9),
            "step" => x <= 50 ? 1 : 30,
            _ => x <= 50 ? 0.999 * longest : longest * (1 + (x - 50)),
        };
        int questions = 0;
        DesignLimit<double> found = Search(1e-3, 1e4, 1e-6, x => Math.Min(length(x), 1e5), x => x, () => questions++);
        Assert.InRange(found.Value!.Value, 50 - 1.1e-6, 50 + 1e-9);
        Assert.Equal(CheckKind.VoltageDrop, found.Governing!.Value.Kind);

        // 17 strides of the ratio 10^(7/24) leave some 25 of width. A quarter of the width at which to stop takes 27 halvings. A smooth margin takes less; any other is halved every third time.
        int strides = (int)Math.Ceiling(Math.Log(50 / 1e-3) / Math.Log(1e7) * 24);
        Assert.InRange(questions, strides + 3, strides + (smooth ? 22 : 5 + (3 * 27)));
    }

    [Theory]
    [InlineData(-40, 250, 9.1)]
    [InlineData(0, 250, 246.5)]
    [InlineData(0, 250, 5.3)]
    [InlineData(-40, 250, 61.7)]
    [InlineData(-40, 250, 181)]
    [InlineData(-40, 250, 226)]
    public void Find_AFailureAsWideAsAStride_IsNotJumpedOver(double near, double far, double fails)
    {
        // From zero or below the strides are equal: a 24th of the range.
        double stride = (far - near) / 24;
        int questions = 0;
        DesignLimit<double> found = Search(near, far, 1e-4, x => x >= fails && x <= fails + stride ? 1000 : 1, x => x, () => questions++);
        Assert.InRange(found.Value!.Value, fails - 1.1e-4, fails);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(7)]
    [InlineData(11)]
    public void Find_TheFarEnd_IsAskedItself(int near)
    {
        // Of a count up to 1000 the last step is one, whatever rounding makes of the strides.
        List<double> asked = [];
        DesignLimit<int> found = Search(near, 1000, 0.5, x => (int)x >= 1000 ? 1000 : 1, x => (int)x, () => { }, asked);
        Assert.Equal(999, found.Value);
        Assert.Contains(1000.0, asked);
        Assert.StartsWith("A length of 999 m; beyond it: ", found.Explanation, StringComparison.Ordinal);
        DesignLimit<int> all = Search(near, 1000, 0.5, _ => 1, x => (int)x, () => { });
        Assert.Equal((1000, null), (all.Value, all.Governing));
        Assert.Equal("All of the range searched passes, up to a length of 1000 m.", all.Explanation);
    }

    [Fact]
    public void Find_ACount_AsksForNoMargins()
    {
        // Twelve strides of the ratio 500^(1/24) pass 2·500^(12/24) = 44.7; a width of 11.6 is halved to half a step in five.
        int questions = 0;
        DesignLimit<int> found = Search(2, 1000, 0.5, x => (int)x >= 50 ? 1000 : 1, x => (int)x, () => questions++);
        Assert.Equal(49, found.Value);
        Assert.Equal(1 + 13 + 5, questions);
    }

    [Theory]
    [InlineData(30.0, 50)]
    [InlineData(60.0, 20)]
    [InlineData(5.0, 20)]
    [InlineData(null, 20)]
    public void Find_StartsAtTheCircuitsOwnValueWhereThatPasses(double? own, double expected)
    {
        // It fails from 20 to 25 and from 50 on.
        DesignLimit<double> found = Search(10, 100, 1e-6, x => x is (> 20 and < 25) or > 50 ? 1000 : 1, x => x, () => { }, own: own);
        Assert.InRange(found.Value!.Value, expected - 1.1e-6, expected);
    }

    // Of the circuit of 5 A on 2.5 mm², whose length follows what is varied.
    private static DesignLimit<T> Search<T>(double near, double far, double tolerance, Func<double, double> meters, Func<double, T> make, Action count, List<double>? asked = null, double? own = null)
        where T : struct
    {
        CircuitRequirements circuit = CheckCase.Asked(Load.ConstantCurrent(A(5)));
        BranchState at = CircuitDesigner.Verify(circuit, RoadVehicle(2.5), Blade(10), CheckCase.Table).State();
        BranchState lay(double x)
        {
            count();
            asked?.Add(x);
            return at.WithMeters(meters(x), 0);
        }

        return LimitSearch.Find(
            near, far, tolerance, lay, x => CircuitDesigner.Verify(CheckCase.Asked(Load.ConstantCurrent(A(5)), feed: meters(x)), RoadVehicle(2.5), Blade(10), CheckCase.Table), make, "a length", "m", own);
    }

    [Fact]
    public void Limit_WhereSomethingIsUndeterminedAllTheWay_NamesWhatFails()
    {
        // 2 A on a fuse of which nothing is published may drop 0.36 V.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(2)));
        DesignLimit<Length> run = CircuitDesigner.LongestRun(asked, RoadVehicle(2.5), CheckCase.Nameless, CheckCase.Table);
        Assert.Equal((CheckKind.VoltageDrop, CheckOutcome.Fail), (run.Governing!.Value.Kind, run.Governing.Value.Outcome));
        Near(((0.36 / 2) - CheckCase.Lead - CheckCase.Chassis) / CheckCase.WireOhms(2, 1), run.Value!.Value.Meters, 1e-6);
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
