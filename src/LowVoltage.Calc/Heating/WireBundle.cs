using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>A round bundle of equal wires, of which some carry current.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class WireBundle
{
    /// <summary>The fill taken when none is stated: wires laid by hand and tied.</summary>
    public const double UsualFill = 0.6;

    /// <summary>Fill of two wires in their circle, the loosest that is still a bundle.</summary>
    public const double LeastFill = 0.5;

    /// <summary>Fill of a hexagonal packing without end, π/√12.</summary>
    public const double MostFill = 0.9069;

    /// <summary>Where the usual fill comes from.</summary>
    public static Reference FillReference { get; } = Reference.CommonPractice("Wires laid by hand and tied fill about 0.6 of their circle");

    private const int MostWires = 10_000;

    private WireBundle(Wire wire, int wires, int loaded, double fill)
    {
        Wire = wire;
        Wires = wires;
        Loaded = loaded;
        Fill = fill;
    }

    /// <summary>One of the wires.</summary>
    public Wire Wire { get; }

    /// <summary>How many wires there are, n.</summary>
    public int Wires { get; }

    /// <summary>How many of them carry the current, m, spread evenly, one of them at the centre.</summary>
    public int Loaded { get; }

    /// <summary>Section of the wires over that of the bundle; 1 for a single wire.</summary>
    public double Fill { get; }

    /// <summary>Diameter of the bundle, D·√(n/fill).</summary>
    public Length Diameter => Length.FromMeters(DiameterMeters);

    internal double DiameterMeters => Wire.OuterDiameterMillimeters * 1e-3 * Math.Sqrt(Wires / Fill);

    /// <summary>A bundle.</summary>
    /// <param name="wire">One of the wires.</param>
    /// <param name="wires">How many wires, 1 to 10 000.</param>
    /// <param name="loaded">How many of them carry the current, 1 to <paramref name="wires"/>.</param>
    /// <param name="fill">Section of the wires over that of the bundle, 0.5 to 0.9069; 0.6 unless stated (common practice, no published source).</param>
    /// <returns>The bundle; one wire alone is a bundle of fill 1.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count or the fill is outside its range.</exception>
    public static WireBundle Create(Wire wire, int wires, int loaded, double fill = UsualFill)
    {
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = Accept.Count(wires, 1, MostWires, nameof(wires));
        _ = Accept.Count(loaded, 1, wires, nameof(loaded));
        _ = Accept.Within(fill, LeastFill, MostFill, "", nameof(fill));
        return new(wire, wires, loaded, wires == 1 ? 1 : fill);
    }
}
