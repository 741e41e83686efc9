using System.Xml.Linq;

namespace LowVoltage.Calc.Working;

/// <summary>Where the parts of a diagram stand: the source at the left, the way out along the top, the loads at the right, the way back along the bottom.</summary>
internal static class DiagramLayout
{
    private const double Margin = 10;
    private const double LineHeight = 14;
    private const double LeastCell = 56;
    private const double BesideLabel = 16;
    private const double Gap = 14;
    private const double LeastHeight = 64;

    internal static XElement Write(CircuitDiagram diagram, string id, bool standsAlone, out double width)
    {
        SvgCanvas canvas = new();
        IReadOnlyList<DiagramPart> back = [.. diagram.Back.Where(part => !IsGround(part))];
        DiagramPart? ground = diagram.Back.FirstOrDefault(IsGround);
        double left = Margin + Gap, top = Margin + Lines(diagram.Feed) + 12;
        double beside = Math.Max(Lines([diagram.Source]), Lines(diagram.Loads)), bottom = top + Math.Max(LeastHeight, beside + 24);
        double right = left + Math.Max(Math.Max(Width(diagram.Feed), Width(back)) + (2 * Gap), Widest(diagram.Source) + BesideLabel + (2 * Gap));
        double lastX = Loads(canvas, diagram, right, top, bottom, out double end);
        Upright(canvas, diagram.Source, left, top, bottom);
        Along(canvas, diagram.Feed, left, right, lastX, top, below: false);
        if (ground is null)
        {
            Along(canvas, back, left, right, lastX, bottom, below: true);
        }
        else
        {
            Ground(canvas, ground, left, right, lastX, bottom);
        }

        double height = bottom + Margin + Math.Max(12, ground is null ? Lines(back) + (back.Count > 0 ? 10 : 0) : 14 + Lines([ground]));
        width = Math.Max(end, ground is null ? 0 : ((left + right) / 2) + (Widest(ground) / 2)) + Margin;
        return canvas.Finish(id, diagram.Title, diagram.Description, width, height, standsAlone);
    }

    private static bool IsGround(DiagramPart part) => part.Symbol is DiagramSymbol.Chassis or DiagramSymbol.Earth;

    private static double Lines(IReadOnlyList<DiagramPart> parts) => parts.Count == 0 ? 0 : LineHeight * parts.Max(part => part.Labels.Count);

    private static double Widest(DiagramPart part) => part.Labels.Count == 0 ? 0 : part.Labels.Max(SvgCanvas.WidthOf);

    private static double Cell(DiagramPart part) => Math.Max(LeastCell, Widest(part) + Gap);

    private static double Width(IReadOnlyList<DiagramPart> parts) => parts.Sum(Cell);

    // The loads one beside the other, each between the two rails.
    private static double Loads(SvgCanvas canvas, CircuitDiagram diagram, double right, double top, double bottom, out double end)
    {
        double x = right;
        end = right;
        for (int i = 0; i < diagram.Loads.Count; i++)
        {
            DiagramPart load = diagram.Loads[i];
            x = i == 0 ? right : end + Gap + 12;
            Upright(canvas, load, x, top, bottom);
            end = x + BesideLabel + Widest(load);
            if (i < diagram.Loads.Count - 1)
            {
                canvas.Dot(x, top);
                canvas.Dot(x, bottom);
            }
        }

        return x;
    }

    private static void Upright(SvgCanvas canvas, DiagramPart part, double x, double top, double bottom)
    {
        double middle = (top + bottom) / 2;
        canvas.Line(x, top, x, middle - DiagramShapes.Half);
        canvas.Line(x, middle + DiagramShapes.Half, x, bottom);
        canvas.At(x, middle, upright: true, () => DiagramShapes.Draw(canvas, part.Symbol));
        Letter(canvas, part, x, middle);
        double first = middle + 4 - (LineHeight * (part.Labels.Count - 1) / 2);
        for (int i = 0; i < part.Labels.Count; i++)
        {
            canvas.Say(x + BesideLabel, first + (LineHeight * i), part.Labels[i], "start");
        }
    }

    // The parts evenly over the first stretch of a rail; the rail goes on to the last load.
    private static void Along(SvgCanvas canvas, IReadOnlyList<DiagramPart> parts, double left, double right, double last, double y, bool below)
    {
        double spare = parts.Count == 0 ? 0 : (right - left - Width(parts)) / (parts.Count + 1), x = left;
        double line = left;
        foreach (DiagramPart part in parts)
        {
            double middle = x + spare + (Cell(part) / 2);
            canvas.Line(line, y, middle - DiagramShapes.Half, y);
            canvas.At(middle, y, upright: false, () => DiagramShapes.Draw(canvas, part.Symbol));
            Letter(canvas, part, middle, y);
            double first = below ? y + 22 : y - 14 - (LineHeight * (part.Labels.Count - 1));
            for (int i = 0; i < part.Labels.Count; i++)
            {
                canvas.Say(middle, first + (LineHeight * i), part.Labels[i], "middle");
            }

            x += spare + Cell(part);
            line = middle + DiagramShapes.Half;
        }

        canvas.Line(line, y, last, y);
    }

    private static void Ground(SvgCanvas canvas, DiagramPart ground, double left, double right, double last, double y)
    {
        canvas.At(left, y, upright: false, () => DiagramShapes.DrawGround(canvas, ground.Symbol));
        canvas.At(right, y, upright: false, () => DiagramShapes.DrawGround(canvas, ground.Symbol));
        canvas.Line(right, y, last, y);
        for (int i = 0; i < ground.Labels.Count; i++)
        {
            canvas.Say((left + right) / 2, y + 22 + (LineHeight * i), ground.Labels[i], "middle");
        }
    }

    // A letter stays upright when its symbol is turned.
    private static void Letter(SvgCanvas canvas, DiagramPart part, double x, double y)
    {
        if (part.Symbol == DiagramSymbol.Motor)
        {
            canvas.Say(x, y + 4.5, "M", "middle");
        }
    }
}
