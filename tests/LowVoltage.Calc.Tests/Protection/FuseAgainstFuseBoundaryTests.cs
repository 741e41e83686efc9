using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A fuse against the fuse before it, on curves so plain that the answer is read off them.</summary>
public class FuseAgainstFuseBoundaryTests
{
    private static readonly FuseRating Eighty = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(80));
    private static readonly FuseRating Forty = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(40));

    /// <summary>The upstream fuse carries 20 A for 28 h, then may open after 1 s; the downstream one takes up to 50 s. Proven up to 20 A and no further.</summary>
    [Fact]
    public void Check_BeyondTheNonFusingCurrent_TheNextLeastTimeCounts()
    {
        FuseRating up = Fuse(20, TimeCurrentCurve.Create([P(40, 1)], [P(30, 1000), P(100, 5)], P(20, 1e5))), down = Fuse(8, Longest((10, 50), (100, 40)));
        FuseSelectivity outcome = FuseAgainstFuse.Check(up, down, A(30));
        Assert.Equal((Selectivity.NotProven, 20.0), (outcome.Verdict, outcome.Current!.Value.Amperes));
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(up, down, A(20)).Verdict);
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(up, down, A(20.001)).Verdict);
    }

    /// <summary>
    /// A fixed bug: at exactly the conventional fusing current of the downstream fuse, 135 % of 40 A, nothing was compared and every pair was proven. It may take 1800 s there;
    /// an equal fuse upstream may open after 60 s, one of 80 A holds for 100 h.
    /// </summary>
    [Fact]
    public void Check_ExactlyAtTheFusingCurrent_IsComparedThere()
    {
        FuseSelectivity same = FuseAgainstFuse.Check(Forty, Forty, A(54));
        Assert.Equal(Selectivity.NotProven, same.Verdict);
        Assert.Null(same.Current);
        Assert.Contains("may take 1800 s", same.Reason, StringComparison.Ordinal);
        FuseSelectivity larger = FuseAgainstFuse.Check(Eighty, Forty, A(54));
        Assert.Equal((Selectivity.Proven, 54.0), (larger.Verdict, larger.Current!.Value.Amperes));
    }

    /// <summary>The same time for both proves nothing; a little less for the downstream one does.</summary>
    [Theory]
    [InlineData(5, Selectivity.NotProven)]
    [InlineData(4.999, Selectivity.Proven)]
    public void Check_EqualTimes_AreNotProven(double longest, Selectivity verdict)
    {
        FuseRating up = Fuse(20, TimeCurrentCurve.Create([P(1000, 5)], [P(30, 1000), P(1000, 10)])), down = Fuse(8, Longest((10, longest), (100, longest)));
        Assert.Equal(verdict, FuseAgainstFuse.Check(up, down, A(90)).Verdict);
    }

    /// <summary>The downstream fuse holds for 20 s up to 40 A; the upstream one has opened by then (10 s at 5 A, 1 s at 100 A). Without a non-fusing current.</summary>
    [Theory]
    [InlineData(100, 40)]
    [InlineData(30, 30)]
    public void Check_UpstreamFasterAtAStatedPoint_IsDisprovenThere(double prospective, double at)
    {
        FuseRating up = Fuse(4, Longest((5, 10), (100, 1))), down = Fuse(9, TimeCurrentCurve.Create([P(40, 20)], [P(10, 100), P(50, 50)]));
        FuseSelectivity outcome = FuseAgainstFuse.Check(up, down, A(prospective));
        Assert.Equal(Selectivity.Disproven, outcome.Verdict);
        Assert.Equal(at, outcome.Current!.Value.Amperes);
        double seconds = 10 * Math.Pow(at / 5, Math.Log(0.1) / Math.Log(20));
        Assert.Equal(
            FormattableString.Invariant($"At {at} A the 4 A fuse (own) opens within {seconds:G6} s, the 9 A fuse (own) no sooner than after 20 s."), outcome.Reason);
    }

    /// <summary>At the second least point only: 40 A for 1 s, which the upstream fuse also takes; 60 A for 0.9 s, when it has opened after 0.1 s.</summary>
    [Fact]
    public void Check_UpstreamFasterAtTheSecondPoint_IsDisprovenThere()
    {
        FuseRating up = Fuse(4, Longest((5, 1000), (45, 100), (50, 0.1))), down = Fuse(9, TimeCurrentCurve.Create([P(40, 1), P(60, 0.9)], [P(10, 100), P(90, 50)]));
        Assert.Equal(60, FuseAgainstFuse.Check(up, down, A(100)).Current!.Value.Amperes);
        Assert.NotEqual(Selectivity.Disproven, FuseAgainstFuse.Check(up, down, A(44)).Verdict);
    }

    /// <summary>The Joule integrals of the parts hold from the last stated point of the downstream fuse on, not before.</summary>
    [Fact]
    public void Check_JouleIntegralsOfTheParts_HoldFromTheLastStatedPointOn()
    {
        JouleIntegral Joules(double value) => JouleIntegral.FromAmpereSquaredSeconds(value);
        FuseRating up = Fuse(20, TimeCurrentCurve.Create([P(60, 5)], [P(30, 1000), P(100, 10)])), near = Fuse(8, Longest((10, 4), (60, 1))), far = Fuse(8, Longest((10, 4), (61, 1)));
        Assert.Equal(Selectivity.Proven, FuseAgainstFuse.Check(up, near, A(900), Joules(900), Joules(800)).Verdict);
        FuseSelectivity outcome = FuseAgainstFuse.Check(up, far, A(900), Joules(900), Joules(800));
        Assert.Equal((Selectivity.NotProven, 60.0), (outcome.Verdict, outcome.Current!.Value.Amperes));
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(up, near, A(900), Joules(800), Joules(800)).Verdict);
    }

    [Fact]
    public void Reason_EveryVerdict_IsASentence()
    {
        Assert.Equal(
            "The prospective current is below the conventional fusing current of the 40 A high-current blade fuse (ISO 8820-3 type E), 54 A, which need not open.",
            FuseAgainstFuse.Check(Eighty, Forty, A(53.9)).Reason);
        Assert.Equal(
            "Up to 80 A the 40 A high-current blade fuse (ISO 8820-3 type E) has opened before the 80 A high-current blade fuse (ISO 8820-3 type E) can.",
            FuseAgainstFuse.Check(Eighty, Forty, A(80)).Reason);
        Assert.Equal(
            "No operating times are published for the 80 A strip fuse (ISO 8820-5 type SF 51).",
            FuseAgainstFuse.Check(FuseSeries.RoadVehicleStrip51.Ratings[0], Forty, A(80)).Reason);
        Assert.Equal("80 A above 40 A is 2 : 1; practice asks for 2 : 1.", FuseAgainstFuse.RatioRule(Eighty, Forty).Reason);
    }

    // 2 : 1, customary, from memory; 1e-12 of it is rounding.
    [Theory]
    [InlineData(2, RatingVerdict.Within)]
    [InlineData(2 * (1 - 1e-12), RatingVerdict.Within)]
    [InlineData(2 * (1 - 2e-12), RatingVerdict.Exceeded)]
    public void RatioRule_AtTwoToOne_ForgivesRoundingOnly(double upstream, RatingVerdict verdict) =>
        Assert.Equal(verdict, FuseAgainstFuse.RatioRule(Fuse(upstream, null), Fuse(1, null)).Verdict);

    private static FuseRating Fuse(double amperes, TimeCurrentCurve? curve) => FuseSeries.Create(new()
    {
        Name = "own", Kind = "fuse", Reference = Reference.CommonPractice("test"), Ratings = [A(amperes)], Curves = [curve],
    }).Ratings[0];

    private static TimeCurrentPoint P(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), S(seconds));

    private static TimeCurrentCurve Longest(params (double Amperes, double Seconds)[] points) =>
        TimeCurrentCurve.Create([], [.. points.Select(p => P(p.Amperes, p.Seconds))]);
}
