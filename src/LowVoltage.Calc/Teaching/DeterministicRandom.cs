namespace LowVoltage.Calc.Teaching;

/// <summary>A tiny random generator whose numbers are the same on every platform and in every version: SplitMix64.</summary>
/// <remarks>
/// <code>z = (s += 0x9E3779B97F4A7C15); z = (z ^ (z >> 30))·0xBF58476D1CE4E5B9; z = (z ^ (z >> 27))·0x94D049BB133111EB; z ^ (z >> 31)</code>
/// <para>Integer arithmetic modulo 2^64 only. <see cref="System.Random"/> gives other numbers on other frameworks, and a draw through floating-point
/// functions could differ in the last bit between libraries. Source: G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014;
/// public domain. Not for secrets.</para>
/// </remarks>
internal sealed class DeterministicRandom(ulong seed)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    private ulong state = seed;

    /// <summary>A seed made of several numbers; each changes all of it.</summary>
    internal static ulong Mix(params ulong[] parts)
    {
        ulong mixed = 0;
        foreach (ulong part in parts)
        {
            mixed = Scramble(unchecked((mixed ^ part) + Golden));
        }

        return mixed;
    }

    internal ulong NextBits()
    {
        state = unchecked(state + Golden);
        return Scramble(state);
    }

    /// <summary>A whole number from zero to below a count, each equally likely.</summary>
    internal int Next(int count)
    {
        // The last, incomplete block of the 64-bit range is drawn again: no number is favoured.
        ulong bound = (ulong)count, most = ulong.MaxValue - (((ulong.MaxValue % bound) + 1) % bound);
        ulong bits;
        do
        {
            bits = NextBits();
        }
        while (bits > most);

        return (int)(bits % bound);
    }

    internal T Pick<T>(IReadOnlyList<T> choices) => choices[Next(choices.Count)];

    /// <summary>A number of a decimal grid: from least to most, both included, in steps.</summary>
    internal decimal OnGrid(decimal least, decimal most, decimal step) => least + (step * Next((int)((most - least) / step) + 1));

    /// <summary>The same things in another order (Fisher and Yates).</summary>
    internal List<T> Shuffle<T>(IEnumerable<T> things)
    {
        List<T> order = [.. things];
        for (int last = order.Count - 1; last > 0; last--)
        {
            int other = Next(last + 1);
            (order[last], order[other]) = (order[other], order[last]);
        }

        return order;
    }

    private static ulong Scramble(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
