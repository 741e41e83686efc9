using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Protection;

/// <content>gG fuse-links of IEC 60269.</content>
public sealed partial class OperatingTimeLimits
{
    private static readonly Reference IndustrialMemory = Memory(
        "IEC 60269-1", "", "gG gates: medium confidence; each 0.1 s maximum equals the 0.1 s minimum two ratings higher, as the standard intends");

    private static readonly Reference IndustrialCompared = new()
    {
        Title = "IEC 60269-1", Kind = ReferenceKind.FromMemoryCompared,
        Note = "gG gates of 16 A to 630 A, pre-arcing Joule integrals of 16 A to 500 A; each 0.1 s maximum equals the 0.1 s minimum two ratings higher, as the standard intends.",
    };

    /// <summary>gG fuse-links of IEC 60269-1: conventional currents from 2 A, gates at 10 s, 5 s and 0.1 s from 16 A. From memory.</summary>
    /// <remarks>
    /// Below 16 A only the conventional currents are carried: what a fault does is undetermined there. The line drawn from them is far too long at high current, on the safe side.
    /// The least times end with the pre-arcing Joule integral at 0.01 s where it is remembered well (up to 500 A).
    /// The longest times end at the 0.1 s gate: the remembered greatest Joule integral is pre-arcing and leaves out the arc.
    /// </remarks>
    public static OperatingTimeLimits IndustrialGg { get; } = new("IEC 60269-1 gG", IndustrialMemory, [.. ConventionalCurrents(), .. Gates16AndAbove()], StandardRatings.IndustrialGg);

    private static OperatingTimeGate[] ConventionalCurrents() =>
    [
        NonFusing(2, 4, 150, 3600, IndustrialMemory),
        Gate(2, 4, 210, null, 3600, IndustrialMemory),
        NonFusing(6, 12, 150, 3600, IndustrialMemory),
        Gate(6, 12, 190, null, 3600, IndustrialMemory),
        NonFusing(16, 63, 125, 3600, IndustrialMemory),
        Gate(16, 63, 160, null, 3600, IndustrialMemory),
        NonFusing(80, 160, 125, 7200, IndustrialMemory),
        Gate(80, 160, 160, null, 7200, IndustrialMemory),
        NonFusing(200, 400, 125, 10_800, IndustrialMemory),
        Gate(200, 400, 160, null, 10_800, IndustrialMemory),
        NonFusing(500, 1250, 125, 14_400, IndustrialMemory),
        Gate(500, 1250, 160, null, 14_400, IndustrialMemory),
    ];

    private static IEnumerable<OperatingTimeGate> Gates16AndAbove()
    {
        foreach (double[] row in IndustrialGates.Rows)
        {
            Reference how = row[0] <= 630 ? IndustrialCompared : IndustrialMemory;
            yield return GateInAmperes(row[0], row[1], 10, null, how);
            yield return GateInAmperes(row[0], row[2], null, 5, how);
            yield return GateInAmperes(row[0], row[3], 0.1, null, how);
            yield return GateInAmperes(row[0], row[4], null, 0.1, how);
            if (row[5] > 0)
            {
                yield return PreArcing(row[0], row[5], row[6]);
            }
        }
    }

    // The current that opens in 0.01 s with the least pre-arcing Joule integral.
    private static OperatingTimeGate PreArcing(double rating, double least, double most) => new()
    {
        LeastRatingAmperes = rating,
        MostRatingAmperes = rating,
        Amperes = Math.Sqrt(least / 0.01),
        LeastSeconds = 0.01,
        LeastPreArcingAmpereSquaredSeconds = least,
        MostPreArcingAmpereSquaredSeconds = most,
        Reference = IndustrialCompared,
    };
}
