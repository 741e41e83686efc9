namespace LowVoltage.Calc.Heating;

/// <summary>One wire from one temperature to another, tabulated once so that its time at many currents costs little: a lower bound of the time.</summary>
/// <remarks>
/// <code>t = ∫ C′·dθ/D,  D = I²·R′(θ) − q(θ)</code>
/// R′ is straight and q convex in θ, so D is concave and lies below its tangents. Each interval between two nodes is integrated exactly over the two
/// tangents at its ends up to where they meet: the time is never overstated, by about 1/n² understated. What D makes of q is kept at the
/// nodes; a current costs two logarithms an interval. Where a coefficient is given D is straight, one interval is exact, and a current costs one logarithm.
/// <para>ln t is convex in ln I: each 1/(R′·eʸ − q) is log-convex in y for q ≥ 0, and a sum of log-convex functions is log-convex. That holds as the
/// start is no colder than the wire without current, and a caller who looks for the least of t·I^p can rely on it.</para>
/// </remarks>
internal readonly ref struct OverloadTable
{
    private readonly ReadOnlySpan<double> nodes;
    private readonly double capacity;
    private readonly double ohms;
    private readonly double alpha;
    private readonly bool isPast;
    private readonly bool isStraight;

    /// <param name="room"><see cref="DoublesFor"/> doubles of the caller's.</param>
    /// <param name="heat">The wire's balance.</param>
    /// <param name="capacity">Heat capacity, J/(m·K).</param>
    /// <param name="start">Conductor temperature at the start, °C; not below the one without current.</param>
    /// <param name="limit">Conductor temperature to reach, °C.</param>
    internal OverloadTable(Span<double> room, scoped in HeatBalanceKernel heat, double capacity, double start, double limit)
    {
        isStraight = heat.Conductance > 0;
        if (isStraight)
        {
            // Its two ends are all there is to know.
            room = room.Slice(0, DoublesFor(1));
        }

        this.capacity = capacity;
        ohms = heat.OhmsPerMeter20;
        alpha = heat.Alpha;
        isPast = start > limit;
        IsThere = start >= limit;
        double low = heat.SurfaceFor(start), high = heat.SurfaceFor(limit);
        int intervals = (room.Length / 3) - 1;
        for (int i = 0; i <= intervals; i++)
        {
            double surface = i == intervals ? high : low + ((high - low) * i / intervals);
            double loss = heat.Loss(surface, out double slope);
            room[3 * i] = surface + (heat.InnerResistance * loss);
            room[(3 * i) + 1] = loss;
            room[(3 * i) + 2] = slope / (1 + (heat.InnerResistance * slope));
        }

        nodes = room;
        double last = room[(3 * intervals) + 1];
        SteadyAmperes = last > 0 ? Math.Sqrt(last / OhmsAt(room[3 * intervals])) : 0;
    }

    /// <summary>Whether the wire is at the limit, or past it, from the start.</summary>
    internal bool IsThere { get; }

    /// <summary>The current that holds the limit indefinitely, and reaches it never.</summary>
    internal double SteadyAmperes { get; }

    internal static int DoublesFor(int intervals) => 3 * (intervals + 1);

    /// <summary>Seconds to the limit, never more than it really takes; infinite when it is never reached.</summary>
    internal double Seconds(double amperes)
    {
        if (isPast || amperes <= SteadyAmperes)
        {
            return isPast ? 0 : double.PositiveInfinity;
        }

        if (IsThere)
        {
            return 0;
        }

        double square = amperes * amperes, growth = square * ohms * alpha, sum = 0;
        double d0 = (square * OhmsAt(nodes[0])) - nodes[1], s0 = growth - nodes[2];
        if (isStraight)
        {
            return capacity * Reciprocal(d0, (square * OhmsAt(nodes[3])) - nodes[4], nodes[3] - nodes[0]);
        }

        for (int i = 3; i < nodes.Length; i += 3)
        {
            double d1 = (square * OhmsAt(nodes[i])) - nodes[i + 1], s1 = growth - nodes[i + 2];
            double width = nodes[i] - nodes[i - 3];

            // Where the tangents meet; the middle when they are one line.
            double bend = s0 - s1;
            double meet = bend > 1e-12 * Math.Abs(s0) ? (d1 - d0 - (s1 * width)) / bend : 0.5 * width;
            meet = Math.Max(0, Math.Min(width, meet));
            double top = Math.Max(d0 + (s0 * meet), d1 - (s1 * (width - meet)));
            sum += Reciprocal(d0, top, meet) + Reciprocal(top, d1, width - meet);
            (d0, s0) = (d1, s1);
        }

        return sum * capacity;
    }

    private double OhmsAt(double celsius) => ohms * (1 + (alpha * (celsius - 20)));

    /// <summary>∫ 1/D over a width on which D goes straight from one value to another.</summary>
    internal static double Reciprocal(double from, double to, double width)
    {
        // ln(to/from)/(to − from) = 2·artanh(z)/(to − from); below 0.15 five terms of the series are good to 1e-9.
        double mean = 0.5 * (to + from), z = 0.5 * (to - from) / mean, square = z * z;
        return square < 0.0225
            ? width / mean * (1 + (square * ((1 / 3.0) + (square * (0.2 + (square * ((1 / 7.0) + (square / 9))))))))
            : width * Math.Log(to / from) / (to - from);
    }
}
