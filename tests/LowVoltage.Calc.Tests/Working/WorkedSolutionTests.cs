using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>A worked solution as text, Markdown and HTML; what is expected was written by hand.</summary>
public class WorkedSolutionTests
{
    private static readonly Reference Book = new() { Title = "A book <of> wires", Edition = "1999", Kind = ReferenceKind.Handbook };

    private static WorkedSolution Sample()
    {
        SolutionBuilder board = new("Drop & heat");
        Symbol i = board.Given("current", "I", 2.5, "A");
        board.Given("wire", "a * star_wire | 2");
        Symbol r = board.LookUp("resistance", "R", 0.3, "Ω", Book, "Read off.");
        board.Section("Heat");
        Symbol p = board.Step("heat", "P", Formula.Square(i) * r, 1.875, "W", Book, "Joule's law.");
        board.Compare("is it cool", p, Relation.AtMost, new Symbol("P_max", 1.87, "W", "limit"), null);
        board.State("hint", "Take a thicker wire.");
        board.Note("Assumptions", ["Still air."]);
        board.Caution("Hot \"metal\" burns.");
        return board.Build("P = 1.875 W");
    }

    [Fact]
    public void ToText_IsWhatATeacherWouldWrite() => Assert.Equal(
        """
        Drop & heat
        ===========

        Given
          I = 2.5~A, current
          wire: a * star_wire | 2

        1. Resistance
           R = 0.3~Ω
           Read off.
           Source: A book <of> wires (1999) [handbook]

        Heat
        ----

        2. Heat
           P = I²·R
           P = (2.5~A)² · 0.3~Ω = 1.875~W
           Joule's law.
           Source: A book <of> wires (1999) [handbook]

        3. Is it cool
           P ≤ P_max
           1.875~W ≤ 1.87~W: does not hold

        4. Hint
           Take a thicker wire.

        Answer: P = 1.875 W

        Assumptions
        - Still air.

        Cautions
        - Hot "metal" burns.

        """.Replace("\r", "", StringComparison.Ordinal),
        Sample().ToText().Replace('\u00A0', '~').Replace("Pₘₐₓ", "P_max", StringComparison.Ordinal));

    [Fact]
    public void ToMarkdown_HasLatexAndEscapesItsOwnSigns()
    {
        string text = Sample().ToMarkdown();
        Assert.StartsWith("## Drop & heat\n\n**Given**\n\n| what | value |\n| --- | --- |\n| current | $I = 2.5\\,\\mathrm{A}$ |\n| wire | a \\* star\\_wire \\| 2 |\n", text, StringComparison.Ordinal);
        Assert.Contains("$$P = I^{2} \\cdot R = \\left(2.5\\,\\mathrm{A}\\right)^{2} \\cdot 0.3\\,\\mathrm{\\Omega } = 1.875\\,\\mathrm{W}$$", text, StringComparison.Ordinal);
        Assert.Contains("$$P = 1.875\\,\\mathrm{W} \\nleq 1.87\\,\\mathrm{W} = P_{\\mathrm{max}}$$", text, StringComparison.Ordinal);
        Assert.Contains("*Source:* A book \\<of\\> wires (1999) \\[handbook\\]", text, StringComparison.Ordinal);
        Assert.Contains("### Heat", text, StringComparison.Ordinal);
        Assert.Contains("> - Hot \"metal\" burns.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_IsWellFormedAndNeedsNoNetwork()
    {
        WorkedSolution sample = Sample();
        XElement section = XDocument.Parse(sample.ToHtml(), LoadOptions.PreserveWhitespace).Root!;
        Assert.Equal("Drop & heat", section.Element("h2")!.Value);
        Assert.Equal(4, section.Elements("ol").Elements("li").Count());
        Assert.Equal("3", section.Elements("ol").Count() == 2 ? "3" : "");
        XElement math = section.Descendants("div").Single(m => (string?)m.Attribute("class") == "math" && m.Value.Contains("1.875", StringComparison.Ordinal) && m.Descendants("msup").Any());
        Assert.Equal("P=I2·R=(2.5\u00A0A)2·0.3\u00A0Ω=1.875\u00A0W", math.Value);
        // In pieces, so that a long line is not cut off on paper.
        Assert.True(math.Elements("math").Count() >= 3);
        XDocument page = XDocument.Parse(sample.ToHtmlPage());
        Assert.Equal("html", page.Root!.Name.LocalName);
        AssertOffline(sample.ToHtmlPage());
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Rendering_AnyCulture_GivesTheSameText(string culture)
    {
        WorkedSolution solution = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper).ExplainResistance(Length.FromMeters(5.5), Temperature.FromDegreesCelsius(-20));
        (string, string, string) expected = (solution.ToText(), solution.ToMarkdown(), solution.ToHtmlPage());
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            WorkedSolution again = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper).ExplainResistance(Length.FromMeters(5.5), Temperature.FromDegreesCelsius(-20));
            Assert.Equal(expected, (again.ToText(), again.ToMarkdown(), again.ToHtmlPage()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Wire_ResistanceAtTemperature_ReadsAsByHand()
    {
        // 14 AWG: 1.6277 mm, 2.08091 mm²; copper 1/58 Ω·mm²/m; by hand 0.0082855 Ω/m. Five digits of the operands would give 0.008285, so six are shown.
        WorkedSolution solution = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper).ExplainResistance(Length.FromMeters(5.5), Temperature.FromDegreesCelsius(75));
        string[] lines = [.. solution.Steps.Select(s => s.InNumbers.Replace('\u00A0', ' '))];
        Assert.Contains("R′₂₀ = 0.0172414 Ω·mm²/m / 2.08091 mm² = 0.008286 Ω/m", lines);
        Assert.Equal("0.05542 Ω", solution.Steps[^1].Rounded.Replace('\u00A0', ' '));
        Assert.Equal("R′·L", solution.Steps[^1].Formula!.ToString());
    }

    [Fact]
    public void Comparison_ForgivenByTheCalculation_NeverShowsTheOpposite()
    {
        // 12 A at 80 % is 15.000000000000002 A in binary: the 15 A fuse is right, and 15 ≥ 15 is shown.
        SolutionStep last = Calc.Protection.FuseLoading.ExplainSmallestFor(
            Calc.Protection.FuseSeries.RoadVehicleBlade, ElectricCurrent.FromAmperes(12), Calc.Protection.LoadingRule.RoadVehicle).Steps[^1];
        Assert.Equal(15, last.Result);
        Assert.Equal("15 A ≥ 15 A: holds", last.InNumbers.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Comparison_OfNeighbours_ShowsEnoughDigits()
    {
        SolutionBuilder board = new("x");
        board.Compare("near", new Symbol("x", 0.360001, "V", ""), Relation.AtMost, new Symbol("y", 0.36, "V", ""), null);
        Assert.Equal("0.360001 V ≤ 0.36 V: does not hold", board.Build("").Steps[0].InNumbers.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Comparison_WithALimitThatAStepGave_ShowsThatStepsNumber()
    {
        SolutionBuilder board = new("x");
        Symbol load = board.Given("load", "I", 5.8265, "A");
        Symbol least = board.Step("least", "I_min", load / 0.8, 5.8265 / 0.8, "A", null, "", RoundingDirection.Up);
        board.Compare("enough", new Symbol("I_n", 7.5, "A", ""), Relation.AtLeast, least, null);
        WorkedSolution solution = board.Build("");

        // 5.8265/0.8 = 7.283125
        Assert.Equal("7.284 A", solution.Steps[0].Rounded.Replace('\u00A0', ' '));
        Assert.Equal("7.5 A ≥ 7.284 A: holds", solution.Steps[1].InNumbers.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Explanation_OfAnythingThatShortsOrHeats_HasCautions()
    {
        Temperature c20 = Temperature.FromDegreesCelsius(20);
        Assert.NotEmpty(ProspectiveCurrent.AtSource(Battery.LeadAcid(ElectricCurrent.FromAmperes(600))).Explain().Cautions);
        Assert.NotEmpty(Battery.ExplainLeadAcid(ElectricCurrent.FromAmperes(600)).Cautions);
        Assert.NotEmpty(Calc.Heating.AdiabaticHeating.ExplainKFactor(ConductorMaterial.Copper, c20, Temperature.FromDegreesCelsius(160)).Cautions);
        Assert.NotEmpty(Calc.Protection.FuseSeries.RoadVehicleBlade.Ratings[0].ExplainOperatingTime(ElectricCurrent.FromAmperes(3)).Cautions);
    }

    internal static void AssertOffline(string html)
    {
        foreach (string sign in new[] { "http", "//", "src=", "href", "<script", "@import", "url(" })
        {
            Assert.DoesNotContain(sign, html, StringComparison.OrdinalIgnoreCase);
        }
    }
}
