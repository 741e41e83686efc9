using BenchmarkDotNet.Attributes;

namespace LowVoltage.Calc.Benchmarks.Formulas;

/// <summary>A calculation over some dozens of different cases; before it is timed, all its variants must give the same numbers.</summary>
public class CallBenchmarks<T>
    where T : struct, IFormula
{
    protected const int Cases = 64;

    private const double Agreement = 1e-9;

    // For each calculation once a process: the code is the same for all its benchmarks.
    private static bool settled;

    private readonly double[] results = new double[Cases];

    protected Case[] Si { get; } = Case.Draw(Cases, otherUnits: false);

    protected Case[] Other { get; } = Case.Draw(Cases, otherUnits: true);

    [GlobalSetup]
    public void Agree()
    {
        for (int i = 0; i < Cases; i++)
        {
            double raw = default(T).Raw(Si[i]);
            Require("typed", raw, default(T).Typed(Si[i]));
            Require("typed, other units", raw, default(T).Typed(Other[i]));
            Require("UnitsNet", raw, default(T) is IUnitsFormula units ? units.UnitsNet(Si[i]) : raw);
        }

        if (!settled)
        {
            Settling.Run(Calls());
            settled = true;
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Cases)]
    public double[] Raw()
    {
        double[] into = results;
        Case[] cases = Si;
        for (int i = 0; i < into.Length && i < cases.Length; i++)
        {
            into[i] = default(T).Raw(cases[i]);
        }

        return into;
    }

    [Benchmark(OperationsPerInvoke = Cases)]
    public double[] Typed() => Call(Si, results);

    [Benchmark(OperationsPerInvoke = Cases)]
    public double[] TypedOtherUnits() => Call(Other, results);

    protected virtual Action[] Calls() => [() => Raw(), () => Typed(), () => TypedOtherUnits()];

    private static double[] Call(Case[] cases, double[] into)
    {
        for (int i = 0; i < into.Length && i < cases.Length; i++)
        {
            into[i] = default(T).Typed(cases[i]);
        }

        return into;
    }

    private static void Require(string variant, double raw, double value)
    {
        if (!(Math.Abs(value - raw) <= Agreement * Math.Abs(raw)))
        {
            throw new InvalidOperationException($"{typeof(T).Name}: {variant} gives {value:R}, the raw formula {raw:R}.");
        }
    }
}

/// <summary>The same with the operators of UnitsNet beside it.</summary>
public class UnitsCallBenchmarks<T> : CallBenchmarks<T>
    where T : struct, IUnitsFormula
{
    private readonly double[] results = new double[Cases];

    [Benchmark(OperationsPerInvoke = Cases)]
    public double[] UnitsNet()
    {
        double[] into = results;
        Case[] cases = Si;
        for (int i = 0; i < into.Length && i < cases.Length; i++)
        {
            into[i] = default(T).UnitsNet(cases[i]);
        }

        return into;
    }

    protected override Action[] Calls() => [.. base.Calls(), () => UnitsNet()];
}
