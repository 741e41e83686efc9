using FsCheck;
using FsCheck.Xunit;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

[Properties(Arbitrary = [typeof(FuseCases)], MaxTest = 500)]
public class FuseAgainstFuseTests
{
    private static readonly FuseRating Eighty = Blade(80), Forty = Blade(40);

    /// <summary>
    /// Two blades of type E at 2 : 1, worked by hand from their gates: at 200 % of the lower, 100 % of the upper, the upper holds for 100 h; at 400 % of the
    /// lower, 200 % of the upper, the lower need only open within 7 s (its 350 % row), and the upper may open after 2 s.
    /// </summary>
    [Fact]
    public void Check_TypeEAtTwoToOne_IsProvenAtTwiceAndNotAtFourTimes()
    {
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(Eighty, Forty, A(80)).Verdict);
        FuseSelectivity more = FuseAgainstFuse.Check(Eighty, Forty, A(160));
        Assert.Equal(Selectivity.NotProven, more.Verdict);

        // Up to 135 % of the upper, 108 A, where it holds for 60 s and the lower has opened within 60 s from 80 A on.
        Assert.Equal(108, more.Current!.Value.Amperes, 6);
        Assert.Contains("may open after 2 s", more.Reason, StringComparison.Ordinal);
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(Eighty, Forty, A(107.9)).Verdict);
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(Eighty, Forty, A(108.1)).Verdict);
    }

    [Fact]
    public void Check_LargerBelowSmaller_IsDisproven()
    {
        FuseSelectivity outcome = FuseAgainstFuse.Check(Blade(20), Eighty, A(500));
        Assert.Equal(Selectivity.Disproven, outcome.Verdict);

        // 80 A is 400 % of the upper, which opens within 7 s, and the lower carries it for 100 h.
        Assert.Equal(80, outcome.Current!.Value.Amperes);
        Assert.Contains("360000", outcome.ToString(), StringComparison.Ordinal);
        Assert.NotEqual(Selectivity.Proven, FuseAgainstFuse.Check(Forty, Forty, A(500)).Verdict);
    }

    [Fact]
    public void Check_WithJouleIntegralsOfTheParts_ReachesFurther()
    {
        // 10 A blade under 80 A type E: longest 10 A beyond 60 A 0.1 s. Proven least of 80 A: 0.2 s up to 280 A, 0.04 s up to 480 A, nothing beyond.
        FuseRating ten = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(10));
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(Eighty, ten, A(480)).Verdict);
        FuseSelectivity beyond = FuseAgainstFuse.Check(Eighty, ten, A(1000));
        Assert.Equal(Selectivity.NotProven, beyond.Verdict);
        Assert.Equal(480, beyond.Current!.Value.Amperes, 9);
        Assert.Contains("nothing is stated", beyond.Reason, StringComparison.Ordinal);
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(Eighty, ten, A(1000), J(9000), J(400)).Verdict);
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(Eighty, ten, A(1000), J(400), J(400)).Verdict);
    }

    [Fact]
    public void Check_OutsideWhatIsKnown_IsNotProven()
    {
        FuseRating unknown = FuseSeries.RoadVehicleStrip51.Ratings[0];
        Assert.Null(FuseAgainstFuse.Check(unknown, Forty, A(100)).Current);
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(unknown, Forty, A(100)).Verdict);
        Assert.Contains(unknown.ToString(), FuseAgainstFuse.Check(Eighty, unknown, A(100)).Reason, StringComparison.Ordinal);
        FuseSelectivity small = FuseAgainstFuse.Check(Eighty, Forty, A(53));
        Assert.Equal(Selectivity.NotProven, small.Verdict);
        Assert.Null(small.Current);

        // Two of a kind: the upstream one may open after 60 s at 135 %, the other need not before 1800 s. The fusing current was once called proven.
        FuseSelectivity twins = FuseAgainstFuse.Check(Forty, Forty, A(1000));
        Assert.NotEqual(Selectivity.Proven, twins.Verdict);
        Assert.Null(twins.Current);
        Assert.Throws<ArgumentNullException>("upstream", () => FuseAgainstFuse.Check(null!, Forty, A(1)));
        Assert.Throws<ArgumentNullException>("downstream", () => FuseAgainstFuse.Check(Forty, null!, A(1)));
        Assert.Throws<ArgumentOutOfRangeException>("prospective", () => FuseAgainstFuse.Check(Forty, Forty, A(0)));
    }

    /// <summary>Proven is proven at every current: the times themselves, asked at a random one.</summary>
    [Property]
    public bool Check_ProvenUpToACurrent_HoldsAtEveryOneBelow(Amperes current, PositiveInt first, PositiveInt second)
    {
        FuseRating[] all = [.. FuseSeries.RoadVehicleBlade.Ratings, .. FuseSeries.RoadVehicleHighCurrentBlade.Ratings, .. FuseSeries.IndustrialGg.Ratings];
        FuseRating up = all[first.Get % all.Length], down = all[second.Get % all.Length];
        FuseSelectivity outcome = FuseAgainstFuse.Check(up, down, A(2000));
        if (up.Curve is null || down.Curve is null || outcome.Verdict == Selectivity.Disproven)
        {
            return outcome.Verdict == Selectivity.Disproven
                ? up.OperatingTime(outcome.Current!.Value).Longest < down.Curve!.ProvenLeastTime(outcome.Current.Value)!.Value
                : outcome.Current is null;
        }

        double end = outcome.Current?.Amperes ?? 0;
        return current.Value < down.Curve.FusingAmperes || current.Value > end
            || up.Curve.ProvenLeastTime(A(current.Value))!.Value.Seconds > down.OperatingTime(A(current.Value)).Longest.Seconds;
    }

    // gG above gG 1.6 : 1, two general guides; 2 : 1 else, customary, from memory.
    [Fact]
    public void RatioRule_IsOnePointSixForGgAndTwoElse()
    {
        FuseRating Gg(double amperes) => FuseSeries.IndustrialGg.SmallestAtLeast(A(amperes));
        Assert.Equal(RatingVerdict.Within, FuseAgainstFuse.RatioRule(Gg(160), Gg(100)).Verdict);
        Assert.Equal(1, FuseAgainstFuse.RatioRule(Gg(160), Gg(100)).Share!.Value, 12);
        Assert.Equal(RatingVerdict.Exceeded, FuseAgainstFuse.RatioRule(Gg(63), Gg(40)).Verdict);
        Assert.Equal(RatingVerdict.Within, FuseAgainstFuse.RatioRule(Eighty, Forty).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, FuseAgainstFuse.RatioRule(Blade(70), Forty).Verdict);
        Assert.Contains("2 : 1", FuseAgainstFuse.RatioRule(Gg(160), Forty).Reason, StringComparison.Ordinal);
        Assert.Equal(ReferenceKind.CommonPractice, FuseAgainstFuse.OtherReference.Kind);
        Assert.Throws<ArgumentNullException>("upstream", () => FuseAgainstFuse.RatioRule(null!, Forty));
    }

    /// <summary>10 A blade: 350 % 0.04 s and 600 % 0.02 s least; 48 % for 100 pulses.</summary>
    [Theory]
    [InlineData(35, 0.48 * 49, RatingVerdict.Within)]
    [InlineData(35, 0.48 * 49 * 1.001, RatingVerdict.Exceeded)]
    [InlineData(40, 0.48 * 32, RatingVerdict.Within)]
    [InlineData(40, 0.48 * 32 * 1.001, RatingVerdict.NotProven)]
    [InlineData(40, 0.48 * 49 * 1.001, RatingVerdict.Exceeded)]
    [InlineData(60, 0.48 * 49, RatingVerdict.Within)]
    [InlineData(61, 1, RatingVerdict.NotProven)]
    [InlineData(61, 0.48 * 49 * 1.001, RatingVerdict.Exceeded)]
    [InlineData(10, 1e6, RatingVerdict.Within)]
    public void Pulse_AgainstABlade_ComparesTheShare(double peak, double joules, RatingVerdict verdict) =>
        Assert.Equal(verdict, PulseAgainstFuse.Check(FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(10)), A(peak), J(joules), 100).Verdict);

    [Fact]
    public void Pulse_AgainstAMakersValue_ComparesTheShare()
    {
        // 60 A²s at 22 % for 100 000 pulses: 272.7 A²s needed.
        Assert.Equal(RatingVerdict.Within, PulseAgainstFuse.Check(J(272.8), J(60), 100_000).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, PulseAgainstFuse.Check(J(272.7), J(60), 100_000).Verdict);
        Assert.Equal(60 / (0.48 * 250), PulseAgainstFuse.Check(J(250), J(60), 100).Share!.Value, 12);
        Assert.Equal(RatingVerdict.NotProven, PulseAgainstFuse.Check(FuseSeries.RoadVehicleStrip51.Ratings[0], A(5000), J(1), 1).Verdict);
        Assert.Throws<ArgumentOutOfRangeException>("melting", () => PulseAgainstFuse.Check(J(0), J(1), 1));
        Assert.Throws<ArgumentOutOfRangeException>("pulses", () => PulseAgainstFuse.Check(J(1), J(1), 0));
        Assert.Throws<ArgumentNullException>("fuse", () => PulseAgainstFuse.Check(null!, A(1), J(1), 1));
        Assert.Throws<ArgumentOutOfRangeException>("peak", () => PulseAgainstFuse.Check(Forty, A(0), J(1), 1));
    }

    [Fact]
    public void SourceDistance_EveryRule_MatchesItsTranscription()
    {
        PublishedTable table = PublishedTable.Load("fuse-distances.csv");
        Assert.Equal(table.Rows.Count, SourceDistance.All.Count);
        foreach (PublishedTable.Row row in table.Rows)
        {
            SourceDistance rule = SourceDistance.All.Single(r => r.Name == row.Text("rule"));
            double unit = row.Text("unit") switch { "in" => 0.0254, "mm" => 0.001, _ => 1 };
            Assert.Equal(row.Number("open") * unit, rule.Open.Meters, 12);
            Assert.Equal(row.Has("sheathed") && row.Text("sheathed") != "any" ? row.Number("sheathed") * unit : null, Meters(rule.Sheathed));
            Assert.Equal(row.Has("battery") ? row.Number("battery") * unit : null, Meters(rule.SheathedFromBattery));
        }
    }

    [Fact]
    public void SourceDistance_Check_TakesTheCase()
    {
        Assert.Equal(RatingVerdict.Within, SourceDistance.Cfr33.Check(Length.FromInches(7), sheathed: false, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, SourceDistance.Cfr33.Check(Length.FromInches(7.001), sheathed: false, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Within, SourceDistance.Cfr33.Check(Length.FromInches(40), sheathed: true, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, SourceDistance.Cfr33.Check(Length.FromInches(41), sheathed: true, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Within, SourceDistance.AbycE11.Check(Length.FromInches(72), sheathed: true, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, SourceDistance.AbycE11.Check(Length.FromInches(72), sheathed: true, atBattery: false).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, SourceDistance.AbycE11.Check(Length.FromInches(72), sheathed: false, atBattery: true).Verdict);
        Assert.Equal(RatingVerdict.Within, SourceDistance.Iso10133.Check(Length.FromMeters(50), sheathed: true, atBattery: false).Verdict);
        Assert.Equal(0.5, SourceDistance.Iec60364.Check(Length.FromMeters(1.5), sheathed: true, atBattery: false).Share!.Value, 12);
        Assert.Null(SourceDistance.Iec60364.Check(Length.FromMeters(1.5), sheathed: false, atBattery: false).Share);
        Assert.Contains("any length", SourceDistance.Iso10133.Check(Length.FromMeters(50), sheathed: true, atBattery: false).Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("distance", () => SourceDistance.Cfr33.Check(Length.FromMeters(-1), sheathed: true, atBattery: true));
        Assert.Equal(ReferenceKind.Law, SourceDistance.Cfr33.Reference.Kind);
        Assert.All(SourceDistance.All, rule => Assert.NotEmpty(rule.Condition));
    }

    private static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(amperes));

    private static JouleIntegral J(double value) => JouleIntegral.FromAmpereSquaredSeconds(value);

    private static double? Meters(Length? length) => length is { } value ? Math.Round(value.Meters, 12) : null;
}
