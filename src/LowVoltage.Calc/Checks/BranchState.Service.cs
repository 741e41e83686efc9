using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <content>The wire in service and while its load starts.</content>
internal sealed partial class BranchState
{
    private double[] serviceCelsius = [];

    /// <summary>The steady temperature of a stretch at the load's own current, °C; where there is none, its metal's melting point. The branch is rated.</summary>
    /// <returns>Whether there is a steady temperature.</returns>
    internal bool TryServiceCelsius(int stretch, out double celsius)
    {
        if ((known & Known.Service) == 0)
        {
            FindService();
        }

        celsius = serviceCelsius[stretch];
        return celsius < stretches[stretch].Conductor.Material.MeltingPointCelsius;
    }

    /// <summary>How hot an overload or a fault finds a stretch, °C: as hot as it may be.</summary>
    /// <remarks>
    /// Where the insulation has no short-circuit limit its continuous one stands in for it, which leaves no room above that: then as hot as the load makes it.
    /// </remarks>
    internal double FaultStartCelsius(int stretch)
    {
        ref readonly SegmentState s = ref stretches[stretch];
        double limit = s.Site.Insulation.ContinuousCelsius;
        double start = s.Site.Insulation.HasShortCircuitRoom || !Duty.Exists || !IsRated || !TryServiceCelsius(stretch, out double service) ? limit : service;

        // In air hotter than its insulation stands a wire is no colder than the air.
        start = Math.Max(start, s.Site.AmbientCelsius);
        return s.Stated is null ? start : Math.Max(start, s.Stated.CelsiusAt(HeatingIn(stretch) / s.Parallel));
    }

    /// <summary>The operating point while the load starts. The start is over before the conductors warm up: they are as warm as in running.</summary>
    internal LoopPoint StartPoint(SupplyLevel level) => Solved is { Starts.Length: > 0 } ? Solved.Starts[(int)level] : PointIn(level, LoadState.Peak);

    /// <summary>The operating point with the motor blocked, its conductors as warm as in running.</summary>
    internal LoopPoint StalledPoint(SupplyLevel level) => PointIn(level, LoadState.LockedRotor);

    private LoopPoint PointIn(SupplyLevel level, LoadState state)
    {
        double ohms = 0;
        for (int i = 0; i < OwnCount; i++)
        {
            ohms += stretches[i].OhmsAt(stretches[i].CelsiusAt(HeatingAmperes));
        }

        return LoopKernel.Solve(Source.VoltsAt(level) - SharedVolts, Source.OhmsAt(level) + FixedOhms + ohms, 0, Load, state, Source.HeldAmperes);
    }

    private void FindService()
    {
        if (serviceCelsius.Length < stretches.Length)
        {
            serviceCelsius = new double[stretches.Length];
        }

        for (int i = 0; i < stretches.Length; i++)
        {
            double melting = stretches[i].Conductor.Material.MeltingPointCelsius;
            serviceCelsius[i] = stretches[i].TrySteadyCelsius(HeatingIn(i), out double celsius) ? Math.Min(celsius, melting) : melting;
        }

        known |= Known.Service;
    }

    /// <summary>Largest drop that is left with a wire of no resistance: that of supply lead, joints, and a return that is no wire of the candidate's; infinite where the load does not get its current even so.</summary>
    internal double FixedDropVolts
    {
        get
        {
            double most = 0;
            for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum; level++)
            {
                LoopPoint point = LoopKernel.Solve(Source.VoltsAt(level) - SharedVolts, Source.OhmsAt(level) + FixedOhms, 0, Load, LoadState.Running, Source.HeldAmperes);
                most = Math.Max(most, point.Exists ? (point.Amperes * FixedOhms) + SharedVolts : double.PositiveInfinity);
            }

            return most;
        }
    }
}
