using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Circuits;

/// <summary>The numbers of one circuit, as the functions of <see cref="OperatingPointKernel"/> need them.</summary>
internal readonly struct Circuit<TTemperature>(
    double volts, double fixedOhms, double conductorOhms20, in TTemperature temperature, Load load, LoadState state)
    where TTemperature : struct, IConductorTemperature
{
    internal readonly TTemperature Temperature = temperature;
    internal readonly double Volts = volts;
    internal readonly LoadLaw Law = load.LawAt(state);
    internal readonly double HeatFactor = load.HeatFactor(state);
    private readonly double fixedOhms = fixedOhms;
    private readonly double conductorOhms20 = conductorOhms20;
    private readonly Load load = load;
    private readonly LoadState state = state;

    internal bool Varies => Temperature.DependsOnCurrent && conductorOhms20 > 0;

    internal double OhmsAt(double heatingAmperes) =>
        conductorOhms20 > 0 ? fixedOhms + (conductorOhms20 * Temperature.RatioAt(heatingAmperes)) : fixedOhms;

    internal double Amperes(double loadVolts) => Law.Exact ? Law.AmperesAt(loadVolts) : load.AmperesAt(loadVolts, state);

    internal double Heating(double loadVolts) =>
        double.IsNaN(HeatFactor) ? load.HeatingAmperesAt(loadVolts, state) : HeatFactor * Amperes(loadVolts);
}

/// <summary>V − U − I(U)·R: zero at an operating point, positive where the source offers more than the load takes.</summary>
internal readonly struct VoltageBalance<TTemperature>(in Circuit<TTemperature> circuit) : IScalarFunction
    where TTemperature : struct, IConductorTemperature
{
    private readonly Circuit<TTemperature> circuit = circuit;

    // Far below anything real, yet finite, so that an interpolation never meets infinity.
    internal const double Floor = -1e100;

    public double Evaluate(double x)
    {
        double i = circuit.Amperes(x);
        double balance = circuit.Volts - x - (i == 0 ? 0 : i * circuit.OhmsAt(circuit.Heating(x)));

        // The floor slopes, so that a search for the peak leaves it on the right side: here towards more voltage.
        return balance > Floor ? balance : Floor * (2 - (x / circuit.Volts));
    }
}

/// <summary>Power at the load at a current, I·(V − I·R(I)).</summary>
internal readonly struct Delivered<TTemperature>(in Circuit<TTemperature> circuit) : IScalarFunction
    where TTemperature : struct, IConductorTemperature
{
    private readonly Circuit<TTemperature> circuit = circuit;

    public double Evaluate(double x)
    {
        double factor = double.IsNaN(circuit.HeatFactor) ? 1 : circuit.HeatFactor;
        double power = x == 0 ? 0 : x * (circuit.Volts - (x * circuit.OhmsAt(x * factor)));

        // The floor slopes towards less current: beyond the melting point of the conductor a peak search must turn back.
        return power > VoltageBalance<TTemperature>.Floor ? power : VoltageBalance<TTemperature>.Floor * (1 + x);
    }
}

/// <summary>Power at the load less the power it takes.</summary>
internal readonly struct PowerBalance<TTemperature>(in Delivered<TTemperature> delivered, double watts) : IScalarFunction
    where TTemperature : struct, IConductorTemperature
{
    private readonly Delivered<TTemperature> delivered = delivered;

    public double Evaluate(double x) => delivered.Evaluate(x) - watts;
}

/// <summary>The current that follows from R(I), less I.</summary>
internal readonly struct CurrentBalance<TTemperature>(in Circuit<TTemperature> circuit, in LoadLaw law, double factor) : IScalarFunction
    where TTemperature : struct, IConductorTemperature
{
    private readonly Circuit<TTemperature> circuit = circuit;
    private readonly LoadLaw law = law;

    public double Evaluate(double x)
    {
        double r = circuit.OhmsAt(x * factor);
        if (law.Watts > 0)
        {
            double square = (circuit.Volts * circuit.Volts) - (4 * r * law.Watts);
            return (2 * law.Watts / (circuit.Volts + Math.Sqrt(square))) - x;
        }

        double u = (circuit.Volts - (r * law.Amperes)) / (1 + (r * law.Siemens));
        return double.IsInfinity(r) ? -x : law.AmperesAt(u) - x;
    }
}

/// <summary>The limit less what the load takes at a voltage.</summary>
internal readonly struct LimitBalance<TTemperature>(in Circuit<TTemperature> circuit, double limit) : IScalarFunction
    where TTemperature : struct, IConductorTemperature
{
    private readonly Circuit<TTemperature> circuit = circuit;

    public double Evaluate(double x)
    {
        double balance = limit - circuit.Amperes(x);
        return balance > VoltageBalance<TTemperature>.Floor ? balance : VoltageBalance<TTemperature>.Floor;
    }
}
