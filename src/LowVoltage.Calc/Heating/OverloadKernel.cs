using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>One constant current from one starting temperature, on doubles: time as a quadrature in temperature.</summary>
/// <remarks>
/// <code>
/// C′·dθ/dt = P = I²·R′(θ) − q(u),   θ = u + W·q(u),   u = pole + (start − pole)·exp(σ·s)
/// dt/ds    = σ·C′·(1 + W·q′(u))·(u − pole)/P
/// </code>
/// The variable is the surface temperature u, from which everything follows without iteration. Where the current settles, the pole is
/// that temperature and σ = −1: dt/ds runs into the time constant, so the logarithmic approach costs nothing. Where it never settles,
/// the pole is the temperature at which the resistance would vanish and σ = +1: without loss dt/ds is then nearly constant.
/// <para>Where a coefficient is given the loss is straight in u, and so is P: the time is a logarithm and the temperature an exponential, without quadrature.</para>
/// <para>Close to the ambient convection goes with the sixth root of the rise. Integrated over v = s^(1/6) that is a polynomial again.</para>
/// </remarks>
internal readonly struct OverloadKernel : IScalarFunction
{
    /// <summary>Closer than this to the pole P is lost in rounding, and the limit is exact enough.</summary>
    private const double NearPole = 1e-5;

    /// <summary>Closer than this it is the settled temperature itself, which is never reached.</summary>
    private const double AtPole = 1e-9;

    // exp(−40) of any rise is nothing.
    private const double MostSteps = 40;
    private const double Accuracy = 1e-5;

    private readonly HeatBalanceKernel heat;
    private readonly double amperesSquared;
    private readonly double capacity;
    private readonly double start;
    private readonly double pole;

    internal OverloadKernel(in HeatBalanceKernel heat, double amperes, double capacity, double startSurface)
    {
        this.heat = heat;
        this.capacity = capacity;
        amperesSquared = amperes * amperes;
        start = startSurface;
        Settles = heat.TryBalance(amperesSquared, out double balance);
        pole = Settles ? balance : 20 - (1 / Math.Max(heat.Alpha, 1e-6));
        TimeConstant = double.PositiveInfinity;
        if (Settles)
        {
            double perKelvin = amperesSquared * heat.OhmsPerMeter20 * heat.Alpha;
            _ = heat.Loss(balance, out double slope);
            TimeConstant = capacity * (1 + (heat.InnerResistance * slope)) / ((slope * (1 - (perKelvin * heat.InnerResistance))) - perKelvin);
        }
    }

    /// <summary>Whether the current settles at all (perhaps past the melting point).</summary>
    internal bool Settles { get; }

    /// <summary>Seconds in which the distance to the settled temperature falls by e, close to it.</summary>
    internal double TimeConstant { get; }

    /// <summary>Heat capacity per metre that is as hot as the conductor, J/(m·K).</summary>
    internal static double Capacity(Wire wire, InsulationHeat insulation)
    {
        Conductor conductor = wire.Conductor;

        // The section of the adiabatic formula, so that both agree as the time gets short; never larger than the metal that is there.
        double area = conductor.EffectiveAreaSquareMillimeters * 1e-6;
        double metal = area * conductor.Material.HeatCapacityJoulesPerCubicMeterKelvin;
        return insulation switch
        {
            InsulationHeat.None or InsulationHeat.Layers => metal,
            InsulationHeat.All => metal + InsulationCapacity(wire),
            _ => throw new ArgumentOutOfRangeException(nameof(insulation), insulation, "insulation must be one of the named values."),
        };
    }

    /// <summary>dt/dv, with s = v⁶.</summary>
    public double Evaluate(double x)
    {
        double square = x * x;
        double fifth = square * square * x;
        return 6 * fifth * Rate(fifth * x);
    }

    /// <summary>dt/ds.</summary>
    private double Rate(double x)
    {
        double away = (start - pole) * Math.Exp(Settles ? -x : x);
        if (Settles && Math.Abs(away) < NearPole)
        {
            return TimeConstant;
        }

        double surface = pole + away;
        double loss = heat.Loss(surface, out double slope);
        double power = (amperesSquared * heat.OhmsPerMeterAt(surface + (heat.InnerResistance * loss))) - loss;
        double rate = capacity * (1 + (heat.InnerResistance * slope)) * away / power;
        return Settles ? -rate : rate;
    }

    /// <summary>Seconds to a surface temperature on the way to where the current leads; infinite when it is never reached.</summary>
    internal double SecondsTo(double surface)
    {
        if (Settles && Math.Abs(surface - pole) <= AtPole)
        {
            return double.PositiveInfinity;
        }

        double ratio = (surface - pole) / (start - pole);
        double steps = Settles ? -Math.Log(ratio) : Math.Log(ratio);
        return ratio > 0 && steps >= 0 && steps < MostSteps ? Elapsed(0, steps) : double.PositiveInfinity;
    }

    /// <summary>Surface temperature after a time; false when that lies past the limit.</summary>
    internal bool TryAdvance(double seconds, double limit, out double surface)
    {
        surface = start;
        if (seconds == 0 || start.Equals(pole))
        {
            return true;
        }

        bool limited = !Settles || pole > limit;
        if (heat.Conductance > 0)
        {
            double inertia = capacity * (1 + (heat.InnerResistance * heat.Conductance)), rate = PowerSlope / inertia;
            double reached = start + (PowerAt(start) / inertia * (rate == 0 ? seconds : ExpLog.Expm1(rate * seconds) / rate));
            surface = limited ? Math.Min(limit, reached) : reached;
            return !limited || reached <= limit + AtPole;
        }

        double most = limited ? Math.Min(Math.Abs(Math.Log((limit - pole) / (start - pole))), MostSteps) : MostSteps;
        double step = 0, elapsed = 0, low = 0, high = most;
        for (int i = 0; i < 100; i++)
        {
            double next = Next(step, (seconds - elapsed) / Rate(step), low, high, most);
            double change = Math.Abs(next - step);

            // Newton converges quadratically: what follows a step this small is lost in rounding, and needs no quadrature.
            if (change <= 1e-7 * step && next < most)
            {
                step = next;
                break;
            }

            elapsed += Elapsed(step, next);
            step = next;
            if (elapsed < seconds)
            {
                low = step;
            }
            else
            {
                high = step;
            }

            if (step >= most && elapsed < seconds)
            {
                break;
            }
        }

        surface = pole + ((start - pole) * Math.Exp(Settles ? -step : step));
        return !(limited && step >= most && elapsed < seconds * (1 - 1e-12));
    }

    private double Elapsed(double from, double to) =>
        heat.Conductance <= 0 ? GaussKronrod.Integrate(this, SixthRoot(from), SixthRoot(to), Accuracy)
        : Settles ? TimeConstant * (to - from)
        : Straight(pole + ((start - pole) * Math.Exp(from)), pole + ((start - pole) * Math.Exp(to)));

    /// <summary>Seconds between two surface temperatures where P is straight between them.</summary>
    private double Straight(double from, double to) =>
        capacity * (1 + (heat.InnerResistance * heat.Conductance)) * OverloadTable.Reciprocal(PowerAt(from), PowerAt(to), to - from);

    /// <summary>P at a surface temperature, and its slope, where a coefficient is given.</summary>
    private double PowerAt(double surface)
    {
        double loss = heat.Loss(surface, out _);
        return (amperesSquared * heat.OhmsPerMeterAt(surface + (heat.InnerResistance * loss))) - loss;
    }

    private double PowerSlope =>
        (amperesSquared * heat.OhmsPerMeter20 * heat.Alpha * (1 + (heat.InnerResistance * heat.Conductance))) - heat.Conductance;

    private static double SixthRoot(double value) => Math.Pow(value, 1 / 6.0);

    // Newton's step, which is exact near the pole; halving when it leaves the bracket, and the end when it passes that.
    private static double Next(double step, double change, double low, double high, double most)
    {
        double next = step + change;
        if (next >= most && high >= most)
        {
            return most;
        }

        return next >= low && next <= high ? next : 0.5 * (low + high);
    }

    /// <summary>Heat capacity per metre of the whole insulation, J/(m·K).</summary>
    internal static double InsulationCapacity(Wire wire)
    {
        double outer = wire.OuterDiameterMillimeters, inner = wire.Conductor.DiameterMillimeters;
        return Math.PI / 4 * ((outer * outer) - (inner * inner)) * 1e-6 * wire.Insulation.HeatCapacityJoulesPerCubicMeterKelvin;
    }
}
