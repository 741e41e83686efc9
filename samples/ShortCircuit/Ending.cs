using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>When the fuse ends the short circuit, at the soonest and at the latest, whatever the current.</summary>
/// <remarks>
/// Within 5 s the wire keeps its heat, and the library's rule for a falling current holds. Beyond, heat leaves: then the current never falls below the one at
/// which the wire settles, and more current never opens a fuse later, so its longest time at that current is the latest moment.
/// </remarks>
internal sealed class Ending
{
    internal Ending(Scene scene)
    {
        FaultOpening latest = FaultClearing.Latest(scene.Path, scene.Fuse);
        bool ends = latest.State is { } state && state.Time <= AdiabaticHeating.LongestDuration;
        IsKnown = latest.Outcome != FaultOutcome.NotEvaluated;
        Lasts = IsKnown && !ends;
        Soonest = scene.Fuse.Curve?.LeastTime(scene.Path.ProspectiveCurrent);
        if (!IsKnown)
        {
            return;
        }

        if (ends)
        {
            // Without a fuse that opens in time the wire melts within these seconds.
            Melts = latest.Outcome != FaultOutcome.Opens;
            Latest = Melts ? null : latest.State!.Time;
            return;
        }

        SettledCurrent = SettledIn(scene);
        Latest = SettledCurrent is { } least ? scene.Fuse.Curve!.LongestTime(least) : latest.Outcome == FaultOutcome.Opens ? latest.State!.Time : null;
        Melts = SettledCurrent is null && Latest is null;
    }

    /// <summary>Whether operating times are known for the fuse.</summary>
    internal bool IsKnown { get; }

    /// <summary>Whether the fault may last longer than the 5 s for which heat loss can be left out.</summary>
    internal bool Lasts { get; }

    /// <summary>The fuse opens no sooner; null when no least time is stated at this current.</summary>
    internal Duration? Soonest { get; }

    /// <summary>The fuse has opened by then; null when it need not open.</summary>
    internal Duration? Latest { get; }

    /// <summary>The current once the wire no longer gets hotter; null where it melts, or where the fault is over before.</summary>
    internal ElectricCurrent? SettledCurrent { get; }

    /// <summary>Whether the wire melts before the fuse has opened for sure.</summary>
    internal bool Melts { get; }

    private static ElectricCurrent? SettledIn(Scene scene)
    {
        if (scene.Cooled.SteadyTemperature is not { } settled)
        {
            return null;
        }

        double ohms = scene.Path.FixedResistance.Ohms + (scene.Length.Meters * scene.Wire.Conductor.ResistancePerLength(settled).OhmsPerMeter);
        return ElectricCurrent.FromAmperes(scene.Path.Voltage.Volts / ohms);
    }
}
