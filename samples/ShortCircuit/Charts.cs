using System.Globalization;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>Two charts, each as SVG and PNG: the fuse against the wire, and the temperature against time.</summary>
internal static class Charts
{
    private const int Width = 1000;
    private const int Height = 650;

    internal static void Write(Scene scene, string folder)
    {
        Save(TimeCurrent(scene), folder, "short-circuit-time-current");
        Save(Temperatures(scene), folder, "short-circuit-temperature");
    }

    /// <summary>Fuse band and wire limit, log-log.</summary>
    private static Plot TimeCurrent(Scene scene)
    {
        Plot plot = New($"{scene.Fuse} against {scene.Wire}", "Current (A)", "Time (s)");
        double first = scene.Fuse.Curve!.FusingCurrent.Amperes, last = scene.Path.ProspectiveCurrent.Amperes;
        double[] currents = [.. Steps(first, last, 200)];
        Line(plot, currents, Amperes => scene.Fuse.Curve.LongestTime(Amperes)?.Seconds, "fuse: longest time", Colors.DarkBlue, LinePattern.Solid);
        Line(plot, currents, Amperes => scene.Fuse.Curve.LeastTime(Amperes)?.Seconds, "fuse: least time", Colors.DarkBlue, LinePattern.Dashed);
        double overload = scene.Wire.Insulation.ContinuousLimit.DegreesCelsius + scene.Protected.Allowance.Opened.Kelvins;
        double fault = scene.Wire.Insulation.ShortCircuitLimit.DegreesCelsius;
        Line(plot, currents, Amperes => WireSeconds(scene, Amperes, overload), $"wire: {overload:0} °C, from {scene.Wire.Insulation.ContinuousLimit.DegreesCelsius:0} °C", Colors.DarkOrange, LinePattern.Solid);
        Line(plot, currents, Amperes => WireSeconds(scene, Amperes, fault), $"wire: {fault:0} °C, up to 5 s", Colors.DarkRed, LinePattern.Solid);
        LogAxis(plot.Axes.Bottom, 1, 2, 5);
        LogAxis(plot.Axes.Left, 1);
        plot.Axes.SetLimits(Math.Log10(first * 0.9), Math.Log10(last * 1.1), -4, 4);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    /// <summary>Conductor temperature with nothing to end it, and where the fuse does.</summary>
    private static Plot Temperatures(Scene scene)
    {
        Plot plot = New($"{scene.Length.Meters.ToString("G3", CultureInfo.InvariantCulture)} m of {scene.Wire} shorted", "Time (ms)", "Conductor temperature (°C)");
        FaultState last = FaultTransient.StateAfter(scene.Path, AdiabaticHeating.LongestDuration);
        double end = last.Time.Seconds;
        double[] seconds = [.. Steps(1e-4, end, 300)];
        double[] hot = [.. seconds.Select(s => FaultTransient.StateAfter(scene.Path, Duration.FromSeconds(s)).HottestTemperature.DegreesCelsius)];
        var line = plot.Add.Scatter(seconds.Select(s => Math.Log10(s * 1e3)).ToArray(), hot, Colors.DarkRed);
        (line.LegendText, line.MarkerSize, line.LineWidth) = (last.IsMelting ? "if nothing opened, until it melts" : "if nothing opened", 0, 3);
        Mark(plot, FaultClearing.Soonest(scene.Path, scene.Fuse), "fuse opens, soonest", Colors.SeaGreen);
        Mark(plot, FaultClearing.Latest(scene.Path, scene.Fuse), "fuse opens, latest", Colors.DarkBlue);
        double limit = scene.Wire.Insulation.ShortCircuitLimit.DegreesCelsius;
        var level = plot.Add.HorizontalLine(limit, 2, Colors.Black, LinePattern.Dashed);
        level.LegendText = $"short-circuit limit of the insulation, {limit:0} °C";
        LogAxis(plot.Axes.Bottom, 1);
        plot.Axes.SetLimits(-1, Math.Log10(end * 1.2e3), 0, 1.1 * Math.Max(limit, last.HottestTemperature.DegreesCelsius));
        plot.ShowLegend(Alignment.UpperLeft);
        return plot;
    }

    private static double? WireSeconds(Scene scene, ElectricCurrent current, double limit) => OverloadHeating.TimeToReach(
        scene.Wire, scene.Air, current, scene.Wire.Insulation.ContinuousLimit, Temperature.FromDegreesCelsius(limit))?.Seconds;

    private static void Mark(Plot plot, FaultOpening opening, string name, Color color)
    {
        if (opening is { Outcome: FaultOutcome.Opens, State: { } state })
        {
            var marker = plot.Add.Marker(Math.Log10(state.Time.Milliseconds), state.HottestTemperature.DegreesCelsius, MarkerShape.FilledCircle, 14, color);
            marker.LegendText = string.Create(CultureInfo.InvariantCulture, $"{name}: {state.Time.Milliseconds:G3} ms, {state.HottestTemperature.DegreesCelsius:0} °C");
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

    private static void Save(Plot plot, string folder, string name)
    {
        plot.SavePng(Path.Combine(folder, name + ".png"), Width, Height);
        plot.SaveSvg(Path.Combine(folder, name + ".svg"), Width, Height);
    }
}
