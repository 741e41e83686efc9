using System.Globalization;
using System.Xml.Linq;

namespace LowVoltage.Calc.Working;

/// <summary>Lines, shapes and text as SVG; coordinates in pixels from the top left, printed to a hundredth so that every platform prints the same.</summary>
internal sealed class SvgCanvas
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal const double FontSize = 12;

    // Wide for a common sans-serif face, so that no text runs into a line.
    private const double WidthOfCharacter = 6.8;

    // What is drawn goes into the innermost group.
    private XElement group = new(Svg + "g");

    internal static double WidthOf(string text) => text.Length * WidthOfCharacter;

    internal void Line(double x1, double y1, double x2, double y2, bool thick = false) =>
        Draw("line", ("x1", Text(x1)), ("y1", Text(y1)), ("x2", Text(x2)), ("y2", Text(y2)), ("stroke-width", thick ? "3" : null));

    internal void Box(double x, double y, double width, double height) => Draw("rect", ("x", Text(x)), ("y", Text(y)), ("width", Text(width)), ("height", Text(height)));

    internal void Circle(double x, double y, double radius) => Draw("circle", ("cx", Text(x)), ("cy", Text(y)), ("r", Text(radius)));

    internal void Dot(double x, double y) => Draw("circle", ("cx", Text(x)), ("cy", Text(y)), ("r", "2.5"), ("fill", "currentColor"));

    internal void Polyline(params (double X, double Y)[] points) => Draw("polyline", ("points", string.Join(" ", points.Select(point => $"{Text(point.X)},{Text(point.Y)}"))));

    internal void Say(double x, double y, string words, string anchor) =>
        Draw("text", ("x", Text(x)), ("y", Text(y)), ("text-anchor", anchor), ("fill", "currentColor"), ("stroke", "none")).Add(Xhtml.Clean(words));

    /// <summary>What is drawn at a place, turned a quarter to the right if it stands upright.</summary>
    internal void At(double x, double y, bool upright, Action draw)
    {
        XElement outer = group;
        group = Draw("g", ("transform", $"translate({Text(x)} {Text(y)}){(upright ? " rotate(90)" : "")}"));
        draw();
        group = outer;
    }

    internal XElement Finish(string id, string title, string description, double width, double height, bool standsAlone)
    {
        XElement picture = Shape(
            "svg",
            ("xmlns", Svg.NamespaceName), ("class", "circuit"), ("viewBox", $"0 0 {Text(width)} {Text(height)}"), ("width", Text(width)), ("height", Text(height)), ("color", standsAlone ? "#000" : null), ("role", "img"),
            ("aria-labelledby", $"{id}-title {id}-desc"), ("fill", "none"), ("stroke", "currentColor"), ("stroke-width", "1.5"), ("stroke-linecap", "round"),
            ("font-family", "Helvetica,Arial,sans-serif"), ("font-size", Text(FontSize)));
        picture.Add(new XElement(Svg + "title", new XAttribute("id", id + "-title"), Xhtml.Clean(title)), new XElement(Svg + "desc", new XAttribute("id", id + "-desc"), Xhtml.Clean(description)));
        if (standsAlone)
        {
            picture.Add(Shape("rect", ("x", "0"), ("y", "0"), ("width", Text(width)), ("height", Text(height)), ("fill", "#fff"), ("stroke", "none")));
        }

        picture.Add(group.Elements());
        return picture;
    }

    private static XElement Shape(string name, params (string Name, string? Value)[] attributes) =>
        new(Svg + name, attributes.Where(attribute => attribute.Value is not null).Select(attribute => new XAttribute(attribute.Name, attribute.Value!)));

    private static string Text(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private XElement Draw(string name, params (string Name, string? Value)[] attributes)
    {
        XElement shape = Shape(name, attributes);
        group.Add(shape);
        return shape;
    }
}
