using System.Globalization;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace LowVoltage.Calc.Docs.Charts;

/// <summary>What every chart shares.</summary>
internal static class Drawing
{
    public static Plot New(string title, string x, string y)
    {
        Plot plot = new();
        plot.Title(title, 18);
        plot.XLabel(x, 16);
        plot.YLabel(y, 16);
        plot.Legend.FontSize = 14;
        return plot;
    }

    public static void Line(Plot plot, IEnumerable<(double X, double Y)> points, string name, Color color, LinePattern? pattern = null)
    {
        (double X, double Y)[] all = [.. points];
        var line = plot.Add.Scatter(all.Select(p => p.X).ToArray(), all.Select(p => p.Y).ToArray(), color);
        (line.LegendText, line.MarkerSize, line.LineWidth, line.LinePattern) = (name, 0, 3, pattern ?? LinePattern.Solid);
    }

    public static void Points(Plot plot, IEnumerable<(double X, double Y)> points, string name, Color color)
    {
        (double X, double Y)[] all = [.. points];
        var marks = plot.Add.Scatter(all.Select(p => p.X).ToArray(), all.Select(p => p.Y).ToArray(), color);
        (marks.LegendText, marks.MarkerSize, marks.LineWidth) = (name, 9, 0);
    }

    public static IEnumerable<double> Steps(double from, double to, int count) => Enumerable.Range(0, count + 1).Select(i => from + ((to - from) * i / count));

    public static IEnumerable<double> LogSteps(double from, double to, int count) => Enumerable.Range(0, count + 1).Select(i => from * Math.Pow(to / from, (double)i / count));

    /// <summary>The plot is of logarithms; the ticks show the numbers, at these steps of every decade.</summary>
    public static void LogAxis(IAxis axis, params int[] steps)
    {
        NumericManual ticks = new();
        for (int exponent = -4; exponent <= 5; exponent++)
        {
            foreach (int step in Enumerable.Range(1, 9))
            {
                double value = step * Math.Pow(10, exponent);
                if (steps.Contains(step))
                {
                    ticks.AddMajor(Math.Log10(value), value.ToString("0.######", CultureInfo.InvariantCulture));
                }
                else
                {
                    ticks.AddMinor(Math.Log10(value));
                }
            }
        }

        axis.TickGenerator = ticks;
    }
}
