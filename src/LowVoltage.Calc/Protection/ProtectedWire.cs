using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>A wire as a fuse must protect it: where it runs, how hot it is when the overload begins, and how hot it may get.</summary>
/// <remarks>
/// <para><b>Limits.</b> Where the fuse takes more than 5 s, the continuous limit of the insulation and an ageing <see cref="Allowance"/>; up to 5 s,
/// its short-circuit limit. Never above the metal's melting point.</para>
/// <para><b>Start.</b> An overload follows normal service: unless stated the wire starts at its continuous limit, the hottest that it may be. A start below what the
/// surroundings make of the wire counts as the latter.</para>
/// <para><b>Cooling.</b> One wire free in still air, unless <see cref="ContinuousCurrent"/> says what it carries where it runs (in a bundle, a duct, by
/// a table): then the cooling is set so that this current just brings it to its continuous limit. It is never set better than free in air at that temperature. The coefficient is kept below it, where free air cools less: a wire far below its limit is told somewhat too cool there.
/// The heat capacity of the insulation is left out. All three make the wire faster than it is.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed class ProtectedWire
{
    private ProtectedWire(Wire wire, Surroundings surroundings)
    {
        Wire = wire;
        Surroundings = surroundings;
    }

    /// <summary>The wire.</summary>
    public Wire Wire { get; }

    /// <summary>Where it runs.</summary>
    public Surroundings Surroundings { get; }

    /// <summary>Current that it carries indefinitely where it runs, after every derating; null for what the heat balance says of a wire free in air.</summary>
    public ElectricCurrent? ContinuousCurrent { get; private init; }

    /// <summary>Conductor temperature when the overload begins; null for the insulation's continuous limit.</summary>
    public Temperature? Initial { get; private init; }

    /// <summary>What an overload may add to the continuous limit.</summary>
    public OverloadAllowance Allowance { get; private init; } = OverloadAllowance.Ageing240Hours;

    /// <summary>A wire that starts at its continuous limit, free in air, with the 240 h ageing allowance.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Where it runs.</param>
    /// <returns>The wire.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static ProtectedWire Create(Wire wire, Surroundings surroundings) => new(
        wire ?? throw new ArgumentNullException(nameof(wire)), surroundings ?? throw new ArgumentNullException(nameof(surroundings)));

    /// <summary>The same wire, starting at a temperature.</summary>
    /// <param name="initial">Conductor temperature when the overload begins, −70 °C to the melting point.</param>
    /// <returns>A new object.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public ProtectedWire StartingAt(Temperature initial)
    {
        _ = HeatBalance.Conductor(initial, HeatBalanceKernel.For(Wire, Surroundings), nameof(initial));
        return new(Wire, Surroundings) { Initial = initial, Allowance = Allowance, ContinuousCurrent = ContinuousCurrent };
    }

    /// <summary>The same wire, with what it carries where it runs.</summary>
    /// <param name="continuous">Current that it carries indefinitely, after every derating. Positive.</param>
    /// <returns>A new object.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public ProtectedWire Carrying(ElectricCurrent continuous)
    {
        _ = Accept.Amperes(continuous, nameof(continuous));
        return new(Wire, Surroundings) { Initial = Initial, Allowance = Allowance, ContinuousCurrent = continuous };
    }

    /// <summary>The same wire with another allowance.</summary>
    /// <param name="allowance">What an overload may add to the continuous limit.</param>
    /// <returns>A new object.</returns>
    /// <exception cref="ArgumentNullException">The allowance is null.</exception>
    public ProtectedWire With(OverloadAllowance allowance) => new(Wire, Surroundings)
    {
        Initial = Initial, Allowance = allowance ?? throw new ArgumentNullException(nameof(allowance)), ContinuousCurrent = ContinuousCurrent,
    };

    /// <inheritdoc/>
    public override string ToString() => Wire.ToString();

    internal WireLimits Limits()
    {
        HeatBalanceKernel free = HeatBalanceKernel.For(Wire, Surroundings);
        HeatBalanceKernel heat = ContinuousCurrent is { } current
            ? WireLimits.Cooled(free, Accept.Amperes(current, nameof(ContinuousCurrent)), Wire.Insulation.ContinuousCelsius)
            : free;
        double? start = Initial is { } initial ? HeatBalance.Conductor(initial, heat, nameof(Initial)) : null;
        return WireLimits.Of(heat, Wire, Allowance, start);
    }
}
