using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a fuse against the fuse before it: proven, not proven or disproven, from where on, and why.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class FuseSelectivity
{
    private readonly double? amperes;

    internal FuseSelectivity(Selectivity verdict, double? amperes, string reason)
    {
        Verdict = verdict;
        this.amperes = amperes;
        Reason = reason;
    }

    /// <summary>The verdict over the whole range.</summary>
    public Selectivity Verdict { get; }

    /// <summary>
    /// Not proven: the current up to which it is proven all the same, from the conventional fusing current of the downstream fuse on; null where nothing is, and where a
    /// fuse has no published times. Disproven: a current at which the upstream fuse opens first. Proven: the prospective current.
    /// </summary>
    public ElectricCurrent? Current => amperes is double value ? ElectricCurrent.FromAmperes(value) : null;

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;
}
