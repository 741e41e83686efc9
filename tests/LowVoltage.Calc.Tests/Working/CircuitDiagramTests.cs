using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc.Tests.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

public class CircuitDiagramTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // The circuit of a calculation sheet: battery, supply lead, fuse, feed, load, and the way back through a chassis.
    private static readonly CircuitDiagram Lamp = new(
        "Cabin lamp",
        new DiagramPart(DiagramSymbol.Battery, "12.6 V", "5 mΩ"),
        [new(DiagramSymbol.Wire, "supply lead", "14 mΩ"), new(DiagramSymbol.Fuse, "5 A"), new(DiagramSymbol.Switch), new(DiagramSymbol.Wire, "4 m", "1.5 mm²")],
        [new(DiagramSymbol.Lamp, "cabin lamp", "21 W")],
        [new(DiagramSymbol.Chassis, "steel body", "2 mΩ")]);

    [Fact]
    public void ToSvg_HasATitleAndADescriptionThatItPointsTo()
    {
        XElement svg = XElement.Parse(Lamp.ToSvg("one"));

        Assert.Equal("img", (string?)svg.Attribute("role"));
        Assert.Equal("one-title one-desc", (string?)svg.Attribute("aria-labelledby"));
        Assert.Equal("Cabin lamp", Assert.Single(svg.Elements(Svg + "title"), title => (string?)title.Attribute("id") == "one-title").Value);
        Assert.Equal(
            "Circuit: battery (12.6 V, 5 mΩ); out through wire (supply lead, 14 mΩ), fuse (5 A), switch, wire (4 m, 1.5 mm²); to lamp (cabin lamp, 21 W); back through chassis (steel body, 2 mΩ).",
            Assert.Single(svg.Elements(Svg + "desc"), desc => (string?)desc.Attribute("id") == "one-desc").Value);
        Assert.Equal("Cabin lamp", Lamp.ToString());
    }

    [Fact]
    public void ToSvg_WritesEveryLabel_AndTakesItsColourFromTheText()
    {
        XElement svg = XElement.Parse(Lamp.ToSvg("one"));
        string[] said = [.. svg.Descendants(Svg + "text").Select(text => text.Value)];

        Assert.Equal(["1.5 mm²", "12.6 V", "14 mΩ", "2 mΩ", "21 W", "4 m", "5 A", "5 mΩ", "cabin lamp", "steel body", "supply lead"], said.Order(StringComparer.Ordinal));
        string[] colours = [.. svg.DescendantsAndSelf().SelectMany(element => new[] { (string?)element.Attribute("stroke"), (string?)element.Attribute("fill") }).OfType<string>().Distinct()];
        Assert.Equal(["currentColor", "none"], colours.Order(StringComparer.Ordinal));
        Assert.DoesNotContain("style", svg.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToSvgFile_IsBlackOnWhite()
    {
        XElement svg = XDocument.Parse(Lamp.ToSvgFile()).Root!;

        Assert.Equal("#000", (string?)svg.Attribute("color"));
        Assert.Equal("#fff", (string?)svg.Elements(Svg + "rect").First().Attribute("fill"));
    }

    [Fact]
    public void ToSvg_EverySymbolLooksDifferent()
    {
        string[] drawings = [.. Enum.GetValues<DiagramSymbol>().Select(symbol => symbol is DiagramSymbol.Chassis or DiagramSymbol.Earth
            ? Of(new DiagramPart(DiagramSymbol.Cell), [], [new DiagramPart(symbol)])
            : Of(new DiagramPart(DiagramSymbol.Cell), [new DiagramPart(symbol)], []))];

        Assert.Equal(drawings.Length, drawings.Select(drawing => drawing[drawing.IndexOf("</desc>", StringComparison.Ordinal)..]).Distinct().Count());
        Assert.Contains(">M</text>", drawings[(int)DiagramSymbol.Motor], StringComparison.Ordinal);
    }

    [Fact]
    public void ToSvg_LoadsSideBySide_EachHasItsPlace()
    {
        CircuitDiagram three = new("Three", new DiagramPart(DiagramSymbol.Supply), [], [new(DiagramSymbol.Lamp, "one"), new(DiagramSymbol.Motor, "two"), new(DiagramSymbol.Heater, "three")], []);

        Assert.Contains("to, side by side, lamp (one), motor (two), heating element (three); back through a wire", three.Description, StringComparison.Ordinal);
        // Two of the three stand before the end of the rails: a dot above and one below each.
        Assert.Equal(4, XElement.Parse(three.ToSvg("x")).Descendants(Svg + "circle").Count(circle => (string?)circle.Attribute("r") == "2.5"));
    }

    [Fact]
    public void ToSvg_WhatMarkupWouldObey_IsText()
    {
        CircuitDiagram odd = new("<b> & \"x\"", new DiagramPart(DiagramSymbol.Cell, "<script>"), [], [new(DiagramSymbol.Lamp, "a & b")], []);

        Assert.Contains("<script>", XElement.Parse(odd.ToSvg("x")).Descendants(Svg + "text").Select(text => text.Value));
        Assert.DoesNotContain("<script", odd.ToSvgFile(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToSvg_OfEveryProblem_KeepsItsLabelsInsideAndApart()
    {
        // A label takes at most 6.8 pixels a character and 12 in height; its anchor says where it begins.
        string[] wrong = [.. many.All.Where(problem => problem.Diagram is not null).AsParallel().SelectMany(problem =>
        {
            XElement svg = XElement.Parse(problem.Diagram!.ToSvg("x"));
            double width = Number(svg, "width"), height = Number(svg, "height");
            (double Left, double Right, double Top, double Bottom, string Words)[] labels = [.. svg.Descendants(Svg + "text").Where(text => text.Value != "M").Select(text =>
            {
                double x = Number(text, "x"), y = Number(text, "y"), wide = 6.8 * text.Value.Length;
                double left = (string?)text.Attribute("text-anchor") == "middle" ? x - (wide / 2) : x;
                return (left, left + wide, y - 10, y + 2, text.Value);
            })];
            IEnumerable<string> outside = labels.Where(label => label.Left < 0 || label.Right > width || label.Top < 0 || label.Bottom > height).Select(label => $"outside: {label.Words}");
            IEnumerable<string> over = from i in Enumerable.Range(0, labels.Length)
                                       from j in Enumerable.Range(0, i)
                                       where labels[i].Left < labels[j].Right && labels[j].Left < labels[i].Right && labels[i].Top < labels[j].Bottom && labels[j].Top < labels[i].Bottom
                                       select $"over each other: {labels[i].Words}, {labels[j].Words}";
            return outside.Concat(over).Select(fault => $"{fault} in: {problem.Diagram.Description}");
        }).Take(5)];

        Assert.Empty(wrong);
    }

    [Fact]
    public void BadArguments_Throw()
    {
        DiagramPart cell = new(DiagramSymbol.Cell);
        DiagramPart[] many = [.. Enumerable.Repeat(cell, 13)];
        Assert.Throws<ArgumentNullException>("title", () => new CircuitDiagram(null!, cell, [], [cell], []));
        Assert.Throws<ArgumentNullException>("source", () => new CircuitDiagram("x", null!, [], [cell], []));
        Assert.Throws<ArgumentNullException>("feed", () => new CircuitDiagram("x", cell, null!, [cell], []));
        Assert.Throws<ArgumentNullException>("back", () => new CircuitDiagram("x", cell, [], [cell], [null!]));
        Assert.Throws<ArgumentException>("loads", () => new CircuitDiagram("x", cell, [], [], []));
        Assert.Throws<ArgumentException>("loads", () => new CircuitDiagram("x", cell, [], many, []));
        Assert.Throws<ArgumentException>("feed", () => new CircuitDiagram("x", cell, many, [cell], []));
        Assert.Throws<ArgumentOutOfRangeException>("symbol", () => new DiagramPart((DiagramSymbol)16));
        Assert.Throws<ArgumentNullException>("labels", () => new DiagramPart(DiagramSymbol.Cell, (string)null!));
        Assert.Throws<ArgumentException>("labels", () => new DiagramPart(DiagramSymbol.Cell, "1", "2", "3", "4", "5"));
        Assert.Throws<ArgumentException>("labels", () => new DiagramPart(DiagramSymbol.Cell, new string('x', 61)));
        Assert.Throws<ArgumentException>("labels", () => new DiagramPart(DiagramSymbol.Cell, "a\nb"));
        Assert.Throws<ArgumentNullException>("id", () => Lamp.ToSvg(null!));
        Assert.All(["", "1a", "a b", "ä"], name => Assert.Throws<ArgumentException>("id", () => Lamp.ToSvg(name)));
    }

    private static string Of(DiagramPart source, DiagramPart[] feed, DiagramPart[] back) => new CircuitDiagram("x", source, feed, [new(DiagramSymbol.Wire)], back).ToSvg("x");

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
