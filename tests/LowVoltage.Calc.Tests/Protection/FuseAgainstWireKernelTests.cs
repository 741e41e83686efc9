using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>The search for the tightest current against a wire whose times have a closed form (<see cref="LinearWire"/>).</summary>
public class FuseAgainstWireKernelTests
{
    /// <summary>
    /// All limits at 160 °C and one steep piece from below the steady current on: the ratio comes from infinity, is least inside, and rises as I^(p − 2). The
    /// least one is found by thirds in the closed form. Times and currents of very different size, so that no unit is special.
    /// </summary>
    [Theory]
    [InlineData(2.3, 1, 1, 0)]
    [InlineData(2.1, 1, 1, 0.00393)]
    [InlineData(2.5, 1, 1, 0.00393)]
    [InlineData(3, 1, 1, 0)]
    [InlineData(5, 1, 1, 0)]
    [InlineData(9, 1, 1, 0.00393)]
    [InlineData(2.3, 1e-6, 1, 0)]
    [InlineData(3, 1e-6, 1, 0.00393)]
    [InlineData(5, 1e-4, 1, 0)]
    [InlineData(2.3, 1e4, 1, 0)]
    [InlineData(3, 1e4, 1, 0)]
    [InlineData(6, 1e3, 1, 0.00393)]
    [InlineData(2.3, 1, 1e-3, 0)]
    [InlineData(3, 1e-3, 1e-3, 0)]
    [InlineData(4, 1e3, 1e3, 0)]
    public void Tightest_SteepPiece_IsTheLeastInside(double power, double time, double scale, double alpha)
    {
        LinearWire model = new(10 * time, alpha, scale);
        double from = 22 * scale, to = 220 * scale;
        double Fuse(double amperes) => 60 * time * Math.Pow(amperes / from, -power);
        (double place, double least) = LinearWire.Least(i => model.Seconds(i, 160) / Fuse(i), model.Steady(160) * (1 + 1e-9), to);
        TimeCurrentCurve curve = Fuses((from, Fuse(from)), (to, Fuse(to)));
        TightestPoint found = FuseAgainstWireKernel.Tightest(model.Limits(70, 160, 160, 160), curve, to);
        Assert.Equal(1, found.Ratio / least, 6.0e-7);
        Assert.Equal(1, found.Amperes / place, 2e-3);
        Assert.Equal(1, FuseAgainstWireKernel.ExactRatio(model.Limits(70, 160, 160, 160), curve, found) / least, 6.0e-7);
    }

    /// <summary>A second piece that begins past the steady current: rising all along (p = 4, least at its beginning) or turning inside (p = 2.5).</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(2.5)]
    [InlineData(2.2)]
    [InlineData(1)]
    public void Tightest_SecondPiece_StaysInItsPiece(double power)
    {
        LinearWire model = new(10);
        double Fuse(double amperes) => amperes < 60 ? 30 * Math.Pow(amperes / 60, -1) : 30 * Math.Pow(amperes / 60, -power);
        (double place, double least) = LinearWire.Least(i => model.Seconds(i, 160) / Fuse(i), 60, 200);
        TightestPoint found = FuseAgainstWireKernel.Tightest(
            model.Limits(70, 160, 160, 160), Fuses((30, 60), (60, 30), (200, Fuse(200))), 200);
        Assert.Equal(1, found.Ratio / least, 6e-7);
        Assert.Equal(1, found.Amperes / place, 2e-3);
    }

    /// <summary>A flat piece before a steep one: each piece ends where the next begins. At 60 A, where the fuse takes 50 s, it is tightest by far.</summary>
    [Fact]
    public void Tightest_FlatPieceBeforeASteepOne_EndsWhereTheNextBegins()
    {
        LinearWire model = new(10);
        TightestPoint found = FuseAgainstWireKernel.Tightest(model.Limits(70, 160, 160, 160), Fuses((30, 60), (60, 50), (200, 0.01)), 200);
        Assert.Equal(60, found.Amperes, 1e-9);
        Assert.Equal(1, found.Ratio / (model.Seconds(60, 160) / 50), 6e-7);
        Assert.True(found.Ratio < model.Seconds(60, 160) / 50);

        // A supply that cannot push 60 A: tightest at the end of what it can.
        Assert.Equal(50, FuseAgainstWireKernel.Tightest(model.Limits(70, 160, 160, 160), Fuses((30, 60), (60, 50), (200, 0.01)), 50).Amperes);
    }

    /// <summary>
    /// t = 50 s·(25 A/I)^1.5 is 5 s at 25 A·10^(2/3) = 116.04 A. Up to there the 95 °C count, and the ratio falls (p below 2): it is least at that current;
    /// beyond it 160 °C count.
    /// </summary>
    [Fact]
    public void Tightest_PieceAcrossFiveSeconds_ChangesItsLimitThere()
    {
        LinearWire model = new(10);
        double split = 25 * Math.Pow(10, 2 / 3.0);
        TimeCurrentCurve curve = Fuses((25, 50), (500, 50 * Math.Pow(20, -1.5)));
        TightestPoint found = FuseAgainstWireKernel.Tightest(model.Limits(), curve, 140);
        Assert.Equal(ProtectionRegime.Overload, found.Regime);
        Assert.Equal(split, found.Amperes, 1e-9);
        Assert.Equal(1, found.Ratio / (model.Seconds(split, 95) / 5), 2e-7);
        Assert.Equal(1, FuseAgainstWireKernel.ExactRatio(model.Limits(), curve, new TightestPoint(50, 123, ProtectionRegime.Overload)) / (model.Seconds(50, 95) / (50 * Math.Pow(2, -1.5))), 1e-9);
        Assert.Equal(1, FuseAgainstWireKernel.ExactRatio(model.Limits(), curve, new TightestPoint(200, 123, ProtectionRegime.ShortCircuit)) / (model.Seconds(200, 160) / (50 * Math.Pow(8, -1.5))), 1e-9);
    }

    /// <summary>A constant time: IEC 60364-4-43, 434.5.2 (from memory), short-circuit limits hold for at most 5 s. Tightest where the current is greatest.</summary>
    [Theory]
    [InlineData(2, 160, ProtectionRegime.ShortCircuit)]
    [InlineData(5, 160, ProtectionRegime.ShortCircuit)]
    [InlineData(5.0001, 95, ProtectionRegime.Overload)]
    [InlineData(60, 95, ProtectionRegime.Overload)]
    public void Tightest_ConstantTime_TakesTheLimitOfThatTime(double seconds, double limit, object regime)
    {
        LinearWire model = new(10);
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([], [TimeCurrentPoint.Create(A(25), S(seconds))]);
        TightestPoint found = FuseAgainstWireKernel.Tightest(model.Limits(), breaker, 100);
        Assert.Equal(regime, found.Regime);
        Assert.Equal(100, found.Amperes);

        // On the safe side of the truth, by less than a millionth.
        double exact = model.Seconds(100, limit) / seconds;
        Assert.InRange(found.Ratio, exact * (1 - 2e-7), exact * (1 - 1e-8));
    }

    /// <summary>At its limit from the start: no time at all at any current that is not carried. The first such end of a piece is named, not the last.</summary>
    [Fact]
    public void Tightest_AtTheLimitFromTheStart_NamesTheFirstCurrent()
    {
        TightestPoint found = FuseAgainstWireKernel.Tightest(new LinearWire(10).Limits(95, 95, 95, 160), Fuses((25, 60), (50, 30), (100, 20)), 100);
        Assert.Equal((50.0, 0.0, ProtectionRegime.Overload), (found.Amperes, found.Ratio, found.Regime));
    }

    [Fact]
    public void Tightest_FusingCurrentJustCarried_IsNotTheReasonToFail()
    {
        WireLimits wire = new LinearWire(10).Limits();
        double carried = wire.Heat.AmperesFor(95);
        Assert.Equal(Math.Sqrt(750), carried, 1e-9);
        TightestPoint just = FuseAgainstWireKernel.Tightest(wire, Fuses((carried, 60), (200, 1)), 200);
        Assert.True(just.Ratio > 0);
        Assert.NotEqual(ProtectionRegime.Sustained, just.Regime);
        TightestPoint above = FuseAgainstWireKernel.Tightest(wire, Fuses((carried * (1 + 1e-11), 60), (200, 1)), 200);
        Assert.Equal((carried * (1 + 1e-11), 0.0, ProtectionRegime.Sustained), (above.Amperes, above.Ratio, above.Regime));
        Assert.Equal(0, FuseAgainstWireKernel.Tightest(new LinearWire(10).Limits(95.1, 95, 95, 160), Fuses((20, 60), (200, 1)), 200).Ratio);
    }

    /// <summary>
    /// Of a wire with a given coefficient the quick verdict is exact but for the last ten-millionth. The fuse takes the wire's own time at 100 A, where it is
    /// tightest, divided by the ratio wanted.
    /// </summary>
    [Theory]
    [InlineData(1.5)]
    [InlineData(0.5)]
    [InlineData(1.0005)]
    [InlineData(1.00001)]
    [InlineData(0.9999)]
    public void Verdict_AgainstTheExactRatio_IsOnTheSafeSide(double ratio)
    {
        LinearWire model = new(1);
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([], [TimeCurrentPoint.Create(A(25), S(model.Seconds(100, 160) / ratio))]);
        TightestPoint found = FuseAgainstWireKernel.Verdict(model.Limits(), breaker, 100);
        Assert.Equal(ratio >= 1, found.Ratio >= 1);
        Assert.Equal(1 - 1e-7, found.Ratio / ratio, 1e-8);
        Assert.Equal(100, found.Amperes);
    }

    private static TimeCurrentCurve Fuses(params (double Amperes, double Seconds)[] points) =>
        TimeCurrentCurve.Create([], [.. points.Select(p => TimeCurrentPoint.Create(A(p.Amperes), S(p.Seconds)))]);
}
