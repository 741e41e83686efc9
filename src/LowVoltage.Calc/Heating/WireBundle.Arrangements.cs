using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The arrangements by name.</content>
public sealed partial class WireBundle
{
    /// <summary>Inner diameter of a sleeve over <see cref="Diameter"/> where none is stated.</summary>
    public const double UsualSleeve = 1.5;

    // As far as the formulas were looked at.
    private const double WidestOver = 10;

    // A diameter that the caller computed may lie a rounding below the least.
    private const double Play = 1e-9;

    /// <summary>One wire alone: the other way is the chassis, or lies elsewhere.</summary>
    /// <param name="wire">The wire.</param>
    /// <returns>The arrangement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    public static WireBundle Alone(Wire wire) => Create(wire, 1, 1);

    /// <summary>Two loaded wires that touch along their length.</summary>
    /// <param name="wire">One of the wires.</param>
    /// <returns>The arrangement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    public static WireBundle Pair(Wire wire) => Create(wire, 2, 2);

    /// <summary>Three loaded wires that touch each other.</summary>
    /// <param name="wire">One of the wires.</param>
    /// <returns>The arrangement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    public static WireBundle Trefoil(Wire wire) => Create(wire, 3, 3);

    /// <summary>Three loaded wires side by side, touching.</summary>
    /// <param name="wire">One of the wires.</param>
    /// <returns>The arrangement. It is rated as a <see cref="Trefoil"/>, which lies 2 % to 6 % below what IEC 60364-5-52 method F prints for three flat.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    public static WireBundle ThreeFlat(Wire wire) => new(Trefoil(wire), BundleArrangement.ThreeFlat, 0);

    /// <summary>Two loaded cores in a round common sheath that fills the space between them.</summary>
    /// <param name="core">One core; its diameter is that over its own insulation. The sheath is taken to conduct heat as that insulation does.</param>
    /// <param name="outerDiameter">Diameter over the sheath, 2 to 10 diameters of a core.</param>
    /// <returns>The arrangement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="core"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static WireBundle TwinCable(Wire core, Length outerDiameter)
    {
        _ = core ?? throw new ArgumentNullException(nameof(core));
        double own = core.OuterDiameterMillimeters * 1e-3, meters = Over(own, 2, outerDiameter, nameof(outerDiameter));
        return new(core, 2, 2, 2 * (own / meters) * (own / meters), meters, BundleArrangement.TwinCable);
    }

    /// <summary>The same wires in a round sleeve of 1.5 times their <see cref="Diameter"/>.</summary>
    /// <returns>The arrangement.</returns>
    /// <exception cref="InvalidOperationException">Not all wires are loaded.</exception>
    public WireBundle InSleeve() => Sleeved(UsualSleeve * DiameterMeters);

    /// <summary>The same wires in a round sleeve.</summary>
    /// <param name="innerDiameter">Inner diameter of the sleeve (of one that gives way, its inner circumference over π), 1 to 10 times <see cref="Diameter"/>.</param>
    /// <returns>The arrangement.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    /// <exception cref="InvalidOperationException">Not all wires are loaded.</exception>
    public WireBundle InSleeve(Length innerDiameter) => Sleeved(Over(DiameterMeters, 1, innerDiameter, nameof(innerDiameter)));

    /// <summary>The same wires without their sleeve.</summary>
    internal WireBundle Unsleeved() => new(this, Arrangement, 0);

    private static double Over(double of, double least, in Length length, string name) =>
        Accept.MetersWithin(length, of * least * (1 - Play), of * WidestOver * (1 + Play), name);

    private WireBundle Sleeved(double meters) => Loaded == Wires
        ? new(this, Arrangement, meters)
        : throw new InvalidOperationException(
            $"A sleeve is computed for loaded wires only, and {Accept.Text(Wires - Loaded)} of {Accept.Text(Wires)} are idle: state them as loaded, which is safe.");
}
