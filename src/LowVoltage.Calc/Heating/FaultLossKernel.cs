using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>A short circuit of one wire that loses heat, on doubles: time and Joule integral as quadratures in temperature.</summary>
/// <remarks>
/// <code>
/// P = I²·R′(θ) − q(u),   I = E/(Rs + L·R′(θ)),   θ = u + W·q(u)
/// u = pole + (start − pole)·exp(σ·s),   dt/ds = σ·C′·(1 + W·q′(u))·(u − pole)/P
/// </code>
/// The variable is the one of <see cref="OverloadKernel"/>. I²R′ is concave in θ as long as it rises and falls after that, q is convex: P has
/// at most one root above the ambient, the steady temperature, and that is the pole.
/// </remarks>
internal readonly struct FaultLossKernel
{
    private const double NearPole = 1e-5;
    private const double AtPole = 1e-9;
    private const double MostSteps = 40;
    private const double Accuracy = 1e-9;

    private readonly double capacity;
    private readonly double volts;
    private readonly double fixedOhms;
    private readonly double meters;
    private readonly double start;
    private readonly double most;
    private readonly double timeConstant;

    internal FaultLossKernel(in HeatBalanceKernel heat, double capacity, double volts, double fixedOhms, double meters, double initial)
    {
        Heat = heat;
        this.capacity = capacity;
        this.volts = volts;
        this.fixedOhms = fixedOhms;
        this.meters = meters;
        start = heat.SurfaceFor(initial);
        most = heat.SurfaceFor(heat.MostCelsius);
        Pole = 20 - (1 / Math.Max(heat.Alpha, 1e-6));
        timeConstant = double.PositiveInfinity;
        if (PowerAt(most, out _, out _) < 0)
        {
            // A current of nothing may lose the sign of its power at the ambient in rounding; the wire then stays where it is.
            Settles = true;
            Pole = Brent.TryFindRoot(new Gain(this), heat.NoLoadCelsius, most, 1e-12, out double root) ? root : heat.NoLoadCelsius;
            timeConstant = TimeConstantAt(Pole);
        }
    }

    internal HeatBalanceKernel Heat { get; }

    /// <summary>Whether the heat made comes to equal the heat lost below the melting point.</summary>
    internal bool Settles { get; }

    /// <summary>The settled surface temperature, or where the resistance would vanish.</summary>
    internal double Pole { get; }

    internal double AmperesAt(double conductor) => volts / (fixedOhms + (meters * Heat.OhmsPerMeterAt(conductor)));

    /// <summary>Seconds to a surface temperature; infinite when it is never reached.</summary>
    internal double SecondsTo(double surface)
    {
        double steps = StepsTo(surface);
        return steps < MostSteps ? Elapsed(steps, joules: false) : double.PositiveInfinity;
    }

    /// <summary>Where the fault is after a time; false when the metal melts before, and then that moment.</summary>
    internal bool TryAdvance(double seconds, out double surface, out double reached, out double joules)
    {
        (surface, reached, joules) = (start, seconds, 0);
        if (seconds == 0)
        {
            return true;
        }

        double last = Settles ? MostSteps : StepsTo(most);
        double longest = Elapsed(last, joules: false);
        if (seconds > longest)
        {
            bool solid = Settles;
            surface = solid ? Pole : most;
            reached = solid ? seconds : longest;
            double settled = AmperesAt(Heat.ConductorAt(surface));
            joules = Elapsed(last, joules: true) + (solid ? settled * settled * (seconds - longest) : 0);
            return solid;
        }

        _ = Brent.TryFindRoot(new Arrival(this, seconds), 0, last, 1e-13, out double steps);
        surface = SurfaceAt(steps);
        joules = Elapsed(steps, joules: true);
        return true;
    }

    private double StepsTo(double surface)
    {
        if (Settles && Math.Abs(surface - Pole) <= AtPole)
        {
            return double.PositiveInfinity;
        }

        // On the other side of the pole the logarithm is not a number, which is not zero or greater either.
        double steps = Math.Log((surface - Pole) / (start - Pole));
        steps = Settles ? -steps : steps;
        return steps >= 0 ? steps : double.PositiveInfinity;
    }

    private double SurfaceAt(double steps) => Pole + ((start - Pole) * Math.Exp(Settles ? -steps : steps));

    // v = s^(1/6), as in OverloadKernel: a start at the ambient temperature is not smooth otherwise.
    private double Elapsed(double steps, bool joules) =>
        GaussKronrod.Integrate(new Rate(this, joules), 0, Math.Pow(steps, 1 / 6.0), Accuracy);

    private double PowerAt(double surface, out double slope, out double ampereSquared)
    {
        double loss = Heat.Loss(surface, out slope);
        double perMeter = Heat.OhmsPerMeterAt(surface + (Heat.InnerResistance * loss));
        double amperes = volts / (fixedOhms + (meters * perMeter));
        ampereSquared = amperes * amperes;
        return (ampereSquared * perMeter) - loss;
    }

    // dP/du at the pole: what the resistance adds, what the falling current takes, what the loss takes.
    private double TimeConstantAt(double surface)
    {
        _ = PowerAt(surface, out double slope, out double ampereSquared);
        double line = meters * Heat.OhmsPerMeterAt(Heat.ConductorAt(surface));
        double perKelvin = ampereSquared * Heat.OhmsPerMeter20 * Heat.Alpha * (1 - (2 * line / (fixedOhms + line)));
        double inner = 1 + (Heat.InnerResistance * slope);
        return capacity * inner / (slope - (perKelvin * inner));
    }

    /// <summary>dt/dv, or I²·dt/dv, with s = v⁶.</summary>
    private readonly struct Rate(FaultLossKernel fault, bool joules) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double square = x * x;
            double fifth = square * square * x;
            double surface = fault.SurfaceAt(fifth * x);
            double power = fault.PowerAt(surface, out double slope, out double ampereSquared);
            double away = surface - fault.Pole;
            double rate = fault.Settles && Math.Abs(away) < NearPole
                ? fault.timeConstant
                : fault.capacity * (1 + (fault.Heat.InnerResistance * slope)) * (fault.Settles ? -away : away) / power;
            return 6 * fifth * rate * (joules ? ampereSquared : 1);
        }
    }

    /// <summary>Heat made less heat lost at a surface temperature.</summary>
    private readonly struct Gain(FaultLossKernel fault) : IScalarFunction
    {
        public double Evaluate(double x) => fault.PowerAt(x, out _, out _);
    }

    private readonly struct Arrival(FaultLossKernel fault, double seconds) : IScalarFunction
    {
        public double Evaluate(double x) => fault.Elapsed(x, joules: false) - seconds;
    }
}
