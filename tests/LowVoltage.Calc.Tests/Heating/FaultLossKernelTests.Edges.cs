using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public partial class FaultLossKernelTests
{
    /// <summary>Close to the settled temperature e-folds take C′/(K − dQ/dθ), Q = E²·R′/(Rs + L·R′)², dQ/dR′ = E²·(Rs − L·R′)/(Rs + L·R′)³.</summary>
    [Theory]
    [InlineData(12, 0.3, 25)]
    [InlineData(12, 0.3, 200)]
    [InlineData(14, 0.02, 25)]
    [InlineData(6, 0, 25)]
    public void SecondsTo_CloseToTheSettledTemperature_CountsTimeConstants(double volts, double ohms, double from)
    {
        FaultLossKernel kernel = Kernel(volts, ohms, from);
        Assert.True(kernel.Settles);
        double line = Meters * Linear.OhmsAt(Linear.Kernel.ConductorAt(kernel.Pole)), cube = Math.Pow(ohms + line, 3);
        double perKelvin = volts * volts * (ohms - line) / cube * Linear.Ohms20 * Linear.Alpha;
        double constant = Linear.Capacity / (Linear.PerKelvin - perKelvin), sign = Math.Sign(Linear.Surface(from) - kernel.Pole);
        double near = kernel.Pole + (sign * 5e-6), nearer = kernel.Pole + (sign * 5e-9);
        double expected = constant * Math.Log((near - kernel.Pole) / (nearer - kernel.Pole));
        Assert.InRange((kernel.SecondsTo(nearer) - kernel.SecondsTo(near)) / expected, 1 - 1e-6, 1 + 1e-6);
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(kernel.Pole));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(kernel.Pole + (sign * 5e-10)));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(kernel.Pole - sign));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(Linear.Surface(from) + sign));
        Assert.Equal(0, kernel.SecondsTo(Linear.Kernel.SurfaceFor(from)));
    }

    [Fact]
    public void SecondsTo_MeltingFault_NeverGoesBack()
    {
        FaultLossKernel kernel = Kernel(Melting.Volts, Melting.Ohms, 100);
        Assert.False(kernel.Settles);
        Assert.Equal(20 - (1 / Linear.Alpha), kernel.Pole, 1e-9);
        Assert.Equal(0, kernel.SecondsTo(Linear.Kernel.SurfaceFor(100)));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(Linear.Surface(99)));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(kernel.Pole));
        Assert.Equal(double.PositiveInfinity, kernel.SecondsTo(kernel.Pole - 1));
    }

    [Fact]
    public void StateAfter_NoTime_IsTheStart()
    {
        foreach ((double volts, double ohms) in new[] { Settling, Melting })
        {
            for (double from = 26.1; from < 300; from += 13.7)
            {
                FaultState state = FaultTransient.StateAfter(Path(Linear, volts, ohms, from), S(0));
                Assert.Equal(C(from).DegreesCelsius, state.HottestTemperature.DegreesCelsius);
                Assert.False(state.IsMelting);
                Assert.Equal(0, state.LetThrough.AmpereSquaredSeconds);
                Assert.Equal(0, state.Time.Seconds);
            }
        }
    }

    [Fact]
    public void TimeToReach_StartsAtOrAboveTheLimit_IsZeroOrRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => FaultTransient.TimeToReach(Path(Linear, 48, 0.05, 100), C(60)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => FaultTransient.TimeToReach(Path(Linear, 12, 0.3, 100), C(99.9)));
        Assert.Equal(0, FaultTransient.TimeToReach(Path(Linear, 12, 0.3, 100), C(100))!.Value.Seconds);

        // Also when the voltage is too small to warm the wire from where it is.
        Assert.Equal(0, FaultTransient.TimeToReach(Path(Linear, 1e-9, 1, 25), C(25))!.Value.Seconds);
        Assert.Null(FaultTransient.TimeToReach(Path(Linear, 1e-9, 1, 25), C(25.001)));
        Assert.Null(FaultTransient.TimeToReach(Path(Linear, 12, 0.3, 300), C(301)));
    }
}
