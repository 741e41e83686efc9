using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>What a stalled motor does to its circuit: whether the device opens, and how hot the wire is by then.</summary>
/// <remarks>
/// <para>The current is that of the locked rotor as the path lets it flow: between the least (lowest voltage, source cold, conductors hot) and the greatest (highest voltage,
/// conductors cold). The device opens for sure if it does at the least. The wire is held against the device over the whole range, as
/// <see cref="FuseAgainstWire"/> does, whose limits and heating count here.</para>
/// <para>Whatever the outcome, a fuse that protects the wire does not protect the motor: windings at standstill stand their locked-rotor current for seconds. Where
/// the device need not open, a thermal cut-out in the motor, or a motor that bears the stall, is the only protection there is.</para>
/// </remarks>
public static class StalledMotor
{
    /// <summary>The source: common practice; the heating is that of <see cref="FuseAgainstWire"/>.</summary>
    public static Reference Reference { get; } = Reference.CommonPractice("a motor may stall until something opens; its wire must withstand that");

    /// <summary>A stalled motor behind a fuse.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="wires">The wires of its path, at least one.</param>
    /// <param name="least">The least current of the locked rotor through the path. Positive.</param>
    /// <param name="greatest">The greatest current of the locked rotor through the path, at least the former.</param>
    /// <returns>The outcome for the weakest wire.</returns>
    /// <exception cref="ArgumentNullException">The fuse, the list or a wire is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public static StallCheck Check(FuseRating fuse, IReadOnlyList<ProtectedWire> wires, ElectricCurrent least, ElectricCurrent greatest)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return Of(fuse.FaultCurve, fuse.ToString(), wires, least, greatest);
    }

    /// <summary>A stalled motor behind a device with a curve, a circuit-breaker for example.</summary>
    /// <param name="curve">The device's curve.</param>
    /// <param name="wires">The wires of its path, at least one.</param>
    /// <param name="least">The least current of the locked rotor through the path. Positive.</param>
    /// <param name="greatest">The greatest current of the locked rotor through the path, at least the former.</param>
    /// <returns>The outcome for the weakest wire.</returns>
    /// <exception cref="ArgumentNullException">The curve, the list or a wire is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public static StallCheck Check(TimeCurrentCurve curve, IReadOnlyList<ProtectedWire> wires, ElectricCurrent least, ElectricCurrent greatest) =>
        Of(curve ?? throw new ArgumentNullException(nameof(curve)), "device", wires, least, greatest);

    /// <summary>The outcome of <see cref="Find"/> alone.</summary>
    internal static StallOutcome OutcomeOf(in WireLimits wire, TimeCurrentCurve curve, double least, double greatest)
    {
        StallOutcome holds = curve.TryLongestSeconds(least, out _) ? StallOutcome.DeviceOpens : StallOutcome.WireBears;
        bool carries = wire.StartCelsius <= wire.SustainedCelsius && wire.Heat.AmperesFor(wire.SustainedCelsius) >= greatest;
        return carries || !(FuseAgainstWireKernel.Tightest(wire, curve, least, greatest).Ratio < 1) ? holds : StallOutcome.WireTooHot;
    }

    /// <summary>One wire on doubles. Does not allocate.</summary>
    internal static StallFinding Find(in WireLimits wire, TimeCurrentCurve? curve, double least, double greatest)
    {
        StallFinding found = new() { Amperes = greatest, Ratio = 0, Limit = wire.SustainedCelsius };
        if (wire.StartCelsius <= wire.SustainedCelsius && wire.Heat.AmperesFor(wire.SustainedCelsius) >= greatest)
        {
            // The wire carries it continuously, whatever the device does.
            found.Ratio = double.PositiveInfinity;
            found.Reached = wire.ReachedCelsius(greatest, null);
            found.Outcome = curve is not null && curve.TryLongestSeconds(least, out found.Seconds) ? StallOutcome.DeviceOpens : StallOutcome.WireBears;
            return found;
        }

        if (curve is null)
        {
            found.Reached = wire.ReachedCelsius(greatest, null);
            return found;
        }

        bool opens = curve.TryLongestSeconds(least, out found.Seconds);
        TightestPoint point = FuseAgainstWireKernel.Tightest(wire, curve, least, greatest);
        bool timed = curve.TryLongestSeconds(point.Amperes, out double seconds) && point.Regime != ProtectionRegime.Sustained;
        found.Amperes = point.Amperes;
        found.Ratio = point.Ratio;
        found.Limit = wire.LimitCelsius(point.Regime);
        found.Reached = wire.ReachedCelsius(point.Amperes, timed ? seconds : null);
        found.Outcome = point.Ratio < 1 ? StallOutcome.WireTooHot : opens ? StallOutcome.DeviceOpens : StallOutcome.WireBears;
        return found;
    }

    private static StallCheck Of(TimeCurrentCurve? curve, string device, IReadOnlyList<ProtectedWire> wires, in ElectricCurrent least, in ElectricCurrent greatest)
    {
        _ = wires ?? throw new ArgumentNullException(nameof(wires));
        double low = Accept.Amperes(least, nameof(least));
        double high = Accept.Within(Accept.Amperes(greatest, nameof(greatest)), low, Accept.MostAmperes, "A", nameof(greatest));
        if (wires.Count == 0)
        {
            throw new ArgumentException("wires must hold at least one wire; it was empty.", nameof(wires));
        }

        int weakest = -1;
        StallFinding worst = default;
        for (int i = 0; i < wires.Count; i++)
        {
            StallFinding found = Find((wires[i] ?? throw new ArgumentNullException(nameof(wires))).Limits(), curve, low, high);
            if (weakest < 0 || found.IsWeakerThan(worst))
            {
                (weakest, worst) = (i, found);
            }
        }

        return new StallCheck(worst, device, weakest, low, high);
    }
}

/// <summary>A stalled motor's wire on doubles.</summary>
internal struct StallFinding
{
    internal StallOutcome Outcome;

    /// <summary>The device's longest time at the least current, s; zero where it need not open.</summary>
    internal double Seconds;

    /// <summary>The current at which the wire is nearest to its limit, A.</summary>
    internal double Amperes;

    /// <summary>Wire time over device time there; infinite where the wire never gets to its limit.</summary>
    internal double Ratio;

    /// <summary>Temperature by then, °C; null when the metal melts.</summary>
    internal double? Reached;
    internal double Limit;

    internal readonly bool IsWeakerThan(in StallFinding other) => Ratio.Equals(other.Ratio) ? Over > other.Over : Ratio < other.Ratio;

    private readonly double Over => (Reached ?? double.PositiveInfinity) - Limit;
}
