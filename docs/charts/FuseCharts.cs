using LowVoltage.Calc.Protection;
using ScottPlot;

namespace LowVoltage.Calc.Docs.Charts;

internal static class FuseCharts
{
    public static Plot Band()
    {
        Plot plot = Drawing.New("15 A blade fuse (ISO 8820-3 type C)", "Current (A)", "Time (s)");
        TimeCurrentCurve curve = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(15)).Curve!;
        double[] currents = [.. Drawing.LogSteps(15.1, 300, 1200)];
        Line(plot, currents, current => curve.LongestTime(current), "opens no later", Colors.DarkRed, LinePattern.Solid);
        Line(plot, currents, current => curve.LeastTime(current), "opens no sooner, customary reading", Colors.DarkBlue, LinePattern.Dashed);
        Line(plot, currents, current => curve.ProvenLeastTime(current), "opens no sooner, proven by the stated points", Colors.DarkBlue, LinePattern.Solid);
        Drawing.LogAxis(plot.Axes.Bottom, 1, 2, 5);
        Drawing.LogAxis(plot.Axes.Left, 1);
        plot.Axes.SetLimits(1.15, 2.5, -3, 6);
        plot.ShowLegend(Alignment.UpperRight);
        return plot;
    }

    private static void Line(Plot plot, double[] currents, Func<ElectricCurrent, Duration?> time, string name, Color color, LinePattern pattern) => Drawing.Line(
        plot,
        currents.Select(a => (a, time(ElectricCurrent.FromAmperes(a)))).Where(p => p.Item2 is not null).Select(p => (Math.Log10(p.a), Math.Log10(p.Item2!.Value.Seconds))),
        name, color, pattern);
}
