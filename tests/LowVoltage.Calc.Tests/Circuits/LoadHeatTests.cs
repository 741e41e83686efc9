using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Checks;
using LowVoltage.Calc.Tests.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>What duty cycles within one another, and a motor's starts in each period, heat.</summary>
public class LoadHeatTests
{
    private static readonly DutyCycle Half = DutyCycle.FromFraction(0.5);
    private static readonly ElectricCapacitance Ten = ElectricCapacitance.FromMicrofarads(10);

    private static Load Ampere(double amperes) => Load.ConstantCurrent(A(amperes));

    private static double Heating(Load load, double volts = 12) => load.HeatingAmperesAt(volts, LoadState.Running);

    private static DutyCycle Times(double on, double period) => DutyCycle.FromTimes(Duration.FromSeconds(on), Duration.FromSeconds(period));

    /// <summary>18 A for half the time is 12.7 A; stated again behind a capacitor it counted as 9 A.</summary>
    [Fact]
    public void WithDutyCycle_BehindAnInputCapacitor_ReplacesTheEarlierOne()
    {
        foreach (Load load in new[] { Ampere(18).WithDutyCycle(Half), Ampere(18).WithDutyCycle(Half).WithDutyCycle(Half), Ampere(18).WithDutyCycle(Half).WithInputCapacitor(Ten), Ampere(18).WithDutyCycle(Half).WithInputCapacitor(Ten).WithDutyCycle(Half) })
        {
            Assert.Equal(0.5, load.DutyCycle.Fraction);
            Assert.Equal(18 * Math.Sqrt(0.5), Heating(load), 1e-12);
            Assert.Equal(Math.Sqrt(0.5), load.HeatFactor(LoadState.Running), 1e-15);
            Assert.Equal(18, load.HeatingAmperesAt(12, LoadState.Peak));
        }

        Load longer = Ampere(18).WithDutyCycle(Half).WithInputCapacitor(Ten).WithDutyCycle(DutyCycle.FromFraction(0.75));
        Assert.Equal((0.75, 18 * Math.Sqrt(0.75)), (longer.DutyCycle.Fraction, Heating(longer)));
    }

    [Fact]
    public void WithInputCapacitor_KeepsWhatWasStated_AndALaterStatementReplacesIt()
    {
        Load load = Load.Motor(A(5), A(10), A(20), Duration.FromSeconds(0.5)).WithMinimumVoltage(V(11)).WithThermalCutOut().WithInputCapacitor(Ten);
        Assert.Equal((11.0, true), (load.MinimumVoltage!.Value.Volts, load.HasThermalCutOut));
        Assert.Equal(9, load.WithMinimumVoltage(V(9)).MinimumVoltage!.Value.Volts);
        Assert.Equal(11, load.MinimumVoltage!.Value.Volts);
    }

    /// <summary>Two pulses of the same second multiplied: 40 A for one second in 20 passed on a wire that one pulse overheats.</summary>
    [Fact]
    public void Together_OfALoadWithTheSameDutyCycleAgain_HeatsAsOnce()
    {
        Load once = Ampere(40).WithDutyCycle(Times(1, 20));
        Assert.Equal(Heating(once), Heating(Load.Together(once).WithDutyCycle(Times(1, 20))), 1e-12);
        CheckResult one = CheckCase.Verify(once, Blade(40)).Of(CheckKind.ContinuousCurrent);
        Assert.Equal(one, CheckCase.Verify(Load.Together(once).WithDutyCycle(Times(1, 20)), Blade(40)).Of(CheckKind.ContinuousCurrent));
        Assert.Equal(one, CheckCase.Verify(once.WithInputCapacitor(Ten).WithDutyCycle(Times(1, 20)), Blade(40)).Of(CheckKind.ContinuousCurrent));
    }

    [Fact]
    public void Together_WithADutyCycle_HeatsEachLoadByTheSmallerShare()
    {
        // By hand: 10 A at 0.2, 20 A at 0.5 for its own 0.8, 5 A at 0.5 for none of its own; the group within a group at 0.1 for all.
        Load group = Load.Together(Ampere(10).WithDutyCycle(DutyCycle.FromFraction(0.2)), Ampere(20).WithDutyCycle(DutyCycle.FromFraction(0.8)), Ampere(5)).WithDutyCycle(Half);
        Assert.Equal((10 * Math.Sqrt(0.2)) + (25 * Math.Sqrt(0.5)), Heating(group), 1e-12);
        Assert.True(double.IsNaN(group.HeatFactor(LoadState.Running)));
        Assert.Equal(Math.Sqrt(0.5), group.GreatestHeatFactor(LoadState.Running, 12), 1e-15);
        Load whole = Load.Together(group, Ampere(1)).WithDutyCycle(DutyCycle.FromFraction(0.1));
        Assert.Equal(36 * Math.Sqrt(0.1), Heating(whole), 1e-12);
        Assert.Equal(Math.Sqrt(0.1), whole.HeatFactor(LoadState.Running), 1e-15);
        Assert.Equal(2 * 36 * Math.Sqrt(0.1), Heating(whole.Scaled(2)), 1e-12);
    }

    [Fact]
    public void Explain_OfADutyCycleWithinAnother_SaysThatTheSmallestShareCounts()
    {
        CircuitDesign design = CheckCase.Verify(Load.Together(Ampere(10).WithDutyCycle(Times(1, 4)), Ampere(5)).WithDutyCycle(Half), Blade(20));
        double counted = (10 * Math.Sqrt((1 - Math.Exp(-1 / 1.15)) / (1 - Math.Exp(-4 / 1.15)) is var own && own < 0.5 ? own : 0.5)) + (5 * Math.Sqrt(0.5));
        Near(counted, CheckCase.Number(CheckCase.Steps(design, CheckKind.ContinuousCurrent, "I_heat ≤ I_z"), "I_heat"), 1e-9);
        Assert.Contains(design.Explain().Steps, step => step.Reason.StartsWith("Each load's current times the root of the smallest share of the heat", StringComparison.Ordinal));
    }

    /// <summary>The peak for the start and the running current for the rest: in a wire that is slow beside the period the mean of the squares counts, 100 s of time constant stepped in time.</summary>
    [Theory]
    [InlineData(0.5, 1, 0.5)]
    [InlineData(3, 12, 0.5)]
    [InlineData(1, 4, 0.2)]
    [InlineData(0.3, 2, 0.5)]
    [InlineData(8, 9, 1.5)]
    public void Motor_WithStatedTimes_IsCountedAtLeastAsHotAsItsStartsMakeAWire(double on, double period, double start)
    {
        Load motor = Load.Motor(A(5), A(60), A(60), Duration.FromSeconds(start)).WithDutyCycle(Times(on, period));
        double counted = Heating(motor) * Heating(motor), mean = ((3600 * Math.Min(start, on)) + (25 * Math.Max(0, on - start))) / period;
        Assert.True(counted >= mean * (1 - 1e-12), $"{counted} beside {mean}");
        Assert.True(counted >= Stepped(on, period, start) * (1 - 0.01 - (period / 100)), $"{counted} beside {Stepped(on, period, start)}");
        Assert.Equal(Math.Sqrt(counted) / 5, motor.HeatFactor(LoadState.Running), 1e-12);
        Assert.Equal(counted, Math.Pow(Heating(motor.WithInputCapacitor(Ten)), 2), 1e-9);
        Assert.Equal(counted, Math.Pow(Heating(Load.Together(motor.WithDutyCycle(DutyCycle.FromFraction(1))).WithDutyCycle(Times(on, period))), 2), 1e-9);
    }

    /// <summary>A compressor that runs five minutes of fifteen heats its wire hardly more than one that never rests: its start passes there as it does here.</summary>
    [Theory]
    [InlineData(5, 20, 0.5, 300, 900)]
    [InlineData(8, 40, 0.8, 59.99, 60)]
    [InlineData(4, 24, 0.5, 10, 600)]
    public void Motor_ThatRestsBetweenLongRuns_HeatsLittleMoreThanWithoutRest(double running, double peak, double start, double on, double period)
    {
        Load motor = Load.Motor(A(running), A(peak), A(peak), Duration.FromSeconds(start));
        double rests = Heating(motor.WithDutyCycle(Times(on, period)));
        Assert.InRange(rests * rests, running * running * on / period, (running * running) + (peak * peak * start / period));
    }

    private static double Stepped(double on, double period, double start)
    {
        const double Step = 1e-3;
        double rise = 0, most = 0;
        for (double t = 0; t < 1000; t += Step)
        {
            double at = t % period;
            rise += Step / 100 * ((at >= on ? 0 : at < start ? 60 * 60 : 25) - rise);
            most = Math.Max(most, rise);
        }

        return most;
    }

    [Fact]
    public void Motor_WithAShareAloneOrNone_CountsItsRunningCurrent()
    {
        Load motor = Load.Motor(A(5), A(60), A(60), Duration.FromSeconds(0.5));
        Assert.Equal(5, Heating(motor));
        Assert.Equal(5, Heating(motor.WithDutyCycle(Times(3, 3))), 1e-12);
        Assert.Equal(5 * Math.Sqrt(0.5), Heating(motor.WithDutyCycle(Half)), 1e-12);
    }

    /// <summary>Starts of the motor's own periods and of its group's: each switching on may start it.</summary>
    [Fact]
    public void Motor_WithTimesOfItsOwnAndOfItsGroup_CountsTheStartsOfBoth()
    {
        double share(double t, double period) => (1 - Math.Exp(-t / 1.15)) / (1 - Math.Exp(-period / 1.15));
        Load motor = Load.Motor(A(5), A(60), A(60), Duration.FromSeconds(0.2)).WithDutyCycle(Times(2, 8));
        double square = (25 * share(1, 5)) + ((3600 - 25) * ((0.2 / 8) + (0.2 / 5)));
        Assert.Equal(square, Math.Pow(Heating(Load.Together(motor).WithDutyCycle(Times(1, 5))), 2), 1e-9);
    }

    [Fact]
    public void Motor_WhoseStartingCurrentIsOfAVoltage_CountsItAtTheVoltageThatItHas()
    {
        double share(double t) => (1 - Math.Exp(-t / 1.15)) / (1 - Math.Exp(-12 / 1.15));
        Load motor = Load.Motor(A(5), A(20), A(25), Duration.FromSeconds(0.5), V(12)).WithDutyCycle(Times(3, 12));
        OperatingPoint point = OperatingPoint.Solve(Source.BehindResistance(V(12), MilliOhm(10)), Paths.Wires(14, 2, 2), motor, Paths.SelfHeated(20, 20, 100));
        double peak = 20 * point.LoadVolts / 12;
        Assert.Equal(Math.Sqrt((25 * share(3)) + (((peak * peak) - 25) * 0.5 / 12)), point.HeatingCurrent.Amperes, 1e-9);
        Assert.InRange(point.LoadVolts, 11, 11.99);
        Assert.True(double.IsNaN(motor.HeatFactor(LoadState.Running)));
        Assert.InRange(motor.GreatestHeatFactor(LoadState.Running, 12), point.HeatingCurrent.Amperes / 5, 20.0 / 5);

        // Below its running current the start adds nothing.
        Assert.Equal(5 * Math.Sqrt(share(3)), Heating(motor, 2), 1e-12);
    }

    [Fact]
    public void Explain_OfAMotorWithStatedTimes_IsWorkedOut()
    {
        double share(double t, double period) => (1 - Math.Exp(-t / 1.15)) / (1 - Math.Exp(-period / 1.15));
        foreach ((double on, double square) in new[] { (3.0, (25 * share(3, 12)) + (375 * 0.5 / 12)), (0.4, 400 * share(0.4, 12)) })
        {
            CircuitDesign design = CheckCase.Verify(Load.Motor(A(5), A(20), A(25), Duration.FromSeconds(0.5)).WithDutyCycle(Times(on, 12)), Blade(15));
            Near(Math.Sqrt(square), CheckCase.Number(CheckCase.Steps(design, CheckKind.ContinuousCurrent, "I_rms ≤ I_z"), "I_rms"), 1e-9);
            Near(Math.Sqrt(square), design.Of(CheckKind.ContinuousCurrent).Value, 1e-9);
        }
    }
}
