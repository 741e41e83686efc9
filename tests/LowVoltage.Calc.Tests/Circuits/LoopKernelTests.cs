using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Oracles;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>The loop in closed form against the same loops solved by bracketing alone.</summary>
public class LoopKernelTests
{
    private const int Each = 1000;

    public static TheoryData<int> Kinds => [.. Enumerable.Range(0, RandomLoop.Kinds)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Solve_RandomLoops_AgreesWithBracketing(int kind)
    {
        int exist = 0, none = 0, limited = 0;
        Random random = new(4711 + kind);
        for (int n = 0; n < Each; n++)
        {
            RandomLoop loop = RandomLoop.Draw(random, kind);
            LoopPoint slow = loop.Bracketed();
            LoopPoint fast = loop.Closed();

            // Within rounding of the largest power the two may differ on whether there is a point.
            if (slow.Exists != fast.Exists && loop.IsOnTheEdge)
            {
                continue;
            }

            Assert.Equal(slow.Reason, fast.Reason);
            if (!slow.Exists)
            {
                none++;
                Assert.Equal(slow.LargestWatts, fast.LargestWatts, 1e-8 * Math.Max(slow.LargestWatts, 1e-9));
                continue;
            }

            exist++;
            limited += slow.Limited ? 1 : 0;
            double allowed = 1e-12 * loop.Steepness(fast);
            Assert.Equal(slow.Limited, fast.Limited);
            Assert.Equal(slow.Volts, fast.Volts, allowed * loop.Volts);
            Assert.Equal(slow.Amperes, fast.Amperes, allowed * Math.Max(slow.Amperes, loop.Volts / loop.Ohms * 1e-3));
            Assert.Equal(slow.HeatingAmperes, fast.HeatingAmperes, allowed * Math.Max(slow.Amperes, loop.Volts / loop.Ohms * 1e-3));
        }

        // A resistance or a lamp always has a point; at a limit only what draws less at less voltage has one.
        Assert.True(exist > Each / 2, $"{exist} exist");
        Assert.Equal(kind is not (0 or 3), none > 0);
        Assert.Equal(kind is 0 or 3 or 4 or 7, limited > 0);
    }

    /// <summary>I + 0.001·I³ = 12 − 60/U by hand: I = 10 gives a drop of 11 V, so 10 W at 1 V is a point, but not the highest.</summary>
    [Fact]
    public void HighestRoot_TwoRoots_IsTheHigherOne()
    {
        double u = LoopKernel.HighestRoot(12, 1, 0.001, new LoadLaw(0, 0, 10, true));
        Assert.InRange(u, 11, 11.2);
        double i = 10 / u;
        Assert.Equal(12, u + i + (0.001 * i * i * i), 1e-13);
    }

    [Fact]
    public void HighestRoot_PastTheLargestPower_IsNone()
    {
        // A = 1 Ω alone: at most 36 W from 12 V. With B the top lies where 2·I + 0.004·I³ = 12.
        Assert.Equal(6, LoopKernel.HighestRoot(12, 1, 0, new LoadLaw(0, 0, 36, true)), 1e-6);
        Assert.Equal(0, LoopKernel.HighestRoot(12, 1, 0, new LoadLaw(0, 0, 36.0001, true)));
        double most = LoopKernel.LargestWatts(12, 1, 0.001, double.PositiveInfinity);
        double top = 5.6563;
        for (int n = 0; n < 50; n++)
        {
            top -= ((2 * top) + (0.004 * top * top * top) - 12) / (2 + (0.012 * top * top));
        }

        Assert.Equal(top * (12 - top - (0.001 * top * top * top)), most, 1e-12);
        Assert.True(LoopKernel.HighestRoot(12, 1, 0.001, new LoadLaw(0, 0, most * (1 - 1e-9), true)) > 0);
        Assert.Equal(0, LoopKernel.HighestRoot(12, 1, 0.001, new LoadLaw(0, 0, most * (1 + 1e-9), true)));
    }

    [Fact]
    public void Solve_PastTheMeltingCurrent_HasNoPoint()
    {
        Load load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(10));
        Assert.True(LoopKernel.Solve(12, 0.1, 1e-5, load, LoadState.Running, meltingAmperes: 10).Exists);
        LoopPoint melted = LoopKernel.Solve(12, 0.1, 1e-5, load, LoadState.Running, meltingAmperes: 9.999);
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, melted.Reason);
        Assert.Equal(9.999 * (12 - (0.9999 + (1e-5 * 9.999 * 9.999 * 9.999))), melted.LargestWatts, 1e-9);
    }

    [Property(Arbitrary = [typeof(RandomCircuit)])]
    public void Solve_SelfHeatedConductor_AgreesWithThePath(RandomCircuit c)
    {
        // Copper by IEC 60028: α = 0.00393 at 20 °C.
        Load load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(c.Amperes));
        double cold = Paths.Awg(c.Awg).OhmsPerMeterAt(20) * (c.Feed + c.Return), slope = cold * 0.00393;
        LoopPoint k = LoopKernel.Solve(
            c.Volts, c.SourceOhms + cold + (slope * (c.Ambient - 20)), slope * c.Rise / (c.RatedAmperes * c.RatedAmperes), load, LoadState.Running);
        OperatingPoint p = OperatingPoint.Solve(
            Paths.Battery(c.Volts, c.SourceOhms), Paths.Wires(c.Awg, c.Feed, c.Return), load, Paths.SelfHeated(c.Ambient, c.RatedAmperes, c.Ambient + c.Rise));
        if (p.Exists)
        {
            Assert.Equal(p.VoltageAtLoad.Volts, k.Volts, 1e-9 * c.Volts);
            double celsius = c.Ambient + (c.Rise * k.HeatingAmperes * k.HeatingAmperes / (c.RatedAmperes * c.RatedAmperes));
            Assert.Equal(p.HottestConductor.DegreesCelsius, celsius, 1e-9 * (300 + celsius));
        }
    }

    [Fact]
    public void Solve_MeltingConductor_StaysBelowItOrHasNoPoint()
    {
        // 1 Ω conductor on 24 V: I·(1 + I²/100) + I·R = 24, and no more than 10 A.
        LoopPoint resistance = Solve(Load.Resistance(ElectricResistance.FromOhms(1)));
        Assert.True(resistance.Exists);
        Assert.Equal(24, (resistance.Amperes * (1 + (resistance.Amperes * resistance.Amperes / 100))) + resistance.Amperes, 1e-12);
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, Solve(Load.Resistance(ElectricResistance.FromOhms(0.3))).Reason);
        Assert.True(Solve(Load.ConstantCurrent(ElectricCurrent.FromAmperes(10))).Exists);
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, Solve(Load.ConstantCurrent(ElectricCurrent.FromAmperes(10.001))).Reason);
        LoopPoint power = Solve(Load.ConstantPower(Power.FromWatts(200)));
        Assert.Equal(NoOperatingPoint.PowerOutOfReach, power.Reason);
        Assert.InRange(power.LargestWatts, 60, 144);
        Assert.True(Solve(Load.ConstantPower(Power.FromWatts((decimal)(power.LargestWatts * (1 - 1e-9))))).Exists);
        Assert.False(Solve(Load.ConstantPower(Power.FromWatts((decimal)(power.LargestWatts * (1 + 1e-9))))).Exists);
        LoopPoint lamp = Solve(Load.Lamp(Power.FromWatts(120), ElectricPotential.FromVolts(24)));
        Assert.InRange(lamp.Amperes, 1, 10);
        static LoopPoint Solve(Load load) => LoopKernel.Solve(24, 1, 0.01, load, LoadState.Running, meltingAmperes: 10);
    }

    [Fact]
    public void Solve_HeldLimitWithMixedLoads_TakesTheHighestVoltageAtTheLimit()
    {
        // 12 V, no resistance, limit 5 A; 4 W and 2 Ω: U/2 + 4/U = 5 has its upper root at 5 + √17.
        Load mixed = Load.Together(Load.ConstantPower(Power.FromWatts(4)), Load.Resistance(ElectricResistance.FromOhms(2)));
        LoopPoint p = LoopKernel.Solve(12, 0, 0, mixed, LoadState.Running, 5);
        Assert.True(p.Limited);
        Assert.Equal(5 + Math.Sqrt(17), p.Volts, 1e-12);
        // With a lamp beside it there is no closed form, and the balance must still close.
        Load lamps = Load.Together(Load.ConstantPower(Power.FromWatts(4)), Load.Lamp(Power.FromWatts(72), ElectricPotential.FromVolts(12)));
        LoopPoint q = LoopKernel.Solve(12, 0, 0, lamps, LoadState.Running, 5);
        Assert.True(q.Limited);
        Assert.Equal(5, lamps.AmperesAt(q.Volts, LoadState.Running), 1e-9);
        // They never draw as little as 0.9 A together: the lamp alone takes that at 0.38 V, where the 4 W take over 10 A.
        Assert.Equal(NoOperatingPoint.SourceLimit, LoopKernel.Solve(12, 0, 0, lamps, LoadState.Running, 0.9).Reason);
    }

    [Fact]
    public void Solve_PeakWithoutARunningPoint_SaysWhyRunningHasNone()
    {
        OperatingPoint p = OperatingPoint.Solve(
            Paths.Battery(12, 0.5), Paths.Wires(14, 1, 1), Load.ConstantPower(Power.FromWatts(100)), Paths.SelfHeated(20, 20, 90), SupplyLevel.Nominal, LoadState.Peak);
        Assert.Equal(NoOperatingPoint.PowerOutOfReach, p.Reason);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Solve_AnyLoad_AllocatesNothing(int which)
    {
        Load load = which switch
        {
            0 => Load.Resistance(ElectricResistance.FromOhms(2.4)),
            1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(5)),
            2 => Load.ConstantPower(Power.FromWatts(60)),
            3 => Load.Lamp(Power.FromWatts(60), ElectricPotential.FromVolts(12)),
            _ => Load.Together(Load.ConstantPower(Power.FromWatts(60)), Load.Lamp(Power.FromWatts(6), ElectricPotential.FromVolts(12))),
        };
        _ = LoopKernel.Solve(12, 0.1, 1e-4, load, LoadState.Running);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            _ = LoopKernel.Solve(12, 0.1, 1e-4, load, LoadState.Running);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
