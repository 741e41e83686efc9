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
            KernelPoint slow = loop.Bracketed();
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
}
