namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>How far an overload beyond one stretch's limit goes before the fuse opens, by time stepping an own lumped wire.</summary>
/// <remarks>
/// The metal alone stores heat, and the wire starts as hot as it may be: the stated readings of the check. Its cooling is set so that its own rating (the upper bound of it)
/// holds the temperature that the rating stands for at the ambient that the rating belongs to, and is never better than free in air.
/// </remarks>
internal sealed class OwnOverload
{
    private const double ShortSeconds = 5;
    private readonly OwnStretch stretch;
    private readonly double start;
    private readonly double ambient;
    private readonly double altitude;

    // W/K per metre from the surface to the air; infinite where only free air cools.
    private readonly double conductance = double.PositiveInfinity;

    /// <summary>A stretch by the upper or the lower bound of its rating.</summary>
    public OwnOverload(OwnStretch stretch, double start, double ambient, double altitude, bool high)
    {
        this.stretch = stretch;
        this.start = start;
        this.ambient = ambient;
        this.altitude = altitude;
        OwnWire wire = stretch.Wire;
        double rated = Math.Max(1e-9, (high ? stretch.Rating.High : stretch.Rating.Low) - (stretch.Others / stretch.Parallel));
        double celsius = Math.Min(stretch.Rating.Celsius, wire.Melting), heat = rated * rated * wire.OhmsAt(celsius);
        double air = high ? Math.Max(ambient, stretch.Rating.BaseAmbient) : ambient;
        if (celsius > air && heat < wire.LossAlone(celsius, air, altitude))
        {
            conductance = heat / Math.Max(1e-6, celsius - (wire.InnerResistance * heat) - air);
        }
    }

    /// <summary>Kelvins by which the worst overload passes its limit, at the current where it does; negative when it stays below.</summary>
    public (double Excess, double Amperes) Worst(OwnFuse fuse, double prospective, (double Sustained, double Opened) allowance)
    {
        OwnWire wire = stretch.Wire;
        double melts = Math.Min(wire.Melting, wire.ShortCircuit);
        double first = Math.Min(fuse.FusingAmperes, prospective);
        (double Excess, double Amperes) worst = (Math.Max(Settled(first), start) - Math.Min(melts, wire.Continuous + allowance.Sustained), first);
        if (prospective < fuse.FusingAmperes)
        {
            return worst;
        }

        foreach (double amperes in Currents(fuse, prospective))
        {
            double seconds = fuse.Longest(amperes);
            double limit = seconds <= ShortSeconds ? melts : Math.Min(melts, wire.Continuous + allowance.Opened);
            double excess = Reached(amperes, seconds, limit + 200) - limit;
            worst = excess > worst.Excess ? (excess, amperes) : worst;
        }

        return worst;
    }

    /// <summary>Conductor temperature after a time at a current, followed no further than a temperature.</summary>
    public double Reached(double amperes, double seconds, double most)
    {
        double theta = start, time = 0;
        for (int k = 0; k < 20_000 && time < seconds && theta < most; k++)
        {
            double rate = Rate(theta, amperes), dt = Math.Min(seconds - time, Math.Max(seconds * 1e-4, 3 / Math.Max(1e-9, Math.Abs(rate))));
            double middle = Rate(theta + (0.5 * dt * rate), amperes);
            dt = Math.Min(dt, 3 / Math.Max(1e-9, Math.Abs(middle)));
            double next = theta + (dt * middle);
            if (Math.Abs(next - theta) < 1e-4 && time > 0 && rate * middle <= 0)
            {
                return next;
            }

            (theta, time) = (next, time + dt);
            if (Math.Abs(middle) * (seconds - time) < 0.01)
            {
                return theta;
            }
        }

        return theta;
    }

    /// <summary>Where a current settles, °C; the melting point where it does not.</summary>
    public double Settled(double amperes)
    {
        double low = ambient, high = stretch.Wire.Melting;
        for (int k = 0; k < 50; k++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Rate(middle, amperes) > 0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    private static IEnumerable<double> Currents(OwnFuse fuse, double prospective)
    {
        const int Steps = 16;
        double first = fuse.FusingAmperes, last = Math.Max(first, Math.Min(prospective, 100_000));
        for (int k = 0; k <= Steps; k++)
        {
            yield return first * Math.Pow(last / first, k / (double)Steps);
        }

        // Just before and after each gate, where the curve bends.
        foreach (double gate in fuse.Gates.Where(gate => gate < last))
        {
            yield return gate;
        }
    }

    // K/s.
    private double Rate(double theta, double amperes)
    {
        OwnWire wire = stretch.Wire;
        double each = amperes / stretch.Parallel;
        double loss = double.IsInfinity(conductance)
            ? wire.LossAlone(theta, ambient, altitude)
            : (theta - ambient) / (wire.InnerResistance + (1 / conductance));
        return ((each * each * wire.OhmsAt(theta)) - loss) / wire.HeatPerKelvin;
    }
}
