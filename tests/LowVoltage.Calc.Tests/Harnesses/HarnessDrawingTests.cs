using System.Xml.Linq;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>The drawing says what the solution says, and stands alone.</summary>
public class HarnessDrawingTests
{
    private static readonly Harness Two = Vans.Two(Load.ConstantCurrent(ElectricCurrent.FromAmperes(5)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(9))).Build();

    [Fact]
    public void Svg_NamesEveryWireFuseAndLoad()
    {
        string[] texts = Texts(HarnessDrawing.Svg(Two.Solve()));
        foreach (string id in Two.Branches.Select(b => b.Id).Concat(Two.Loads.Select(l => l.Id)))
        {
            Assert.Contains(texts, t => t.StartsWith(id, StringComparison.Ordinal));
        }

        Assert.Contains(texts, t => t.StartsWith("main ", StringComparison.Ordinal) && t.Contains("14 A", StringComparison.Ordinal));
    }

    [Fact]
    public void Svg_MarksWhatIsNamedAsFaulty()
    {
        string[] texts = Texts(HarnessDrawing.Svg(Two.Solve(), DrawingColour.Drop, ["left", "FR", "panel"]));
        Assert.Equal(3, texts.Count(t => t.StartsWith('✗')));
    }

    [Fact]
    public void Svg_NeedsNothingFromElsewhere()
    {
        string svg = HarnessDrawing.Svg(Two.Solve());
        Assert.DoesNotContain("script", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Svg_HotterThanItsInsulationStands_IsTheLastColour()
    {
        Harness thin = Vans.Two(Load.ConstantCurrent(ElectricCurrent.FromAmperes(40)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(1))).Build();
        Assert.Contains(Paths(HarnessDrawing.Svg(thin.Solve())), c => c == "wire s4");
        Assert.DoesNotContain(Paths(HarnessDrawing.Svg(Two.Solve())), c => c == "wire s4");
    }

    [Fact]
    public void Svg_OfNamesThatAreMarkup_IsStillADocument()
    {
        Harness odd = new HarnessBuilder("<a & b>", DesignRules.RoadVehicle).Terminals("\"+\"", "<−>").Source("&", "\"+\"", "<−>", Vans.Battery600).Load("<lamp>", "\"+\"", "<−>", Load.Resistance(ElectricResistance.FromOhms(6))).Build();
        Assert.Contains("<lamp>", Texts(HarnessDrawing.Svg(odd)));
    }

    private static string[] Texts(string svg) => [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];

    private static string[] Paths(string svg) => [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "path").Skip(5).Select(e => e.Attribute("class")!.Value)];
}
