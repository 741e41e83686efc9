using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Circuits;

[Properties(Arbitrary = [typeof(RandomCircuit)], MaxTest = 300)]
public class OperatingPointProperties
{
    [Property]
    public void Solve_AnyLoad_SourcePowerIsLoadAndLosses(RandomCircuit c)
    {
        foreach (OperatingPoint p in Solve(c))
        {
            double sum = (double)p.LoadPower.Watts + (double)p.SourceLoss.Watts + p.Elements.Sum(e => (double)e.Loss.Watts);
            Near((double)p.SourcePower.Watts, sum, 1e-9);
            Near((double)p.PathLoss.Watts, p.Elements.Sum(e => (double)e.Loss.Watts), 1e-9);
            // The heat in the source is I²·r, worked out apart.
            Assert.Equal(p.Current.Amperes * p.Current.Amperes * c.SourceOhms, (double)p.SourceLoss.Watts, 1e-9 * (double)p.SourcePower.Watts);
        }
    }

    [Property]
    public void Solve_AnyLoad_ObeysKirchhoffAndTheLoad(RandomCircuit c)
    {
        foreach ((OperatingPoint p, Load load) in Solve(c).Zip(SolvedLoads(c)))
        {
            double around = p.VoltageAtLoad.Volts + p.Elements.Sum(e => e.Drop.Volts) + (p.Current.Amperes * c.SourceOhms);
            Near(c.Volts, around, 1e-9);
            Near(p.Current.Amperes, load.CurrentAt(p.VoltageAtLoad, LoadState.Running).Amperes, 1e-9);
            Assert.All(p.Elements, e => Assert.Equal(p.Current.Amperes, e.Current.Amperes));
        }
    }

    [Property]
    public void Solve_SelfHeated_TemperatureReproducesTheModel(RandomCircuit c)
    {
        foreach (OperatingPoint p in Solve(c))
        {
            Near(c.CelsiusAt(p.Current.Amperes) + 300, p.HottestConductor.DegreesCelsius + 300, 1e-9);
            Near(c.OhmsAt(p.Current.Amperes) - c.SourceOhms, p.Elements.Sum(e => e.Resistance.Ohms), 1e-9);
        }
    }

    [Property]
    public void Solve_AgreesWithBisection(RandomCircuit c)
    {
        double r = c.Volts / c.Amperes;
        OperatingPoint p = Point(c, Load.Resistance(ElectricResistance.FromOhms(r)));
        if (p.Exists)
        {
            Near(Bisect(i => c.Volts - (i * (c.OhmsAt(i) + r)), 0, c.Volts / r), p.Current.Amperes, 1e-10);
        }

        double w = c.Volts * c.Amperes;
        OperatingPoint lamp = Point(c, Load.Lamp(Power.FromWatts(w), ElectricPotential.FromVolts(c.Volts)));
        if (lamp.Exists)
        {
            Near(
                Bisect(u => c.Volts - u - (c.Amperes * Math.Pow(u / c.Volts, 0.55) * c.OhmsAt(c.Amperes * Math.Pow(u / c.Volts, 0.55))), 0, c.Volts),
                lamp.VoltageAtLoad.Volts,
                1e-10);
        }
    }

    [Property]
    public void Solve_ConstantPower_GivesTheSmallestCurrentOrNoneWhereThereIsNone(RandomCircuit c)
    {
        double watts = c.Volts * c.Amperes, most = 0, top = 0, first = double.NaN, step = c.Volts / c.OhmsAt(0) / 20000, before = 0;
        double power(double i) => i * (c.Volts - (i * c.OhmsAt(i)));
        for (double i = step; i < c.Volts / c.OhmsAt(0); i += step)
        {
            (most, top) = power(i) > most ? (power(i), i) : (most, top);
            if (double.IsNaN(first) && power(i) >= watts)
            {
                first = Bisect(x => watts - power(x), before, i);
            }

            before = i;
        }

        // The scan is coarse where the conductor heats a lot: sharpen its top by thirds.
        double low = Math.Max(top - step, 0), high = top + step;
        for (int i = 0; i < 200; i++)
        {
            double a = low + ((high - low) / 3), b = high - ((high - low) / 3);
            (low, high) = power(a) < power(b) ? (a, high) : (low, b);
        }

        most = power(low);
        first = double.IsNaN(first) && most >= watts ? Bisect(x => watts - power(x), 0, low) : first;
        OperatingPoint p = Point(c, Load.ConstantPower(Power.FromWatts(watts)));
        if (!double.IsNaN(first))
        {
            Assert.True(p.Exists || p.Reason == NoOperatingPoint.ConductorMelts, p.Explanation);
            if (p.Exists)
            {
                Near(first, p.Current.Amperes, 1e-6);
                Assert.True(p.VoltageAtLoad.Volts >= (0.5 * c.Volts) - 1e-6);
            }
        }
        else if (most < watts * (1 - 1e-6))
        {
            Assert.Equal(NoOperatingPoint.PowerOutOfReach, p.Reason);
            Near(most, (double)p.LargestPower!.Value.Watts, 1e-6);
        }
    }

    [Property]
    public void Solve_ConstantPowerAtTheBoundary_ExistsBelowAndNotAbove(RandomCircuit c)
    {
        double r = c.OhmsAt(0), most = c.Volts * c.Volts / (4 * r);
        ConductorTemperature cold = Paths.At(c.Ambient);
        OperatingPoint below = Point(c, Load.ConstantPower(Power.FromWatts(most * (1 - 1e-9))), cold);
        OperatingPoint above = Point(c, Load.ConstantPower(Power.FromWatts(most * (1 + 1e-9))), cold);
        Assert.True(below.Exists);
        Near(c.Volts / 2, below.VoltageAtLoad.Volts, 1e-4);
        Assert.False(above.Exists);
        Near(most, (double)above.LargestPower!.Value.Watts, 1e-9);
        Near(most, (double)MaximumPowerTransfer.Into(ElectricPotential.FromVolts(c.Volts), ElectricResistance.FromOhms(r)).Power.Watts, 1e-9);
    }

    [Property]
    public void Solve_LongerPathOrMorePower_NeverLowersTheDrop(RandomCircuit c)
    {
        foreach (Func<double, Load> make in new Func<double, Load>[]
        {
            w => Load.ConstantPower(Power.FromWatts(w)),
            w => Load.ConstantCurrent(ElectricCurrent.FromAmperes(w / c.Volts)),
            w => Load.Resistance(ElectricResistance.FromOhms(c.Volts * c.Volts / w)),
            w => Load.Lamp(Power.FromWatts(w), ElectricPotential.FromVolts(c.Volts)),
        })
        {
            OperatingPoint p = Point(c, make(c.Volts * c.Amperes)), q = Point(c, make(c.Volts * c.Amperes * 1.01)), longer = Point(c with { Feed = c.Feed * 1.01 }, make(c.Volts * c.Amperes));
            if (p.Exists && q.Exists)
            {
                Assert.True(q.Current.Amperes >= p.Current.Amperes * (1 - 1e-12));
                Assert.True(q.Drop.Volts >= p.Drop.Volts * (1 - 1e-12));
            }

            if (p.Exists && longer.Exists)
            {
                Assert.True(longer.Drop.Volts >= p.Drop.Volts * (1 - 1e-12));
                Assert.True(longer.VoltageAtLoad.Volts <= p.VoltageAtLoad.Volts * (1 + 1e-12));
            }
        }
    }

    [Property]
    public void Solve_InOtherUnits_GivesTheSame(RandomCircuit c)
    {
        OperatingPoint si = Point(c, Load.ConstantCurrent(ElectricCurrent.FromAmperes(c.Amperes)));
        OperatingPoint other = OperatingPoint.Solve(
            Source.BehindResistance(ElectricPotential.FromMillivolts(c.Volts * 1e3), ElectricResistance.FromMicroohms(c.SourceOhms * 1e6)),
            CircuitPath.Create(
                Segment.Create(Paths.Awg(c.Awg), Length.FromFeet(c.Feed / 0.3048)), ReturnPath.Wire(Length.FromMillimeters(c.Return * 1e3)))
                .WithFeedJoints(Joint.Create("j", ElectricResistance.FromMilliohms(c.JointOhms * 1e3))),
            Load.ConstantCurrent(ElectricCurrent.FromMilliamperes(c.Amperes * 1e3)),
            ConductorTemperature.SelfHeated(
                Temperature.FromKelvins(c.Ambient + 273.15), ElectricCurrent.FromMilliamperes(c.RatedAmperes * 1e3), Temperature.FromDegreesFahrenheit(((c.Ambient + c.Rise) * 1.8) + 32)));
        Assert.Equal(si.Exists, other.Exists);
        if (si.Exists)
        {
            Near(si.Drop.Volts, other.Drop.Volts, 1e-10);
        }
    }

    [Property]
    public void Solve_ConstantPowerAndLampTogether_SitsOnTheHighestRoot(RandomCircuit c)
    {
        double half = c.Volts * c.Amperes / 2;
        Load load = Load.Together(Load.ConstantPower(Power.FromWatts(half)), Load.Lamp(Power.FromWatts(half), ElectricPotential.FromVolts(c.Volts)));
        double current(double u) => (half / u) + (half / c.Volts * Math.Pow(u / c.Volts, 0.55));
        double balance(double u) => c.Volts - u - (current(u) * c.OhmsAt(current(u)));
        double root = double.NaN, step = c.Volts / 20000;
        for (double u = c.Volts - step; u > step && double.IsNaN(root); u -= step)
        {
            root = balance(u) >= 0 ? Bisect(x => -balance(x), u + step, u) : root;
        }

        OperatingPoint p = Point(c, load);
        if (!double.IsNaN(root))
        {
            Assert.True(p.Exists || p.Reason == NoOperatingPoint.ConductorMelts);
            if (p.Exists)
            {
                Near(root, p.VoltageAtLoad.Volts, 1e-6);
            }
        }
        else
        {
            // Between two steps of this scan a root may hide only just below the fold.
            Assert.True(!p.Exists || Math.Abs(balance(p.VoltageAtLoad.Volts)) < 1e-6 * c.Volts);
        }
    }

    private static IEnumerable<Load> Loads(RandomCircuit c)
    {
        double watts = c.Volts * c.Amperes;
        yield return Load.Resistance(ElectricResistance.FromOhms(c.Volts / c.Amperes));
        yield return Load.ConstantCurrent(ElectricCurrent.FromAmperes(c.Amperes));
        yield return Load.ConstantPower(Power.FromWatts(watts));
        yield return Load.Lamp(Power.FromWatts(watts), ElectricPotential.FromVolts(c.Volts));
        yield return Load.Together(
            Load.ConstantPower(Power.FromWatts(watts / 2)), Load.Resistance(ElectricResistance.FromOhms(2 * c.Volts / c.Amperes)));
    }

    private static IEnumerable<OperatingPoint> Solve(RandomCircuit c) => Loads(c).Select(load => Point(c, load)).Where(p => p.Exists);

    private static IEnumerable<Load> SolvedLoads(RandomCircuit c) => Loads(c).Where(load => Point(c, load).Exists);

    private static OperatingPoint Point(RandomCircuit c, Load load) => Point(c, load, Paths.SelfHeated(c.Ambient, c.RatedAmperes, c.Ambient + c.Rise));

    private static OperatingPoint Point(RandomCircuit c, Load load, ConductorTemperature temperature) => OperatingPoint.Solve(
        Paths.Battery(c.Volts, c.SourceOhms),
        Paths.Wires(c.Awg, c.Feed, c.Return).WithFeedJoints(Joint.Create("joint", ElectricResistance.FromOhms(c.JointOhms))),
        load,
        temperature);

    private static double Bisect(Func<double, double> f, double positive, double negative)
    {
        for (int i = 0; i < 200; i++)
        {
            double middle = 0.5 * (positive + negative);
            (positive, negative) = f(middle) >= 0 ? (middle, negative) : (positive, middle);
        }

        return 0.5 * (positive + negative);
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.True(Math.Abs(expected - actual) <= relative * Math.Abs(expected), $"expected {expected:R}, got {actual:R}");
}
