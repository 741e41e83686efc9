using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Equal wires that lie together in a bundle, loom or harness, of which some carry current: alone, a pair, three, a round bundle, a twin cable; bare to the air or in a sleeve.</summary>
/// <remarks>Immutable and thread-safe. Two wires of unequal heat: take both with the larger, which is safe.</remarks>
public sealed partial class WireBundle
{
    /// <summary>The fill taken when none is stated: wires laid by hand and tied.</summary>
    public const double UsualFill = 0.6;

    /// <summary>Fill of two wires in their circle, the loosest that is still a bundle.</summary>
    public const double LeastFill = 0.5;

    /// <summary>Fill of a hexagonal packing without end, π/√12.</summary>
    public const double MostFill = 0.9069;

    private const int MostWires = 10_000;

    private WireBundle(Wire wire, int wires, int loaded, double fill, double meters, BundleArrangement arrangement)
    {
        Wire = wire;
        Wires = wires;
        Loaded = loaded;
        Fill = fill;
        DiameterMeters = meters;
        Arrangement = arrangement;
    }

    private WireBundle(WireBundle other, BundleArrangement arrangement, double sleeveMeters)
        : this(other.Wire, other.Wires, other.Loaded, other.Fill, other.DiameterMeters, arrangement)
    {
        SleeveMeters = sleeveMeters;
    }

    /// <summary>Where the usual fill comes from.</summary>
    public static Reference FillReference { get; } = Reference.CommonPractice("Wires laid by hand and tied fill about 0.6 of their circle");

    /// <summary>One of the wires; of a twin cable, one of the cores.</summary>
    public Wire Wire { get; }

    /// <summary>How many wires there are, n.</summary>
    public int Wires { get; }

    /// <summary>How many of them carry the current, m, spread evenly, one of them at the centre.</summary>
    public int Loaded { get; }

    /// <summary>How they lie.</summary>
    public BundleArrangement Arrangement { get; }

    /// <summary>Section of the wires over that of a circle of <see cref="Diameter"/>; 1 for a single wire.</summary>
    public double Fill { get; }

    /// <summary>
    /// Diameter of the cylinder that stands for the wires: of one wire its own, of two and three that with the circumference of a tight string round
    /// them, from four D·√(n/fill), of a twin cable that over its sheath.
    /// </summary>
    public Length Diameter => Length.FromMeters(DiameterMeters);

    /// <summary>Inner diameter of the sleeve round the wires; <c>null</c>: there is none.</summary>
    public Length? SleeveDiameter => SleeveMeters > 0 ? Length.FromMeters(SleeveMeters) : null;

    internal double DiameterMeters { get; }

    /// <summary>Zero without a sleeve.</summary>
    internal double SleeveMeters { get; }

    /// <summary>Wires that lie together.</summary>
    /// <param name="wire">One of the wires.</param>
    /// <param name="wires">How many wires, 1 to 10 000; two are a pair, three a trefoil, more a round bundle.</param>
    /// <param name="loaded">How many of them carry the current, 1 to <paramref name="wires"/>.</param>
    /// <param name="fill">
    /// Section of the wires over that of the bundle, 0.5 to 0.9069; 0.6 unless stated (common practice, no published source). Counts from four wires up.
    /// </param>
    /// <returns>The bundle.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count or the fill is outside its range.</exception>
    public static WireBundle Create(Wire wire, int wires, int loaded, double fill = UsualFill)
    {
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = Accept.Count(wires, 1, MostWires, nameof(wires));
        _ = Accept.Count(loaded, 1, wires, nameof(loaded));
        _ = Accept.Within(fill, LeastFill, MostFill, "", nameof(fill));
        double ratio = TouchingWires.DiameterRatio(wires), taken = wires / (ratio * ratio);
        if (wires > TouchingWires.Most)
        {
            (ratio, taken) = (Math.Sqrt(wires / fill), fill);
        }

        BundleArrangement arrangement = wires switch
        {
            1 => BundleArrangement.Alone,
            2 => BundleArrangement.Pair,
            3 => BundleArrangement.Trefoil,
            _ => BundleArrangement.Bundle,
        };
        return new(wire, wires, loaded, taken, wire.OuterDiameterMillimeters * 1e-3 * ratio, arrangement);
    }

    /// <summary>Another number of the same wires, as tight as here, all of them loaded.</summary>
    internal WireBundle AllLoaded(int wires) => Create(Wire, wires, wires, Wires > TouchingWires.Most ? Fill : UsualFill);
}
