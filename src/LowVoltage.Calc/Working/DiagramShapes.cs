namespace LowVoltage.Calc.Working;

/// <summary>The symbols of a diagram, lying: 40 long, their middle at the origin, their positive pole or first end at the left.</summary>
internal static class DiagramShapes
{
    internal const double Half = 20;

    internal static void Draw(SvgCanvas canvas, DiagramSymbol symbol)
    {
        switch (symbol)
        {
            case DiagramSymbol.Battery:
                Plates(canvas, -9, 3);
                break;
            case DiagramSymbol.Cell:
                Plates(canvas, -3);
                break;
            case DiagramSymbol.Supply:
                Terminals(canvas);
                break;
            case DiagramSymbol.Fuse:
                canvas.Line(-Half, 0, Half, 0);
                canvas.Box(-12, -4.5, 24, 9);
                break;
            case DiagramSymbol.Switch:
                Ends(canvas, 10);
                canvas.Line(-10, 0, 9, -9);
                break;
            case DiagramSymbol.Resistor:
                Ends(canvas, 13);
                canvas.Box(-13, -5, 26, 10);
                break;
            case DiagramSymbol.Heater:
                Ends(canvas, 14);
                canvas.Box(-14, -5, 28, 10);
                canvas.Line(-7, -5, -7, 5);
                canvas.Line(0, -5, 0, 5);
                canvas.Line(7, -5, 7, 5);
                break;
            case DiagramSymbol.Lamp:
                Ends(canvas, 10);
                canvas.Circle(0, 0, 10);
                canvas.Line(-7.07, -7.07, 7.07, 7.07);
                canvas.Line(-7.07, 7.07, 7.07, -7.07);
                break;
            case DiagramSymbol.Motor:
                Ends(canvas, 11);
                canvas.Circle(0, 0, 11);
                break;
            case DiagramSymbol.Device:
                Ends(canvas, 12);
                canvas.Box(-12, -10, 24, 20);
                break;
            case DiagramSymbol.Joint:
                Ends(canvas, 3);
                canvas.Circle(0, 0, 3);
                break;
            case DiagramSymbol.SharedWire:
                Shared(canvas);
                break;
            case DiagramSymbol.Fault:
                canvas.Line(-Half, 0, Half, 0);
                // A flash with its head on the line, beside it and not across, so that the line still reads as one; on the side away from the labels.
                canvas.Polyline((4, 17), (-2, 10), (3, 10), (-1, 2));
                canvas.Polyline((-2.5, 6), (-1, 2), (3, 4));
                break;
            default:
                canvas.Line(-Half, 0, Half, 0);
                break;
        }
    }

    /// <summary>A frame or earth, hanging from the origin.</summary>
    internal static void DrawGround(SvgCanvas canvas, DiagramSymbol symbol)
    {
        if (symbol == DiagramSymbol.Earth)
        {
            canvas.Line(-10, 0, 10, 0);
            canvas.Line(-6, 4, 6, 4);
            canvas.Line(-2.5, 8, 2.5, 8);
            return;
        }

        canvas.Line(-11, 0, 11, 0);
        canvas.Line(-11, 0, -15, 8);
        canvas.Line(0, 0, -4, 8);
        canvas.Line(11, 0, 7, 8);
    }

    private static void Plates(SvgCanvas canvas, params double[] cells)
    {
        Ends(canvas, -cells[0], cells[cells.Length - 1] + 6);
        foreach (double x in cells)
        {
            canvas.Line(x, -11, x, 11);
            canvas.Line(x + 6, -5.5, x + 6, 5.5, thick: true);
        }

        // Between two cells of a battery there is a wire.
        for (int i = 1; i < cells.Length; i++)
        {
            canvas.Line(cells[i - 1] + 6, 0, cells[i], 0);
        }

        Plus(canvas, cells[0] - 6, 8);
    }

    private static void Terminals(SvgCanvas canvas)
    {
        Ends(canvas, 15);
        canvas.Circle(-12, 0, 3);
        canvas.Circle(12, 0, 3);
        Plus(canvas, -12, 10);
        canvas.Line(12, 6.5, 12, 13.5);
    }

    private static void Plus(SvgCanvas canvas, double x, double y)
    {
        canvas.Line(x - 3, y, x + 3, y);
        canvas.Line(x, y - 3, x, y + 3);
    }

    private static void Shared(SvgCanvas canvas)
    {
        canvas.Line(-Half, 0, Half, 0, thick: true);
        foreach (double x in (double[])[-10, 10])
        {
            canvas.Dot(x, 0);
            canvas.Line(x, 0, x, -12);
        }
    }

    private static void Ends(SvgCanvas canvas, double half) => Ends(canvas, half, half);

    private static void Ends(SvgCanvas canvas, double left, double right)
    {
        canvas.Line(-Half, 0, -left, 0);
        canvas.Line(right, 0, Half, 0);
    }
}
