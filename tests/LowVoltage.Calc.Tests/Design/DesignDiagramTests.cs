using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What a diagram of a design can show on a page: up to four loads, lines of up to 20 characters, and nothing that no line can hold.</summary>
public class DesignDiagramTests
{
    [Theory]
    [InlineData(4, "device (constant current), device (constant current), device (constant current), device (constant current)")]
    [InlineData(5, "device (5 loads)")]
    public void MoreThanFourLoads_AreCounted(int count, string expected)
    {
        Load[] loads = [.. Enumerable.Range(0, count).Select(_ => Load.ConstantCurrent(A(1)))];
        string words = CheckCase.Verify(Load.Together(loads), Blade(10)).Diagram.Description;
        Assert.Contains($" {expected}; back through chassis (1 mΩ).", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("high-breaking blade fuse", "high-breaking blade", "fuse")]
    [InlineData("fuse of twenty chars", "fuse of twenty chars")]
    [InlineData("a fuse of twenty-one c", "a fuse of twenty-one", "c")]
    [InlineData("highbreakingcapacityfuse", "highbreakingcapacit…")]
    [InlineData(" highbreakingcapacityfuse", " highbreakingcapaci…")]
    [InlineData("fuse\tin\ntwo", "fuse in two")]
    [InlineData("fuse of a kind that nobody can write in two lines", "fuse of a kind that", "nobody can write in…")]
    public void KindOfAFuse_IsOneShortLineOrTwo(string kind, params string[] lines)
    {
        FuseRating fuse = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "own list", Kind = kind, Reference = References.Reference.CommonPractice("made up for a test"), Ratings = [A(10)],
        }).SmallestAtLeast(A(10));
        DiagramPart part = CheckCase.Verify(Load.ConstantCurrent(A(2)), fuse).Diagram.Feed.Single(p => p.Symbol == DiagramSymbol.Fuse);
        Assert.Equal(["10 A", .. lines], part.Labels);
    }

    [Fact]
    public void NameOfAJoint_IsOneLineWithoutControlCharacters()
    {
        CircuitRequirements asked = new(CheckCase.Asked(Load.ConstantCurrent(A(2)))) { Joints = [Joint.Create("plug\u0001behind the dashboard", MilliOhm(3))] };
        DiagramPart part = CircuitDesigner.Design(asked, CheckCase.Table).Diagram.Feed.Single(p => p.Symbol == DiagramSymbol.Joint);
        Assert.Equal(["plug behind the das…", "3 mΩ"], part.Labels);
    }

    [Fact]
    public void Source_IsABatteryOrASupply_AndTheCircuitHasATitle()
    {
        CircuitDiagram battery = CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(5)).Diagram;
        Assert.Equal((DiagramSymbol.Battery, "The circuit"), (battery.Source.Symbol, battery.Title));
        Assert.Equal(["lead-acid battery", "12 V"], battery.Source.Labels);
        CircuitRequirements named = new(CheckCase.Asked(Load.ConstantCurrent(A(2)), Source.CurrentLimited(V(24), A(30)))) { Name = "Deck\tlamp" };
        CircuitDiagram supply = CheckCase.Verify(named, Blade(5)).Diagram;
        Assert.Equal((DiagramSymbol.Supply, "Deck lamp"), (supply.Source.Symbol, supply.Title));
    }

    [Fact]
    public void WayBack_OfExistingWiring_IsItsOwn()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(2)));
        Segment feed = Segment.Create(RoadVehicle(2.5), M(3), 2);
        string[] back(ReturnPath way, params Joint[] joints) =>
            [.. CircuitDesigner.Verify(asked, CircuitPath.Create(feed, way).WithReturnJoints(joints), Blade(5), CheckCase.Table).Diagram.Back.Select(part => $"{part.Symbol}: {string.Join(", ", part.Labels)}")];
        Joint[] two = [Joint.Create("lug", MilliOhm(2)), Joint.Create("bolt", MilliOhm(3))];
        Assert.Equal(["Chassis: chassis, 7 mΩ, joints 5 mΩ"], back(ReturnPath.Chassis(MilliOhm(7)), two));
        Assert.Equal(["Chassis: chassis, 7 mΩ"], back(ReturnPath.Chassis(MilliOhm(7))));
        Assert.Equal(["Wire: 2 × 2.5 mm², 4 m", "Joint: 2 joints, 5 mΩ"], back(ReturnPath.Wire(M(4)), two));
        Segment one = Segment.Create(RoadVehicle(6), M(1));
        Assert.Equal(["SharedWire: 6 mm², 1 m", "SharedWire: 6 mm², 1 m", "SharedWire: 6 mm², 1 m"], back(ReturnPath.Shared([one, one, one], A(3))));
        Assert.Equal(["Wire: 6 mm², 1 m", "Wire: 6 mm², 1 m", "Wire: 6 mm², 1 m", "Wire: 1 more, 1 m"], back(ReturnPath.Wire(one, one, one, one)));
    }
}
