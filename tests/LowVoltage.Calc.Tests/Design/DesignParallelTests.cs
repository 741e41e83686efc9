using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class DesignParallelTests
{
    private static readonly DesignRules Thin = new(DesignRules.RoadVehicle)
    {
        Conductors = ConductorSeries.RoadVehicle.Only("reels of the workshop", [.. new[] { 1.5, 2.5, 4 }.Select(size => ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(size)))]),
    };

    private static CircuitRequirements Heater(double amperes) => CircuitRequirements.Create(
            Battery.LeadAcid(A(300)), Load.ConstantCurrent(A(amperes)), Length.FromMeters(3), ReturnPath.Wire(Length.FromMeters(3)), Place.Create(C(30)), InsulationMaterial.PolyvinylChloride)
        .WithUpstream(MilliOhm(7.5)).WithFuseDistance(Length.FromCentimeters(10), sheathed: false);

    [Fact]
    public void DesignParallel_WhereOneWirePasses_IsTheDesign()
    {
        CircuitDesign one = CircuitDesigner.DesignParallel(Heater(5), DesignRules.RoadVehicle, 4), plain = CircuitDesigner.Design(Heater(5), DesignRules.RoadVehicle);
        Assert.Equal((plain.Wire, plain.Fuse, plain.Verdict), (one.Wire, one.Fuse, one.Verdict));
        Assert.Equal(1, one.Path.Feed[0].Parallel);
    }

    // 18 A over 6 m of wire and the supply lead within 0.36 V: 0.36 − 0.135 V leave 2.08 mΩ/m at 20 °C and more of it warm, so three of 4 mm² (4.71 mΩ/m each) at the least.
    [Fact]
    public void DesignParallel_WhereTheReelsAreThin_FindsTheFewestWires()
    {
        CircuitDesign found = CircuitDesigner.DesignParallel(Heater(18), Thin, 6);
        Assert.Equal(Verdict.Pass, found.Verdict);
        int wires = found.Path.Feed[0].Parallel;
        Assert.InRange(wires, 3, 4);
        Assert.Equal(wires, found.Path.ReturnSegments[0].Parallel);
        Assert.Equal(CheckOutcome.Pass, found.Find(CheckKind.FaultInOneParallelWire)!.Value.Outcome);
        Assert.NotEqual(Verdict.Pass, CircuitDesigner.DesignParallel(Heater(18), Thin, wires - 1).Verdict);
    }

    // Everything thinner, and every smaller fuse, was tried: none of it verifies.
    [Fact]
    public void DesignParallel_NothingSmallerOfThatNumber_Verifies()
    {
        CircuitDesign found = CircuitDesigner.DesignParallel(Heater(18), Thin, 6);
        int wires = found.Path.Feed[0].Parallel;
        foreach (Conductor conductor in Thin.Conductors.Conductors.Where(size => size.Area <= found.Wire.Area))
        {
            CircuitPath path = CircuitPath.Create(Segment.Create(conductor, Length.FromMeters(3), wires), ReturnPath.Wire(Length.FromMeters(3)));
            Assert.All(
                Thin.Fuses.Ratings.Where(fuse => conductor != found.Wire || fuse.Current < found.Fuse!.Current),
                fuse => Assert.NotEqual(Verdict.Pass, CircuitDesigner.Verify(Heater(18), path, fuse, Thin).Verdict));
        }
    }

    [Fact]
    public void DesignParallel_WhereNoNumberPasses_IsTheNearestOfOneWire()
    {
        CircuitDesign none = CircuitDesigner.DesignParallel(Heater(200), Thin, 3);
        Assert.True(none.IsNearest);
        Assert.Equal(1, none.Path.Feed[0].Parallel);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(21)]
    public void DesignParallel_NumberOutsideItsRange_IsRefused(int most) =>
        Assert.Equal("most", Assert.Throws<ArgumentOutOfRangeException>(() => CircuitDesigner.DesignParallel(Heater(5), Thin, most)).ParamName);
}
