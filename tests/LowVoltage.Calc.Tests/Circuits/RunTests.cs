using FsCheck.Xunit;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Circuits;

[Properties(Arbitrary = [typeof(RandomCircuit)])]
public class RunTests
{
    [Fact]
    public void BothEnds_TwoEqualFeeds_MeetInTheMiddle()
    {
        // 1 Ω/m loop; 1 m, 2 m, 1 m with 3 A at each of the two taps: 3 A from each side, 3 V drop, nothing between the taps.
        TappedRun run = TappedRun.Create(Half, Half, Tap(1, 3), Tap(2, 3), Tap(1, 0));
        RunSolution s = run.FedAtBothEnds(Volts(24), Volts(24));
        Assert.Equal((3.0, 3.0), (s.NearFeed.Amperes, s.FarFeed.Amperes));
        Assert.Equal([21, 21, 24], s.Points.Select(p => p.Voltage.Volts));
        Assert.Equal(18, (double)s.Loss.Watts, 1e-12);
        Assert.Equal(3, s.GreatestDrop.Volts, 1e-12);
        Assert.Equal(1, s.Lowest.Distance.Meters);
        Assert.True(s.Exists);
    }

    [Fact]
    public void BothEnds_UnequalFeedsAndSections_FollowKirchhoff()
    {
        // By hand: sections 2 Ω, 1 Ω (own wire), 1 Ω; 24 V and 20 V; 2 A after the first, 1 A after the second.
        // I1 = (24 − 20 + 2·2 + 1·1)/4 = 2.25 A; V1 = 19.5 V; then 0.25 A: 19.25 V; then −0.75 A: 20 V.
        TappedRun run = TappedRun.Create(Half, Half, Tap(2, 2), Tap(4, 1).WithResistance(LinearResistance.FromOhmsPerMeter(0.25), default), Tap(1, 0));
        RunSolution s = run.FedAtBothEnds(Volts(24), Volts(20));
        Assert.Equal([19.5, 19.25, 20], s.Points.Select(p => p.Voltage.Volts));
        Assert.Equal([2.25, 0.25, -0.75], s.Points.Select(p => p.CurrentFromNear.Amperes));
        Assert.Equal(0.75, s.FarFeed.Amperes, 1e-12);
        Assert.Equal(6, s.Lowest.Distance.Meters);
        // Power in = loads + loss.
        Assert.Equal((24 * 2.25) + (20 * 0.75), (19.5 * 2) + 19.25 + (double)s.Loss.Watts, 1e-12);
    }

    [Fact]
    public void OneEnd_MoreThanTheVoltage_DoesNotExist() =>
        Assert.False(TappedRun.Create(Half, Half, Tap(10, 3)).FedAtOneEnd(Volts(24)).Exists);

    [Fact]
    public void WithoutResistance_TwoFeeds_HaveNoDivision()
    {
        Assert.Throws<InvalidOperationException>(() => TappedRun.Create(default, default, Tap(1, 1)).FedAtBothEnds(Volts(24), Volts(24)));
        Assert.Throws<InvalidOperationException>(() => UniformRun.Create(default, default, Meters(1), Amperes(1)).FedAtBothEnds(Volts(24), Volts(24)));
        Assert.Throws<ArgumentException>("taps", () => TappedRun.Create(default, default));
        Assert.Throws<ArgumentException>("taps", () => TappedRun.LeastArea(ElectricResistivity.FromOhmMeters(1.7e-8), Volts(1), Tap(1, 1).WithResistance(Half, Half)));
    }

    [Fact]
    public void Uniform_BothEnds_IsAQuarterOfTheDropOfOne()
    {
        UniformRun run = UniformRun.Create(Half, Half, Meters(4), Amperes(2));
        RunSolution one = run.FedAtOneEnd(Volts(24)), both = run.FedAtBothEnds(Volts(24), Volts(24));
        // I·R/2 = 4 V fed at one end, I·R/8 at both.
        Assert.Equal(4, one.GreatestDrop.Volts, 1e-12);
        Assert.Equal(1, both.GreatestDrop.Volts, 1e-12);
        Assert.Equal(2, both.Lowest.Distance.Meters, 1e-12);
        Assert.Equal((1.0, 1.0), (both.NearFeed.Amperes, both.FarFeed.Amperes));
        Assert.Equal(0, one.FarFeed.Amperes);
        Assert.Equal(run.VoltageAt(Volts(24), Volts(24), Meters(2)).Volts, both.Lowest.Voltage.Volts);
        Assert.Throws<ArgumentOutOfRangeException>("distance", () => run.VoltageAt(Volts(24), Meters(4.01)));
    }

    [Property]
    public void Uniform_IsTheLimitOfManyTaps(RandomCircuit c)
    {
        const int Many = 2000;
        LinearResistance wire = LinearResistance.FromOhmsPerMeter(c.Ohms20 / (c.Feed + c.Return));
        double far = c.Volts * (0.9 + (0.2 * (c.JointOhms / 0.05)));
        Tap[] taps = [.. Enumerable.Range(0, Many).Select(k => Tap(c.Feed / Many, k + 1 < Many ? c.Amperes / Many : 0))];
        RunSolution even = UniformRun.Create(wire, wire, Meters(c.Feed), Amperes(c.Amperes)).FedAtBothEnds(Volts(c.Volts), Volts(far));
        RunSolution tapped = TappedRun.Create(wire, wire, taps).FedAtBothEnds(Volts(c.Volts), Volts(far));
        double drop = 2 * wire.OhmsPerMeter * c.Feed * c.Amperes;
        Assert.Equal(even.Lowest.Voltage.Volts, tapped.Lowest.Voltage.Volts, (2e-3 * drop) + 1e-9);
        Assert.Equal(even.NearFeed.Amperes, tapped.NearFeed.Amperes, (1e-3 * c.Amperes) + (1e-9 * Math.Abs(even.NearFeed.Amperes)));
        Assert.Equal((double)even.Loss.Watts, (double)tapped.Loss.Watts, (2e-3 * drop * (c.Amperes + Math.Abs(even.NearFeed.Amperes))) + 1e-9);
    }

    [Property]
    public void Tapped_BothEnds_BalancesPowerAndMeetsTheFarFeed(RandomCircuit c)
    {
        LinearResistance wire = LinearResistance.FromOhmsPerMeter(c.Ohms20 / (c.Feed + c.Return));
        RunSolution s = TappedRun.Create(wire, wire, Tap(c.Feed, c.Amperes), Tap(c.Return, c.RatedAmperes), Tap(1, 0)).FedAtBothEnds(Volts(c.Volts), Volts(c.Volts * 1.01));
        double given = (c.Volts * s.NearFeed.Amperes) + (c.Volts * 1.01 * s.FarFeed.Amperes);
        double taken = (s.Points[0].Voltage.Volts * c.Amperes) + (s.Points[1].Voltage.Volts * c.RatedAmperes) + (double)s.Loss.Watts;
        double scale = Math.Abs(c.Volts * s.NearFeed.Amperes) + Math.Abs(c.Volts * s.FarFeed.Amperes) + (double)s.Loss.Watts;
        Assert.Equal(given, taken, 1e-9 * scale);
    }

    private static LinearResistance Half => LinearResistance.FromOhmsPerMeter(0.5);

    private static Tap Tap(double meters, double amperes) => Calc.Circuits.Tap.Create(Meters(meters), Amperes(amperes));

    private static Length Meters(double value) => Length.FromMeters(value);

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);

    private static ElectricPotential Volts(double value) => ElectricPotential.FromVolts(value);
}
