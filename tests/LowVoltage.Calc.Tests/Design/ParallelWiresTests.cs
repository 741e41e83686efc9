using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class ParallelWiresTests
{
    private static readonly DesignRules Thin = new(DesignRules.RoadVehicle)
    {
        Conductors = ConductorSeries.RoadVehicle.Only("reels of the workshop", [.. new[] { 1.5, 2.5, 4 }.Select(size => ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(size)))]),
    };

    private static CircuitRequirements Heater(double amperes) => CircuitRequirements.Create(
            Battery.LeadAcid(A(300)), Load.ConstantCurrent(A(amperes)), Length.FromMeters(3), ReturnPath.Wire(Length.FromMeters(3)), Place.Create(C(30)), InsulationMaterial.PolyvinylChloride)
        .WithUpstream(MilliOhm(7.5)).WithFuseDistance(Length.FromCentimeters(10), sheathed: false);

    private static CircuitDesign Designed(double amperes, DesignRules rules, ParallelWires wires) => CircuitDesigner.Design(Heater(amperes).WithParallelWires(wires), rules);

    [Fact]
    public void Range_WhereOneWirePasses_IsTheDesignOfOne()
    {
        CircuitDesign one = Designed(5, DesignRules.RoadVehicle, ParallelWires.UpTo(4)), plain = CircuitDesigner.Design(Heater(5), DesignRules.RoadVehicle);
        Assert.Equal((plain.Wire, plain.Fuse, plain.Verdict), (one.Wire, one.Fuse, one.Verdict));
        Assert.Equal(1, one.Path.Feed[0].Parallel);
        Assert.Equal(ParallelWires.One, one.Requirements.ParallelWires);
    }

    // 18 A over 6 m of wire and the supply lead within 0.36 V: 0.36 − 0.135 V leave 2.08 mΩ/m at 20 °C and more of it warm, so three of 4 mm² (4.71 mΩ/m each) at the least.
    [Fact]
    public void Range_WhereTheReelsAreThin_FindsTheFewestWires()
    {
        CircuitDesign found = Designed(18, Thin, ParallelWires.UpTo(6));
        Assert.Equal(Verdict.Pass, found.Verdict);
        int wires = found.Path.Feed[0].Parallel;
        Assert.InRange(wires, 3, 4);
        Assert.Equal(wires, found.Path.ReturnSegments[0].Parallel);
        Assert.Equal(CheckOutcome.Pass, found.Find(CheckKind.FaultInOneParallelWire)!.Value.Outcome);
        Assert.Equal(ParallelWires.Exactly(wires), found.Requirements.ParallelWires);
        Assert.StartsWith($"{wires} × {found.Wire} with ", found.ToString(), StringComparison.Ordinal);
        Assert.NotEqual(Verdict.Pass, Designed(18, Thin, ParallelWires.UpTo(wires - 1)).Verdict);
    }

    // Everything thinner, and every smaller fuse, was tried: none of it verifies.
    [Fact]
    public void Range_NothingSmallerOfThatNumber_Verifies()
    {
        CircuitDesign found = Designed(18, Thin, ParallelWires.UpTo(6));
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
    public void Range_WhereNoNumberPasses_IsTheNearestOfOneWire()
    {
        CircuitDesign none = Designed(200, Thin, ParallelWires.UpTo(3));
        Assert.True(none.IsNearest);
        Assert.Equal(1, none.Path.Feed[0].Parallel);
    }

    // A stated number is the same circuit as a path of so many wires: every check has the same outcome and the same numbers.
    [Theory]
    [InlineData(2, 12)]
    [InlineData(3, 18)]
    [InlineData(5, 30)]
    public void Number_Stated_IsJudgedAsThePathOfSoManyWires(int wires, double amperes)
    {
        CircuitDesign design = Designed(amperes, Thin, ParallelWires.Exactly(wires));
        Assert.Equal(wires, design.Path.Feed[0].Parallel);
        CircuitPath path = CircuitPath.Create(Segment.Create(design.Wire, Length.FromMeters(3), wires), ReturnPath.Wire(Length.FromMeters(3)));
        CircuitDesign laid = CircuitDesigner.Verify(Heater(amperes), path, design.Fuse, Thin), verified = CircuitDesigner.Verify(design.Requirements, design.Wire, design.Fuse, Thin);
        Assert.Equal(design.Checks.Select(check => (check.Kind, check.Outcome, check.Value, check.Limit)), laid.Checks.Select(check => (check.Kind, check.Outcome, check.Value, check.Limit)));
        Assert.Equal(design.Checks.Select(check => check.ToString()), verified.Checks.Select(check => check.ToString()));
        Assert.Contains(design.Checks, check => check.Kind == CheckKind.FaultInOneParallelWire);
    }

    // Two wires of 2.5 mm² have the resistance of one of 5 mm²: the drop, beside the lead, is half of what one has, but for its warmth.
    [Fact]
    public void Number_Stated_DividesTheDropOfTheWires()
    {
        DesignRules only = Thin.WithConductors(ConductorSeries.RoadVehicle.Only("2.5", MetricSize.FromSquareMillimeters(2.5)));
        double one = CircuitDesigner.Verify(Heater(6), only.Conductors.Conductors[0], null, only).Find(CheckKind.VoltageDrop)!.Value.Value!.Value;
        double two = CircuitDesigner.Verify(Heater(6).WithParallelWires(ParallelWires.Exactly(2)), only.Conductors.Conductors[0], null, only).Find(CheckKind.VoltageDrop)!.Value.Value!.Value;
        double lead = 6 * 0.0075, cold = 6 * 6 * 0.00760;
        Assert.InRange(one - lead, cold, 1.2 * cold);
        Assert.InRange((two - lead) / (one - lead), 0.47, 0.5);
    }

    [Fact]
    public void Limits_OfANumberStated_AreThoseOfItsPath()
    {
        CircuitDesign design = Designed(18, Thin, ParallelWires.Exactly(4));
        DesignLimit<Length> run = CircuitDesigner.LongestRun(design.Requirements, design.Wire, design.Fuse!, Thin);
        Length most = run.Value!.Value;
        foreach ((double share, Verdict verdict) in new[] { (0.999, Verdict.Pass), (1.001, Verdict.Fail) })
        {
            Length feed = most * share;
            CircuitPath path = CircuitPath.Create(Segment.Create(design.Wire, feed, 4), ReturnPath.Wire(feed));
            Assert.Equal(verdict, CircuitDesigner.Verify(Heater(18), path, design.Fuse, Thin).Verdict);
        }

        Assert.True(CircuitDesigner.MostLoadedConductors(design.Requirements, design.Wire, design.Fuse!, Thin).Value >= 8);
    }

    // A second wire does not break what one fuse cannot: the single wire stands, with the fuse that fails.
    [Fact]
    public void Range_WhereCopperCuresNothing_TakesNoSecondWire()
    {
        CircuitRequirements stiff = Heater(5).WithUpstream(ElectricResistance.Zero);
        CircuitDesign design = CircuitDesigner.Design(stiff.WithSource(Source.BehindResistance(V(12.6), MilliOhm(1))).WithParallelWires(ParallelWires.UpTo(5)), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.BreakingCapacity).Outcome);
        Assert.Equal(1, design.Path.Feed[0].Parallel);
    }

    [Fact]
    public void Return_OfSeveralWires_CountsThemAsLoaded()
    {
        CircuitRequirements asked = Heater(6).WithReturn(ReturnPath.Wire(Segment.Create(Conductor.Iso6722(MetricSize.Parse("4")), Length.FromMeters(3), 2)));
        Assert.Contains(CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Assumptions, line => line.Contains("3 loaded conductors", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_OfSeveralWires_SaysHowMany()
    {
        CircuitDesign design = Designed(18, Thin, ParallelWires.Exactly(4));
        Assert.Contains(design.Explain().Givens, given => given.ToString()!.Contains($"4 × {design.Wire}", StringComparison.Ordinal));
        Assert.Contains("4 × ", design.Diagram.Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 3, "least")]
    [InlineData(1, 21, "most")]
    [InlineData(4, 3, "most")]
    public void Number_OutsideItsRange_IsRefused(int least, int most, string named) =>
        Assert.Equal(named, Assert.Throws<ArgumentOutOfRangeException>(() => ParallelWires.Between(least, most)).ParamName);

    [Fact]
    public void Number_IsEqualByValue()
    {
        Assert.Equal(ParallelWires.Exactly(3), ParallelWires.Between(3, 3));
        Assert.Equal(ParallelWires.UpTo(3).GetHashCode(), ParallelWires.Between(1, 3).GetHashCode());
        Assert.NotEqual(ParallelWires.Exactly(3), ParallelWires.UpTo(3));
        Assert.Equal(("3", "1 to 3"), (ParallelWires.Exactly(3).ToString(), ParallelWires.UpTo(3).ToString()));
    }
}
