namespace LowVoltage.Calc.Circuits;

/// <summary>One loop in closed form: a source behind A ohms and B cubic ohms into a load, on doubles, without allocation.</summary>
/// <remarks>
/// <code>h(U) = V − U − A·I(U) − B·(f·I(U))²·I(U) = 0    I(U) = G·U + J + P/U</code>
/// <para>V open-circuit volts; A ohms with nothing flowing (source, joints, chassis, each stretch at its base temperature); B volts per cubic ampere, Σ R₂₀·α·rise/I_z² over the
/// stretches that their own current warms; f r.m.s. over on-state current; U volts at the load.</para>
/// <para>For such loads h is concave. Without B it is a quadratic, whose higher root is never below that of h: from there Newton's method comes down to the highest root and
/// never passes it. A slope that turns, or a voltage of nothing, means that there is none. Lamps and mixtures of duty cycles are bracketed instead.</para>
/// </remarks>
internal static class LoopKernel
{
    private const int MostSteps = 200;

    /// <summary>Solves the loop.</summary>
    /// <param name="volts">V, V.</param>
    /// <param name="ohms">A, Ω.</param>
    /// <param name="cubic">B, V/A³, zero or greater.</param>
    /// <param name="load">The load.</param>
    /// <param name="state">What it is doing.</param>
    /// <param name="limitAmperes">The current that the source holds, A; +∞ for none.</param>
    /// <param name="meltingAmperes">r.m.s. current past which a stretch melts, A; +∞ where that is not asked here.</param>
    internal static LoopPoint Solve(
        double volts,
        double ohms,
        double cubic,
        Load load,
        LoadState state,
        double limitAmperes = double.PositiveInfinity,
        double meltingAmperes = double.PositiveInfinity)
    {
        LoadLaw law = load.LawAt(state);
        double factor = load.HeatFactor(state);
        bool closed = law.Exact && (cubic == 0 || !double.IsNaN(factor));
        double u = closed
            ? HighestRoot(volts, ohms, cubic == 0 ? 0 : cubic * factor * factor, law)
            : LoopBracket.HighestRoot(volts, ohms, cubic, load, state);
        if (!(u > 0))
        {
            return None(volts, ohms, cubic, law, factor, limitAmperes, meltingAmperes);
        }

        double i = law.Exact ? law.AmperesAt(u) : load.AmperesAt(u, state);
        if (!(i <= limitAmperes))
        {
            return AtLimit(volts, ohms, cubic, load, state, limitAmperes, meltingAmperes);
        }

        double heat = double.IsNaN(factor) ? load.HeatingAmperesAt(u, state) : factor * i;
        return heat <= meltingAmperes
            ? new LoopPoint(i, heat, u, false)
            : None(volts, ohms, cubic, law, factor, limitAmperes, meltingAmperes);
    }

    /// <summary>The highest root of V − U − A·I − B·I³ with I = G·U + J + P/U; zero when there is none.</summary>
    internal static double HighestRoot(double volts, double ohms, double cubic, in LoadLaw law)
    {
        double u = Straight(volts, ohms, law);
        if (cubic == 0 || !(u > 0))
        {
            return u;
        }

        for (int n = 0; n < MostSteps; n++)
        {
            double i = law.AmperesAt(u), bend = cubic * i * i;
            double slope = 1 + ((ohms + (3 * bend)) * (law.Siemens - (law.Watts > 0 ? law.Watts / (u * u) : 0)));
            double step = (volts - u - ((ohms + bend) * i)) / slope;
            if (!(slope > 0))
            {
                return 0;
            }

            // Only rounding turns the way down round: then it is there.
            if (!(step < -1e-16 * u))
            {
                return u;
            }

            u += step;
            if (!(u > 0))
            {
                return 0;
            }
        }

        return u;
    }

    /// <summary>The largest power that reaches a load behind A and B with at most a current, W.</summary>
    /// <remarks>The top of I·(V − A·I − B·I³) is where V = 2·A·I + 4·B·I³.</remarks>
    internal static double LargestWatts(double volts, double ohms, double cubic, double mostAmperes)
    {
        if (volts <= 0)
        {
            return 0;
        }

        double top = ohms > 0 ? Numerics.CubicLine.At(volts, 2 * ohms, 4 * cubic, out _) : cubic > 0 ? Math.Pow(volts / (4 * cubic), 1.0 / 3) : double.PositiveInfinity;
        double i = Math.Min(top, mostAmperes);
        return double.IsInfinity(i) ? double.MaxValue : i * (volts - ((ohms + (cubic * i * i)) * i));
    }

    // The higher root of U²·(1 + A·G) − U·(V − A·J) + A·P = 0; zero when there is none.
    private static double Straight(double v, double r, in LoadLaw law)
    {
        double a = 1 + (r * law.Siemens), b = v - (r * law.Amperes);
        if (b <= 0)
        {
            return 0;
        }

        if (law.Watts == 0)
        {
            return b / a;
        }

        double square = (b * b) - (4 * a * r * law.Watts);
        return square >= 0 ? (b + Math.Sqrt(square)) / (2 * a) : 0;
    }

    // The source holds its limit: the load settles where it draws just that, at the highest such voltage the source can still give.
    private static LoopPoint AtLimit(double volts, double ohms, double cubic, Load load, LoadState state, double limit, double melting)
    {
        LoadLaw law = load.LawAt(state);
        double factor = load.HeatFactor(state), u;
        if (law.Exact)
        {
            double spare = limit - law.Amperes, square = (spare * spare) - (4 * law.Siemens * law.Watts);
            u = spare > 0 && law.Siemens > 0 && square >= 0 ? (spare + Math.Sqrt(square)) / (2 * law.Siemens) : 0;
        }
        else
        {
            u = LoopBracket.HighestAtLimit(volts, load, state, limit);
        }

        if (!(u > 0) || u > volts)
        {
            double most = volts - (limit * (ohms + (cubic * limit * limit)));
            return new LoopPoint(NoOperatingPoint.SourceLimit, Math.Max(0, limit * most));
        }

        double heat = Math.Min(double.IsNaN(factor) ? load.HeatingAmperesAt(u, state) : factor * limit, limit);
        return heat <= melting ? new LoopPoint(limit, heat, u, true) : None(volts, ohms, cubic, law, factor, limit, melting);
    }

    private static LoopPoint None(double volts, double ohms, double cubic, in LoadLaw law, double factor, double limit, double melting)
    {
        double f = double.IsNaN(factor) ? 1 : factor;
        return new LoopPoint(
            law.Watts > 0 ? NoOperatingPoint.PowerOutOfReach : NoOperatingPoint.CurrentOutOfReach,
            LargestWatts(volts, ohms, cubic * f * f, Math.Min(limit, melting / f)));
    }
}
