namespace FleetStudy;

/// <summary>How often a number fell into each of 400 equal steps. Counts are whole numbers: two histograms add up to the same sum in any order.</summary>
/// <remarks>What lies below the first step is counted in it, what lies above the last in that: a percentile there is a bound.</remarks>
[GenerateSerializer, Alias("FleetStudy.Histogram")]
internal sealed class Histogram
{
    public const int Steps = 400;

    [Id(0)]
    private readonly long[] counts = new long[Steps];

    [Id(1)]
    private readonly double low;

    [Id(2)]
    private readonly double step;

    public Histogram(double low, double step) => (this.low, this.step) = (low, step);

    private Histogram(Histogram from)
    {
        (low, step) = (from.low, from.step);
        from.counts.CopyTo(counts, 0);
    }

    public long Count => counts.Sum();

    public IReadOnlyList<long> Counts => counts;

    public void Add(double value) => counts[(int)Math.Clamp(Math.Floor((value - low) / step), 0, Steps - 1)]++;

    public void Merge(Histogram other)
    {
        if ((other.low, other.step) != (low, step))
        {
            throw new ArgumentException("Two histograms of different steps cannot be added.", nameof(other));
        }

        for (int k = 0; k < Steps; k++)
        {
            counts[k] += other.counts[k];
        }
    }

    /// <summary>The lower end of the step in which the percentile lies; null when nothing was counted.</summary>
    /// <param name="percent">Above 0, at most 100.</param>
    public double? Percentile(double percent)
    {
        long all = Count, seen = 0, wanted = Math.Max(1, (long)Math.Ceiling(percent / 100 * all));
        for (int k = 0; k < Steps; k++)
        {
            seen += counts[k];
            if (all > 0 && seen >= wanted)
            {
                return low + (k * step);
            }
        }

        return null;
    }

    public Histogram Copy() => new(this);
}
