using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A fuse that opens in a fault, and when.</summary>
/// <remarks>
/// <see cref="Least"/> is counted with the greatest current and the least operating times, <see cref="Longest"/> with the least current and the longest ones: the truth lies between.
/// Immutable.
/// </remarks>
public sealed class FuseOpening
{
    internal FuseOpening(string fuse, double? least, double? longest, double leastAmperes, double greatestAmperes)
    {
        Fuse = fuse;
        LeastSeconds = least;
        LongestSeconds = longest;
        LeastAmperes = leastAmperes;
        GreatestAmperes = greatestAmperes;
    }

    /// <summary>Name of the fuse.</summary>
    public string Fuse { get; }

    /// <summary>It opens no sooner than this; <c>null</c> where no least time is stated.</summary>
    public Duration? Least => LeastSeconds is { } seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>It has opened by then; <c>null</c> where it may open but need not.</summary>
    public Duration? Longest => LongestSeconds is { } seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>The least current through it at the beginning of its last stage.</summary>
    public ElectricCurrent LeastCurrent => ElectricCurrent.FromAmperes(LeastAmperes);

    /// <summary>The greatest current through it.</summary>
    public ElectricCurrent GreatestCurrent => ElectricCurrent.FromAmperes(GreatestAmperes);

    /// <summary>Whether it opens for sure.</summary>
    public bool IsSure => LongestSeconds is not null;

    internal double? LeastSeconds { get; }

    internal double? LongestSeconds { get; }

    internal double LeastAmperes { get; }

    internal double GreatestAmperes { get; }

    /// <inheritdoc/>
    public override string ToString() => (LeastSeconds, LongestSeconds) switch
    {
        ({ } a, { } b) => $"{Fuse} opens after {Accept.Short(a)} s to {Accept.Short(b)} s",
        (null, { } b) => $"{Fuse} opens within {Accept.Short(b)} s",
        ({ } a, null) => $"{Fuse} may open, no sooner than after {Accept.Short(a)} s",
        _ => $"{Fuse} may open",
    };
}
