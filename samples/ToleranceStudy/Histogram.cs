using System.Globalization;
using ScottPlot;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Two histograms: voltage at the load and wire temperature, with their limits.</summary>
internal static class Histogram
{
    private const int Bins = 60;

    internal static Func<Plot> Volts(Circuit circuit, Cases cases) => () => Draw(
        "Voltage at the load", "Voltage at the load (V)", cases.LoadVolts, circuit.LeastVolts, volts => volts < circuit.LeastVolts,
        Invariant($"least voltage of the load, {circuit.LeastVolts:0.0} V"), Alignment.UpperRight);

    internal static Func<Plot> Temperature(Circuit circuit, Cases cases) => () => Draw(
        "Wire temperature", "Conductor temperature (°C)", cases.WireCelsius, circuit.MostCelsius, celsius => celsius > circuit.MostCelsius,
        Invariant($"limit of the insulation, {circuit.MostCelsius:0} °C"), Alignment.UpperLeft);

    private static Plot Draw(string title, string axis, double[] values, double limit, Func<double, bool> fails, string limitName, Alignment legend)
    {
        Plot plot = new();
        plot.Title($"{title}, {values.Length.ToString(CultureInfo.InvariantCulture)} draws\n{Circuit.Caution}", 15);
        plot.XLabel(axis);
        plot.YLabel("Share of the draws (%)");

        // Bins are counted from the limit, so that no bar stands on both sides of it.
        double least = values.Min(), most = values.Max(), step = (most - least) / Bins;
        int first = (int)Math.Floor((least - limit) / step), last = (int)Math.Floor((most - limit) / step);
        double[] shares = new double[last - first + 1];
        foreach (double value in values)
        {
            shares[(int)Math.Floor((value - limit) / step) - first] += 100.0 / values.Length;
        }

        double failing = 100.0 * values.Count(fails) / values.Length;
        Add(plot, "passes", Colors.SteelBlue, shares, middle => !fails(middle), limit, first, step);
        Add(plot, Invariant($"fails: {failing:0.00} %"), Colors.DarkRed, shares, fails, limit, first, step);
        var line = plot.Add.VerticalLine(limit, 2, Colors.Black, LinePattern.Dashed);
        line.LegendText = limitName;
        plot.Axes.SetLimits(Math.Min(least, limit) - (2 * step), Math.Max(most, limit) + (2 * step), 0, 1.25 * shares.Max());
        plot.ShowLegend(legend);
        return plot;
    }

    private static void Add(Plot plot, string name, Color color, double[] shares, Func<double, bool> belongs, double limit, int first, double step)
    {
        List<Bar> bars = [];
        for (int i = 0; i < shares.Length; i++)
        {
            double middle = limit + ((first + i + 0.5) * step);
            if (belongs(middle))
            {
                bars.Add(new Bar { Position = middle, Value = shares[i], Size = step, FillColor = color, LineWidth = 0 });
            }
        }

        var added = plot.Add.Bars(bars);
        added.LegendText = name;
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
