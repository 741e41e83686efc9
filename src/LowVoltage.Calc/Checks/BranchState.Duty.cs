using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <content>What the load draws at the three supply levels.</content>
internal sealed partial class BranchState
{
    private WireDuty duty;

    /// <summary>The worst of the three supply levels.</summary>
    internal ref readonly WireDuty Duty
    {
        get
        {
            if ((known & Known.Duty) == 0)
            {
                Rate();
                if (Solved is null)
                {
                    SolveDuty();
                }
                else
                {
                    duty = Solved.Duty;
                }

                known |= Known.Duty;
            }

            return ref duty;
        }
    }

    /// <summary>The largest r.m.s. current, A; zero where the load has no operating point.</summary>
    internal double HeatingAmperes => Duty.Exists ? Duty.HeatingAmperes : 0;

    /// <summary>The current that heats a stretch in service, A.</summary>
    internal double HeatingIn(int stretch) => Solved is null ? HeatingAmperes + stretches[stretch].OtherAmperes : Solved.Heating[stretch];

    /// <summary>Whether a stretch is thinner than any wire that the heat of pulses of stated times is counted for, and is within its rating by that heat alone.</summary>
    internal bool IsTooThinForPulses(int stretch)
    {
        ref readonly SegmentState s = ref stretches[stretch];
        return (Load.HasStatedTimes || s.IsPulsed)
            && 1e-6 * s.Conductor.AreaSquareMillimeters * s.Conductor.Material.HeatCapacityJoulesPerCubicMeterKelvin < DutyCycle.LeastHeatCapacity
            && (Load.Starts || s.HasPulsedStarts || Duty.OnAmperes + s.OtherAmperes > s.RatedAmperes || HeatingIn(stretch) > Duty.OnAmperes + s.OtherAmperes);
    }

    private void SolveDuty()
    {
        duty = new WireDuty { Exists = true, LeastLoadVolts = double.PositiveInfinity, Level = SupplyLevel.Nominal };
        double ohms = FixedOhms, cubic = 0, melting = double.PositiveInfinity;
        for (int i = 0; i < OwnCount; i++)
        {
            (double cool, double slope) = stretches[i].Law();
            ohms += cool;
            cubic += slope;
            melting = Math.Min(melting, stretches[i].MeltingAmperes());
        }

        for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum && duty.Exists; level++)
        {
            LoopPoint point = LoopKernel.Solve(
                Source.VoltsAt(level) - SharedVolts, Source.OhmsAt(level) + ohms, cubic, Load, LoadState.Running, Source.HeldAmperes, melting);
            Take(level, point, ohms + (cubic * point.HeatingAmperes * point.HeatingAmperes), ohms);
        }
    }

    private void Take(SupplyLevel level, in LoopPoint point, double pathOhms, double coolOhms)
    {
        bool disconnects = Source.Action == LimitAction.Disconnects && point.Exists && point.Amperes > Source.LimitAmperes;

        // A supply that holds its limit no longer holds its voltage: the load gets less than it is made for, though no part of the path is to blame.
        bool collapses = point.Exists && point.Limited;
        if (!point.Exists || disconnects || collapses)
        {
            double volts = Source.VoltsAt(level);
            duty.Exists = false;
            duty.Level = level;
            duty.Reason = disconnects ? NoOperatingPoint.SourceDisconnects : collapses ? NoOperatingPoint.SourceLimit : point.Reason;
            duty.LargestWatts = collapses ? Source.LimitAmperes * point.Volts : disconnects ? DisconnectedWatts(level, point, pathOhms) : point.LargestWatts;
            duty.WantedWatts = Math.Max(Load.AmperesAt(volts, LoadState.Running) * volts, duty.LargestWatts * (1 + 1e-9));
            if (!point.Exists && Source.Action == LimitAction.Disconnects)
            {
                CapAtDisconnection(volts - SharedVolts, Source.OhmsAt(level) + coolOhms);
            }

            return;
        }

        Greatest(ref duty.OnAmperes, ref duty.OnLevel, point.Amperes, level);
        Greatest(ref duty.HeatingAmperes, ref duty.Level, point.HeatingAmperes, level);
        Greatest(ref duty.DropVolts, ref duty.DropLevel, (point.Amperes * pathOhms) + SharedVolts, level);
        if (point.Volts < duty.LeastLoadVolts)
        {
            duty.LeastLoadVolts = point.Volts;
            duty.LeastLoadLevel = level;
        }
    }

    // A source that disconnects brings no more than its limit, however much would come through the path; and where that is too little at its own voltage no wire helps.
    private void CapAtDisconnection(double volts, double coolOhms)
    {
        duty.LargestWatts = Math.Min(duty.LargestWatts, LoopKernel.LargestWatts(volts, coolOhms, 0, Source.LimitAmperes));
        duty.Reason = Source.LimitAmperes * volts < duty.WantedWatts ? NoOperatingPoint.SourceDisconnects : duty.Reason;
    }

    // The path as warm as what the load would draw makes it.
    private double DisconnectedWatts(SupplyLevel level, in LoopPoint point, double pathOhms) =>
        Math.Max(0, Source.LimitAmperes * (Source.VoltsAt(level) - SharedVolts - (Source.LimitAmperes * (Source.OhmsAt(level) + pathOhms))));

    private static void Greatest(ref double most, ref SupplyLevel at, double value, SupplyLevel level)
    {
        if (value > most)
        {
            most = value;
            at = level;
        }
    }
}
