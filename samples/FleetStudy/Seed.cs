namespace FleetStudy;

/// <summary>A seed of its own for each thing that is drawn, from its numbers alone.</summary>
internal static class Seed
{
    /// <summary>0 to 2147483647.</summary>
    public static int Of(long study, long variant, int piece)
    {
        ulong mixed = Mix(Mix(Mix((ulong)study) ^ (ulong)variant) ^ (ulong)piece);
        return (int)(mixed & int.MaxValue);
    }

    // The finaliser of SplitMix64 (Steele, Lea and Flood, 2014; constants from memory).
    private static ulong Mix(ulong x)
    {
        x += 0x9E3779B97F4A7C15;
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
        return x ^ (x >> 31);
    }
}
