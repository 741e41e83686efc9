using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Oracles;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>A random loop with two stretches of wire that heat themselves, from easy to beyond what it can carry.</summary>
internal sealed class RandomLoop
{
    internal const int Kinds = 9;

    private readonly Copper model;
    private readonly double conductorOhms;
    private readonly double sourceOhms;
    private readonly double limit;

    private RandomLoop(Random random, int kind)
    {
        Volts = random.NextDouble() < 0.5 ? 12.6 : 8 + (50 * random.NextDouble());
        double rated = 2 * Math.Pow(100, random.NextDouble());
        conductorOhms = Volts / rated * 0.5 * Math.Pow(10, -3 * random.NextDouble());
        sourceOhms = conductorOhms * random.NextDouble();
        double ambient = 20 + (40 * random.NextDouble());
        model = new Copper(ambient, (61 + (60 * random.NextDouble()) - ambient) / (rated * rated));
        // Up to twice the largest power without heating.
        double share = 0.0005 * Math.Pow(4000, random.NextDouble()), most = Volts * Volts / (4 * (conductorOhms + sourceOhms));
        Watts = share * most;
        limit = random.NextDouble() < 0.7 ? double.PositiveInfinity : Watts / Volts * (0.5 + (2 * random.NextDouble()));
        Load = Make(random, kind, Watts, Volts);
    }

    internal double Volts { get; }

    internal double Watts { get; }

    internal Load Load { get; }

    internal double Limit => limit;

    internal double Ohms => sourceOhms + (conductorOhms * model.RatioAt(0));

    internal double Cubic => conductorOhms * model.RatioPerSquareAmpere;

    /// <summary>Whether 1e-8 of the load more or less decides on there being a point.</summary>
    internal bool IsOnTheEdge
    {
        get
        {
            LoadLaw law = Load.LawAt(LoadState.Running);
            double f = Load.HeatFactor(LoadState.Running), cubic = Cubic * f * f;
            bool less = LoopKernel.HighestRoot(Volts, Ohms, cubic, Scale(law, 1 - 1e-8)) > 0;
            return law.Exact && less != LoopKernel.HighestRoot(Volts, Ohms, cubic, Scale(law, 1 + 1e-8)) > 0;
        }
    }

    internal static RandomLoop Draw(Random random, int kind) => new(random, kind);

    internal LoopPoint Closed() => LoopKernel.Solve(Volts, Ohms, Cubic, Load, LoadState.Running, limit);

    internal LoopPoint Bracketed() => BracketedLoop.Solve(
        Volts, sourceOhms, conductorOhms, model, Load, LoadState.Running, limit);

    /// <summary>By how much a relative error of the circuit's numbers grows: 1 far from the largest power, without end at it.</summary>
    internal double Steepness(in LoopPoint point)
    {
        double f = Load.HeatFactor(LoadState.Running), bend = Cubic * (double.IsNaN(f) ? 1 : f * f) * point.Amperes * point.Amperes;
        double slope = 1 + ((Ohms + (3 * bend)) * Load.SlopeAt(point.Volts, LoadState.Running));
        return Math.Max(1, 1 / Math.Abs(slope));
    }

    private static LoadLaw Scale(LoadLaw law, double by) => new(law.Siemens * by, law.Amperes * by, law.Watts * by, law.Exact);

    private static Load Make(Random random, int kind, double watts, double volts)
    {
        Load resistance(double w) => Load.Resistance(ElectricResistance.FromOhms(volts * volts / w));
        Load current(double w) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(w / volts));
        Load power(double w) => Load.ConstantPower(Power.FromWatts(w));
        Load lamp(double w) => Load.Lamp(Power.FromWatts(w), ElectricPotential.FromVolts(volts));
        Load some(Load load) => load.WithDutyCycle(DutyCycle.FromFraction(0.1 + (0.9 * random.NextDouble())));
        return kind switch
        {
            0 => resistance(watts),
            1 => current(watts),
            2 => power(watts),
            3 => lamp(watts),
            4 => Load.Together(power(watts / 8), resistance(watts * 7 / 8)),
            5 => Load.Together(power(watts / 2), current(watts / 2)),
            6 => some(Load.Together(power(watts / 3), current(watts / 3), resistance(watts / 3))),
            7 => Load.Together(some(power(watts / 8)), some(lamp(watts * 7 / 8))),
            _ => some(power(watts)),
        };
    }

    /// <summary>Copper (IEC 60028) whose rise goes with the square of the current.</summary>
    private readonly struct Copper(double ambient, double risePerSquareAmpere) : IBracketedTemperature
    {
        private const double Alpha = 0.00393;

        public bool DependsOnCurrent => true;

        public double RatioPerSquareAmpere => Alpha * risePerSquareAmpere;

        public double CelsiusAt(double heatingAmperes) => ambient + (risePerSquareAmpere * heatingAmperes * heatingAmperes);

        public double RatioAt(double heatingAmperes) => 1 + (Alpha * (CelsiusAt(heatingAmperes) - 20));
    }
}
