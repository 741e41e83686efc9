using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Oracles;

/// <summary>A source behind a series resistance into a load by bracketing alone: the independent route that the closed form is held to.</summary>
/// <remarks>
/// <code>U = V − I·R(I)    R(I) = Rf + Rc·ratio(I)    I = load(U)</code>
/// <para>V open-circuit volts; Rf ohms that do not change (source, joints, chassis); Rc conductor ohms at 20 °C; U volts at the load. Where the
/// temperature is fixed, resistances, constant currents, constant powers and any mixture of them have a closed form. Otherwise a root is
/// bracketed: a load whose current does not fall with voltage has one root in 0…V; with constant power the highest root is sought, and
/// the search for it starts from where the balance is greatest.</para>
/// </remarks>
internal static class BracketedLoop
{
    // What a point may miss Kirchhoff by, of the voltage.
    private const double Consistent = 1e-6;

    internal static LoopPoint Solve<TTemperature>(
        double volts, double fixedOhms, double conductorOhms20, in TTemperature temperature, Load load, LoadState state, double limitAmperes = double.PositiveInfinity)
        where TTemperature : struct, IBracketedTemperature
    {
        BracketedCircuit<TTemperature> circuit = new(volts, fixedOhms, conductorOhms20, temperature, load, state);
        double u = circuit.Varies ? Varying(circuit) : Fixed(circuit);
        if (!(u > 0))
        {
            return None(circuit, limitAmperes);
        }

        double i = circuit.Amperes(u);
        if (i <= limitAmperes)
        {
            double heat = circuit.Heating(u), r = circuit.OhmsAt(heat);
            if (!(Math.Abs(volts - u - (i * r)) <= Consistent * volts))
            {
                // The search ended at the edge where the conductor melts: there is no point.
                return None(circuit, limitAmperes);
            }

            return new LoopPoint(i, heat, u, false);
        }

        return AtLimit(circuit, limitAmperes);
    }

    /// <summary>The largest power I·(V − I·R(I)) that reaches a load behind the resistance with at most the limit current, and the current.</summary>
    internal static double LargestWatts<TTemperature>(in BracketedCircuit<TTemperature> circuit, double limitAmperes)
        where TTemperature : struct, IBracketedTemperature
    {
        double r0 = circuit.OhmsAt(0), v = circuit.Volts;
        if (v <= 0)
        {
            return 0;
        }

        double matched = r0 > 0 ? v / (2 * r0) : double.PositiveInfinity;
        double i = Math.Min(circuit.Varies ? Peak(new BracketedDelivered<TTemperature>(circuit), 0, matched) : matched, limitAmperes);
        return double.IsInfinity(i) ? double.MaxValue : new BracketedDelivered<TTemperature>(circuit).Evaluate(i);
    }

    // Highest root of U²(1 + RG) − U(V − RJ) + RP = 0; zero when there is none.
    private static double Fixed<TTemperature>(in BracketedCircuit<TTemperature> circuit)
        where TTemperature : struct, IBracketedTemperature
    {
        LoadLaw law = circuit.Law;
        return law.Exact ? ClosedForm(circuit.Volts, circuit.OhmsAt(0), law) : ByVoltage(circuit);
    }

    private static double ClosedForm(double v, double r, in LoadLaw law)
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

    private static double Varying<TTemperature>(in BracketedCircuit<TTemperature> circuit)
        where TTemperature : struct, IBracketedTemperature
    {
        LoadLaw law = circuit.Law;
        double factor = circuit.HeatFactor;
        if (!law.Exact || double.IsNaN(factor))
        {
            return ByVoltage(circuit);
        }

        if (law.Watts == 0 && law.Siemens == 0)
        {
            return circuit.Volts - (law.Amperes * circuit.OhmsAt(law.Amperes * factor));
        }

        if (law.Watts == 0 || (law.Siemens == 0 && law.Amperes == 0))
        {
            return ByCurrent(circuit, law, factor);
        }

        return ByVoltage(circuit);
    }

    // One kind of load and a self-heated conductor: the unknown is the current, and each step has the closed form at R(I).
    private static double ByCurrent<TTemperature>(in BracketedCircuit<TTemperature> circuit, in LoadLaw law, double factor)
        where TTemperature : struct, IBracketedTemperature
    {
        double coldest = ClosedForm(circuit.Volts, circuit.OhmsAt(0), law);
        if (coldest <= 0)
        {
            return 0;
        }

        // Rising load: a warmer conductor can only lower the current, so the cold current is an upper bound and 0 a lower one.
        // Constant power: it can only raise it, and since the stable point keeps more than half the voltage, 2P/V is an upper bound.
        double near = law.AmperesAt(coldest), far = law.Watts == 0 ? 0 : 2 * law.Watts / circuit.Volts;
        if (law.Watts > 0 && ClosedForm(circuit.Volts, circuit.OhmsAt(far * factor), law) <= 0)
        {
            BracketedDelivered<TTemperature> delivered = new(circuit);
            far = Peak(delivered, near, far);
            if (delivered.Evaluate(far) < law.Watts)
            {
                return 0;
            }

            BracketedPowerBalance<TTemperature> power = new(delivered, law.Watts);
            return Brent.TryFindRoot(power, near, far, 1e-15 * far, out double i) ? law.Watts / i : law.Watts / far;
        }

        BracketedCurrentBalance<TTemperature> balance = new(circuit, law, factor);
        double low = Math.Min(near, far), high = Math.Max(near, far);
        return Brent.TryFindRoot(balance, low, high, 1e-16 * high, out double amperes)
            ? ClosedForm(circuit.Volts, circuit.OhmsAt(amperes * factor), law)
            : ClosedForm(circuit.Volts, circuit.OhmsAt(near * factor), law);
    }

    private static double ByVoltage<TTemperature>(in BracketedCircuit<TTemperature> circuit)
        where TTemperature : struct, IBracketedTemperature
    {
        double v = circuit.Volts;
        BracketedVoltageBalance<TTemperature> balance = new(circuit);
        if (v <= 0)
        {
            return 0;
        }

        double low = 0;
        if (circuit.Law.Watts > 0)
        {
            low = Peak(balance, 0, v);
            if (balance.Evaluate(low) < 0)
            {
                return 0;
            }
        }

        return Brent.TryFindRoot(balance, low, v, 1e-16 * v, out double u) ? u : (balance.Evaluate(v) >= 0 ? v : 0);
    }

    // The source holds its limit: the load settles where it draws just that, at the highest such voltage the source can still give.
    private static LoopPoint AtLimit<TTemperature>(in BracketedCircuit<TTemperature> circuit, double limit)
        where TTemperature : struct, IBracketedTemperature
    {
        LoadLaw law = circuit.Law;
        BracketedLimitBalance<TTemperature> excess = new(circuit, limit);
        double most = circuit.Volts - (limit * circuit.OhmsAt(limit)), u = 0;
        if (law.Exact)
        {
            double spare = limit - law.Amperes, square = (spare * spare) - (4 * law.Siemens * law.Watts);
            u = spare > 0 && law.Siemens > 0 && square >= 0 ? (spare + Math.Sqrt(square)) / (2 * law.Siemens) : 0;
        }
        else
        {
            double low = law.Watts > 0 ? Peak(excess, 0, circuit.Volts) : 0;
            u = excess.Evaluate(low) >= 0 && Brent.TryFindRoot(excess, low, circuit.Volts, 1e-16 * circuit.Volts, out double root) ? root : 0;
        }

        if (!(u > 0) || u > circuit.Volts)
        {
            return new LoopPoint(NoOperatingPoint.SourceLimit, Math.Max(0, limit * most));
        }

        double heat = Math.Min(circuit.Heating(u), limit), r = circuit.OhmsAt(heat);
        return double.IsInfinity(r) ? None(circuit, limit) : new LoopPoint(limit, heat, u, true);
    }

    private static LoopPoint None<TTemperature>(in BracketedCircuit<TTemperature> circuit, double limit)
        where TTemperature : struct, IBracketedTemperature =>
        new(circuit.Law.Watts > 0 ? NoOperatingPoint.PowerOutOfReach : NoOperatingPoint.CurrentOutOfReach, LargestWatts(circuit, limit));

    // Where a concave function is greatest: golden section.
    private static double Peak<TFunction>(in TFunction function, double low, double high)
        where TFunction : struct, IScalarFunction
    {
        const double Golden = 0.6180339887498949;
        double a = low, b = high, c = b - (Golden * (b - a)), d = a + (Golden * (b - a));
        double fc = function.Evaluate(c), fd = function.Evaluate(d);
        while (b - a > 1e-9 * high)
        {
            if (fc > fd)
            {
                b = d;
                d = c;
                fd = fc;
                c = b - (Golden * (b - a));
                fc = function.Evaluate(c);
            }
            else
            {
                a = c;
                c = d;
                fc = fd;
                d = a + (Golden * (b - a));
                fd = function.Evaluate(d);
            }
        }

        // Where the function breaks off (the conductor melts) the middle may stand beyond the edge: then the better end counts.
        double middle = 0.5 * (a + b), fm = function.Evaluate(middle), fa = function.Evaluate(a), fb = function.Evaluate(b);
        return fm >= fa && fm >= fb ? middle : fa >= fb ? a : b;
    }
}
