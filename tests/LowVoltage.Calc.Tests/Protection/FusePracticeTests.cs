using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Protection;

public class FusePracticeTests
{
    // Fuse derating guidelines for space hardware, as a reference page prints them.
    [Theory]
    [InlineData(0.125, 0.25)]
    [InlineData(0.25, 0.30)]
    [InlineData(0.375, 0.35)]
    [InlineData(0.5, 0.40)]
    [InlineData(0.75, 0.40)]
    [InlineData(1, 0.45)]
    [InlineData(1.5, 0.45)]
    [InlineData(2, 0.50)]
    [InlineData(15, 0.50)]
    public void SpaceHardware_FactorOfEachRating_MatchesTheTable(double rating, double factor) =>
        Assert.Equal(factor, LoadingRule.SpaceHardware.FactorFor(A(rating)));

    [Theory]
    [InlineData(0.6)]
    [InlineData(1.9)]
    [InlineData(15.1)]
    public void SpaceHardware_BetweenItsRatings_IsRefused(double amperes)
    {
        Assert.False(LoadingRule.SpaceHardware.TryFactorFor(A(amperes), out double none));
        Assert.Equal(0, none);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("rating", () => LoadingRule.SpaceHardware.FactorFor(A(amperes)));
        Assert.Contains("2 A to 15 A", refused.Message, StringComparison.Ordinal);
        Assert.Contains("0.125 A", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_HoldTheirPublishedFactors()
    {
        Assert.Equal(0.75, LoadingRule.UlSmallFuse.FactorFor(A(3)));
        Assert.Equal(1, LoadingRule.IecSmallFuse.FactorFor(A(3)));
        Assert.Equal(0.8, LoadingRule.NationalElectricalCode.FactorFor(A(30)));
        Assert.Equal(0.8, LoadingRule.CartridgeAbove40.FactorFor(A(50)));
        Assert.False(LoadingRule.CartridgeAbove40.TryFactorFor(A(40), out _));
        Assert.Contains("above 40 A", Assert.Throws<ArgumentOutOfRangeException>("rating", () => LoadingRule.CartridgeAbove40.FactorFor(A(40))).Message, StringComparison.Ordinal);
        Assert.Equal(0.8, LoadingRule.RoadVehicle.FactorFor(A(10))); // common practice, no published source
        Assert.Equal(0.7, LoadingRule.RoadVehicleCautious.FactorFor(A(10)));
        Assert.Equal(ReferenceKind.CommonPractice, LoadingRule.RoadVehicle.Reference.Kind);
        Assert.Equal("road-vehicle blade fuse", LoadingRule.RoadVehicle.ToString());
        Assert.Throws<ArgumentOutOfRangeException>("rating", () => LoadingRule.RoadVehicle.FactorFor(A(0)));
    }

    [Fact]
    public void LeastRatingFor_DividesByTheFactor()
    {
        // NEC: a device of 125 % of a 20 A continuous load.
        Assert.Equal(25, FuseLoading.LeastRatingFor(A(20), 0.8).Amperes);
        Assert.Equal(12, FuseLoading.MostLoadFor(FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15)), 0.8).Amperes);
        Assert.Throws<ArgumentOutOfRangeException>("factor", () => FuseLoading.LeastRatingFor(A(20), 0));
        Assert.Throws<ArgumentOutOfRangeException>("factor", () => FuseLoading.LeastRatingFor(A(20), 1.51));
        Assert.Throws<ArgumentOutOfRangeException>("load", () => FuseLoading.LeastRatingFor(A(-20), 0.8));
        Assert.Throws<ArgumentNullException>("fuse", () => FuseLoading.MostLoadFor(null!, 0.8));
    }

    [Fact]
    public void TrySmallestFor_TakesTheRuleOfEachRating()
    {
        FuseSeries blade = FuseSeries.RoadVehicleBlade;
        Assert.True(FuseLoading.TrySmallestFor(blade, A(21), LoadingRule.RoadVehicleCautious, out FuseRating? fuse));
        Assert.Equal(30, fuse.Current.Amperes); // 21 A is exactly 70 % of 30 A
        Assert.True(FuseLoading.TrySmallestFor(blade, A(21.01), LoadingRule.RoadVehicleCautious, out fuse));
        Assert.Equal(35, fuse.Current.Amperes);
        Assert.True(FuseLoading.TrySmallestFor(blade, A(0.9), LoadingRule.SpaceHardware, out fuse));
        Assert.Equal(2, fuse.Current.Amperes);
        Assert.False(FuseLoading.TrySmallestFor(blade, A(33), LoadingRule.RoadVehicle, out fuse));
        Assert.Null(fuse);
        Assert.Throws<ArgumentNullException>("series", () => FuseLoading.TrySmallestFor(null!, A(1), LoadingRule.RoadVehicle, out _));
        Assert.Throws<ArgumentNullException>("rule", () => FuseLoading.TrySmallestFor(blade, A(1), null!, out _));
        Assert.Throws<ArgumentOutOfRangeException>("load", () => FuseLoading.TrySmallestFor(blade, A(0), LoadingRule.RoadVehicle, out _));
    }

    [Fact]
    public void AmbientRerating_PublishedRules_HoldTheirPoints()
    {
        Assert.Equal(1.10, AmbientRerating.UlSmallFuse.FactorAt(C(25)));
        Assert.Equal(1.00, AmbientRerating.UlSmallFuse.FactorAt(C(40)));
        Assert.Equal(1.10 - (0.0067 * 7.5), AmbientRerating.UlSmallFuse.FactorAt(C(32.5)), 3); // 0.67 % per kelvin
        Assert.Equal(0.95, AmbientRerating.IndustrialGg.FactorAt(C(50)), 12); // 0.5 % per kelvin above 40 °C
        Assert.Equal(0.90, AmbientRerating.SpaceHardware.FactorAt(C(45)), 12); // 0.5 % per kelvin above 25 °C
        Assert.Equal((40, 80), (AmbientRerating.IndustrialGg.Lowest.DegreesCelsius, AmbientRerating.IndustrialGg.Highest.DegreesCelsius));
        Assert.Equal("gG fuse-link", AmbientRerating.IndustrialGg.ToString());
    }

    [Fact]
    public void AmbientRerating_FromCallersPoints_IsStraightBetweenAndRefusesOutside()
    {
        AmbientRerating mine = AmbientRerating.Create("mine", Reference.CommonPractice("test"), [C(-40), C(20), C(100)], [1.1, 1, 0.8]);
        Assert.Equal(1.1, mine.FactorAt(C(-40)));
        Assert.Equal(1, mine.FactorAt(C(20)));
        Assert.Equal(0.9, mine.FactorAt(C(60)), 12);
        Assert.Equal(0.8, mine.FactorAt(C(100)));
        Assert.False(mine.TryFactorAt(C(100.1), out double none));
        Assert.Equal(0, none);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("ambient", () => mine.FactorAt(C(-40.1)));
        Assert.Contains("-40 °C to 100 °C", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("ambient", () => mine.TryFactorAt(C(-300), out _));
    }

    [Fact]
    public void AmbientRerating_FromBadPoints_IsRefused()
    {
        Reference source = Reference.CommonPractice("test");
        Assert.Throws<ArgumentException>("ambients", () => AmbientRerating.Create("x", source, [C(20), C(20)], [1, 1]));
        Assert.Throws<ArgumentException>("factors", () => AmbientRerating.Create("x", source, [C(20), C(30)], [1, 1.01]));
        Assert.Throws<ArgumentException>("factors", () => AmbientRerating.Create("x", source, [C(20), C(30)], [1]));
        Assert.Throws<ArgumentException>("factors", () => AmbientRerating.Create("x", source, [C(20)], [1]));
        Assert.Throws<ArgumentOutOfRangeException>("factors", () => AmbientRerating.Create("x", source, [C(20), C(30)], [1, 0]));
        Assert.Throws<ArgumentOutOfRangeException>("ambients", () => AmbientRerating.Create("x", source, [C(-274), C(30)], [1, 1]));
        Assert.Throws<ArgumentNullException>("name", () => AmbientRerating.Create(null!, source, [C(20), C(30)], [1, 1]));
        Assert.Throws<ArgumentNullException>("reference", () => AmbientRerating.Create("x", null!, [C(20), C(30)], [1, 1]));
        Assert.Throws<ArgumentNullException>("ambients", () => AmbientRerating.Create("x", source, null!, [1, 1]));
        Assert.Throws<ArgumentNullException>("factors", () => AmbientRerating.Create("x", source, [C(20), C(30)], null!));
    }

    // Fuse selection guide: 48 %, 38 %, 29 %, 22 % of the melting Joule integral; between two counts the larger count's share.
    [Theory]
    [InlineData(1, 0.48)]
    [InlineData(100, 0.48)]
    [InlineData(101, 0.38)]
    [InlineData(1000, 0.38)]
    [InlineData(1001, 0.29)]
    [InlineData(10_000, 0.29)]
    [InlineData(10_001, 0.22)]
    [InlineData(100_000, 0.22)]
    public void PulseWithstand_ShareByCount_MatchesTheGuide(int pulses, double share) => Assert.Equal(share, PulseWithstand.ShareFor(pulses));

    [Fact]
    public void PulseWithstand_ComparesPulseAndShare()
    {
        Assert.Throws<ArgumentOutOfRangeException>("pulses", () => PulseWithstand.ShareFor(0));
        Assert.Throws<ArgumentOutOfRangeException>("pulses", () => PulseWithstand.ShareFor(100_001));
        Assert.Equal(50, PulseWithstand.LeastMeltingFor(J(24), 100).AmpereSquaredSeconds, 12);
        Assert.True(PulseWithstand.Withstands(J(50), J(24), 100));
        Assert.False(PulseWithstand.Withstands(J(50), J(24.01), 100));
        Assert.False(PulseWithstand.Withstands(J(50), J(24), 101));
    }

    [Fact]
    public void PulseShapes_AreTheIntegralsOfTheSquare()
    {
        // Each against a sum of 100 000 strips, not against its own formula.
        Check(PulseShape.Rectangle(A(7), S(2)), 2, _ => 7);
        Check(PulseShape.Trapezoid(A(3), A(7), S(2)), 2, t => 3 + (2 * t));
        Check(PulseShape.HalfSine(A(7), S(2)), 2, t => 7 * Math.Sin(Math.PI * t / 2));
        Check(PulseShape.Triangle(A(7), S(2)), 2, t => t < 0.5 ? 14 * t : 7 * (2 - t) / 1.5);
        Check(PulseShape.Parabola(A(7), S(2)), 2, t => 7 * t * t / 4);
        Check(PulseShape.Exponential(A(7), S(0.05)), 2, t => 7 * Math.Exp(-t / 0.05));
        Assert.Equal(PulseShape.Triangle(A(7), S(2)).AmpereSquaredSeconds, PulseShape.Trapezoid(A(0), A(7), S(2)).AmpereSquaredSeconds, 12);
        Assert.Throws<ArgumentOutOfRangeException>("peak", () => PulseShape.Rectangle(A(0), S(1)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => PulseShape.HalfSine(A(1), S(0)));
        Assert.Throws<ArgumentOutOfRangeException>("begin", () => PulseShape.Trapezoid(A(-1), A(1), S(1)));
        Assert.Throws<ArgumentOutOfRangeException>("peak", () => PulseShape.Trapezoid(A(1), A(0), S(1)));
        Assert.Throws<ArgumentOutOfRangeException>("timeConstant", () => PulseShape.Exponential(A(1), S(0)));
    }

    [Fact]
    public void BreakingCapacity_AgainstTheProspectiveCurrent_IsWithinExceededOrNotProven()
    {
        FuseRating blade = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));
        RatingCheck within = FuseRatingChecks.BreakingCapacity(blade, A(1000));
        Assert.Equal((RatingVerdict.Within, 1.0), (within.Verdict, within.Share!.Value));
        Assert.Equal("The breaking capacity of the 15 A blade fuse (ISO 8820-3 type C) is 1000 A d.c.; the prospective current of 1000 A is within it.", within.Reason);
        RatingCheck exceeded = FuseRatingChecks.BreakingCapacity(blade, A(1001));
        Assert.Equal(RatingVerdict.Exceeded, exceeded.Verdict);
        Assert.Contains("1001 A exceeds it", exceeded.ToString(), StringComparison.Ordinal);
        RatingCheck alternating = FuseRatingChecks.BreakingCapacity(FuseSeries.Iec60127Sheet1.Ratings[^1], A(10));
        Assert.Equal(RatingVerdict.NotProven, alternating.Verdict);
        Assert.Null(alternating.Share);
        Assert.Contains("a.c., which proves nothing for d.c.", alternating.Reason, StringComparison.Ordinal);
        RatingCheck unknown = FuseRatingChecks.BreakingCapacity(FuseSeries.RoadVehicleBoltInContacts.Ratings[0], A(10));
        Assert.Equal(RatingVerdict.NotProven, unknown.Verdict);
        Assert.Contains("No breaking capacity is known", unknown.Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("fuse", () => FuseRatingChecks.BreakingCapacity(null!, A(1)));
        Assert.Throws<ArgumentOutOfRangeException>("prospective", () => FuseRatingChecks.BreakingCapacity(blade, A(0)));
    }

    [Fact]
    public void Voltage_AgainstTheRating_IsWithinExceededOrNotProven()
    {
        FuseRating blade = FuseSeries.RoadVehicleBlade.Ratings[0];
        Assert.Equal(RatingVerdict.Within, FuseRatingChecks.Voltage(blade, ElectricPotential.FromVolts(32)).Verdict);
        Assert.Equal(RatingVerdict.Exceeded, FuseRatingChecks.Voltage(blade, ElectricPotential.FromVolts(32.1)).Verdict);
        Assert.Equal(RatingVerdict.Within, FuseRatingChecks.Voltage(FuseSeries.RoadVehicleBlade58.Ratings[0], ElectricPotential.FromVolts(54)).Verdict);
        RatingCheck glass = FuseRatingChecks.Voltage(FuseSeries.RoadVehicleGlass.Ratings[0], ElectricPotential.FromVolts(12));
        Assert.Equal(RatingVerdict.NotProven, glass.Verdict);
        Assert.Contains("does not say whether for d.c.", glass.Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("fuse", () => FuseRatingChecks.Voltage(null!, ElectricPotential.FromVolts(12)));
        Assert.Throws<ArgumentOutOfRangeException>("highest", () => FuseRatingChecks.Voltage(blade, ElectricPotential.FromVolts(-12)));
    }

    // ABYC E-11 Table V-A as a reproduction prints it.
    [Theory]
    [InlineData(650, 1500, 750)]
    [InlineData(651, 3000, 1500)]
    [InlineData(1100, 3000, 1500)]
    [InlineData(1101, 5000, 2500)]
    public void SmallCraftInterrupting_ByColdCranking_MatchesTheTable(double cranking, double main, double branch)
    {
        Assert.Equal(main, SmallCraftInterrupting.MainDevice(A(cranking)).Amperes);
        Assert.Equal(branch, SmallCraftInterrupting.BranchDevice(A(cranking)).Amperes);
        Assert.Throws<ArgumentOutOfRangeException>("totalColdCranking", () => SmallCraftInterrupting.MainDevice(A(0)));
    }

    private static void Check(JouleIntegral formula, double end, Func<double, double> current)
    {
        const int Strips = 100_000;
        double width = end / Strips, sum = 0;
        for (int i = 0; i < Strips; i++)
        {
            double i2 = current((i + 0.5) * width);
            sum += i2 * i2 * width;
        }

        Assert.Equal(sum, formula.AmpereSquaredSeconds, sum * 1e-6);
    }

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static JouleIntegral J(double value) => JouleIntegral.FromAmpereSquaredSeconds(value);
}
