using System.Xml.Linq;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class CalculationSheetHtmlTests
{
    [Fact]
    public void Checks_CanBeScrolledByKeys_AndHaveAName()
    {
        XDocument page = XDocument.Parse(CalculationSheet.Create(CheckCase.Verify(Load.ConstantCurrent(A(2)), Blade(10))).ToHtmlPage());
        XElement wide = page.Descendants().Single(e => e.Attribute("class")?.Value == "wide");
        Assert.Equal(("region", "checks", "0"), (wide.Attribute("role")!.Value, wide.Attribute("aria-labelledby")!.Value, wide.Attribute("tabindex")!.Value));
        Assert.Equal("Checks: what the circuit has, what is allowed, and by how much", wide.Descendants().Single(e => e.Attribute("id")?.Value == "checks").Value);
    }

    [Fact]
    public void Signatures_AreTwo_EachWithALineForTheNameAndAShortOneForTheDate()
    {
        XElement[] lines = [.. Page(Blade(10)).Descendants().Single(e => Is(e, "signatures")).Elements()];
        Assert.Equal(
            [["", "Calculated by", "line", "", "", "date", "line short", ""], ["", "Checked by", "line", "", "", "date", "line short", ""]],
            lines.Select(line => line.Elements().SelectMany(span => new[] { span.Attribute("class")?.Value ?? "", span.Value })));
    }

    [Fact]
    public void Sections_AreAssumptionsCautionsWorking_AndHelpWhereSomethingFails()
    {
        string[] headings(double fuse) =>
            [.. Page(Blade(fuse)).Descendants().Where(e => e.Name.LocalName == "section").Select(e => $"{e.Attribute("class")!.Value}: {e.Elements().First(h => h.Name.LocalName is "h1" or "h2" or "header").Value.Split("Program")[0]}")];
        string[] always =
        [
            "page-one: Calculation sheet of one circuit", "list: Assumptions, to be confirmed by whoever installs the circuit", "cautions: Cautions",
        ];
        Assert.Equal([.. always, "working: Working"], headings(10));

        // 40 A on a wire for 32 A.
        Assert.Equal([.. always, "list: What would help", "working: Working"], headings(40));
    }

    [Fact]
    public void Diagram_IsNamedByItsTitleAndDescription()
    {
        XElement svg = Page(Blade(10)).Descendants().Single(e => e.Name.LocalName == "svg");
        string[] named = svg.Attribute("aria-labelledby")!.Value.Split(' ');
        Assert.All(named, id => Assert.StartsWith("circuit", id, StringComparison.Ordinal));
        Assert.All(named, id => Assert.Single(svg.Descendants(), e => e.Attribute("id")?.Value == id));
    }

    [Fact]
    public void CheckWithoutNumbers_HasItsNoteInOneWideCell_AndALinkToItsStep()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(2)), CheckCase.Nameless);
        XElement row = Page(CheckCase.Nameless).Descendants().Single(e => e.Name.LocalName == "tr" && e.Elements().First().Value == "Fault at the far end opens the fuse");
        XElement[] cells = [.. row.Elements()];
        Assert.Equal(("th", "row"), (cells[0].Name.LocalName, cells[0].Attribute("scope")!.Value));
        string note = design.Of(CheckKind.FaultOpensFuse).Note;
        Assert.Equal(4, cells.Length);

        // Of the seven columns the name, the verdict and the step stand apart.
        Assert.Equal(("4", $"{char.ToUpperInvariant(note[0])}{note[1..]} (far end)"), (cells[1].Attribute("colspan")!.Value, cells[1].Value));
        Assert.Equal("undetermined", cells[2].Value);
        Assert.Equal("#step-" + cells[3].Value, cells[3].Elements().Single().Attribute("href")!.Value);
    }

    private static XDocument Page(FuseRating fuse) => XDocument.Parse(CalculationSheet.Create(CheckCase.Verify(Load.ConstantCurrent(A(2)), fuse)).ToHtmlPage());

    private static bool Is(XElement element, string kind) => element.Attribute("class")?.Value == kind;
}
