using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>A wire as metal and three layers of insulation, on doubles: time to a temperature and temperature after a time. Does not allocate.</summary>
/// <remarks>
/// <code>
/// C·dθ/dt = I²·R′(θ) − (θ − a)/W₁,   C₁·da/dt = (θ − a)/W₁ − (a − b)/W₂,   C₂·db/dt = (a − b)/W₂ − (b − u)/W₃,   C₃·du/dt = (b − u)/W₃ − q(u)
/// </code>
/// Layers of 20, 30 and 50 % of the thermal resistance, each with all of its heat capacity at its outer face (a, b between them, u at the surface). In truth that lies further in,
/// takes up heat sooner and more of it: the metal is never hotter than here. The first layer is thin, since the heat of a short overload gets no further. Dormand and Prince's
/// method of fifth order with its step control. It starts on the steady profile: every layer as it is where nothing changes.
/// </remarks>
internal readonly struct LayeredKernel
{
    private const double First = 0.2;
    private const double Second = 0.3;
    private const double Third = 0.5;
    private const double Accuracy = 1e-9;

    // What is left of a degree where a double holds hundreds of them: a finer step would chase its rounding.
    private const double Rounding = 1e-13;
    private const int MostSteps = 1_000_000;
    private const int Polishing = 8;

    private readonly HeatBalanceKernel heat;
    private readonly double amperesSquared;
    private readonly double metal;
    private readonly double first;
    private readonly double second;
    private readonly double third;

    /// <param name="heat">The balance; its inner resistance is that of the insulation.</param>
    /// <param name="amperes">The constant current, A.</param>
    /// <param name="metal">Heat capacity of the metal, J/(m·K).</param>
    /// <param name="insulation">Heat capacity of the insulation, J/(m·K).</param>
    /// <param name="ratio">Outer over inner diameter of the insulation, above 1.</param>
    internal LayeredKernel(in HeatBalanceKernel heat, double amperes, double metal, double insulation, double ratio)
    {
        this.heat = heat;
        this.metal = metal;
        amperesSquared = amperes * amperes;

        // Resistance goes with the logarithm of the diameter, heat capacity with its square.
        double whole = ExpLog.Expm1(2 * Math.Log(ratio)), one = ExpLog.Expm1(2 * First * Math.Log(ratio)), two = ExpLog.Expm1(2 * (First + Second) * Math.Log(ratio));
        first = insulation * one / whole;
        second = insulation * (two - one) / whole;
        third = insulation * (whole - two) / whole;
    }

    /// <summary>Seconds from one conductor temperature to a higher one; infinite when it is never reached.</summary>
    internal double SecondsTo(double initial, double limit)
    {
        if (initial >= limit)
        {
            return 0;
        }

        if (heat.TryBalance(amperesSquared, out double settled) && heat.ConductorAt(settled) <= limit + 1e-9)
        {
            return double.PositiveInfinity;
        }

        State at = Steady(initial);
        double seconds = Run(ref at, double.PositiveInfinity, limit, limit - initial);
        return at.Metal >= limit - (1e-6 * (limit - initial)) ? seconds : double.PositiveInfinity;
    }

    /// <summary>Conductor temperature after a time; false when it passes the limit before.</summary>
    internal bool TryAdvance(double initial, double seconds, double limit, out double celsius)
    {
        State at = Steady(initial);
        double reached = Run(ref at, seconds, limit, 1 + Math.Abs(heat.NoLoadCelsius - initial));
        celsius = at.Metal;
        return reached >= seconds;
    }

    /// <summary>Steps until a time or a temperature of the metal, whichever is first, and gives the time.</summary>
    private double Run(ref State at, double until, double limit, double scale)
    {
        double time = 0, tolerance = Math.Max(Accuracy * scale, Rounding), step = FirstStep(at, scale);
        for (int i = 0; i < MostSteps && time < until; i++)
        {
            step = Math.Min(step, until - time);
            State next = Step(at, step, out double error);
            double ratio = error / tolerance;
            if (!(ratio <= 1))
            {
                step *= Math.Max(0.1, 0.9 * Math.Pow(ratio, -0.2));
                continue;
            }

            if (next.Metal >= limit)
            {
                return time + Arrive(ref at, step, next, limit);
            }

            at = next;
            time += step;
            step *= Math.Min(5, 0.9 * Math.Pow(Math.Max(ratio, 1e-6), -0.2));
        }

        return time;
    }

    // The part of a step in which the metal reaches the limit, by Newton from a straight line.
    private double Arrive(ref State at, double step, in State end, double limit)
    {
        double part = step * (limit - at.Metal) / (end.Metal - at.Metal);
        State there = end;
        for (int i = 0; i < Polishing; i++)
        {
            there = Step(at, part, out _);
            double change = (limit - there.Metal) / Slope(there).Metal;
            part = Math.Max(0, Math.Min(step, part + change));
            if (Math.Abs(change) <= 1e-12 * step)
            {
                break;
            }
        }

        at = there;
        return part;
    }

    private State Steady(double celsius)
    {
        double surface = heat.SurfaceFor(celsius), drop = celsius - surface;
        return new State(celsius, celsius - (First * drop), surface + (Third * drop), surface);
    }

    // What heats the metal by a thousandth of the way, and a part of the time in which metal and first layer even out.
    private double FirstStep(in State at, double scale)
    {
        double rate = Math.Abs(Slope(at).Metal), even = First * heat.InnerResistance * metal * first / (metal + first);
        return Math.Min(0.1 * even, rate > 0 ? 1e-3 * scale / rate : double.PositiveInfinity);
    }

    private State Slope(in State at)
    {
        double conductance = 1 / heat.InnerResistance;
        double one = conductance * (at.Metal - at.Inner) / First, two = conductance * (at.Inner - at.Outer) / Second, three = conductance * (at.Outer - at.Surface) / Third;
        return new State(
            ((amperesSquared * heat.OhmsPerMeterAt(at.Metal)) - one) / metal,
            (one - two) / first,
            (two - three) / second,
            (three - heat.Loss(at.Surface, out _)) / third);
    }

    // J. R. Dormand, P. J. Prince, A family of embedded Runge-Kutta formulae (1980), RK5(4)7M.
    private State Step(in State at, double h, out double error)
    {
        State k1 = Slope(at);
        State k2 = Slope(at.Plus(h, 1 / 5.0, k1));
        State k3 = Slope(at.Plus(h, 3 / 40.0, k1, 9 / 40.0, k2));
        State k4 = Slope(at.Plus(h, 44 / 45.0, k1, -56 / 15.0, k2, 32 / 9.0, k3));
        State k5 = Slope(at.Plus(h, 19372 / 6561.0, k1, -25360 / 2187.0, k2, 64448 / 6561.0, k3, -212 / 729.0, k4));
        State k6 = Slope(at.Plus(h, 9017 / 3168.0, k1, -355 / 33.0, k2, 46732 / 5247.0, k3, 49 / 176.0, k4, -5103 / 18656.0, k5));
        State end = at.Plus(h, 35 / 384.0, k1, 500 / 1113.0, k3, 125 / 192.0, k4, -2187 / 6784.0, k5, 11 / 84.0, k6);
        State off = default(State).Plus(h, 71 / 57600.0, k1, -71 / 16695.0, k3, 71 / 1920.0, k4, -17253 / 339200.0, k5, 22 / 525.0, k6)
            .Plus(h, -1 / 40.0, Slope(end));
        error = Math.Max(Math.Max(Math.Abs(off.Metal), Math.Abs(off.Inner)), Math.Max(Math.Abs(off.Outer), Math.Abs(off.Surface)));
        return end;
    }

    /// <summary>Temperatures of metal, outer faces of the first two layers and surface, °C, or their rates.</summary>
    private readonly struct State(double metal, double inner, double outer, double surface)
    {
        internal double Metal { get; } = metal;

        internal double Inner { get; } = inner;

        internal double Outer { get; } = outer;

        internal double Surface { get; } = surface;

        internal State Plus(double h, double a, in State x) => Plus(h, a, x, 0, default);

        internal State Plus(double h, double a, in State x, double b, in State y, double c = 0, State z = default, double d = 0, State v = default, double e = 0, State w = default) => new(
            Metal + (h * ((a * x.Metal) + (b * y.Metal) + (c * z.Metal) + (d * v.Metal) + (e * w.Metal))),
            Inner + (h * ((a * x.Inner) + (b * y.Inner) + (c * z.Inner) + (d * v.Inner) + (e * w.Inner))),
            Outer + (h * ((a * x.Outer) + (b * y.Outer) + (c * z.Outer) + (d * v.Outer) + (e * w.Outer))),
            Surface + (h * ((a * x.Surface) + (b * y.Surface) + (c * z.Surface) + (d * v.Surface) + (e * w.Surface))));
    }
}
