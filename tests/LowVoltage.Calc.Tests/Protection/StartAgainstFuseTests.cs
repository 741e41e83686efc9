using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A start of up to three surges on a running current, a path, and a fuse.</summary>
public sealed record StartCase(double Running, double Path, double Constant, double ConstantSeconds, double Fading, double FadingSeconds, double Charging, double ChargingSeconds)
{
    internal StartWaveform Wave(double held = double.PositiveInfinity) => new(
        [
            StartSurge.Constant("motor", A(Constant), S(ConstantSeconds)), StartSurge.Fading("lamp", A(Fading), S(FadingSeconds)),
            StartSurge.Charging("capacitor", A(Charging), S(ChargingSeconds)),
        ],
        Running,
        Path,
        held);
}

public static class StartCases
{
    public static Arbitrary<StartCase> Case() => (
        from running in AdiabaticCases.LogUniform(0.1, 9)
        from path in AdiabaticCases.LogUniform(30, 2000)
        from constant in AdiabaticCases.LogUniform(0.5, 60)
        from constantSeconds in AdiabaticCases.LogUniform(0.001, 5)
        from fading in AdiabaticCases.LogUniform(0.5, 100)
        from fadingSeconds in AdiabaticCases.LogUniform(0.0005, 0.1)
        from charging in AdiabaticCases.LogUniform(1, 2000)
        from chargingSeconds in AdiabaticCases.LogUniform(1e-6, 0.1)
        select new StartCase(running, path, constant, constantSeconds, fading, fadingSeconds, charging, chargingSeconds)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(StartCases)], MaxTest = 200)]
public class StartAgainstFuseTests
{
    private const double Volts = 14.4;
    private const double Ohms = 0.03;

    private static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(amperes));

    private static StartOutcome Check(FuseRating fuse, Load load, int starts = StartAgainstFuse.DefaultStarts) =>
        StartAgainstFuse.Check(fuse, CircuitStart.Of(LoadStart.Of(load), Volts, Ohms, double.PositiveInfinity), starts);

    private static Load Motor(double running, double peak, double seconds) => Load.Motor(A(running), A(peak), A(peak), S(seconds));

    /// <summary>Once no start was checked here at all: 10.5 A flow for 1 s through a fuse of 5 A that may open after 0.13 s.</summary>
    [Fact]
    public void Check_TwoMotorsOfUnequalStartAndARunningLoad_AddUp()
    {
        Load load = Load.Together(Motor(1, 4.5, 1), Motor(1, 4.5, 1.1), Load.ConstantCurrent(A(1.5)));
        StartWaveform start = CircuitStart.Of(LoadStart.Of(load), Volts, Ohms, double.PositiveInfinity);
        Assert.Equal(10.5, start.Peak.Amperes, 1e-12);
        Assert.Equal(10.5, start.CurrentAt(S(0.999)).Amperes, 1e-12);
        Assert.Equal(7, start.CurrentAt(S(1.05)).Amperes, 1e-12);
        Assert.Equal(3.5, start.CurrentAt(S(1.2)).Amperes, 1e-12);
        Assert.Equal(1.1, start.TimeAbove(A(5))!.Value.Seconds, 1e-12);
        StartOutcome outcome = Check(Blade(5), load, 1);
        Assert.Equal(RatingVerdict.Exceeded, outcome.Verdict);
        Assert.True(outcome.OneStartShare > 7, outcome.Reason);
        Assert.Equal((10.5 * 10.5) + (7 * 7 * 0.1), outcome.AboveRating!.Value.AmpereSquaredSeconds, 1e-9);
        Assert.Equal("motor", outcome.Dominant);
    }

    /// <summary>A motor beside what runs: 31 A for 0.4 s and 9 A on a 15 A fuse, whose least time at 40 A is some 0.09 s. It once passed.</summary>
    [Theory]
    [InlineData(22)]
    [InlineData(31)]
    public void Check_MotorBesideARunningLoad_CountsBoth(double peak)
    {
        StartOutcome outcome = Check(Blade(15), Load.Together(Motor(5, peak, 0.4), Load.ConstantCurrent(A(9))), 1);
        Assert.Equal(RatingVerdict.Exceeded, outcome.Verdict);
        Assert.Equal(peak + 9, outcome.Peak.Amperes, 1e-12);
        Assert.Equal(0.4, outcome.TimeAboveRating!.Value.Seconds, 1e-12);
    }

    /// <summary>Four capacitors of 10 mF once took a smaller fuse than one of 40 mF.</summary>
    [Fact]
    public void Check_CapacitorSplitInFour_IsTheSameStart()
    {
        Load Part(double watts, double millifarads) =>
            Load.ConstantPower(Power.FromWatts(watts)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(millifarads));
        Load whole = Part(80, 40), split = Load.Together(Part(20, 10), Part(20, 10), Part(20, 10), Part(20, 10));
        StartWaveform one = CircuitStart.Of(LoadStart.Of(whole), Volts, Ohms, double.PositiveInfinity), four = CircuitStart.Of(LoadStart.Of(split), Volts, Ohms, double.PositiveInfinity);
        foreach (double seconds in new[] { 0, 1e-4, 1e-3, 3e-3, 1e-2, 1 })
        {
            Assert.Equal(one.CurrentAt(S(seconds)).Amperes, four.CurrentAt(S(seconds)).Amperes, 1e-9);
        }

        // Alone on the path: V/R with time constant R·C.
        Assert.Equal(480, one.Peak.Amperes, 1e-9);
        double run = one.Running.Amperes;
        Assert.Equal(run + ((480 - run) * Math.Exp(-1)), one.CurrentAt(S(0.0012)).Amperes, 1e-9);
        foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings)
        {
            StartOutcome a = Check(fuse, whole), b = Check(fuse, split);
            Assert.Equal(a.Verdict, b.Verdict);
            Assert.Equal(a.Share ?? 0, b.Share ?? 0, 1e-6 * (a.Share ?? 1));
        }

        // The same from surges that a caller states, each as if it were alone.
        StartSurge[] stated = [.. Enumerable.Repeat(StartSurge.Charging("capacitor", A(480), S(0.0003)), 4)];
        Assert.Equal(one.CurrentAt(S(0.002)).Amperes, StartWaveform.Create(stated, A(run), A(480)).CurrentAt(S(0.002)).Amperes, 1e-9);
    }

    [Fact]
    public void Check_LampsAndMotorsSplit_AreTheSameStart()
    {
        Load lamp = Load.Lamp(Power.FromWatts(40), ElectricPotential.FromVolts(12)), ten = Load.Lamp(Power.FromWatts(10), ElectricPotential.FromVolts(12));
        ElectricPotential rated = ElectricPotential.FromVolts(12);
        Load motor = Load.Motor(A(4), A(16), A(20), S(0.3), rated), half = Load.Motor(A(2), A(8), A(10), S(0.3), rated);
        StartWaveform whole = CircuitStart.Of(LoadStart.Of(Load.Together(lamp, motor)), Volts, Ohms, double.PositiveInfinity);
        StartWaveform split = CircuitStart.Of(LoadStart.Of(Load.Together(half, ten, ten, half, ten, ten)), Volts, Ohms, double.PositiveInfinity);
        foreach (double seconds in new[] { 0, 0.01, 0.1, 0.29, 0.31, 5 })
        {
            Assert.Equal(whole.CurrentAt(S(seconds)).Amperes, split.CurrentAt(S(seconds)).Amperes, 1e-9);
        }

        // By hand: at 14.4 V a cold lamp of 12 V/(40 W/12 V)/14 = 0.257 Ω and a winding of 0.75 Ω, each behind 30 mΩ.
        Assert.Equal((14.4 / (0.03 + (3.6 / 14))) + (14.4 / 0.78), whole.Peak.Amperes, 0.02 * whole.Peak.Amperes);
    }

    /// <summary>A current held gives exactly the least time, at a stated point by what the points prove.</summary>
    [Theory]
    [InlineData(30, 0.15, 0.35, StartBasis.StatedPoints)]
    [InlineData(25, 0.228, 0.35, StartBasis.CustomaryLine)]
    [InlineData(120, 0.0113, 0.3, StartBasis.CustomaryLine)]
    public void Check_HeldCurrent_GivesExactlyTheLeastTime(double amperes, double about, double share, StartBasis basis)
    {
        FuseRating fuse = Blade(15);
        double least = fuse.OperatingTime(A(amperes)).Least.Seconds;
        Assert.Equal(about, least, 0.03 * about);
        StartOutcome At(double seconds) => StartAgainstFuse.Check(fuse, StartWaveform.Create([StartSurge.Constant("motor", A(amperes), S(seconds))], A(0), A(1000)), 1);
        Assert.Equal(1, At(least).OneStartShare!.Value, 1e-12);
        Assert.Equal(0.5, At(0.5 * least).OneStartShare!.Value, 1e-12);
        Assert.Equal(basis, At(share * least).Basis);
        Assert.Equal(RatingVerdict.Within, At(share * least).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, At(1.001 * least).Verdict);
    }

    /// <summary>For repeated starts it is the same judgement as that of a single pulse.</summary>
    [Theory]
    [InlineData(1000)]
    [InlineData(10_000)]
    public void Check_OneRectangle_AgreesWithPulseAgainstFuse(int starts)
    {
        foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings.Where(f => f.Curve is not null))
        {
            foreach (double seconds in new[] { 0.005, 0.02, 0.08, 0.3 })
            {
                RatingCheck pulse = PulseAgainstFuse.Check(fuse, A(24), PulseShape.Rectangle(A(24), S(seconds)), starts);
                StartOutcome start = StartAgainstFuse.Check(fuse, StartWaveform.Create([StartSurge.Constant("motor", A(24), S(seconds))], A(0), A(1000)), starts);
                RatingVerdict expected = start.Basis == StartBasis.CustomaryLine && start.Verdict == RatingVerdict.Within ? RatingVerdict.NotProven : start.Verdict;
                Assert.Equal(pulse.Verdict, expected);
            }
        }
    }

    [Fact]
    public void Check_WhatItCannotSay_IsSaid()
    {
        StartWaveform start = StartWaveform.Create([StartSurge.Constant("motor", A(90), S(1))], A(5), A(1000));
        StartOutcome unknown = StartAgainstFuse.Check(FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(80)), start);
        Assert.Equal(RatingVerdict.NotProven, unknown.Verdict);
        Assert.Equal(StartBasis.None, unknown.Basis);
        Assert.Null(unknown.Share);
        Assert.Contains("no least operating time is published", unknown.Reason, StringComparison.Ordinal);

        StartOutcome within = StartAgainstFuse.Check(FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(100)), start);
        Assert.Equal((RatingVerdict.Within, StartBasis.WithinRating, null), (within.Verdict, within.Basis, within.Dominant));

        StartOutcome running = StartAgainstFuse.Check(Blade(5), StartWaveform.Create([StartSurge.Constant("motor", A(90), S(1))], A(5.5), A(1000)));
        Assert.Equal(RatingVerdict.Exceeded, running.Verdict);
        Assert.Null(running.TimeAboveRating);
        Assert.Null(running.AboveRating);
        Assert.Throws<ArgumentOutOfRangeException>("starts", () => StartAgainstFuse.Check(Blade(5), start, 0));
        Assert.Throws<ArgumentOutOfRangeException>("pathLimit", () => StartWaveform.Create([], A(1), A(0)));
        Assert.Throws<ArgumentNullException>("surges", () => StartWaveform.Create([null!], A(1), A(10)));
        Assert.Equal(RatingVerdict.Within, StartAgainstFuse.Check(Blade(5), StartWaveform.Create([], A(5), A(100))).Verdict);
    }

    /// <summary>A source that holds 20 A gives a capacitor of 40 mF its charge of 14.4 V · 40 mF = 0.576 As all the same, later.</summary>
    [Fact]
    public void Wave_SourceHoldsItsLimit_GivesTheSameChargeLater()
    {
        StartSurge[] surges = [StartSurge.Charging("capacitor", A(480), S(0.0012))];
        StartWaveform held = StartWaveform.Create(surges, A(0), A(480), A(20));
        Assert.Equal(20, held.Peak.Amperes);

        // Charge above the tail: (480 − 20) A · 1.2 ms = 0.552 As at 20 A take 27.6 ms; the rest fades from 20 A.
        Assert.Equal(0.0276, held.TimeAbove(A(19.999_999))!.Value.Seconds, 1e-6);
        Assert.Equal(20 * Math.Exp(-1), held.CurrentAt(S(0.0276 + 0.0012)).Amperes, 1e-6);
        Assert.Equal(20, held.CurrentAt(S(0.0275)).Amperes);
        Assert.Equal((400 * 0.0276) + (0.0006 * (400 - 25)), held.JoulesAbove(5), 1e-6);
        Assert.Null(StartWaveform.Create(surges, A(21), A(480), A(20)).TimeAbove(A(10)));
        Assert.Equal(0, held.TimeAbove(A(20))!.Value.Seconds);
    }

    /// <summary>Against a plain sum over a million small steps, with and without a source that holds a limit.</summary>
    [Property]
    public bool Wave_RandomSurges_AgreesWithASumOverTime(StartCase c)
    {
        StartWaveform wave = c.Wave();
        if (wave.PeakAmperes <= 10)
        {
            return true;
        }

        double until = wave.SecondsAbove(10), joules = 0, melting = 0, time = 0;
        TimeCurrentCurve curve = Blade(10).Curve!;

        // Steps that grow with time see the short surges and the long ones.
        for (double next = 1e-13; time < until; next = Math.Min(next * 1.0005, until))
        {
            double to = next >= until ? until : next, amperes = Plain(c, 0.5 * (time + to));
            joules += amperes * amperes * (to - time);
            melting += curve.TryLeastSeconds(amperes, out double least) ? (to - time) / least : 0;
            time = to;
        }

        return Math.Abs(wave.JoulesAbove(10) - joules) <= 2e-3 * joules
            && Math.Abs(wave.MeltingAbove(10, curve, proven: false) - melting) <= 5e-3 * melting
            && wave.CurrentAt(S(until * (1 + 1e-9))).Amperes <= 10 * (1 + 1e-6)
            && wave.CurrentAt(S(until * (1 - 1e-9))).Amperes >= 10 * (1 - 1e-6);
    }

    [Property]
    public bool Wave_OnlyFallsAndKeepsToThePath(StartCase c)
    {
        foreach (StartWaveform wave in new[] { c.Wave(), c.Wave(held: 12) })
        {
            double before = double.PositiveInfinity;
            for (double seconds = 1e-7; seconds < 20; seconds *= 1.05)
            {
                double amperes = wave.CurrentAt(S(seconds)).Amperes;
                if (amperes > before * (1 + 1e-12) || amperes > c.Path * (1 + 1e-12) || amperes < Math.Min(12, Math.Min(c.Running, c.Path)) * (1 - 1e-12))
                {
                    return false;
                }

                before = amperes;
            }
        }

        return true;
    }

    /// <summary>
    /// The sum of shares is safe for a start: an element simulated under the falling current (x′ = I²/Im² − x, melting at x = 1) has not melted where the sum is below 1.
    /// </summary>
    [Property]
    public bool SumOfShares_FallingCurrent_IsNotMeltedBelowOne(StartCase c)
    {
        const double Constant = 0.3;
        double melting = 1.3 * c.Running, sum = 0, x = 0, time = 0;
        for (double next = 1e-8; time < 10; next *= 1.002)
        {
            double ratio = Plain(c, 0.5 * (time + next)) / melting, square = ratio * ratio, step = next - time;
            sum += ratio > 1 ? -step / (Constant * Math.Log(1 - (1 / square))) : 0;
            x = square + ((x - square) * Math.Exp(-step / Constant));
            if (x >= 1)
            {
                return sum >= 1 - 1e-3;
            }

            time = next;
        }

        return true;
    }

    private static double Plain(StartCase c, double t)
    {
        double Base(double s) => Math.Min(c.Path, c.Running + (s < c.ConstantSeconds ? c.Constant : 0) + (c.Fading * Math.Exp(-s / c.FadingSeconds)));
        double top = Math.Min(c.Path, Base(0) + c.Charging), constant = c.Charging * c.ChargingSeconds / Math.Min(c.Path, c.Charging);
        return Base(t) + ((top - Base(t)) * Math.Exp(-t / constant));
    }
}
