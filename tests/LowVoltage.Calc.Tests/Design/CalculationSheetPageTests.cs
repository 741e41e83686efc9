using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FsCheck.Xunit;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The calculation as a page to sign: what whoever signs it must find on page 1, and that the working behind it is the one of the design.</summary>
public partial class CalculationSheetPageTests
{
    private static readonly SheetDetails Stated = new("Wiring desk", "4.2", "3 March 2027", "Invented launch", "No. 12", SheetPaper.A4);

    private static CircuitDesign Passing => CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), back: ReturnPath.Chassis(MilliOhm(4)), joints: Joint.Create("plug", MilliOhm(3))), DesignRules.RoadVehicle);

    private static CircuitDesign Failing => CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(12)), feed: 12), RoadVehicle(0.75), Blade(30), DesignRules.RoadVehicle);

    private static CircuitDesign Unknown => CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), upstreamMilliOhms: null), DesignRules.RoadVehicle);

    [Property(Arbitrary = [typeof(AnyCircuit)], MaxTest = 60)]
    public void Page_OfAnyCircuit_IsWellFormedOfflineAndHoldsEveryCheck(AnyCircuit circuit)
    {
        CircuitDesign design = CircuitDesigner.Design(circuit.Requirements(), circuit.Rules);
        string page = CalculationSheet.Create(design, Stated).ToHtmlPage();
        WorkedSolutionTests.AssertOffline(page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal).Replace("href=\"#", "to=\"", StringComparison.Ordinal));
        XElement[] rows = Rows(page);
        Assert.Equal(design.Checks.Count, rows.Length);
        Assert.All(design.Checks.Zip(rows), pair => AssertRow(pair.First, pair.Second));
        Assert.All(rows, row => Assert.StartsWith(row.Element("th")!.Value, StepOf(page, row), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Page_OpensWithVerdictWireAndFuse()
    {
        CircuitDesign design = Passing;
        string page = Front(CalculationSheet.Create(design, Stated));
        Assert.Equal($"Pass All {design.Checks.Count} checks pass. Least margin: {Least(design).Name}, {Shown(100 * Least(design).Margin!.Value)} %.", Element(page, "verdict").Value);
        Assert.Contains($"{design.Wire}, PVC (70 °C)", Element(page, "answer").Value, StringComparison.Ordinal);
        Assert.Contains($"{design.Fuse}, up to 32 V, breaks up to 1000 A", Element(page, "answer").Value.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfACircuitThatFails_SaysSoFirst_AndWhatWouldHelp()
    {
        CircuitDesign design = Failing;
        string page = Front(CalculationSheet.Create(design, Stated));
        string[] failed = [.. design.Checks.Where(check => check.Outcome == CheckOutcome.Fail).Select(check => check.Name)];
        Assert.True(failed.Length > 1);
        Assert.Equal($"Fail {failed.Length} of {design.Checks.Count} checks fail: {string.Join(", ", failed)}. Do not build it as it stands.", Element(page, "verdict").Value);
        Assert.All(design.Advice, advice => Assert.Contains(advice, XElement.Parse(page).Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_OfAnUndeterminedCircuit_IsNoPass()
    {
        CircuitDesign design = Unknown;
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        string page = Front(CalculationSheet.Create(design));
        Assert.StartsWith("Undetermined No check fails, 1 of ", Element(page, "verdict").Value, StringComparison.Ordinal);
        XElement row = Rows(page).Single(row => row.Attribute("class")!.Value == "undetermined");
        Assert.Equal(5, row.Elements().Count() + 1);
        Assert.Contains(design.Undetermined[0].Note, row.Value, StringComparison.OrdinalIgnoreCase);
    }

    private static readonly string[] Order = ["class=\"verdict", "class=\"facts", "<svg", "class=\"checks", "Assumptions, to be", "class=\"cautions", "class=\"signatures", "class=\"working", "id=\"step-1\""];

    [Fact]
    public void Page_ReadsInTheOrderOfASignature()
    {
        string page = CalculationSheet.Create(Passing, Stated).ToHtmlPage();
        int[] places = [.. Order
            .Select(mark => page.IndexOf(mark, page.IndexOf("<body>", StringComparison.Ordinal), StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Page_HoldsEveryAssumptionAndCaution_Once()
    {
        CircuitDesign design = Failing;
        string text = Document(CalculationSheet.Create(design).ToHtmlPage()).Root!.Element("body")!.Value;
        Assert.All(design.Assumptions.Concat(design.Cautions), line => Assert.Equal(2, text.Split(line).Length));
    }

    [Fact]
    public void Details_StandAsTheCallerGaveThem_AndBlankOnesAreLines()
    {
        Assert.Equal("ProgramWiring deskVersion4.2Date3 March 2027ProjectInvented launchNumberNo. 12", Element(Front(CalculationSheet.Create(Passing, Stated)), "details").Value);
        XElement blank = Element(Front(CalculationSheet.Create(Passing)), "details");
        Assert.Equal("ProgramVersionDate", blank.Value);
        Assert.Equal(3, blank.Descendants("span").Count(span => span.Attribute("class")?.Value == "line"));
    }

    [Theory]
    [InlineData(SheetPaper.A4, "size:A4;")]
    [InlineData(SheetPaper.Letter, "size:letter;")]
    [InlineData(SheetPaper.Any, "size:auto;")]
    public void Print_HasThePaperAndNumberedPages(SheetPaper paper, string size)
    {
        string page = CalculationSheet.Create(Passing, new SheetDetails(date: "3 March 2027", paper: paper)).ToHtmlPage();
        Assert.Contains(size, page, StringComparison.Ordinal);
        Assert.Contains("counter(page) ' / ' counter(pages)", page, StringComparison.Ordinal);
        Assert.Contains("'Calculation sheet of one circuit, 3 March 2027'", page, StringComparison.Ordinal);
        Assert.Contains(".working{break-before:page", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Diagram_ShowsTheCircuit()
    {
        CircuitDesign design = Passing;
        Assert.Equal(
            FormattableString.Invariant($"Circuit: battery (lead-acid battery, 12 V); out through wire (supply lead, 20 mΩ), fuse ({design.Fuse!.Current.Amperes} A, blade fuse), wire ({design.Wire.Size}, 3 m), joint (plug, 3 mΩ); to device (constant current); back through chassis (4 mΩ)."),
            design.Diagram.Description);
        Assert.Same(design.Diagram, design.Diagram);
        string[] labels = [.. XElement.Parse(design.Diagram.ToSvg("x")).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
        Assert.Contains("blade fuse", labels);
        Assert.Contains("plug", labels);
    }

    [Fact]
    public void Diagram_OfWiringThatExists_ShowsItsStretches_AndCountsTheRest()
    {
        CircuitPath path = CircuitPath.Create(
            [Segment.Create(RoadVehicle(2.5), M(4)), Segment.Create(RoadVehicle(1.5), M(1), 2), Segment.Create(RoadVehicle(1.5), M(0.5)), Segment.Create(RoadVehicle(1), M(0.25)), Segment.Create(RoadVehicle(1), M(0.5))],
            ReturnPath.Shared(MilliOhm(3), A(6))).WithFeedJoints(Joint.Create("a", MilliOhm(1)), Joint.Create("b", MilliOhm(2)));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.Together(Load.Lamp(W(21), V(12)), Load.ConstantCurrent(A(1))), back: path.Return), path, Blade(5), DesignRules.RoadVehicle);
        Assert.Equal(
            "Circuit: battery (lead-acid battery, 12 V); out through wire (supply lead, 20 mΩ), fuse (5 A, blade fuse), wire (2.5 mm², 4 m), wire (2 × 1.5 mm², 1 m), wire (1.5 mm², 0.5 m), wire (2 more, 0.75 m), joint (2 joints, 3 mΩ); "
            + "to, side by side, lamp (incandescent lamp), device (constant current); back through shared wire (shared return, 3 mΩ, others 6 A).",
            design.Diagram.Description);
    }

    [Theory]
    [InlineData("<b>bold</b> & 'quoted' \"name\"")]
    [InlineData("a name \u0001 with \uD800 what no document may hold \uFFFE")]
    [InlineData("a name that is far too long for a line of any diagram and goes on and on and on, and on, until nobody reads it any more")]
    public void Page_TakesAnyName(string name)
    {
        CircuitRequirements asked = new(Circuit(Load.ConstantCurrent(A(5)))) { Name = name };
        CalculationSheet sheet = CalculationSheet.Create(CircuitDesigner.Design(asked, DesignRules.RoadVehicle), new SheetDetails(project: name));
        string body = Document(sheet.ToHtmlPage()).Root!.Element("body")!.Value;
        Assert.Contains(name.Replace('\u0001', '\uFFFD').Replace('\uD800', '\uFFFD').Replace('\uFFFE', '\uFFFD'), body, StringComparison.Ordinal);
        Assert.NotEmpty(sheet.ToMarkdown());
    }

    [Fact]
    public void Markdown_SaysTheSame()
    {
        CalculationSheet sheet = CalculationSheet.Create(Failing, Stated);
        string[] lines = sheet.ToMarkdown().Split('\n');
        Assert.Contains(lines, line => line.StartsWith("**Fail.** ", StringComparison.Ordinal));
        Assert.Contains("Program: Wiring desk · Version: 4.2 · Date: 3 March 2027 · Project: Invented launch · Number: No. 12", lines);
        foreach (CheckResult check in sheet.Design.Checks)
        {
            string[] cells = lines.Single(line => line.StartsWith($"| {Sentence(check.Name)} |", StringComparison.Ordinal)).Trim('|').Split(" | ");
            Assert.Equal(7, cells.Length);
            Assert.StartsWith(check.Outcome == CheckOutcome.Fail ? "FAIL" : "pass", cells[5], StringComparison.Ordinal);
            int step = int.Parse(cells[6], CultureInfo.InvariantCulture);
            Assert.Equal("check: " + check.Name, sheet.Working.Steps[step - 1].Sought);
        }
    }

    [Fact]
    public void Sheet_IsTheSameTextEachTime() =>
        Assert.Equal(CalculationSheet.Create(Passing, Stated).ToHtmlPage(), CalculationSheet.Create(Passing, Stated).ToHtmlPage());

    [Fact]
    public void SheetDetails_Refuses()
    {
        Assert.Equal("paper", Assert.Throws<ArgumentOutOfRangeException>(() => new SheetDetails(paper: (SheetPaper)9)).ParamName);
        Assert.Equal("project", Assert.Throws<ArgumentException>(() => new SheetDetails(project: new string('x', 121))).ParamName);
        Assert.Equal("design", Assert.Throws<ArgumentNullException>(() => CalculationSheet.Create(null!)).ParamName);
    }

    [Property(Arbitrary = [typeof(AnyCircuit)], MaxTest = 60)]
    public void Working_IsInEngineeringUnits(AnyCircuit circuit)
    {
        WorkedSolution working = CircuitDesigner.Design(circuit.Requirements(), circuit.Rules).Explain();
        Assert.All(working.Steps.Select(step => step.InNumbers).Concat(working.Givens.Select(given => given.Value)), line => Assert.DoesNotMatch(Unscaled(), line));
    }

    [Fact]
    public void Working_OfABattery_NamesTheRightSourceOfItsVoltages()
    {
        WorkedSolution working = Passing.Explain();
        Assert.Equal(LeadAcidCharge.Reference, working.Steps.Single(step => step.Symbol?.Name == "Vₘᵢₙ").Source);
        Assert.All(working.Steps.Where(step => step.Symbol?.Name is "Vₙₒₘ" or "Vₘₐₓ"), step => Assert.Equal(References.ReferenceKind.CommonPractice, step.Source!.Kind));
    }

    // A tenth of a unit or less, with the prefix left out: 0.0456 Ω.
    [GeneratedRegex(@"(?<![\d.])0\.0\d*\u00A0(V|A|Ω|W|s|m|Ω/m)(?![\w²³/·])")]
    private static partial Regex Unscaled();

    private static void AssertRow(CheckResult check, XElement row)
    {
        string[] cells = [.. row.Elements().Select(cell => cell.Value.Replace('\u00A0', ' '))];
        Assert.Equal(Sentence(check.Name), cells[0]);
        Assert.Equal(check.Outcome == CheckOutcome.Fail ? "FAIL" : check.Outcome == CheckOutcome.Pass ? "pass" : "undetermined", cells[^2]);
        if (check.Value is not { } value || check.Limit is not { } limit)
        {
            Assert.Equal(4, cells.Length);
            Assert.StartsWith(check.Note[1..], cells[1][1..], StringComparison.Ordinal);
            return;
        }

        Assert.Equal(7, cells.Length);
        Assert.Equal(value, Read(cells[1], check.Unit), 5.1e-4 * Math.Abs(value));
        Assert.Equal(limit, Read(cells[2][2..], check.Unit), 5.1e-4 * Math.Abs(limit));
        Assert.Equal(check.LimitIsLeast ? '≥' : '≤', cells[2][0]);
        Assert.StartsWith(check.Where, cells[4], StringComparison.Ordinal);
        Assert.Equal(check.Outcome == CheckOutcome.Fail, cells[3].StartsWith('−') || cells[3].StartsWith("beyond", StringComparison.Ordinal));
    }

    private static double Read(string cell, string unit)
    {
        string[] parts = cell.Split(' ');
        double number = double.Parse(parts[0], CultureInfo.InvariantCulture);
        string read = parts.Length > 1 ? parts[1] : "";
        return read == unit ? number : read == "m" + unit ? number / 1e3 : read == "µ" + unit ? number / 1e6 : throw new InvalidOperationException($"{cell} is not in {unit}");
    }

    private static string StepOf(string page, XElement row)
    {
        string id = row.Descendants("a").Single().Attribute("href")!.Value[1..];
        XElement step = Document(page).Descendants("li").Single(li => li.Attribute("id")?.Value == id);
        return step.Elements().First().Value["Check: ".Length..];
    }

    private static CheckResult Least(CircuitDesign design) => design.Checks.Where(check => check.Margin is not null && check.Kind != CheckKind.OverloadTemperature).MinBy(check => check.Margin)!;

    private static string Shown(double percent) => percent.ToString("G3", CultureInfo.InvariantCulture);

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static XDocument Document(string page) => XDocument.Parse(page);

    private static string Front(CalculationSheet sheet) => Element(sheet.ToHtmlPage(), "page-one").ToString(SaveOptions.DisableFormatting);

    private static XElement[] Rows(string page) => [.. Element(page, "checks").Element("tbody")!.Elements()];

    private static XElement Element(string page, string kind) => Document(page).Descendants().Single(e => e.Attribute("class")?.Value.Split(' ')[0] == kind);
}
