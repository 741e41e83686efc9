using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Circuits;

[Properties(Arbitrary = [typeof(RandomCircuit)])]
public class OperatingPointKernelTests
{
    /// <summary>1 + (I/10)² of its resistance, and molten from 10 A on.</summary>
    private readonly struct Melting : IConductorTemperature
    {
        public bool DependsOnCurrent => true;

        public double RatioPerSquareAmpere => 0.01;

        public double MeltingAmperes => 10;

        public double CelsiusAt(double heatingAmperes) => 20 + heatingAmperes;

        public double RatioAt(double heatingAmperes) =>
            heatingAmperes <= 10 ? 1 + (heatingAmperes * heatingAmperes / 100) : double.PositiveInfinity;
    }

    [Property]
    public void Solve_SelfHeatedConductor_AgreesWithThePath(RandomCircuit c)
    {
        Load load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(c.Amperes));
        SelfHeatedConductorTemperature model = new(Paths.Awg(c.Awg), c.Ambient, c.RatedAmperes, c.Ambient + c.Rise);
        KernelPoint k = OperatingPointKernel.Solve(c.Volts, c.SourceOhms, Paths.Awg(c.Awg).OhmsPerMeterAt(20) * (c.Feed + c.Return), model, load, LoadState.Running);
        OperatingPoint p = OperatingPoint.Solve(
            Paths.Battery(c.Volts, c.SourceOhms), Paths.Wires(c.Awg, c.Feed, c.Return), load, Paths.SelfHeated(c.Ambient, c.RatedAmperes, c.Ambient + c.Rise));
        if (p.Exists)
        {
            Assert.Equal(p.VoltageAtLoad.Volts, k.Volts, 1e-9 * c.Volts);
            Assert.Equal(p.HottestConductor.DegreesCelsius, k.Celsius, 1e-9 * (300 + p.HottestConductor.DegreesCelsius));
        }
    }

    [Fact]
    public void Solve_MeltingConductor_StaysBelowItOrHasNoPoint()
    {
        // 1 Ω conductor on 24 V: I·(1 + I²/100) + I·R = 24, and no more than 10 A.
        KernelPoint resistance = Solve(Load.Resistance(ElectricResistance.FromOhms(1)));
        Assert.True(resistance.Exists);
        Assert.Equal(24, (resistance.Amperes * (1 + (resistance.Amperes * resistance.Amperes / 100))) + resistance.Amperes, 1e-12);
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, Solve(Load.Resistance(ElectricResistance.FromOhms(0.3))).Reason);
        Assert.True(Solve(Load.ConstantCurrent(ElectricCurrent.FromAmperes(10))).Exists);
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, Solve(Load.ConstantCurrent(ElectricCurrent.FromAmperes(10.001))).Reason);
        KernelPoint power = Solve(Load.ConstantPower(Power.FromWatts(200)));
        Assert.Equal(NoOperatingPoint.PowerOutOfReach, power.Reason);
        Assert.InRange(power.LargestWatts, 60, 144);
        Assert.True(Solve(Load.ConstantPower(Power.FromWatts((decimal)(power.LargestWatts * (1 - 1e-9))))).Exists);
        Assert.False(Solve(Load.ConstantPower(Power.FromWatts((decimal)(power.LargestWatts * (1 + 1e-9))))).Exists);
        KernelPoint lamp = Solve(Load.Lamp(Power.FromWatts(120), ElectricPotential.FromVolts(24)));
        Assert.InRange(lamp.Amperes, 1, 10);
        static KernelPoint Solve(Load load) => OperatingPointKernel.Solve(24, 0, 1, default(Melting), load, LoadState.Running);
    }

    [Fact]
    public void Solve_HeldLimitWithMixedLoads_TakesTheHighestVoltageAtTheLimit()
    {
        FixedConductorTemperature at20 = FixedConductorTemperature.Of(Paths.Awg(14), 20);
        Assert.Equal(20, at20.CelsiusAt(1));
        // 12 V, no resistance, limit 5 A; 4 W and 2 Ω: U/2 + 4/U = 5 has its upper root at 5 + √17.
        Load mixed = Load.Together(Load.ConstantPower(Power.FromWatts(4)), Load.Resistance(ElectricResistance.FromOhms(2)));
        KernelPoint p = OperatingPointKernel.Solve(12, 0, 0, at20, mixed, LoadState.Running, 5);
        Assert.True(p.Limited);
        Assert.Equal(5 + Math.Sqrt(17), p.Volts, 1e-12);
        // With a lamp beside it there is no closed form, and the balance must still close.
        Load lamps = Load.Together(Load.ConstantPower(Power.FromWatts(4)), Load.Lamp(Power.FromWatts(72), ElectricPotential.FromVolts(12)));
        KernelPoint q = OperatingPointKernel.Solve(12, 0, 0, at20, lamps, LoadState.Running, 5);
        Assert.True(q.Limited);
        Assert.Equal(5, lamps.AmperesAt(q.Volts, LoadState.Running), 1e-9);
        // They never draw as little as 0.9 A together: the lamp alone takes that at 0.38 V, where the 4 W take over 10 A.
        Assert.Equal(NoOperatingPoint.SourceLimit, OperatingPointKernel.Solve(12, 0, 0, at20, lamps, LoadState.Running, 0.9).Reason);
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
        SelfHeatedConductorTemperature model = new(Paths.Awg(14), 50, 15, 105);
        _ = OperatingPointKernel.Solve(12, 0.009, 0.09, model, load, LoadState.Running);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            _ = OperatingPointKernel.Solve(12, 0.009, 0.09, model, load, LoadState.Running);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
