using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Whether a device protects one of several wires in parallel against a fault in it, anywhere along its length.</summary>
/// <remarks>
/// <code>
/// c = 1/(n − 1);  near part: (1 − x + c)/(1 + c) of the fault's current;  far part: x/(1 + c)
/// θ = θ₀ + (θ₀ + β)·(exp(s²·J/(K·S)²) − 1),  S the section of ONE wire, J the most that the device lets through
/// </code>
/// <para><b>Symbols.</b> n equal wires, tied together at both ends; x [–] place of the fault from the source's end; s share of the current in the hotter part;
/// J [A²s]; K, S, β as in <see cref="AdiabaticHeating"/>.</para>
/// <para>A fault at the far end divides over all wires. One in a single wire does not: close to the source's end that wire alone carries all of it, and further on
/// its near part carries the most and is fed from behind as well. So the section of one wire counts, not that of all.</para>
/// <para><b>Source.</b> IEC 60364-4-43, 434.4 (from memory), asks that the device protects against a fault in one of the conductors; the shares are Kirchhoff's laws.</para>
/// <para><b>Safe side.</b> The place is bounded by intervals, not sampled. Current: every value from the weakest supply with hot wires to the strongest with cold ones; the most
/// that the device lets through over that range. No heat leaves: close up to 5 s, an upper bound beyond. <b>Not covered:</b> wires of unequal size or length, a fault to another
/// wire of the group, a fault that has a resistance of its own; wires with a fuse each, at both ends, are the better practice for many in parallel.</para>
/// </remarks>
public static class ParallelWireFault
{
    /// <summary>The source of the demand; the shares are Kirchhoff's laws.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "434.4", Kind = ReferenceKind.FromMemory,
        Note = "Conductors in parallel protected by one device: a fault in one of them must be covered.",
    };

    /// <summary>A fuse against a fault in one of the wires.</summary>
    /// <param name="fuse">The fuse that feeds them all.</param>
    /// <param name="wire">One wire.</param>
    /// <param name="parallel">How many lie in parallel, 2 to 1000.</param>
    /// <param name="length">Length of the stretch. Positive.</param>
    /// <param name="coldest">The coldest that the wires are when the fault begins, for the greatest current: −100 °C to the initial temperature.</param>
    /// <param name="initial">The hottest that the wires are when the fault begins, up to the short-circuit limit.</param>
    /// <param name="supply">Source and rest of the loop.</param>
    /// <returns>The verdict with the worst place; not evaluated when no times are published for the fuse.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ParallelWireOutcome Check(
        FuseRating fuse, Wire wire, int parallel, Length length, Temperature coldest, Temperature initial, FaultSupply supply) =>
        Of((fuse ?? throw new ArgumentNullException(nameof(fuse))).FaultCurve, fuse.Untimed.ToString()!, wire, parallel, length, coldest, initial, supply);

    /// <summary>A device by its curve against a fault in one of the wires.</summary>
    /// <param name="curve">The device's curve.</param>
    /// <param name="wire">One wire.</param>
    /// <param name="parallel">How many lie in parallel, 2 to 1000.</param>
    /// <param name="length">Length of the stretch. Positive.</param>
    /// <param name="coldest">The coldest that the wires are when the fault begins, for the greatest current: −100 °C to the initial temperature.</param>
    /// <param name="initial">The hottest that the wires are when the fault begins, up to the short-circuit limit.</param>
    /// <param name="supply">Source and rest of the loop.</param>
    /// <returns>The verdict with the worst place.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ParallelWireOutcome Check(
        TimeCurrentCurve curve, Wire wire, int parallel, Length length, Temperature coldest, Temperature initial, FaultSupply supply) =>
        Of(curve ?? throw new ArgumentNullException(nameof(curve)), "device", wire, parallel, length, coldest, initial, supply);

    private static ParallelWireOutcome Of(
        TimeCurrentCurve? curve, string device, Wire wire, int parallel, in Length length, in Temperature coldest, in Temperature initial, FaultSupply supply)
    {
        Conductor conductor = (wire ?? throw new ArgumentNullException(nameof(wire))).Conductor;
        double meters = Accept.Meters(length, nameof(length));
        double limit = Math.Min(wire.Insulation.ShortCircuitCelsiusFor(conductor.AreaSquareMillimeters), conductor.Material.MeltingPointCelsius);
        double start = Accept.CelsiusWithin(initial, AdiabaticHeating.LeastCelsius, limit, nameof(initial));
        double cold = Accept.CelsiusWithin(coldest, AdiabaticHeating.LeastCelsius, start, nameof(coldest));
        _ = Accept.Count(parallel, 2, 1000, nameof(parallel));
        _ = supply ?? throw new ArgumentNullException(nameof(supply));
        if (curve is null)
        {
            return new ParallelWireOutcome($"No operating times are published for the {device}, so nothing is proven.");
        }

        ParallelWireKernel kernel = new(conductor, parallel, meters, cold, start, limit, supply, curve);
        return new ParallelWireOutcome(kernel.Worst(), device, limit, conductor.Material.MeltingPointCelsius);
    }
}
