using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

public class FuseAgainstWireTests
{
    private static readonly FuseRating Fifteen = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));

    private static ProtectedWire Wire(double area, double ambient = 30) =>
        ProtectedWire.Create(Solid(Math.Sqrt(area * 4 / Math.PI), 0.6), Air(ambient));

    /// <summary>
    /// Beyond the last gate both are Joule integrals: IEC 60949 for 0.35 mm² from 70 °C to 160 °C, k²S² = 115² · 0.35² = 1620 A²s (k rounded by the standard to 115:
    /// 1 %), against 25 A · 25 A · 0.01 s = 6.25 A²s of a fuse.
    /// </summary>
    [Fact]
    public void Check_BeyondTheLastGate_IsTheAdiabaticJouleIntegral()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([], [TimeCurrentPoint.Create(A(6), S(0.1)), TimeCurrentPoint.Create(A(25), S(0.01))]);
        WireProtection outcome = FuseAgainstWire.Check(curve, [Wire(0.35)], A(1000));
        Assert.Equal(ProtectionVerdict.Protected, outcome.Verdict);
        Assert.Equal(ProtectionRegime.ShortCircuit, outcome.Regime);
        Assert.Equal(1000, outcome.TightestCurrent!.Value.Amperes);
        Assert.InRange(outcome.TimeRatio, 1620 / 6.25 * 0.98, 1620 / 6.25 * 1.02);
        Assert.Equal(6.25e-6, outcome.FuseTime!.Value.Seconds, 12);
        Assert.Equal(160, outcome.Limit!.Value.DegreesCelsius);
        Assert.InRange(outcome.TemperatureReached!.Value.DegreesCelsius, 70, 71);
    }

    /// <summary>A fuse whose points are the wire's own times: the ratio is 1 at the points, and below it between, where the wire's curve is hollow under the line.</summary>
    [Fact]
    public void Check_FuseAsSlowAsTheWire_IsNotProtectedBetweenItsPoints()
    {
        ProtectedWire wire = Wire(1);
        double carried = HeatBalance.CurrentFor(wire.Wire, wire.Surroundings, C(160)).Amperes;
        TimeCurrentPoint Point(double amperes, double share) => TimeCurrentPoint.Create(
            A(amperes), S(share * OverloadHeating.TimeToReach(wire.Wire, wire.Surroundings, A(amperes), C(70), C(160))!.Value.Seconds));

        // Up to where the wire carries it indefinitely, the fuse may take any time.
        TimeCurrentCurve Curve(double share) => TimeCurrentCurve.Create(
            [], [TimeCurrentPoint.Create(A(0.99 * carried), S(share * 1000)), Point(1.1 * carried, share), Point(2 * carried, share), Point(4 * carried, share)]);
        WireProtection same = FuseAgainstWire.Check(Curve(1), [Bearing(wire)], A(1000));
        Assert.Equal(ProtectionVerdict.NotProtected, same.Verdict);
        Assert.InRange(same.TimeRatio, 0.1, 0.999);
        Assert.InRange(same.TightestCurrent!.Value.Amperes, carried, 4 * carried);
        double ratio = same.TimeRatio;
        Assert.Equal(ProtectionVerdict.Protected, FuseAgainstWire.Check(Curve(ratio * 0.9999), [Bearing(wire)], A(1000)).Verdict);
        Assert.Equal(ProtectionVerdict.NotProtected, FuseAgainstWire.Check(Curve(ratio * 1.0001), [Bearing(wire)], A(1000)).Verdict);
        Assert.Equal(1 / 0.9999, FuseAgainstWire.Check(Curve(ratio * 0.9999), [Bearing(wire)], A(1000)).TimeRatio, 4);
    }

    [Fact]
    public void Check_BelowTheFusingCurrent_TheWireCarriesItForEver()
    {
        // 15 A blade: 20.25 A. The thinnest wire that holds 95 °C at 20.25 A, by the heat balance alone.
        double area = 0.3;
        while (HeatBalance.CurrentFor(Wire(area).Wire, Air(30), C(95)).Amperes < 20.25)
        {
            area *= 1.01;
        }

        WireProtection holds = FuseAgainstWire.Check(Fifteen, Wire(area), A(20));
        Assert.Equal(ProtectionVerdict.Protected, holds.Verdict);
        Assert.Equal(ProtectionRegime.Sustained, holds.Regime);
        Assert.True(double.IsPositiveInfinity(holds.TimeRatio));
        Assert.Null(holds.FuseTime);
        WireProtection fails = FuseAgainstWire.Check(Fifteen, Wire(area / 1.02), A(1000));
        Assert.Equal(ProtectionVerdict.NotProtected, fails.Verdict);
        Assert.Equal(ProtectionRegime.Sustained, fails.Regime);
        Assert.Equal(20.25, fails.TightestCurrent!.Value.Amperes, 12);
        Assert.Equal(0, fails.TimeRatio);
        Assert.Equal(95, fails.Limit!.Value.DegreesCelsius);
        Assert.InRange(fails.TemperatureReached!.Value.DegreesCelsius, 95, 98);
        Assert.Contains("need not open", fails.Reason, StringComparison.Ordinal);
        Assert.StartsWith("Not protected", fails.ToString(), StringComparison.Ordinal);

        // A supply that cannot push 20.25 A need only be carried: 15 A.
        Assert.Equal(ProtectionVerdict.Protected, FuseAgainstWire.Check(Fifteen, Wire(area / 1.02), A(15)).Verdict);
    }

    [Fact]
    public void Check_WithoutOperatingTimes_IsNotEvaluated()
    {
        WireProtection outcome = FuseAgainstWire.Check(FuseSeries.RoadVehicleStrip51.Ratings[0], Wire(50), A(1000));
        Assert.Equal(ProtectionVerdict.NotEvaluated, outcome.Verdict);
        Assert.Null(outcome.TightestCurrent);
        Assert.Null(outcome.Limit);
        Assert.Null(outcome.TemperatureReached);
        Assert.Null(outcome.FuseTime);
        Assert.Equal(0, outcome.TimeRatio);
        Assert.Contains("nothing is proven", outcome.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_SeveralWires_TheWeakestDecides()
    {
        WireProtection outcome = FuseAgainstWire.Check(Fifteen, [Wire(6), Wire(0.5), Wire(2.5)], A(1000));
        Assert.Equal(1, outcome.WeakestWire);
        WireProtection alone = FuseAgainstWire.Check(Fifteen, Wire(0.5), A(1000));
        Assert.Equal(alone.TimeRatio, outcome.TimeRatio);
        Assert.Equal(alone.Verdict, outcome.Verdict);
        Assert.Equal(0, alone.WeakestWire);
    }

    [Fact]
    public void Check_Allowances_AreThoseOfTheClass()
    {
        // ISO 6722-1 class B, 100 °C: 240 h at 125 °C, 6 h at 150 °C (from memory).
        ProtectedWire wire = ProtectedWire.Create(
            Solid(1.2, 0.4, InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B)), Air(60));
        Assert.Equal((125, 125, 150), Limits(wire));
        Assert.Equal((125, 150, 150), Limits(wire.With(OverloadAllowance.Ageing6Hours)));
        Assert.Equal((100, 100, 150), Limits(wire.With(OverloadAllowance.None)));
        Assert.Equal(100, wire.Limits().StartCelsius);
        Assert.Equal(80, wire.StartingAt(C(80)).Limits().StartCelsius);
        Assert.Equal(60, wire.StartingAt(C(20)).Limits().StartCelsius);
        OverloadAllowance own = OverloadAllowance.Create("own", TemperatureDelta.FromKelvins(10), TemperatureDelta.FromKelvins(60), Reference.CommonPractice("test"));
        Assert.Equal((110, 150, 150), Limits(wire.With(own)));
        Assert.Equal(10, own.Sustained.Kelvins);
        Assert.Equal(60, own.Opened.Kelvins);
        Assert.Equal(ReferenceKind.FromMemory, OverloadAllowance.Ageing240Hours.Reference.Kind);

        // No published short-circuit limit: the continuous one stands for all.
        Assert.Equal((150, 150, 150), Limits(ProtectedWire.Create(Solid(1.2, 0.4, InsulationMaterial.Etfe), Air(60))));
        Assert.Throws<ArgumentOutOfRangeException>("sustained", () => OverloadAllowance.Create("x", TemperatureDelta.FromKelvins(-1), TemperatureDelta.FromKelvins(1), own.Reference));
        Assert.Throws<ArgumentOutOfRangeException>("opened", () => OverloadAllowance.Create("x", TemperatureDelta.FromKelvins(2), TemperatureDelta.FromKelvins(1), own.Reference));
        Assert.Throws<ArgumentNullException>("name", () => OverloadAllowance.Create(null!, default, default, own.Reference));
        Assert.Throws<ArgumentNullException>("reference", () => OverloadAllowance.Create("x", default, default, null!));
    }

    [Fact]
    public void Carrying_SetsTheCoolingSoThatTheWireJustReachesItsLimit()
    {
        ProtectedWire wire = Wire(2.5);
        double free = HeatBalance.CurrentFor(wire.Wire, wire.Surroundings, C(70)).Amperes;
        WireLimits bundled = wire.Carrying(A(0.6 * free)).Limits();
        Assert.Equal(0.6 * free, bundled.Heat.AmperesFor(70), 9);
        Assert.Equal(30, bundled.Heat.NoLoadCelsius);

        // More than free air carries is not believed.
        Assert.Equal(free, wire.Carrying(A(2 * free)).Limits().Heat.AmperesFor(70), 9);
        Assert.Equal(ProtectionVerdict.Protected, FuseAgainstWire.Check(Fifteen, wire, A(500)).Verdict);
        Assert.Equal(ProtectionVerdict.NotProtected, FuseAgainstWire.Check(Fifteen, wire.Carrying(A(10)), A(500)).Verdict);
    }

    /// <summary>Starting at the limit with no allowance, a wire that carries everything indefinitely is protected, and one that does not is not.</summary>
    [Fact]
    public void Check_StartAtTheLimit_DependsOnWhatIsCarried()
    {
        ProtectedWire wire = Wire(2.5).With(OverloadAllowance.None);
        double carried = HeatBalance.CurrentFor(wire.Wire, wire.Surroundings, C(70)).Amperes;
        Assert.True(carried > 20.25);
        Assert.Equal(ProtectionVerdict.Protected, FuseAgainstWire.Check(Fifteen, wire, A(carried * 0.999)).Verdict);
        WireProtection outcome = FuseAgainstWire.Check(Fifteen, wire, A(500));
        Assert.Equal(carried < 30 ? ProtectionVerdict.NotProtected : outcome.Verdict, outcome.Verdict);
        WireProtection cool = FuseAgainstWire.Check(Fifteen, wire.StartingAt(C(40)), A(500));
        Assert.True(cool.TimeRatio >= outcome.TimeRatio);
        Assert.Equal(ProtectionVerdict.NotProtected, FuseAgainstWire.Check(Fifteen, wire.StartingAt(C(71)), A(500)).Verdict);
    }

    [Fact]
    public void Check_LargerFuse_NeverProtectsBetter()
    {
        foreach (double area in new[] { 0.5, 1, 2.5, 6 })
        {
            double before = double.PositiveInfinity;
            foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings.Where(r => r.Curve is not null))
            {
                double ratio = FuseAgainstWire.Check(fuse, Wire(area), A(400)).TimeRatio;
                Assert.True(ratio <= before * (1 + 1e-4));
                before = ratio;
            }
        }
    }

    [Fact]
    public void Tightest_DoesNotAllocate()
    {
        WireLimits wire = Wire(1).Limits();
        double sum = 0;
        for (int i = 0; i < 300; i++)
        {
            sum += FuseAgainstWireKernel.Tightest(wire, Fifteen.Curve!, 300 + i).Amperes + FuseAgainstWireKernel.Verdict(wire, Fifteen.Curve!, 300 + i).Amperes;
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 300; i++)
        {
            sum += FuseAgainstWireKernel.Tightest(wire, Fifteen.Curve!, 300 + i).Amperes + FuseAgainstWireKernel.Verdict(wire, Fifteen.Curve!, 300 + i).Amperes;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    [Fact]
    public void Arguments_AreNamed()
    {
        Assert.Throws<ArgumentNullException>("fuse", () => FuseAgainstWire.Check(null!, Wire(1), A(1)));
        Assert.Throws<ArgumentNullException>("fuse", () => FuseAgainstWire.Check((FuseRating)null!, [Wire(1)], A(1)));
        Assert.Throws<ArgumentNullException>("curve", () => FuseAgainstWire.Check((TimeCurrentCurve)null!, [Wire(1)], A(1)));
        Assert.Throws<ArgumentNullException>("wire", () => FuseAgainstWire.Check(Fifteen, (ProtectedWire)null!, A(1)));
        Assert.Throws<ArgumentNullException>("wires", () => FuseAgainstWire.Check(Fifteen, (IReadOnlyList<ProtectedWire>)null!, A(1)));
        Assert.Throws<ArgumentNullException>("wires", () => FuseAgainstWire.Check(Fifteen, [Wire(1), null!], A(1)));
        Assert.Throws<ArgumentException>("wires", () => FuseAgainstWire.Check(Fifteen, [], A(1)));
        Assert.Throws<ArgumentOutOfRangeException>("prospective", () => FuseAgainstWire.Check(Fifteen, Wire(1), A(0)));
        Assert.Throws<ArgumentNullException>("wire", () => ProtectedWire.Create(null!, Air()));
        Assert.Throws<ArgumentNullException>("surroundings", () => ProtectedWire.Create(Solid(1, 1), null!));
        Assert.Throws<ArgumentNullException>("allowance", () => Wire(1).With(null!));
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => Wire(1).StartingAt(C(1200)));
        Assert.Throws<ArgumentOutOfRangeException>("continuous", () => Wire(1).Carrying(A(0)));
    }

    // IEC 60364-4-43, 433.1 (from memory): Ib ≤ In ≤ Iz, I2 ≤ 1.45·Iz.
    [Theory]
    [InlineData(12, 15, RatingVerdict.Within, 20.25 / (1.45 * 15))]
    [InlineData(15, 15, RatingVerdict.Within, 20.25 / (1.45 * 15))]
    [InlineData(15.1, 20, RatingVerdict.Exceeded, 15.1 / 15)]
    [InlineData(12, 14.9, RatingVerdict.Exceeded, 15 / 14.9)]
    public void OverloadCoordination_Blade_FollowsTheRule(double load, double continuous, RatingVerdict verdict, double share)
    {
        RatingCheck check = OverloadCoordination.Check(Fifteen, A(load), A(continuous));
        Assert.Equal(verdict, check.Verdict);
        Assert.Equal(share, check.Share!.Value, 12);
    }

    // gG: I2 = 1.6 In from 16 A on, 1.9 In below, so In ≤ Iz/1.103 or Iz/1.310.
    [Theory]
    [InlineData(16, 16 * 1.6 / 1.45, true)]
    [InlineData(16, 16 * 1.102, false)]
    [InlineData(6, 6 * 1.9 / 1.45, true)]
    [InlineData(6, 6 * 1.309, false)]
    public void OverloadCoordination_Gg_NeedsMoreWire(double rating, double continuous, bool within) => Assert.Equal(
        within ? RatingVerdict.Within : RatingVerdict.Exceeded,
        OverloadCoordination.Check(FuseSeries.IndustrialGg.SmallestAtLeast(A(rating)), A(1), A(continuous)).Verdict);

    [Fact]
    public void OverloadCoordination_UnknownFuse_IsNotProven()
    {
        Assert.Equal(RatingVerdict.NotProven, OverloadCoordination.Check(FuseSeries.RoadVehicleStrip51.Ratings[0], A(1), A(1000)).Verdict);
        Assert.Throws<ArgumentNullException>("fuse", () => OverloadCoordination.Check(null!, A(1), A(1)));
        Assert.Throws<ArgumentOutOfRangeException>("load", () => OverloadCoordination.Check(Fifteen, A(-1), A(1)));
        Assert.Throws<ArgumentOutOfRangeException>("continuous", () => OverloadCoordination.Check(Fifteen, A(1), A(0)));
    }

    private static ProtectedWire Bearing(ProtectedWire wire) => wire.With(
        OverloadAllowance.Create("short-circuit limit", TemperatureDelta.FromKelvins(90), TemperatureDelta.FromKelvins(90), Reference.CommonPractice("test")));

    private static (double Sustained, double Overload, double Fault) Limits(ProtectedWire wire)
    {
        WireLimits limits = wire.Limits();
        return (limits.SustainedCelsius, limits.OverloadCelsius, limits.ShortCircuitCelsius);
    }
}
