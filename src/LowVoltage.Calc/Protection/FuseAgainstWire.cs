using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Whether a fuse opens before a wire passes its limit, at every current from the conventional fusing current to the prospective one.</summary>
/// <remarks>
/// <code>
/// ratio(I) = wire time to its limit / longest operating time of the fuse,   protected when ratio ≥ 1 for every I
/// below the fusing current: steady temperature of the wire at that current ≤ its sustained limit
/// </code>
/// <para><b>Limits.</b> Sustained, opened after more than 5 s, opened within 5 s: see <see cref="ProtectedWire"/>. IEC 60364-4-43, 433.1, compares
/// currents instead (<see cref="OverloadCoordination"/>); it lets a wire be overloaded by 45 % as long as the device may take, and is the less strict.</para>
/// <para><b>Wire time.</b> Quadrature of the heat balance from the start temperature (<see cref="OverloadHeating"/>), heat capacity of the metal alone: never longer than
/// the wire really takes. <b>Fuse time.</b> Longest stated times (<see cref="TimeCurrentCurve"/>), between two of them
/// by the customary line, which is an assumption; the outcome says whether the stated times alone protect as well (<see cref="WireProtection.Basis"/>). Each current is taken as constant; from a real
/// source it falls as the wire heats (<see cref="FaultTransient"/>, <see cref="FaultClearing"/>).</para>
/// <para><b>Exactness.</b> On each piece between two stated points the logarithm of the ratio is convex in that of the current, so its least value is
/// found, not sampled. <b>Valid for</b> the ranges of <see cref="HeatBalance"/>; up to the melting point.</para>
/// </remarks>
public static class FuseAgainstWire
{
    /// <summary>The sources: heating of the wire and the limit of 5 s.</summary>
    public static IReadOnlyList<Reference> References { get; } = Array.AsReadOnly(
    [
        OverloadHeating.Reference,
        new()
        {
            Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "434.5.2", Kind = ReferenceKind.FromMemory,
            Note = "Short-circuit limit temperatures hold for at most 5 s.",
        },
    ]);

    /// <summary>A fuse against one wire.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="wire">The wire.</param>
    /// <param name="prospective">Greatest prospective current through the fuse: source warm and new, wire cold. Positive.</param>
    /// <returns>The verdict with the tightest current.</returns>
    /// <exception cref="ArgumentNullException">The fuse or the wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static WireProtection Check(FuseRating fuse, ProtectedWire wire, ElectricCurrent prospective)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return Of(fuse.FaultCurve, fuse.Untimed.ToString()!, [wire ?? throw new ArgumentNullException(nameof(wire))], Accept.Amperes(prospective, nameof(prospective)));
    }

    /// <summary>A fuse against all the wires that it feeds in one path: the weakest decides.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="wires">The wires, at least one.</param>
    /// <param name="prospective">Greatest prospective current through the fuse: source warm and new, wire cold. Positive.</param>
    /// <returns>The verdict for the weakest wire.</returns>
    /// <exception cref="ArgumentNullException">The fuse, the list or a wire is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static WireProtection Check(FuseRating fuse, IReadOnlyList<ProtectedWire> wires, ElectricCurrent prospective)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return Of(fuse.FaultCurve, fuse.Untimed.ToString()!, wires, Accept.Amperes(prospective, nameof(prospective)));
    }

    /// <summary>A device by its curve, a circuit-breaker for example, against all the wires that it feeds in one path.</summary>
    /// <param name="curve">The device's curve.</param>
    /// <param name="wires">The wires, at least one.</param>
    /// <param name="prospective">Greatest prospective current through the device: source warm and new, wire cold. Positive.</param>
    /// <returns>The verdict for the weakest wire.</returns>
    /// <exception cref="ArgumentNullException">The curve, the list or a wire is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public static WireProtection Check(TimeCurrentCurve curve, IReadOnlyList<ProtectedWire> wires, ElectricCurrent prospective) =>
        Of(curve ?? throw new ArgumentNullException(nameof(curve)), "device", wires, Accept.Amperes(prospective, nameof(prospective)));

    private static WireProtection Of(TimeCurrentCurve? curve, string device, IReadOnlyList<ProtectedWire> wires, double prospective)
    {
        _ = wires ?? throw new ArgumentNullException(nameof(wires));
        if (wires.Count == 0)
        {
            throw new ArgumentException("wires must hold at least one wire; it was empty.", nameof(wires));
        }

        WireProtection? weakest = null;
        for (int i = 0; i < wires.Count; i++)
        {
            ProtectedWire wire = wires[i] ?? throw new ArgumentNullException(nameof(wires));
            if (curve is not null)
            {
                WireProtection found = new(curve, device, wire, i, prospective);
                weakest = weakest is null || found.IsWeakerThan(weakest) ? found : weakest;
            }
        }

        return weakest ?? new WireProtection($"No operating times are published for the {device}, so nothing is proven.");
    }
}
