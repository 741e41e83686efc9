using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Oracles;

/// <summary>How hot a conductor is at a current, for <see cref="BracketedLoop"/>: any law whose ratio never falls as the current rises.</summary>
internal interface IBracketedTemperature
{
    bool DependsOnCurrent { get; }

    double CelsiusAt(double heatingAmperes);

    double RatioAt(double heatingAmperes);
}

/// <summary>The numbers of one circuit, as the functions of <see cref="BracketedLoop"/> need them.</summary>
internal readonly struct BracketedCircuit<TTemperature>(
    double volts, double fixedOhms, double conductorOhms20, in TTemperature temperature, Load load, LoadState state)
    where TTemperature : struct, IBracketedTemperature
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
internal readonly struct BracketedVoltageBalance<TTemperature>(in BracketedCircuit<TTemperature> circuit) : IScalarFunction
    where TTemperature : struct, IBracketedTemperature
{
    private readonly BracketedCircuit<TTemperature> circuit = circuit;

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
internal readonly struct BracketedDelivered<TTemperature>(in BracketedCircuit<TTemperature> circuit) : IScalarFunction
    where TTemperature : struct, IBracketedTemperature
{
    private readonly BracketedCircuit<TTemperature> circuit = circuit;

    public double Evaluate(double x)
    {
        double factor = double.IsNaN(circuit.HeatFactor) ? 1 : circuit.HeatFactor;
        double power = x == 0 ? 0 : x * (circuit.Volts - (x * circuit.OhmsAt(x * factor)));

        // The floor slopes towards less current: beyond the melting point of the conductor a peak search must turn back.
        return power > BracketedVoltageBalance<TTemperature>.Floor ? power : BracketedVoltageBalance<TTemperature>.Floor * (1 + x);
    }
}

/// <summary>Power at the load less the power it takes.</summary>
internal readonly struct BracketedPowerBalance<TTemperature>(in BracketedDelivered<TTemperature> delivered, double watts) : IScalarFunction
    where TTemperature : struct, IBracketedTemperature
{
    private readonly BracketedDelivered<TTemperature> delivered = delivered;

    public double Evaluate(double x) => delivered.Evaluate(x) - watts;
}

/// <summary>The current that follows from R(I), less I.</summary>
internal readonly struct BracketedCurrentBalance<TTemperature>(in BracketedCircuit<TTemperature> circuit, in LoadLaw law, double factor) : IScalarFunction
    where TTemperature : struct, IBracketedTemperature
{
    private readonly BracketedCircuit<TTemperature> circuit = circuit;
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
internal readonly struct BracketedLimitBalance<TTemperature>(in BracketedCircuit<TTemperature> circuit, double limit) : IScalarFunction
    where TTemperature : struct, IBracketedTemperature
{
    private readonly BracketedCircuit<TTemperature> circuit = circuit;

    public double Evaluate(double x)
    {
        double balance = limit - circuit.Amperes(x);
        return balance > BracketedVoltageBalance<TTemperature>.Floor ? balance : BracketedVoltageBalance<TTemperature>.Floor;
    }
}
