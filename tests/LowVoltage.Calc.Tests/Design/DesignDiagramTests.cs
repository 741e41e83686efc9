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
}
