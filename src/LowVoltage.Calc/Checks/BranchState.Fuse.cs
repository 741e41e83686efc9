using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <content>What load and wire ask of a fuse.</content>
internal sealed partial class BranchState
{
    private LoadStart? loadStart;
    private StartWaveform? start;
    private StartWaveform? startAtLeast;

    /// <summary>The largest current that a fuse carries continuously, A: that of the load while it is on, or the r.m.s. current where the starts of a motor in each period make that larger.</summary>
    internal double CarriedAmperes => StartsHeatMore ? Duty.HeatingAmperes : Duty.OnAmperes;

    /// <summary>Whether the starts of a motor in each stated period heat more than its running current does.</summary>
    internal bool StartsHeatMore => Duty.HeatingAmperes > Duty.OnAmperes * (1 + Rounding);

    /// <summary>Smallest rating that carries the load in continuous service where the fuse carries its rating in full, A.</summary>
    internal double LeastFuseAmperes => CarriedAmperes / Practice.Loading;

    /// <summary>Largest rating that the wire allows, A.</summary>
    internal double MostFuseAmperes => WeakestAmperes * Practice.ShareOfAmpacity;

    /// <summary>How a fuse carries less of its rating in the air around it, where that is published; at most 1, since a cool place raises no rating.</summary>
    /// <returns>False where the source of the re-rating does not cover that air.</returns>
    internal bool TryRerating(FuseRating fuse, out double factor)
    {
        factor = 1;
        if (fuse.Series.Rerating is not { } rerating || FuseAmbientCelsius <= rerating.LowestCelsius)
        {
            return true;
        }

        bool covered = rerating.TryFactorAt(FuseAmbientCelsius, out double share);
        factor = Math.Min(1, share);
        return covered;
    }

    /// <summary>The current while the load starts, at the highest voltage through the least resistance. It does not depend on the fuse.</summary>
    internal StartWaveform Start
    {
        get
        {
            FindStarts();
            return start!;
        }
    }

    /// <summary>The same at the lowest voltage, where a constant power draws most; null without such a load.</summary>
    internal StartWaveform? StartAtLeast
    {
        get
        {
            FindStarts();
            return startAtLeast;
        }
    }

    /// <summary>The least resistance that a surge meets, Ω.</summary>
    internal double StartOhms => Math.Max(Quantities.Accept.Least, Source.LeastOhms + CoolPathOhms);

    private void FindStarts()
    {
        if ((known & Known.Surges) != 0)
        {
            return;
        }

        loadStart ??= LoadStart.Of(Load);
        start = CircuitStart.Of(loadStart, Source.MaximumVolts, StartOhms, Source.HeldThrough(SupplyLevel.Maximum, StartOhms));
        double most = Math.Max(Quantities.Accept.Least, Source.GreatestOhms + CoolPathOhms);
        startAtLeast = Load.LawAt(LoadState.Running).Watts > 0
            ? CircuitStart.Of(loadStart, Source.MinimumVolts, most, Source.HeldThrough(SupplyLevel.Minimum, most))
            : null;
        known |= Known.Surges;
    }
}
