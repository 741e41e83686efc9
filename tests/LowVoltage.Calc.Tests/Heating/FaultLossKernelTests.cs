using LowVoltage.Calc.Heating;
using MathNet.Numerics.Integration;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>A fault with loss that is straight in temperature: I = E/(Rs + L·R′(θ)), P = I²·R′ − K·(θ − a), t = ∫C′dθ/P and J = ∫I²·C′dθ/P by Gauss-Legendre.</summary>
public partial class FaultLossKernelTests
{
    private const double Ohms = 0.3, Meters = 10;
    private static readonly LinearWire Linear = new();

    private static readonly (double Volts, double Ohms) Settling = (12, 0.3), Melting = (48, 0.05);

    [Theory]
    [InlineData(12, 0.3, 25, 60)]
    [InlineData(12, 0.3, 40, 60)]
    [InlineData(12, 0.3, -20, 15)]
    [InlineData(12, 0.3, 200, 120)]
    [InlineData(48, 0.05, 25, 160)]
    [InlineData(48, 0.05, -40, 900)]
    [InlineData(48, 0.05, 70, 1083)]
    public void StateAfter_LossIsStraight_IsTheQuadrature(double volts, double ohms, double from, double to)
    {
        CooledFaultPath path = Path(Linear, volts, ohms, from);
        double seconds = Quadrature(Linear, volts, ohms, from, to, joules: false), joules = Quadrature(Linear, volts, ohms, from, to, joules: true);
        if (to > from)
        {
            Assert.InRange(FaultTransient.TimeToReach(path, C(to))!.Value.Seconds / seconds, 1 - 1e-8, 1 + 1e-8);
        }

        FaultState state = FaultTransient.StateAfter(path, S(seconds * (1 - 1e-10)));
        Assert.False(state.IsMelting);
        Assert.Equal(to, state.HottestTemperature.DegreesCelsius, 1e-7 * Math.Abs(to - from));
        Assert.InRange(state.LetThrough.AmpereSquaredSeconds / joules, 1 - 1e-8, 1 + 1e-8);
        Assert.Equal(seconds, state.Time.Seconds, 1e-9 * seconds);
        Assert.Equal(Amperes(Linear, volts, ohms, to), state.Current.Amperes, 1e-7 * state.Current.Amperes);
    }

    /// <summary>Resistance that does not change: the current is constant, J = I²·t, and the temperature runs as exp(−K·t/C′).</summary>
    [Theory]
    [InlineData(12, 1e-9)]
    [InlineData(12, 1e-6)]
    [InlineData(12, 1e-3)]
    [InlineData(12, 1)]
    [InlineData(12, 100)]
    [InlineData(12, 1e5)]
    [InlineData(100, 0.5)]
    public void StateAfter_ConstantResistance_IsTheClosedForm(double volts, double seconds)
    {
        LinearWire wire = new(alpha: 0);
        double amperes = volts / (Ohms + (Meters * wire.Ohms20));
        FaultState state = FaultTransient.StateAfter(Path(wire, volts, Ohms, 25), S(seconds));
        Assert.False(state.IsMelting);
        Assert.Equal(wire.After(amperes, 25, seconds), state.HottestTemperature.DegreesCelsius, 1e-7);
        Assert.InRange(state.LetThrough.AmpereSquaredSeconds / (amperes * amperes * seconds), 1 - 1e-9, 1 + 1e-9);
        Assert.Equal(seconds, state.Time.Seconds);
    }

    [Theory]
    [InlineData(25)]
    [InlineData(-40)]
    public void StateAfter_ConstantResistancePastMelting_IsTheMomentOfMelting(double from)
    {
        LinearWire wire = new(alpha: 0);
        double amperes = 300 / (Ohms + (Meters * wire.Ohms20)), melting = wire.Seconds(amperes, from, LinearWire.Melting);
        FaultState state = FaultTransient.StateAfter(Path(wire, 300, Ohms, from), S(2 * melting));
        Assert.True(state.IsMelting);
        Assert.Equal(LinearWire.Melting, state.HottestTemperature.DegreesCelsius, 1e-7);
        Assert.InRange(state.Time.Seconds / melting, 1 - 1e-8, 1 + 1e-8);
        Assert.InRange(state.LetThrough.AmpereSquaredSeconds / (amperes * amperes * melting), 1 - 1e-8, 1 + 1e-8);
        Assert.False(FaultTransient.StateAfter(Path(wire, 300, Ohms, from), S(melting * (1 - 1e-7))).IsMelting);
    }

    /// <summary>At the very time of melting it does not melt before.</summary>
    [Fact]
    public void StateAfter_TimeOfMelting_IsNotPastIt()
    {
        CooledFaultPath path = Path(Linear, Melting.Volts, Melting.Ohms, 25);
        Duration melting = FaultTransient.TimeToReach(path, C(1083))!.Value;
        FaultState state = FaultTransient.StateAfter(path, melting);
        Assert.False(state.IsMelting);
        Assert.Equal(1083, state.HottestTemperature.DegreesCelsius, 1e-7);
        Assert.True(FaultTransient.StateAfter(path, S(melting.Seconds * (1 + 1e-12))).IsMelting);
        Assert.True(FaultTransient.StateAfter(Path(Linear, Melting.Volts, Melting.Ohms, 1083), S(1e-9)).IsMelting);
        Assert.Equal(0, FaultTransient.StateAfter(Path(Linear, Melting.Volts, Melting.Ohms, 1083), S(1)).LetThrough.AmpereSquaredSeconds);
    }

    /// <summary>In the first microseconds nothing has warmed: J = I²·t, with the current of the start.</summary>
    [Theory]
    [InlineData(12, 0.3, 1e-9)]
    [InlineData(12, 0.3, 1e-6)]
    [InlineData(48, 0.05, 1e-9)]
    [InlineData(48, 0.05, 1e-6)]
    public void StateAfter_Microseconds_IsTheFirstCurrent(double volts, double ohms, double seconds)
    {
        CooledFaultPath path = Path(Linear, volts, ohms, 25);
        double amperes = path.ProspectiveCurrent.Amperes, joules = FaultTransient.StateAfter(path, S(seconds)).LetThrough.AmpereSquaredSeconds;

        // The current falls by less than α·I²·R′/C′·t of itself, 0.5 ppm per µs at 456 A.
        Assert.InRange(joules / (amperes * amperes * seconds), 1 - 1e-9 - (1.5 * seconds), 1 + 1e-9);
    }

    [Fact]
    public void StateAfter_PastMelting_IsTheMomentOfMelting()
    {
        double seconds = Quadrature(Linear, Melting.Volts, Melting.Ohms, 25, 1083, joules: false);
        FaultState state = FaultTransient.StateAfter(Path(Linear, Melting.Volts, Melting.Ohms, 25), S(seconds * 3));
        Assert.True(state.IsMelting);
        Assert.InRange(state.Time.Seconds / seconds, 1 - 1e-8, 1 + 1e-8);
        double joules = Quadrature(Linear, Melting.Volts, Melting.Ohms, 25, 1083, joules: true);
        Assert.InRange(state.LetThrough.AmpereSquaredSeconds / joules, 1 - 1e-8, 1 + 1e-8);
    }

    /// <summary>Settled, the Joule integral grows by the square of the settled current, whose temperature is where P = 0.</summary>
    [Fact]
    public void StateAfter_Settled_GrowsWithTheSettledCurrent()
    {
        CooledFaultPath path = Path(Linear, Settling.Volts, Settling.Ohms, 25);
        double steady = path.SteadyTemperature!.Value.DegreesCelsius, amperes = Amperes(Linear, Settling.Volts, Settling.Ohms, steady);
        Assert.Equal(0, Linear.Power(amperes, steady), 1e-9);
        FaultState early = FaultTransient.StateAfter(path, S(3e4)), late = FaultTransient.StateAfter(path, S(5e4));
        Assert.InRange((late.LetThrough.AmpereSquaredSeconds - early.LetThrough.AmpereSquaredSeconds) / (amperes * amperes * 2e4), 1 - 1e-9, 1 + 1e-9);
        Assert.Equal(5e4, late.Time.Seconds);
        Assert.False(late.IsMelting);
        Assert.Equal(steady, late.HottestTemperature.DegreesCelsius, 1e-9);

        // Started where it settles, it stays there.
        FaultState there = FaultTransient.StateAfter(Path(Linear, Settling.Volts, Settling.Ohms, steady), S(1000));
        Assert.Equal(steady, there.HottestTemperature.DegreesCelsius, 1e-9);
        Assert.InRange(there.LetThrough.AmpereSquaredSeconds / (amperes * amperes * 1000), 1 - 1e-9, 1 + 1e-9);
    }

    private static FaultLossKernel Kernel(double volts, double ohms, double from) => new(Linear.Kernel, Linear.Capacity, volts, ohms, Meters, from);

    private static CooledFaultPath Path(LinearWire wire, double volts, double ohms, double from) => CooledFaultPath.Create(
        FaultCase.V(volts), ElectricResistance.FromOhms(ohms), wire.Wire, Length.FromMeters(Meters), wire.Air, C(from));

    private static double Amperes(LinearWire wire, double volts, double ohms, double celsius) => volts / (ohms + (Meters * wire.OhmsAt(celsius)));

    private static double Quadrature(LinearWire wire, double volts, double ohms, double from, double to, bool joules)
    {
        double sum = 0;
        for (int i = 0; i < 8; i++)
        {
            sum += GaussLegendreRule.Integrate(
                x =>
                {
                    double amperes = Amperes(wire, volts, ohms, x);
                    return wire.Capacity / wire.Power(amperes, x) * (joules ? amperes * amperes : 1);
                },
                from + ((to - from) * i / 8),
                from + ((to - from) * (i + 1) / 8),
                32);
        }

        return sum;
    }
}
