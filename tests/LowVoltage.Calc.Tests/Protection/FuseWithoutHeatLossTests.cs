using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>
/// The proof of a small fuse on a thick wire: what the wire does not carry indefinitely opens the fuse within 5 s, before the Joule integral
/// C·ln(R(160 °C)/R(start))/(α·R20) has flowed, which takes the wire to its short-circuit limit if it loses no heat.
/// </summary>
public class FuseWithoutHeatLossTests
{
    private const double Alpha = 0.00393;

    // It carries 24.07 A at 95 °C, 26.79 A at 120 °C, 30.06 A at 160 °C.
    private static readonly LinearWire Model = new(10, Alpha);

    [Fact]
    public void Model_IsWhatTheHeatBalanceSays()
    {
        foreach (double celsius in new[] { 95.0, 120, 160 })
        {
            Assert.Equal(Model.Steady(celsius), Model.Limits().Heat.AmperesFor(celsius), 1e-9);
        }
    }

    /// <summary>The greatest I²t from 30.06 A to 150 A stands at 60 A: 3600 A²s (2.99 s · 30.06² = 2700 A²s before, less after).</summary>
    [Theory]
    [InlineData(70)]
    [InlineData(40)]
    [InlineData(95)]
    public void Verdict_FuseBelowWhatTheWireStands_IsTheRatioOfJouleIntegrals(double start)
    {
        TightestPoint found = FuseAgainstWireKernel.Verdict(Model.Limits(start, 95, 120, 160), Curve((20, 100), (25, 4), (60, 1), (200, 0.01)), 150);
        Assert.Equal(1, found.Ratio / (Stands(start) / 3600), 1e-12);
        Assert.Equal(60, found.Amperes);
        Assert.Equal(ProtectionRegime.ShortCircuit, found.Regime);
    }

    [Fact]
    public void Verdict_FiveSecondsAtTheCarriedCurrent_IsStillAShortCircuit()
    {
        WireLimits wire = Model.Limits(70, 95, 120, 160);
        TightestPoint found = FuseAgainstWireKernel.Verdict(wire, Curve((20, 100), (wire.Heat.AmperesFor(120), 5), (60, 1), (200, 0.01)), 150);

        // I²t is 3589 A²s at 26.79 A and rises, with I^0.004, to 3600 A²s at 60 A.
        Assert.Equal(1, found.Ratio / (Stands(70) / 3600), 1e-12);
    }

    /// <summary>More than 5 s at what the wire carries at its overload limit: then that limit counts, and the ratio is not that of the Joule integrals.</summary>
    [Fact]
    public void Verdict_SlowerThanFiveSeconds_IsHeldAgainstTheOverloadLimit()
    {
        double power = Math.Log(40) / Math.Log(60 / 25.0), split = 25 * Math.Pow(8, 1 / power);
        double Fuse(double amperes) => 40 * Math.Pow(amperes / 25, -power);
        (_, double least) = LinearWire.Least(i => Model.Seconds(i, 120) / Fuse(i), Model.Steady(120) * (1 + 1e-9), split);
        TightestPoint found = FuseAgainstWireKernel.Verdict(Model.Limits(70, 95, 120, 160), Curve((20, 100), (25, 40), (60, 1), (200, 0.01)), 150);
        Assert.Equal(ProtectionRegime.Overload, found.Regime);
        Assert.InRange(found.Ratio, least * 0.99, least);
        Assert.True(least < 0.5 * Stands(70) / 3600);
    }

    /// <summary>Where the Joule integrals prove nothing, the heat that is lost may: 0.96 of them, but the wire takes longer at every current.</summary>
    [Fact]
    public void Verdict_JouleIntegralsTooSmall_AsksTheHeatBalance()
    {
        LinearWire thin = Model with { Capacity = 1.05 };
        Assert.InRange(Stands(70) * 0.105 / 3600, 0.95, 0.97);
        Assert.True(thin.Seconds(60, 160) > 1.1);
        Assert.True(FuseAgainstWireKernel.Verdict(thin.Limits(70, 95, 120, 160), Curve((20, 100), (25, 4), (60, 1), (200, 0.01)), 150).Ratio >= 1);
        Assert.True(FuseAgainstWireKernel.Verdict((thin with { Capacity = 0.7 }).Limits(70, 95, 120, 160), Curve((20, 100), (25, 4), (60, 1), (200, 0.01)), 150).Ratio < 1);
    }

    [Fact]
    public void Verdict_WireTooHotOrTooThinToBegin_Fails()
    {
        // Starts past what it may keep, although it carries all that the supply gives.
        TightestPoint hot = FuseAgainstWireKernel.Verdict(Model.Limits(70, 60, 120, 160), Curve((15, 100), (60, 1)), 16);
        Assert.Equal((15.0, 0.0, ProtectionRegime.Sustained), (hot.Amperes, hot.Ratio, hot.Regime));

        // 25 A need not open the fuse; the wire keeps 24.07 A at 95 °C, and its 26.79 A at 120 °C do not help.
        TightestPoint thin = FuseAgainstWireKernel.Verdict(Model.Limits(70, 95, 120, 160), Curve((25, 100), (60, 1)), 26);
        Assert.Equal((25.0, 0.0, ProtectionRegime.Sustained), (thin.Amperes, thin.Ratio, thin.Regime));
    }

    [Fact]
    public void Verdict_NothingThatTheWireDoesNotCarry_IsForEver()
    {
        WireLimits wire = Model.Limits(70, 95, 120, 160);
        TimeCurrentCurve curve = Curve((20, 100), (25, 4), (60, 1));
        TightestPoint small = FuseAgainstWireKernel.Verdict(wire, curve, 15);
        Assert.Equal((15.0, double.PositiveInfinity, ProtectionRegime.Sustained), (small.Amperes, small.Ratio, small.Regime));
        TightestPoint carried = FuseAgainstWireKernel.Verdict(wire, curve, 26);
        Assert.Equal((20.0, double.PositiveInfinity, ProtectionRegime.Sustained), (carried.Amperes, carried.Ratio, carried.Regime));

        // At exactly what holds 160 °C indefinitely the wire never gets there; a little more and the Joule integrals are compared.
        double holds = wire.Heat.AmperesFor(160);
        Assert.True(double.IsPositiveInfinity(FuseAgainstWireKernel.Verdict(wire, curve, holds).Ratio));
        Assert.InRange(FuseAgainstWireKernel.Verdict(wire, curve, holds * 1.001).Ratio, 10, 15);
    }

    /// <summary>A²s that take the wire from a temperature to 160 °C without loss.</summary>
    private static double Stands(double start) =>
        Model.Capacity * Math.Log((1 + (Alpha * 140)) / (1 + (Alpha * (start - 20)))) / (Alpha * Model.Ohms);

    private static TimeCurrentCurve Curve(params (double Amperes, double Seconds)[] points) =>
        TimeCurrentCurve.Create([], [.. points.Select(p => TimeCurrentPoint.Create(A(p.Amperes), S(p.Seconds)))]);
}
