using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>What a fault did by the time the fuse has opened at the latest.</summary>
/// <param name="Seconds">Infinite where it need not open.</param>
/// <param name="Excess">Kelvins by which the hottest stretch passed its short-circuit limit; negative when all stayed below.</param>
/// <param name="First">Current at the beginning, A.</param>
internal readonly record struct FaultEnd(double Seconds, double Excess, double First);

/// <summary>A fault at a place of the circuit, stepped in time: the source, every stretch between, shared ones with the others' current; all heat adiabatically.</summary>
/// <remarks>The fuse opens at the latest when the Joule integral let through reaches that of its longest time at the present current; a breaker when that time has passed.</remarks>
internal static class OwnFault
{
    private const double MostSeconds = 30;

    /// <summary>A piece of wire on the way of the fault current: Ω at 20 °C, share of the fault current, other current, temperature.</summary>
    private struct Piece
    {
        public OwnWire Wire;
        public double Meters;
        public double Wires;
        public double Others;
        public double Celsius;
        public double Ohms => Wire.OhmsAt(Celsius) * Meters / Wires;
    }

    /// <summary>A fault between feed and return, so far from the fuse that a share of every stretch up to one is in its way.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="level">Weakest source: minimum; strongest: maximum.</param>
    /// <param name="stretch">The feed stretch with the fault.</param>
    /// <param name="share">How far along that stretch; 1 is its end. The way back counts for the same share of the feed's length.</param>
    /// <param name="heating">r.m.s. current in service, for insulation without a short-circuit limit.</param>
    public static FaultEnd At(OwnCircuit circuit, SupplyLevel level, int stretch, double share, double heating)
    {
        double length = circuit.Stretches.Take(circuit.FeedCount).Sum(s => s.Meters);
        double before = circuit.Stretches.Take(stretch).Sum(s => s.Meters) + (share * circuit.Stretches[stretch].Meters), along = before / length;
        List<Piece> pieces = [];
        for (int k = 0; k <= stretch; k++)
        {
            pieces.Add(Cut(circuit.Stretches[k], k < stretch ? 1 : share, heating));
        }

        pieces.AddRange(circuit.Stretches.Skip(circuit.FeedCount).Select(s => Cut(s, along, heating)));
        double chassis = circuit.Given.Back.Type == BackType.Chassis ? circuit.Given.Back.Ohms * along : 0, joints = along < 1 ? 0 : circuit.Given.JointOhms;
        return Run(circuit, level, [.. pieces], LeadOhms(circuit, level) + joints + chassis, circuit.SharedOhms * along);
    }

    /// <summary>A fault in one of several parallel wires: fed directly through its near part, and through its sisters and its far part.</summary>
    public static FaultEnd InOneOf(OwnCircuit circuit, SupplyLevel level, int stretch, double share, double heating)
    {
        OwnStretch own = circuit.Stretches[stretch];
        Piece[] before = [.. circuit.Stretches.Take(stretch).Select(s => Cut(s, 1, heating))];
        Piece near = Cut(own, share, heating) with { Wires = 1 }, far = Cut(own, 1 - share, heating) with { Wires = 1 };
        Piece sisters = Cut(own, 1, heating) with { Wires = own.Parallel - 1 };
        return Run(circuit, level, before, LeadOhms(circuit, level), 0, [near, far, sisters]);
    }

    // Wires of the lead may have less than their standard's largest resistance, or more than was stated of the whole: the least current goes through the more of both.
    private static double LeadOhms(OwnCircuit circuit, SupplyLevel level) =>
        level == SupplyLevel.Minimum ? OwnSupply.LeadOhms(circuit.Given) : circuit.Given.UpstreamOhms ?? 0;

    private static Piece Cut(OwnStretch s, double share, double heating) => new()
    {
        Wire = s.Wire, Meters = s.Meters * share, Wires = s.Parallel, Others = s.Others, Celsius = s.StartCelsius(heating),
    };

    private static FaultEnd Run(OwnCircuit circuit, SupplyLevel level, Piece[] row, double fixedOhms, double sharedOhms, Piece[]? ring = null)
    {
        OwnFuse fuse = circuit.Fuse!;
        double time = 0, joule = 0, first = 0;
        while (true)
        {
            (double i, double direct) = Current(circuit, level, row, fixedOhms, sharedOhms, ring);
            first = time == 0 ? i : first;
            double longest = fuse.Longest(i);
            bool opens = fuse.IsBreaker ? time >= longest : joule >= i * i * longest;
            double excess = Excess(row, ring);
            if (opens || double.IsInfinity(longest) || Melts(row, ring) || time > MostSeconds)
            {
                return new(opens ? time : double.PositiveInfinity, opens ? excess : double.PositiveInfinity, first);
            }

            double fastest = Fastest(row, ring, i, direct);
            double dt = Math.Min(longest / 200, 4 / fastest);
            Heat(row, ring, i, direct, dt);
            time += dt;
            joule += i * i * dt;
        }
    }

    // The whole current, and its part straight through the near piece of a ring.
    private static (double Whole, double Direct) Current(OwnCircuit circuit, SupplyLevel level, Piece[] row, double fixedOhms, double sharedOhms, Piece[]? ring)
    {
        double ohms = fixedOhms + sharedOhms, others = circuit.OtherAmperes * sharedOhms;
        foreach (ref readonly Piece piece in row.AsSpan())
        {
            ohms += piece.Ohms;
            others += piece.Others * piece.Ohms;
        }

        if (ring is null)
        {
            return (circuit.Source.Flow(level, ohms, others), 0);
        }

        double near = ring[0].Ohms, around = ring[1].Ohms + ring[2].Ohms, both = near * around / (near + around);
        double whole = circuit.Source.Flow(level, ohms + both, others);
        return (whole, whole * around / (near + around));
    }

    private static double Rate(in Piece piece, double amperes)
    {
        double each = (amperes + piece.Others) / piece.Wires;
        return each * each * piece.Wire.OhmsAt(piece.Celsius) / piece.Wire.HeatPerKelvin;
    }

    private static double Through(int k, double whole, double direct) => k == 0 ? direct : whole - direct;

    private static double Fastest(Piece[] row, Piece[]? ring, double whole, double direct)
    {
        double most = 1e-9;
        foreach (ref readonly Piece piece in row.AsSpan())
        {
            most = Math.Max(most, Rate(piece, whole));
        }

        for (int k = 0; ring is not null && k < 3; k++)
        {
            most = Math.Max(most, Rate(ring[k], Through(k, whole, direct)));
        }

        return most;
    }

    private static void Heat(Piece[] row, Piece[]? ring, double whole, double direct, double dt)
    {
        for (int k = 0; k < row.Length; k++)
        {
            row[k].Celsius = After(row[k], whole, dt);
        }

        for (int k = 0; ring is not null && k < 3; k++)
        {
            ring[k].Celsius = After(ring[k], Through(k, whole, direct), dt);
        }
    }

    // Midpoint rule.
    private static double After(in Piece piece, double amperes, double dt)
    {
        Piece middle = piece with { Celsius = piece.Celsius + (0.5 * dt * Rate(piece, amperes)) };
        return piece.Celsius + (dt * Rate(middle, amperes));
    }

    private static double Excess(Piece[] row, Piece[]? ring)
    {
        double most = double.NegativeInfinity;
        foreach (ref readonly Piece piece in row.AsSpan())
        {
            most = Math.Max(most, piece.Celsius - piece.Wire.ShortCircuit);
        }

        return ring is null ? most : Math.Max(most, Excess(ring, null));
    }

    private static bool Melts(Piece[] row, Piece[]? ring) =>
        Array.Exists(row, piece => piece.Celsius >= piece.Wire.Melting) || (ring is not null && Melts(ring, null));
}
