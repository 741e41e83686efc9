namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Draws of three shapes from one seed, the same on every machine and under every version of .NET.</summary>
/// <remarks>
/// The generator is SplitMix64 (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014): a counter that goes up by an odd constant, its
/// bits then mixed twice. Good for a study such as this one; not for secrets.
/// </remarks>
internal sealed class Dice(ulong seed)
{
    private ulong counter = seed;

    /// <summary>Any value from least to most, all alike.</summary>
    internal double Uniform(double least, double most) => least + ((most - least) * Unit());

    /// <summary>From least to most with a peak at the likeliest, by inverting the distribution.</summary>
    internal double Triangular(double least, double likeliest, double most)
    {
        double u = Unit(), width = most - least;
        return u * width < likeliest - least
            ? least + Math.Sqrt(u * width * (likeliest - least))
            : most - Math.Sqrt((1 - u) * width * (most - likeliest));
    }

    /// <summary>Nearly normal: the sum of twelve uniform draws has a variance of 1, and never goes beyond six deviations.</summary>
    internal double Normal(double mean, double deviation)
    {
        double sum = 0;
        for (int i = 0; i < 12; i++)
        {
            sum += Unit();
        }

        return mean + (deviation * (sum - 6));
    }

    // 53 bits, from 0 to just below 1.
    private double Unit()
    {
        counter += 0x9E3779B97F4A7C15;
        ulong z = counter;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1L << 53));
    }
}
