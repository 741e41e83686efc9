using LowVoltage.Calc.Quantities;
using MathNet.Numerics.Interpolation;

namespace LowVoltage.Calc.Circuits;

/// <summary>A load known by measured points: a monotone cubic between them, through the origin below, straight on above.</summary>
/// <remarks>
/// The cubic is that of F. N. Fritsch and J. Butland (1984), in MathNet.Numerics: it has no waves between the points, so that a current never falls where the points rise, and the loop keeps one operating point.
/// Immutable; the spline is not changed once made.
/// </remarks>
internal sealed class MeasuredLoad : Load
{
    internal const int LeastPoints = 3;

    private readonly double[] volts;
    private readonly double[] amperes;
    private readonly CubicSpline line;
    private readonly double slopeBeyond;

    private MeasuredLoad(double[] volts, double[] amperes)
        : base("load of measured points")
    {
        this.volts = volts;
        this.amperes = amperes;
        line = CubicSpline.InterpolatePchipSorted(volts, amperes);
        slopeBeyond = Math.Max(0, line.Differentiate(volts[volts.Length - 1]));
    }

    internal IReadOnlyList<double> MeasuredVolts => volts;

    internal IReadOnlyList<double> MeasuredAmperes => amperes;

    private double First => volts[0];

    private double Last => volts[volts.Length - 1];

    internal static MeasuredLoad Create(IReadOnlyList<UnitsNet.ElectricPotential> voltages, IReadOnlyList<UnitsNet.ElectricCurrent> currents)
    {
        _ = voltages ?? throw new ArgumentNullException(nameof(voltages));
        _ = currents ?? throw new ArgumentNullException(nameof(currents));
        if (voltages.Count < LeastPoints || voltages.Count != currents.Count)
        {
            throw new ArgumentException(
                $"At least {Accept.Text(LeastPoints)} voltages with a current each are needed; there were {Accept.Text(voltages.Count)} voltages and {Accept.Text(currents.Count)} currents.",
                voltages.Count < LeastPoints ? nameof(voltages) : nameof(currents));
        }

        double[] u = new double[voltages.Count], i = new double[currents.Count];
        for (int k = 0; k < u.Length; k++)
        {
            u[k] = Row(Accept.Raw(voltages[k]), Accept.MostVolts, "V", nameof(voltages), k);
            i[k] = Row(Accept.Raw(currents[k]), Accept.MostAmperes, "A", nameof(currents), k);
            if (k > 0 && !(u[k] > u[k - 1]))
            {
                throw new ArgumentException($"voltages[{Accept.Text(k)}] must be above the one before it, {Accept.Text(u[k - 1])} V; it was {Accept.Text(u[k])} V.", nameof(voltages));
            }

            if (k > 0 && i[k] < i[k - 1])
            {
                throw new ArgumentException(
                    $"currents[{Accept.Text(k)}] must not be below the one before it, {Accept.Text(i[k - 1])} A; it was {Accept.Text(i[k])} A. A load that draws less at a higher voltage is one of constant power.",
                    nameof(currents));
            }
        }

        return new MeasuredLoad(u, i);
    }

    // The argument is the list; the message names the row.
    private static double Row(double value, double most, string unit, string name, int row) => value >= Accept.Least && value <= most
        ? value
        : throw new ArgumentOutOfRangeException(
            name, value, $"{name}[{Accept.Text(row)}] must be greater than zero and at most {Accept.Text(most)} {unit}; it was {Accept.Text(value)} {unit}.");

    internal override LoadLaw LawAt(LoadState state) => new(0, 0, 0, false);

    internal override double SlopeAt(double volts, LoadState state) =>
        volts < First ? amperes[0] / First : volts > Last ? slopeBeyond : Math.Max(0, line.Differentiate(volts));

    internal override string? RemarkAt(double volts, LoadState state) => volts >= First * (1 - 1e-12) && volts <= Last * (1 + 1e-12)
        ? null
        : $"The load is at {Accept.Text(volts)} V, outside its measured points of {Accept.Text(First)} V to {Accept.Text(Last)} V: its current there is only a guide.";

    /// <summary>What was measured, in words.</summary>
    internal string Points => string.Join("; ", volts.Select((u, k) => $"{Accept.Text(u)} V: {Accept.Text(amperes[k])} A"));

    private protected override Load ScaledCore(double factor) => new MeasuredLoad(volts, [.. amperes.Select(i => i * factor)]);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Measure(this);

    private protected override double AmperesCore(double volts, LoadState state) =>
        volts < First ? amperes[0] * volts / First : volts > Last ? amperes[amperes.Length - 1] + (slopeBeyond * (volts - Last)) : line.Interpolate(volts);
}
