using System.Globalization;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>The moment at which a device ends a short circuit, by hand, at every edge of its curve, and what the outcome says.</summary>
public class FaultClearingBoundaryTests
{
    private static readonly FuseRating Fifteen = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));

    // 99.9995 A whatever the wire does.
    private static readonly FaultPath Constant = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1000), FaultCase.Segment(1, 2, 20));

    /// <summary>
    /// A loop of nothing but copper: I = 60 A·exp(−κJ), κ = α·R′/C′. The device takes T down to 55.5 A and indefinitely below 55 A. It opens at I²·T = J, and T is chosen
    /// so that this is just before the current has fallen to 55.5 A: a search that passes over the last moments would never see it open. The same in thin
    /// wires, where a Joule integral is a millionth of a millionth.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.1)]
    [InlineData(0.001)]
    public void Latest_OpeningJustBeforeTheDeviceGetsSlow_IsFound(double diameter)
    {
        double area = Math.PI / 4 * diameter * diameter * 1e-6, ohms = 1 / (58e6 * area), unit = diameter * diameter;
        double kappa = 0.00393 * ohms / (3.45e6 * area);
        FaultPath path = FaultPath.Create(FaultCase.V(60 * unit * ohms), ElectricResistance.Zero, FaultCase.Segment(1, diameter, 20));
        double joules = 0.9979 * Math.Log(60 / 55.5) / kappa, amperes = 60 * unit * Math.Exp(-kappa * joules), time = joules / (amperes * amperes);
        TimeCurrentCurve curve = Longest((20 * unit, 1e6), (55 * unit, 1e6), (55.5 * unit, time), (59 * unit, time), (1000 * unit, time));
        FaultOpening latest = FaultClearing.Latest(path, curve);
        Assert.Equal(FaultOutcome.Opens, latest.Outcome);
        Assert.Equal(1, latest.State!.LetThrough.AmpereSquaredSeconds / joules, 1e-9);
        Assert.Equal(1, latest.State.Current.Amperes / amperes, 1e-9);

        // E²·t = R²·(exp(2κJ) − 1)/(2κ).
        Assert.Equal(1, latest.State.Time.Seconds / ((Math.Exp(2 * kappa * joules) - 1) / (2 * kappa * 3600 * unit * unit)), 1e-9);

        // A time a little longer is never over before the device gets slow.
        TimeCurrentCurve slower = Longest((20 * unit, 1e6), (55 * unit, 1e6), (55.5 * unit, time * 1.01), (59 * unit, time * 1.01), (1000 * unit, time * 1.01));
        Assert.Equal(FaultOutcome.NeedNotOpen, FaultClearing.Latest(path, slower).Outcome);
    }

    /// <summary>Between the first two stated points, straight in log-log: 22 A through a 15 A blade lies between 20.25 A (1800 s) and 24 A (50 s).</summary>
    [Fact]
    public void Latest_InTheFirstPiece_IsTheTimeOfTheCurve()
    {
        FaultPath path = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1e5 / 22), FaultCase.Segment(1, 4, 20));
        double seconds = 1800 * Math.Pow(50 / 1800.0, Math.Log(22 / 20.25) / Math.Log(24 / 20.25));
        Assert.Equal(1, FaultClearing.Latest(path, Fifteen).State!.Time.Seconds / seconds, 1e-4);
    }

    /// <summary>A small fuse on a thick wire, where the Joule integral that melts the wire is 10¹⁰ times that of the fuse.</summary>
    [Fact]
    public void Latest_SmallFuseOnAThickWire_IsTheTimeOfTheCurve()
    {
        TimeCurrentCurve curve = Longest((0.2, 100), (0.4, 1), (2, 0.01));
        FaultPath path = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1e5 / 0.3), FaultCase.Segment(1, 8, 20));
        double seconds = 100 * Math.Pow(0.01, Math.Log(1.5) / Math.Log(2));
        Assert.Equal(1, FaultClearing.Latest(path, curve).State!.Time.Seconds / seconds, 1e-6);
    }

    [Fact]
    public void Reason_WhenItOpens_NamesTimeCurrentJouleIntegralAndTemperature()
    {
        FaultOpening latest = FaultClearing.Latest(Constant, Fifteen), soonest = FaultClearing.Soonest(Constant, Fifteen);
        Assert.Equal($"The device has opened after {State(latest)}.", latest.Reason);
        Assert.Equal($"The device opens no sooner than after {State(soonest)}.", soonest.Reason);
        Assert.False(latest.State!.IsMelting);
        Assert.False(soonest.State!.IsMelting);
        Assert.Equal((FaultOutcome.Opens, FaultOutcome.Opens), (latest.Outcome, soonest.Outcome));
    }

    [Fact]
    public void Reason_WhenItNeedNotOpen_SaysWhether()
    {
        // 10 A from the start; then 8 A that fall below the 6.75 A of a 5 A blade.
        FaultPath ten = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1e4), FaultCase.Segment(0.001, 2, 20));
        Assert.Equal("The fault draws 10 A, less than the conventional fusing current of 20.25 A.", FaultClearing.Latest(ten, Fifteen).Reason);
        FaultSegment wire = FaultCase.Segment(3, 0.2, 20);
        double ohms = 3 / (58e6 * Math.PI / 4 * 0.04e-6);
        FaultOpening falls = FaultClearing.Latest(
            FaultPath.Create(FaultCase.V(8 * ohms), ElectricResistance.Zero, wire), FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(5)));
        Assert.Equal(FaultOutcome.NeedNotOpen, falls.Outcome);
        Assert.Equal(
            "As the conductors heat, the current falls from 8 A below the conventional fusing current of 6.75 A before the device has opened for sure.", falls.Reason);
        Assert.Null(falls.State);
    }

    [Fact]
    public void Reason_WhenAConductorMelts_SaysWhen()
    {
        // 0.1 mm copper is the fuse. Copper without loss: J = C′·ln(1 + α·1063)/(α·R′), and E²·t = ∫R²·dJ.
        FaultPath thin = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(20), FaultCase.Segment(0.01, 0.1, 20));
        FuseRating thirty = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(30));
        double area = Math.PI / 4 * 0.01e-6, perMeter = 1 / (58e6 * area);
        double melting = 3.45e6 * area * Math.Log(1 + (0.00393 * 1063)) / (0.00393 * perMeter);
        FaultOpening latest = FaultClearing.Latest(thin, thirty), soonest = FaultClearing.Soonest(thin, thirty);
        Assert.Equal(1, latest.State!.LetThrough.AmpereSquaredSeconds / melting, 1e-9);
        Assert.Equal(1083, latest.State.HottestCelsius, 1e-6);
        Assert.Equal($"A conductor melts after {T(latest.State.Time.Seconds)} s, before the device has opened for sure.", latest.Reason);
        Assert.Equal($"A conductor melts after {T(soonest.State!.Time.Seconds)} s, before the device can open.", soonest.Reason);
        Assert.True(soonest.State.IsMelting);
        Assert.Equal(FaultOutcome.ConductorMelts, soonest.Outcome);
    }

    [Fact]
    public void Reason_WhenNothingIsPublished_NamesTheFuseOrTheCurrent()
    {
        FuseRating strip = FuseSeries.RoadVehicleStrip51.Ratings[0];
        Assert.Equal("No operating times are published for the 80 A strip fuse (ISO 8820-5 type SF 51).", FaultClearing.Latest(Constant, strip).Reason);
        Assert.Equal("No operating times are published for the 80 A strip fuse (ISO 8820-5 type SF 51).", FaultClearing.Soonest(Constant, strip).Reason);
        FaultOpening none = FaultClearing.Soonest(Constant, Longest((20, 5)));
        Assert.Equal((FaultOutcome.NotEvaluated, "No least operating time is stated at 99.9995 A."), (none.Outcome, none.Reason));
    }

    private static string State(FaultOpening opening) =>
        $"{T(opening.State!.Time.Seconds)} s, at {T(opening.State.Current.Amperes)} A, {T(opening.State.LetThrough.AmpereSquaredSeconds)} A²s and {T(opening.State.HottestCelsius)} °C";

    private static string T(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    private static TimeCurrentCurve Longest(params (double Amperes, double Seconds)[] points) =>
        TimeCurrentCurve.Create([], [.. points.Select(p => TimeCurrentPoint.Create(A(p.Amperes), S(p.Seconds)))]);
}
