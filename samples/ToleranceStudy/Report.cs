using System.Globalization;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Percentiles and shares, as text.</summary>
internal static class Report
{
    private static readonly double[] Percents = [1, 5, 50, 95, 99];

    internal static void Write(Circuit circuit, Cases cases, ulong seed, TextWriter output)
    {
        output.WriteLine(Circuit.Caution.ReplaceLineEndings(output.NewLine));
        output.WriteLine();
        output.WriteLine($"{circuit.Wire}, out and back, into a constant-power load");
        output.WriteLine(Invariant($"rated {circuit.RatedAmperes:0.0} A in still air of {circuit.BaseCelsius:0} °C for {circuit.MostCelsius:0} °C (heat balance)"));
        output.WriteLine(Cases.Spreads.ReplaceLineEndings(output.NewLine));
        output.WriteLine();
        output.WriteLine(Invariant($"{cases.Count} draws, seed {seed}"));
        output.WriteLine("percentile          " + string.Concat(Percents.Select(percent => Invariant($"{percent,8:0} %"))));
        Row(output, "volts at the load", cases.LoadVolts, "0.00");
        Row(output, "current, A", cases.Amperes, "0.00");
        Row(output, "wire, °C", cases.WireCelsius, "0.0");
        output.WriteLine();
        Func<int, bool> none = i => cases.LoadVolts[i] == 0, low = i => cases.LoadVolts[i] < circuit.LeastVolts, hot = i => cases.WireCelsius[i] > circuit.MostCelsius;
        Share(output, Invariant($"below {circuit.LeastVolts:0.0} V at the load"), cases, low);
        Share(output, Invariant($"wire above {circuit.MostCelsius:0} °C"), cases, hot);
        Share(output, "fails either", cases, i => low(i) || hot(i));
        Share(output, "of these without any operating point", cases, none);
    }

    /// <summary>The value that this per cent of the draws do not exceed: the nearest rank, so always one that was drawn.</summary>
    internal static double Percentile(double[] sorted, double percent) =>
        sorted[Math.Max(0, (int)Math.Ceiling(percent / 100 * sorted.Length) - 1)];

    private static void Row(TextWriter output, string name, double[] values, string format)
    {
        double[] sorted = [.. values];
        Array.Sort(sorted);
        output.WriteLine($"{name,-20}" + string.Concat(Percents.Select(percent => Percentile(sorted, percent).ToString(format, CultureInfo.InvariantCulture).PadLeft(10))));
    }

    private static void Share(TextWriter output, string name, Cases cases, Func<int, bool> fails)
    {
        int count = Enumerable.Range(0, cases.Count).Count(fails);
        output.WriteLine(Invariant($"{name,-38}{100.0 * count / cases.Count,8:0.00} %"));
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
