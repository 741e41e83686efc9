using LowVoltage.Calc.Harnesses;
using ScottPlot;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>One check over the batch: which share of the circuits has at most the value on the axis, with the limit of the circuit as drawn.</summary>
internal static class Curve
{
    internal static Plot Draw(CircuitDesign design, ToleranceSample sample, string name)
    {
        SampledCheck check = sample.Checks.Single(c => c.Name == name);
        double[] shares = [.. Enumerable.Range(0, 1001).Select(k => 0.1 * k)], values = [.. shares.Select(share => check.Percentile(share)!.Value)];
        Plot plot = new();
        plot.Title($"{char.ToUpperInvariant(name[0])}{name[1..]}, {FormattableString.Invariant($"{sample.Count}")} circuits\n{Circuit.Caution}", 15);
        plot.XLabel($"{name} ({check.Unit})");
        plot.YLabel("Share of the circuits with at most this (%)");
        var line = plot.Add.ScatterLine(values, shares, Colors.SteelBlue);
        line.LineWidth = 2;
        if (design.Checks.Single(c => c.Kind!.Name == name).Limit is { } limit)
        {
            plot.Add.VerticalLine(limit, 2, Colors.Black, LinePattern.Dashed).LegendText = FormattableString.Invariant($"limit, {limit:G4} {check.Unit}");
            plot.ShowLegend(Alignment.LowerRight);
        }

        plot.Axes.SetLimitsY(0, 100);
        return plot;
    }
}
