using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>Lines, shapes and text as SVG; coordinates in pixels from the top left, printed to a hundredth so that every platform prints the same.</summary>
internal sealed class SvgCanvas
{
    internal const double FontSize = 12;

    // Wide for a common sans-serif face, so that no text runs into a line.
    private const double WidthOfCharacter = 6.8;

    private readonly StringBuilder body = new();

    internal static double WidthOf(string text) => text.Length * WidthOfCharacter;

    internal void Line(double x1, double y1, double x2, double y2, bool thick = false) => body.Append("<line x1=\"").Append(Text(x1)).Append("\" y1=\"").Append(Text(y1))
        .Append("\" x2=\"").Append(Text(x2)).Append("\" y2=\"").Append(Text(y2)).Append(thick ? "\" stroke-width=\"3\"/>" : "\"/>");

    internal void Box(double x, double y, double width, double height) => body.Append("<rect x=\"").Append(Text(x)).Append("\" y=\"").Append(Text(y))
        .Append("\" width=\"").Append(Text(width)).Append("\" height=\"").Append(Text(height)).Append("\"/>");

    internal void Circle(double x, double y, double radius) => body.Append("<circle cx=\"").Append(Text(x)).Append("\" cy=\"").Append(Text(y)).Append("\" r=\"").Append(Text(radius)).Append("\"/>");

    internal void Dot(double x, double y) => body.Append("<circle cx=\"").Append(Text(x)).Append("\" cy=\"").Append(Text(y)).Append("\" r=\"2.5\" fill=\"currentColor\"/>");

    internal void Polyline(params (double X, double Y)[] points) =>
        body.Append("<polyline points=\"").Append(string.Join(" ", points.Select(point => $"{Text(point.X)},{Text(point.Y)}"))).Append("\"/>");

    internal void Say(double x, double y, string words, string anchor) => body.Append("<text x=\"").Append(Text(x)).Append("\" y=\"").Append(Text(y))
        .Append("\" text-anchor=\"").Append(anchor).Append("\" fill=\"currentColor\" stroke=\"none\">").Append(SolutionHtml.Escape(words)).Append("</text>");

    /// <summary>What is drawn at a place, turned a quarter to the right if it stands upright.</summary>
    internal void At(double x, double y, bool upright, Action draw)
    {
        body.Append("<g transform=\"translate(").Append(Text(x)).Append(' ').Append(Text(y)).Append(upright ? ") rotate(90)\">" : ")\">");
        draw();
        body.Append("</g>");
    }

    internal string Finish(string id, string title, string description, double width, double height, bool standsAlone)
    {
        string size = $"viewBox=\"0 0 {Text(width)} {Text(height)}\" width=\"{Text(width)}\" height=\"{Text(height)}\"";
        string color = standsAlone ? " color=\"#000\"" : "";
        string paper = standsAlone ? $"<rect x=\"0\" y=\"0\" width=\"{Text(width)}\" height=\"{Text(height)}\" fill=\"#fff\" stroke=\"none\"/>" : "";
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"circuit\" {size}{color} role=\"img\" aria-labelledby=\"{id}-title {id}-desc\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.5\" "
            + $"stroke-linecap=\"round\" font-family=\"Helvetica,Arial,sans-serif\" font-size=\"{Text(FontSize)}\"><title id=\"{id}-title\">{SolutionHtml.Escape(title)}</title><desc id=\"{id}-desc\">{SolutionHtml.Escape(description)}</desc>{paper}{body}</svg>";
    }

    private static string Text(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
