using LowVoltage.Calc.Quantities;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One check over all samples: how often it failed, what that says of the batch, and how its value lies.</summary>
/// <remarks>
/// <para><b>Confidence.</b> One-sided and exact (C. J. Clopper, E. S. Pearson, 1934, from memory): with k of n failed, the share of the batch that fails is at most the quantile of the beta distribution
/// with k + 1 and n − k, with at least the stated confidence. <b>Percentiles</b> are order statistics of the samples (definition 8 of R. J. Hyndman, Y. Fan, 1996, from memory).</para>
/// <para>Immutable.</para>
/// </remarks>
public sealed class SampledCheck
{
    private readonly double[] sorted;

    internal SampledCheck(string place, string name, string unit, int samples, int failed, int undetermined, double[] sorted)
    {
        (Place, Name, Unit, Samples, Failed, Undetermined) = (place, name, unit, samples, failed, undetermined);
        this.sorted = sorted;
    }

    /// <summary>Name of the wire, fuse or load; empty for a circuit of its own.</summary>
    public string Place { get; }

    /// <summary>The check in plain words.</summary>
    public string Name { get; }

    /// <summary>The unit of its value.</summary>
    public string Unit { get; }

    /// <summary>How many samples there are.</summary>
    public int Samples { get; }

    /// <summary>In how many it failed.</summary>
    public int Failed { get; }

    /// <summary>In how many it was undetermined; they count as neither pass nor fail.</summary>
    public int Undetermined { get; }

    /// <summary>Share of the samples that failed.</summary>
    public Ratio FailedShare => Ratio.FromDecimalFractions((double)Failed / Samples);

    /// <summary>The share of the whole batch that fails is at most this, with the given confidence.</summary>
    /// <param name="confidence">0.5 to 0.999999; 0.95 if left out.</param>
    /// <returns>The upper bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public Ratio AtMost(double confidence = 0.95)
    {
        _ = Accept.Within(confidence, 0.5, 0.999999, "", nameof(confidence));
        return Ratio.FromDecimalFractions(Failed == Samples ? 1 : Beta.InvCDF(Failed + 1, Samples - Failed, confidence));
    }

    /// <summary>The share of the whole batch that fails is at least this, with the given confidence.</summary>
    /// <param name="confidence">0.5 to 0.999999; 0.95 if left out.</param>
    /// <returns>The lower bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public Ratio AtLeast(double confidence = 0.95)
    {
        _ = Accept.Within(confidence, 0.5, 0.999999, "", nameof(confidence));
        return Ratio.FromDecimalFractions(Failed == 0 ? 0 : Beta.InvCDF(Failed, Samples - Failed + 1, 1 - confidence));
    }

    /// <summary>A percentile of its value over the samples that have one.</summary>
    /// <param name="percent">0 to 100.</param>
    /// <returns>The value in <see cref="Unit"/>; <c>null</c> where no sample has one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is outside its range.</exception>
    public double? Percentile(double percent)
    {
        _ = Accept.Within(percent, 0, 100, "%", nameof(percent));
        return sorted.Length == 0 ? null : SortedArrayStatistics.QuantileCustom(sorted, percent / 100, QuantileDefinition.R8);
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{(Place.Length > 0 ? Place + ": " : "")}{Name} fails in {Accept.Text(Failed)} of {Accept.Text(Samples)}, at most {Accept.Short(100 * (double)AtMost().DecimalFractions)} % of the batch with 95 % confidence"
        + (sorted.Length > 0 ? $"; {Accept.Short(Percentile(5)!.Value)} to {Accept.Short(Percentile(95)!.Value)} {Unit} in nine of ten" : "");
}
