using System.Globalization;
using LowVoltage.Calc.Heating;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>Two charts: the fuse against the wire, and the temperature against time.</summary>
internal static class Charts
{
    /// <summary>Fuse band and wire limit, log-log, and the current of this short circuit.</summary>
    internal static Plot TimeCurrent(Scene scene)
    {
        Plot plot = New($"{scene.Fuse} against {scene.Wire}", "Current (A)", "Time (s)");
        double prospective = scene.Path.ProspectiveCurrent.Amperes, fusing = scene.Fuse.Curve?.FusingCurrent.Amperes ?? scene.Fuse.Current.Amperes;
        double first = 0.8 * Math.Min(prospective, fusing), last = 1.2 * Math.Max(prospective, 10 * fusing);
        double[] currents = [.. Steps(first, last, 400)];
        if (scene.Fuse.Curve is { } curve)
        {
            Line(plot, currents, amperes => curve.LongestTime(amperes)?.Seconds, "fuse: longest time", Colors.DarkBlue, LinePattern.Solid);
            Line(plot, currents, amperes => curve.LeastTime(amperes)?.Seconds, "fuse: least time", Colors.DarkBlue, LinePattern.Dashed);
        }

        double overload = scene.Wire.Insulation.ContinuousLimit.DegreesCelsius + scene.Protected.Allowance.Opened.Kelvins;
        double fault = scene.Wire.Insulation.ShortCircuitLimit.DegreesCelsius;
        Line(plot, currents, amperes => WireSeconds(scene, amperes, overload), $"wire: {Whole(overload)} °C, from {Whole(scene.Wire.Insulation.ContinuousLimit.DegreesCelsius)} °C", Colors.DarkOrange, LinePattern.Solid);
        Line(plot, currents, amperes => WireSeconds(scene, amperes, fault), $"wire: {Whole(fault)} °C, up to 5 s", Colors.DarkRed, LinePattern.Solid);
        var here = plot.Add.VerticalLine(Math.Log10(prospective), 2, Colors.Black, LinePattern.Dotted);
        here.LegendText = string.Create(CultureInfo.InvariantCulture, $"this short circuit: {prospective:G3} A");
        LogAxis(plot.Axes.Bottom, 1, 2, 5);
        LogAxis(plot.Axes.Left, 1);
        plot.Axes.SetLimits(Math.Log10(first), Math.Log10(last), -4, 4);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;

        static string Whole(double value) => value.ToString("0", CultureInfo.InvariantCulture);
    }

    /// <summary>Conductor temperature with nothing to end it, and where the fuse does.</summary>
    internal static Plot Temperatures(Scene scene)
    {
        Plot plot = New($"{scene.Length.Meters.ToString("G3", CultureInfo.InvariantCulture)} m of {scene.Wire} shorted", "Time (s)", "Conductor temperature (°C)");
        bool lasts = scene.Ending.Lasts;
        FaultState last = scene.StateAfter(lasts ? Duration.FromHours(1) : AdiabaticHeating.LongestDuration);
        double start = lasts ? 1 : 1e-4, end = Math.Max(last.Time.Seconds, 10 * start);
        double[] seconds = [.. Steps(start, end, 300)];
        double[] hot = [.. seconds.Select(s => scene.StateAfter(Duration.FromSeconds(s)).HottestTemperature.DegreesCelsius)];
        var line = plot.Add.Scatter(seconds.Select(Math.Log10).ToArray(), hot, Colors.DarkRed);
        (line.LegendText, line.MarkerSize, line.LineWidth) = (last.IsMelting ? "if nothing opened, until it melts" : "if nothing opened", 0, 3);
        Mark(plot, scene, scene.Ending.Soonest, end, "fuse opens, soonest", Colors.SeaGreen);
        Mark(plot, scene, scene.Ending.Latest, end, "fuse opens, latest", Colors.DarkBlue);
        Temperature limit = lasts ? scene.Wire.Insulation.ContinuousLimit : scene.Wire.Insulation.ShortCircuitLimit;
        var level = plot.Add.HorizontalLine(limit.DegreesCelsius, 2, Colors.Black, LinePattern.Dashed);
        level.LegendText = string.Create(CultureInfo.InvariantCulture, $"{(lasts ? "continuous" : "short-circuit")} limit of the insulation, {limit.DegreesCelsius:0} °C");
        LogAxis(plot.Axes.Bottom, 1);
        plot.Axes.SetLimits(Math.Log10(start), Math.Log10(end * 1.2), 0, 1.3 * Math.Max(limit.DegreesCelsius, last.HottestTemperature.DegreesCelsius));
        plot.ShowLegend(Alignment.UpperLeft);
        return plot;
    }

    private static double? WireSeconds(Scene scene, ElectricCurrent current, double limit) => OverloadHeating.TimeToReach(
        scene.Wire, scene.Air, current, scene.Wire.Insulation.ContinuousLimit, Temperature.FromDegreesCelsius(limit))?.Seconds;

    private static void Mark(Plot plot, Scene scene, Duration? time, double end, string name, Color color)
    {
        if (time is { } known && known.Seconds <= end)
        {
            double celsius = scene.StateAfter(known).HottestTemperature.DegreesCelsius;
            var marker = plot.Add.Marker(Math.Log10(known.Seconds), celsius, MarkerShape.FilledCircle, 14, color);
            marker.LegendText = string.Create(CultureInfo.InvariantCulture, $"{name}: {known.Seconds:G3} s, {celsius:0} °C");
        }
    }

    private static void Line(Plot plot, double[] currents, Func<ElectricCurrent, double?> time, string name, Color color, LinePattern pattern)
    {
        (double X, double? Y)[] points = [.. currents.Select(i => (Math.Log10(i), time(ElectricCurrent.FromAmperes(i))))];
        (double X, double Y)[] known = [.. points.Where(p => p.Y is > 0).Select(p => (p.X, Math.Log10(p.Y!.Value)))];
        var line = plot.Add.Scatter(known.Select(p => p.X).ToArray(), known.Select(p => p.Y).ToArray(), color);
        (line.LegendText, line.MarkerSize, line.LineWidth, line.LinePattern) = (name, 0, 3, pattern);
    }

    private static Plot New(string title, string x, string y)
    {
        Plot plot = new();
        plot.Title($"{title}\n{Scene.Caution.Replace(". ", ".\n", StringComparison.Ordinal)}", 15);
        plot.XLabel(x);
        plot.YLabel(y);
        return plot;
    }

    // The plots are of logarithms; the ticks show the numbers, at these steps of every decade.
    private static void LogAxis(IAxis axis, params int[] steps)
    {
        NumericManual ticks = new();
        for (int exponent = -6; exponent <= 6; exponent++)
        {
            for (int step = 1; step < 10; step++)
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

    private static IEnumerable<double> Steps(double from, double to, int count) =>
        Enumerable.Range(0, count + 1).Select(i => from * Math.Pow(to / from, (double)i / count));
}
