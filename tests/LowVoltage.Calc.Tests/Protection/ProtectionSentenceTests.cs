using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>Verdicts at their limits, and the sentences that a reader gets; every number in them by hand.</summary>
public class ProtectionSentenceTests
{
    private static readonly FuseRating Ten = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(10));
    private static readonly FuseRating Fifteen = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));

    /// <summary>10 A blade: 35 A for 0.04 s, 49 A²s; 60 A for 0.02 s, 72 A²s. 48 % for 100 pulses: 23.52 A²s.</summary>
    [Theory]
    [InlineData(10, 1e6, RatingVerdict.Within, null, "The peak of 10 A is within the rating of the 10 A blade fuse (ISO 8820-3 type C).")]
    [InlineData(60, 11.76, RatingVerdict.Within, 0.5, "The pulse of 11.76 A²s is within the 23.52 A²s that the 10 A blade fuse (ISO 8820-3 type C) stands 100 times at 60 A.")]
    [InlineData(61, 11.76, RatingVerdict.NotProven, 0.5, "The pulse is 11.76 A²s of the 23.52 A²s that the 10 A blade fuse (ISO 8820-3 type C) stands 100 times at 61 A by the line between or beyond the stated points, which proves nothing.")]
    [InlineData(60, 47.04, RatingVerdict.Exceeded, 2.0, "The pulse is 47.04 A²s of the 23.52 A²s that the 10 A blade fuse (ISO 8820-3 type C) stands 100 times at 60 A.")]
    public void Pulse_AgainstABlade_IsSaidInFull(double peak, double joules, RatingVerdict verdict, double? share, string reason)
    {
        RatingCheck check = PulseAgainstFuse.Check(Ten, A(peak), J(joules), 100);
        Assert.Equal((verdict, reason), (check.Verdict, check.Reason));
        Assert.Equal(share is null, check.Share is null);
        Assert.Equal(share ?? 0, check.Share ?? 0, 1e-12);
    }

    /// <summary>Least times 8 A for 0.5 s, 16 A for 0.25 s: 32 A²s and 64 A²s, exact in binary; 0.48 · 32 A²s = 15.36 A²s.</summary>
    [Fact]
    public void Pulse_AtExactlyItsShare_IsAllowed()
    {
        FuseRating fuse = Own(TimeCurrentCurve.Create([P(8, 0.5), P(16, 0.25)], [P(4, 100), P(100, 10)]));
        Assert.Equal(RatingVerdict.Within, PulseAgainstFuse.Check(fuse, A(16), J(0.48 * 32), 100).Verdict);
        Assert.Equal(RatingVerdict.NotProven, PulseAgainstFuse.Check(fuse, A(17), J(0.48 * 32), 100).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, PulseAgainstFuse.Check(fuse, A(17), J(0.48 * 32 * (1 + 1e-15)), 100).Verdict);
        RatingCheck none = PulseAgainstFuse.Check(Own(TimeCurrentCurve.Create([], [P(4, 100)])), A(17), J(1), 100);
        Assert.Equal("No least operating time is published for the 2 A fuse (own) at 17 A.", none.Reason);
        Assert.Null(none.Share);
    }

    [Theory]
    [InlineData(48, RatingVerdict.Within, 1, "The pulse of 48 A²s is within 48 % of the 100 A²s that melt the fuse, for 100 pulses.")]
    [InlineData(24, RatingVerdict.Within, 0.5, "The pulse of 24 A²s is within 48 % of the 100 A²s that melt the fuse, for 100 pulses.")]
    [InlineData(96, RatingVerdict.Exceeded, 2, "The pulse of 96 A²s exceeds 48 % of the 100 A²s that melt the fuse, for 100 pulses.")]
    public void Pulse_AgainstAMakersValue_IsSaidInFull(double joules, RatingVerdict verdict, double share, string reason)
    {
        RatingCheck check = PulseAgainstFuse.Check(J(100), J(joules), 100);
        Assert.Equal((verdict, reason), (check.Verdict, check.Reason));
        Assert.Equal(share, check.Share!.Value, 1e-12);
    }

    [Fact]
    public void Pulse_OutOfRange_IsRefusedWithUnitAndRange()
    {
        Assert.StartsWith("melting must be greater than zero and at most 1E+24 A²s; it was 0 A²s.", Refused("melting", () => PulseAgainstFuse.Check(J(0), J(1), 1)), StringComparison.Ordinal);
        Assert.StartsWith("pulse must be from 0 A²s to 2E+23 A²s; it was 3E+23 A²s.", Refused("pulse", () => PulseWithstand.LeastMeltingFor(J(3e23), 1)), StringComparison.Ordinal);
    }

    /// <summary>IEC 60364-4-43, 433.1 (from memory): 15 A blade, I2 = 20.25 A against 1.45 · Iz.</summary>
    [Theory]
    [InlineData(12, 15, RatingVerdict.Within, "The conventional fusing current of the 15 A blade fuse (ISO 8820-3 type C), 20.25 A, is within 1.45 times the wire's 15 A.")]
    [InlineData(16, 20, RatingVerdict.Exceeded, "The load of 16 A exceeds the rating of the 15 A blade fuse (ISO 8820-3 type C).")]
    [InlineData(12, 14, RatingVerdict.Exceeded, "The rating of the 15 A blade fuse (ISO 8820-3 type C) exceeds the wire's 14 A.")]
    [InlineData(15 * (1 + 1e-12), 15, RatingVerdict.Within, "The conventional fusing current of the 15 A blade fuse (ISO 8820-3 type C), 20.25 A, is within 1.45 times the wire's 15 A.")]
    [InlineData(15 * (1 + 2e-12), 15, RatingVerdict.Exceeded, "The load of 15 A exceeds the rating of the 15 A blade fuse (ISO 8820-3 type C).")]
    public void OverloadCoordination_EveryVerdict_IsSaidInFull(double load, double continuous, RatingVerdict verdict, string reason)
    {
        RatingCheck check = OverloadCoordination.Check(Fifteen, A(load), A(continuous));
        Assert.Equal((verdict, reason), (check.Verdict, check.Reason));
    }

    /// <summary>gG 16 A: I2 = 1.6 · 16 A = 25.6 A, above 1.45 · 17 A = 24.65 A. And the edges of 1e-12, which is rounding.</summary>
    [Fact]
    public void OverloadCoordination_FusingCurrentTooHigh_IsSaidInFull()
    {
        RatingCheck check = OverloadCoordination.Check(FuseSeries.IndustrialGg.SmallestAtLeast(A(16)), A(10), A(17));
        Assert.Equal("The conventional fusing current of the 16 A gG fuse-link (IEC 60269-1 gG), 25.6 A, exceeds 1.45 times the wire's 17 A.", check.Reason);
        Assert.Equal(RatingVerdict.Exceeded, check.Verdict);
        Assert.Equal(25.6 / 24.65, check.Share!.Value, 1e-12);
        double edge = Edges.Times(15, 1 + 1e-12);
        Assert.Equal(RatingVerdict.Within, OverloadCoordination.Check(Fifteen, A(1), A(edge)).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, OverloadCoordination.Check(Fifteen, A(1), A(15 * (1 - 2e-12))).Verdict);

        // 2 A fuse, Iz = 2 A: I2 may be 2.9 A, and 1e-12 of it more.
        Assert.Equal(RatingVerdict.Within, OverloadCoordination.Check(Own(TimeCurrentCurve.Create([], [P(Edges.Over(1 + 1e-12, 1.45 * 2), 5)])), A(1), A(2)).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, OverloadCoordination.Check(Own(TimeCurrentCurve.Create([], [P(2.9 * (1 + 2e-12), 5)])), A(1), A(2)).Verdict);
        Assert.Equal(
            "No conventional fusing current is published for the 80 A strip fuse (ISO 8820-5 type SF 51).",
            OverloadCoordination.Check(FuseSeries.RoadVehicleStrip51.Ratings[0], A(1), A(100)).Reason);
    }

    [Theory]
    [InlineData(0.18, RatingVerdict.Within)]
    [InlineData(0.18 * (1 + 1e-12), RatingVerdict.Within)]
    [InlineData(0.18 * (1 + 2e-12), RatingVerdict.Exceeded)]
    public void SourceDistance_AtItsLimit_ForgivesRoundingOnly(double meters, RatingVerdict verdict) =>
        Assert.Equal(verdict, SourceDistance.Iso13590.Check(Length.FromMeters(meters), sheathed: false, atBattery: false).Verdict);

    [Fact]
    public void SourceDistance_EveryCase_IsSaidInFull()
    {
        SourceDistance own = SourceDistance.Create("own", Length.FromMeters(0.2), Length.FromMeters(1), Reference.CommonPractice("test"));
        Assert.Equal("own allows 0.2 m open (as stated by the caller); the fuse sits 0.15 m from the source.", own.Check(Length.FromMeters(0.15), false, false).Reason);
        Assert.Equal("own allows 1 m sheathed (as stated by the caller); the fuse sits 0.15 m from the source.", own.Check(Length.FromMeters(0.15), true, false).Reason);
        Assert.Equal(0.15, own.Check(Length.FromMeters(0.15), true, false).Share!.Value, 1e-12);
        Assert.Equal(
            "ISO 10133 allows any length sheathed (sheathed over the whole length); the fuse sits 2 m from the source.",
            SourceDistance.Iso10133.Check(Length.FromMeters(2), true, false).Reason);

        // A rule that allows no length at all allows none.
        RatingCheck none = SourceDistance.Iec60364.Check(Length.Zero, sheathed: false, atBattery: false);
        Assert.Equal((RatingVerdict.Within, 0.0), (none.Verdict, none.Share!.Value));
    }

    [Fact]
    public void Voltage_AgainstTheRating_IsSaidInFull() => Assert.Equal(
        "The rated voltage of the 10 A blade fuse (ISO 8820-3 type C) is 32 V d.c.; the circuit voltage of 14.4 V is within it.",
        FuseRatingChecks.Voltage(Ten, ElectricPotential.FromVolts(14.4)).Reason);

    [Fact]
    public void Loading_AtExactlyItsShare_IsCarried()
    {
        Assert.True(FuseLoading.Carries(20 * (1 - 1e-9), 1, 20));
        Assert.False(FuseLoading.Carries(20 * (1 - 2e-9), 1, 20));
        Assert.StartsWith("factor must be greater than zero and at most 1.5; it was 2.", Refused("factor", () => FuseLoading.LeastRatingFor(A(1), 2)), StringComparison.Ordinal);
        Assert.StartsWith(
            "rating must be covered by the rule \"cartridge fuse in space hardware, 25 °C\" (0.125 A; 0.25 A; 0.375 A; 0.5 A; 0.75 A; 1 A; 1.5 A; 2 A to 15 A); it was 16 A.",
            Refused("rating", () => LoadingRule.SpaceHardware.FactorFor(A(16))), StringComparison.Ordinal);
        Assert.StartsWith(
            "rating must be covered by the rule \"installation cartridge fuse above 40 A\" (above 40 A); it was 40 A.",
            Refused("rating", () => LoadingRule.CartridgeAbove40.FactorFor(A(40))), StringComparison.Ordinal);
    }

    [Fact]
    public void Allowance_OutOfRange_IsRefusedInKelvins()
    {
        Reference source = Reference.CommonPractice("test");
        OverloadAllowance Create(double sustained, double opened) =>
            OverloadAllowance.Create("x", TemperatureDelta.FromKelvins(sustained), TemperatureDelta.FromKelvins(opened), source);
        Assert.StartsWith("sustained must be from 0 K to 100 K; it was 101 K.", Refused("sustained", () => Create(101, 101)), StringComparison.Ordinal);
        Assert.StartsWith("opened must be from 20 K to 100 K; it was 19 K.", Refused("opened", () => Create(20, 19)), StringComparison.Ordinal);
    }

    [Fact]
    public void AmbientRerating_FromBadPoints_SaysWhatIsWrong()
    {
        AmbientRerating Create(double[] celsius, double[] factors) => AmbientRerating.Create("x", Reference.CommonPractice("test"), [.. celsius.Select(C)], factors);
        Assert.StartsWith("factors must be one for each of at least two ambients; there are 1 factors and 2 ambients.", Wrong("factors", () => Create([20, 30], [1])), StringComparison.Ordinal);
        Assert.StartsWith("ambients must rise; 20 °C follows 30 °C.", Wrong("ambients", () => Create([30, 20], [1, 1])), StringComparison.Ordinal);
        Assert.StartsWith("factors must not rise with temperature; 1.1 follows 1.", Wrong("factors", () => Create([20, 30], [1, 1.1])), StringComparison.Ordinal);
        Assert.StartsWith("factors must be greater than zero and at most 1.5; it was 2.", Refused("factors", () => Create([20, 30], [2, 1])), StringComparison.Ordinal);
        Assert.Equal(0.9, Create([20, 30], [0.9, 0.9]).FactorAt(C(27)), 1e-12);
    }

    private static string Refused(string name, Func<object> call) => Assert.Throws<ArgumentOutOfRangeException>(name, call).Message;

    private static string Wrong(string name, Func<object> call) => Assert.Throws<ArgumentException>(name, call).Message;

    private static JouleIntegral J(double value) => JouleIntegral.FromAmpereSquaredSeconds(value);

    private static TimeCurrentPoint P(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), S(seconds));

    private static FuseRating Own(TimeCurrentCurve curve) => FuseSeries.Create(new()
    {
        Name = "own", Kind = "fuse", Reference = Reference.CommonPractice("test"), Ratings = [A(2)], Curves = [curve],
    }).Ratings[0];
}
