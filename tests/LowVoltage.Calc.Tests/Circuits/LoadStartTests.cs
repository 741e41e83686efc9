using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>What a load draws when it is switched on: surges above what runs, and what runs beside them.</summary>
public class LoadStartTests
{
    private const double Volts = 14;
    private const double Ohms = 0.1;

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static Load Motor(double running, double peak, double seconds, double? rated = null) => rated is { } volts
        ? Load.Motor(A(running), A(peak), A(peak), Duration.FromSeconds(seconds), ElectricPotential.FromVolts(volts))
        : Load.Motor(A(running), A(peak), A(peak), Duration.FromSeconds(seconds));

    /// <summary>The running current belongs to the operating point: a divider, and the higher root of U² − V·U + R·P = 0.</summary>
    [Fact]
    public void Running_OfEachKind_CountsTheDropOfThePath()
    {
        Assert.Equal(14 / 2.1, Start(Load.Resistance(ElectricResistance.FromOhms(2))).RunningAmperes, 1e-12);
        Assert.Equal(5, Start(Load.ConstantCurrent(A(5))).RunningAmperes, 1e-12);
        Assert.Equal(60 / 13.557_438_524_302, Start(Load.ConstantPower(Power.FromWatts(60))).RunningAmperes, 1e-9);

        // Together: (1 + 0.1/2)·U² − (14 − 0.1·5)·U + 0.1·60 = 0.
        double at = (13.5 + Math.Sqrt((13.5 * 13.5) - (4 * 1.05 * 6))) / 2.1;
        Load all = Load.Together(Load.Resistance(ElectricResistance.FromOhms(2)), Load.ConstantCurrent(A(5)), Load.ConstantPower(Power.FromWatts(60)));
        Assert.Equal((at / 2) + 5 + (60 / at), Start(all).RunningAmperes, 1e-9);
        Assert.Empty(Start(all).Surges);

        // What the path cannot feed is taken at the voltage of the source.
        Assert.Equal(1000 / 14.0, Start(Load.ConstantPower(Power.FromWatts(1000))).RunningAmperes, 1e-9);
    }

    [Fact]
    public void Surges_OfLikeLoads_AreOne()
    {
        Load lamp = Load.Lamp(Power.FromWatts(12), ElectricPotential.FromVolts(12), 14);
        Load capacitor = Load.ConstantCurrent(A(1)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(2));
        LoadStart start = Start(Load.Together(lamp, Motor(2, 6, 0.3), capacitor, Motor(1, 4, 0.3), lamp, capacitor, Motor(1, 3, 0.5)));
        Assert.Equal(4, start.Surges.Count);
        Assert.Equal((7.0, 0.3), (Math.Round(start.Surges[0].PeakAmperes, 9), start.Surges[0].Seconds));
        Assert.Equal((2.0, 0.5), (Math.Round(start.Surges[1].PeakAmperes, 9), start.Surges[1].Seconds));

        // Two cold lamps of 12 Ω/14 in parallel behind 0.1 Ω, less what they draw hot at the voltage of the operating point.
        Assert.Equal(InrushWave.Exponential, start.Surges[2].Wave);
        double hot = start.RunningAmperes - 6;
        Assert.InRange(hot, 2.0, 2.2);
        Assert.Equal((14 / (0.1 + (6 / 14.0))) - hot, start.Surges[2].PeakAmperes, 1e-9);

        // 4 mF through 0.1 Ω: 140 A, 0.4 ms.
        Assert.Equal((140.0, 0.0004, true), (Math.Round(start.Surges[3].PeakAmperes, 9), Math.Round(start.Surges[3].Seconds, 12), start.Surges[3].Charges));
    }

    /// <summary>A motor whose peak belongs to a voltage is a winding of U/I behind the path; one that takes more than the path gives is limited by it.</summary>
    [Fact]
    public void Surge_OfAMotor_IsWhatThePathLetsThrough()
    {
        Assert.Equal((14 / (0.1 + 0.6)) - 3, Start(Motor(3, 20, 0.3, 12)).Surges[0].PeakAmperes, 1e-9);
        Assert.Equal(140 - 3, Start(Motor(3, 500, 0.3)).Surges[0].PeakAmperes, 1e-9);
        Assert.Empty(Start(Motor(3, 3, 0.3)).Surges);
        Assert.Equal(3, Start(Motor(3, 3, 0.3)).RunningAmperes, 1e-12);
    }

    private static LoadStart Start(Load load)
    {
        LoadStart start = LoadStart.Of(load);
        start.Solve(Volts, Ohms);
        return start;
    }
}
