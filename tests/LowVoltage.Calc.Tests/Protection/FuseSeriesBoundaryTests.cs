using System.Globalization;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>Choosing from a series at the last bit that 1e-9 of rounding forgives, what a series keeps of its definition, and what it says of a bad one.</summary>
public class FuseSeriesBoundaryTests
{
    private static readonly Reference Source = Reference.CommonPractice("test"), Capacity = Reference.CommonPractice("capacity");
    private static readonly FuseSeries Blade = FuseSeries.RoadVehicleBlade;

    [Theory]
    [InlineData(15, 20)]
    [InlineData(20, 25)]
    [InlineData(30, 35)]
    public void SmallestAtLeast_ABillionthAbove_IsStillTheRating(double rating, double next)
    {
        double edge = Edges.Times(rating, 1 - 1e-9);
        Assert.True(edge > rating);
        Assert.Equal(rating, Blade.SmallestAtLeast(A(edge)).Current.Amperes);
        Assert.Equal(next, Blade.SmallestAtLeast(A(rating * (1 + 2e-9))).Current.Amperes);

        // At the edge the rating is no smaller one; beyond it, it is.
        Assert.NotEqual(rating, Blade.NextSmaller(A(edge))!.Current.Amperes);
        Assert.Equal(rating, Blade.NextSmaller(A(rating * (1 + 2e-9)))!.Current.Amperes);
    }

    [Theory]
    [InlineData(15, 10)]
    [InlineData(20, 15)]
    [InlineData(30, 25)]
    public void LargestAtMost_ABillionthBelow_IsStillTheRating(double rating, double before)
    {
        double edge = Edges.Times(rating, 1 + 1e-9);
        Assert.True(edge < rating);
        Assert.Equal(rating, Blade.LargestAtMost(A(edge)).Current.Amperes);
        Assert.Equal(before, Blade.LargestAtMost(A(rating * (1 - 2e-9))).Current.Amperes);
        Assert.NotEqual(rating, Blade.NextLarger(A(edge))!.Current.Amperes);
        Assert.Equal(rating, Blade.NextLarger(A(rating * (1 - 2e-9)))!.Current.Amperes);
        Assert.True(Blade.Contains(A(edge)));
        Assert.False(Blade.Contains(A(rating * (1 - 2e-9))));
    }

    [Fact]
    public void Choosing_OutsideTheSeries_NamesTheLastRating()
    {
        Assert.StartsWith(
            "current must be at most 40 A, the largest rating of ISO 8820-3 type C; it was 41 A.",
            Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.SmallestAtLeast(A(41))).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "current must be at least 1 A, the smallest rating of ISO 8820-3 type C; it was 0.5 A.",
            Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.LargestAtMost(A(0.5))).Message, StringComparison.Ordinal);
    }

    /// <summary>A basis says nothing where there is no rating, and the breaking capacity has its own source or else that of the ratings.</summary>
    [Fact]
    public void Create_KeepsWhatIsKnownAndNoBasisOfTheUnknown()
    {
        FuseSeries bare = FuseSeries.Create(new()
        {
            Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], VoltageBasis = RatingBasis.DirectCurrent,
            BreakingCapacityBasis = RatingBasis.DirectCurrent, BreakingCapacityReference = Capacity,
        });
        Assert.Equal((RatingBasis.NotStated, RatingBasis.NotStated), (bare.VoltageBasis, bare.BreakingCapacityBasis));
        Assert.Equal((RatingBasis.NotStated, RatingBasis.NotStated), (bare.Ratings[0].VoltageBasis, bare.Ratings[0].BreakingCapacityBasis));
        Assert.Null(bare.BreakingCapacityReference);
        FuseSeries known = FuseSeries.Create(new()
        {
            Name = "x", Kind = "f", Reference = Source, Ratings = [A(2), A(5)], BreakingCapacity = A(35), BreakingMultiple = 10,
            BreakingCapacityBasis = RatingBasis.AlternatingCurrent, BreakingCapacityReference = Capacity,
        });
        Assert.Same(Capacity, known.BreakingCapacityReference);
        Assert.Equal(RatingBasis.AlternatingCurrent, known.Ratings[0].BreakingCapacityBasis);

        // IEC 60127-2 sheet 2: 35 A or ten times the rating, whichever is more.
        Assert.Equal([35, 50], known.Ratings.Select(r => r.BreakingCapacity!.Value.Amperes));
    }

    [Fact]
    public void Combine_SaysWhatItIs()
    {
        FuseSeries all = FuseSeries.Combine("both", Blade, FuseSeries.RoadVehicleHighCurrentBlade);
        Assert.Equal("fuse", all.Kind);
        Assert.Equal("combination of series chosen by the caller; each rating carries its own series and source [common practice, no published source]", all.Reference.ToString());
        Assert.Equal(
            "both is a combination of series; give its members their limits before they are combined.",
            Assert.Throws<InvalidOperationException>(() => all.WithLimits(OperatingTimeLimits.RoadVehicleBlade)).Message);
        Assert.StartsWith("series must hold at least one series; it was empty.", Assert.Throws<ArgumentException>("series", () => FuseSeries.Combine("x")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_FromBadData_SaysWhatIsWrong()
    {
        Assert.StartsWith("The definition's Name is null.", Null(new() { Name = null!, Kind = "f", Reference = Source, Ratings = [A(1)] }), StringComparison.Ordinal);
        Assert.StartsWith("The definition's Kind is null.", Null(new() { Name = "x", Kind = null!, Reference = Source, Ratings = [A(1)] }), StringComparison.Ordinal);
        Assert.StartsWith("The definition's Reference is null.", Null(new() { Name = "x", Kind = "f", Reference = null!, Ratings = [A(1)] }), StringComparison.Ordinal);
        Assert.StartsWith("The definition's Ratings are null.", Null(new() { Name = "x", Kind = "f", Reference = Source, Ratings = null! }), StringComparison.Ordinal);
        Assert.StartsWith("x must have at least one rating; it has none.", Wrong(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [] }), StringComparison.Ordinal);
        Assert.StartsWith(
            "x must have a curve (or null) for each of its 2 ratings; it has 1.",
            Wrong(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1), A(2)], Curves = [null] }), StringComparison.Ordinal);
        Assert.StartsWith(
            "The ratings of x must rise; 2 A follows 2 A.", Wrong(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(2), A(2)] }), StringComparison.Ordinal);
        Assert.StartsWith(
            "BreakingCapacityBasis must be a value of RatingBasis; it was 7.",
            Assert.Throws<ArgumentOutOfRangeException>(
                "BreakingCapacityBasis",
                () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], BreakingCapacityBasis = (RatingBasis)7 })).Message,
            StringComparison.Ordinal);
    }

    /// <summary>Every number of R20 in every decade of currents is the double that its decimal text is.</summary>
    [Fact]
    public void PreferredNumbers_EveryDecade_AreTheirDecimals()
    {
        string[] numbers = ["100", "112", "125", "140", "160", "180", "200", "224", "250", "280", "315", "355", "400", "450", "500", "560", "630", "710", "800", "900"];
        for (int decade = -11; decade <= 6; decade++)
        {
            double Text(string number) => double.Parse(FormattableString.Invariant($"{number}e{decade - 2}"), CultureInfo.InvariantCulture);
            FuseSeries found = PreferredNumbers.R20.Ratings(A(Text("100")), A(Text("900")));
            Assert.Equal(numbers.Select(Text), found.Ratings.Select(r => r.Current.Amperes));
        }
    }

    [Fact]
    public void PreferredNumbers_EndsOfTheRange_Belong()
    {
        FuseSeries found = PreferredNumbers.R5.Ratings(A(63), A(100));
        Assert.Equal([63, 100], found.Ratings.Select(r => r.Current.Amperes));
        Assert.Equal(("fuse", "63 A fuse (ISO 3 R5)"), (found.Kind, found.Ratings[0].ToString()));
        Assert.StartsWith(
            "most must leave room for a number of R5 from 1.1 A upward; it was 1.2 A.",
            Assert.Throws<ArgumentOutOfRangeException>("most", () => PreferredNumbers.R5.Ratings(A(1.1), A(1.2))).Message, StringComparison.Ordinal);
    }

    private static string Null(FuseSeriesDefinition definition) => Assert.Throws<ArgumentNullException>(nameof(definition), () => FuseSeries.Create(definition)).Message;

    private static string Wrong(FuseSeriesDefinition definition) => Assert.Throws<ArgumentException>(nameof(definition), () => FuseSeries.Create(definition)).Message;
}
