using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A radio fed from two bars through a fuse each, so that either bar can feed the other: eight faults by hand.</summary>
/// <remarks>
/// 12 V behind 0.01 Ω; main fuses 30 A of 0.01 Ω (A) and 0.02 Ω (B), radio fuses 10 A of 0.01 Ω. Heater 6 Ω on bar A, radio 12 Ω behind both. The 10 A fuse lets through 72 to 360 A²s beyond 60 A,
/// the 30 A fuse 648 to 3240 A²s beyond 180 A: six times the rating for 0.02 s to 0.1 s.
/// </remarks>
public class FaultAuditFuseBlockTests
{
    private static readonly Harness Block = new HarnessBuilder("fuse block", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "radio +").Busbars("bar A", "bar B")
        .Source("battery", "plus", "minus", Battery(12, 0.01))
        .Add(HarnessFuse.Create("main A", "plus", "bar A", Blade(30)).WithResistance(Ohms(0.01)), HarnessFuse.Create("main B", "plus", "bar B", Blade(30)).WithResistance(Ohms(0.02)))
        .Add(HarnessFuse.Create("FA", "bar A", "radio +", Blade(10)).WithResistance(Ohms(0.01)), HarnessFuse.Create("FB", "bar B", "radio +", Blade(10)).WithResistance(Ohms(0.01)))
        .Load("heater", "bar A", "minus", Lamp(6))
        .Load("radio", "radio +", "minus", Lamp(12))
        .Build();

    private static readonly FaultAudit On = FaultAudit.Run(Block, [LoadCase.AllOn]);
    private static readonly FaultAudit Off = FaultAudit.Run(Block, [LoadCase.Create("all off").WithOff("heater", "radio")]);

    // Bar A has lost its own fuse, and the heater goes on: its 2 A come back through the radio's fuse FA, which carried current the other way.
    [Fact]
    public void PulledMainA_BarIsLiveThroughTheRadiosFuse()
    {
        HarnessFault fault = On.Open("main A");

        Assert.Equal(FaultRank.FedBack, fault.Rank);
        Assert.Equal("FA", fault.LiveThrough);
        Assert.Contains("stays live through FA", fault.Text, StringComparison.Ordinal);
    }

    // 12 V − (0.01 + 0.02 + 0.01)·(heater and radio) − 0.01·heater: a per cent of 12 V, which no one sees.
    [Fact]
    public void PulledMainA_HeaterHardlyNotices() => Assert.DoesNotContain(On.Open("main A").Loads, l => l.Load == "heater");

    // Bar B feeds nothing but the radio; pulled, its end is live through FB.
    [Fact]
    public void PulledMainB_BarIsLiveThroughFB() => Assert.Equal("FB", On.Open("main B").LiveThrough);

    // The radio has two ways: with FA out it plays on, and FA's far end is live through FB.
    [Fact]
    public void PulledFA_RadioPlaysOn()
    {
        HarnessFault fault = On.Open("FA");

        Assert.Empty(fault.Loads);
        Assert.Equal("FB", fault.LiveThrough);
    }

    // A short at bar A, loads off: 0.01 Ω, then 0.01 Ω beside 0.02 + 0.01 + 0.01 Ω, which is 0.008 Ω: 12 V/0.018 Ω = 666.7 A. Main A carries 4/5 of it, the way over the radio 1/5.
    // Main A has opened after 3240 A²s/(533.3 A)² = 0.01139 s; a 10 A fuse alone would take 360/(133.3)² = 0.02025 s.
    [Fact]
    public void ShortAtBarA_MainAOpensFirst()
    {
        HarnessFault fault = Off.Short("bar A");

        Near(12 / 0.018, fault.GreatestCurrent!.Value.Amperes);
        Assert.Equal("main A", fault.Openings[0].Fuse);
        Assert.Equal(3240 / Math.Pow(0.8 * 12 / 0.018, 2), fault.Openings[0].Longest!.Value.Seconds, 1e-12);
        Assert.Equal(648 / Math.Pow(0.8 * 12 / 0.018, 2), fault.Openings[0].Least!.Value.Seconds, 1e-12);
    }

    // Then all of it, 12/0.05 = 240 A, takes the way over the radio's fuses, which have had 0.01139/0.02025 = 56.25 % of their melting: the rest takes 0.4375·360/240² s.
    [Fact]
    public void ShortAtBarA_RadioFuseFollowsWithItsShareOfMelting()
    {
        HarnessFault fault = Off.Short("bar A");
        double first = 3240 / Math.Pow(0.8 * 12 / 0.018, 2), share = first / (360 / Math.Pow(0.2 * 12 / 0.018, 2));

        Assert.Equal(0.5625, share, 12);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
        Assert.Equal(["main A", "FA"], fault.Openings.Select(o => o.Fuse));
        Assert.Equal(first + ((1 - share) * 360 / (240.0 * 240)), fault.Openings[1].Longest!.Value.Seconds, 1e-12);
    }

    // A short at the radio: 0.01 Ω, then 0.02 Ω (A) beside 0.03 Ω (B): 0.012 Ω, 545.5 A; FA carries 3/5, 327.3 A, FB 218.2 A. FA: 360/327.3² = 3.361 ms; FB by then 3.361/7.562 = 4/9 of its melting;
    // alone it carries 12/0.04 = 300 A, of 360 A²s: 5/9 of 4 ms more. The mains, 30 A, would take 3240/327.3² = 30 ms: neither opens.
    [Fact]
    public void ShortAtRadio_BothItsFusesOpenOneAfterTheOther()
    {
        HarnessFault fault = Off.Short("radio +");
        double first = 360 / Math.Pow(0.6 * 12 / 0.022, 2), share = first / (360 / Math.Pow(0.4 * 12 / 0.022, 2));

        Assert.Equal(["FA", "FB"], fault.Openings.Where(o => o.IsSure).Select(o => o.Fuse));
        Assert.Equal(4.0 / 9, share, 12);
        Assert.Equal(first, fault.Openings[0].Longest!.Value.Seconds, 1e-12);
        Assert.Equal(first + ((1 - share) * 360 / (300.0 * 300)), fault.Openings[1].Longest!.Value.Seconds, 1e-12);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
    }

    // The battery's own terminal: 1200 A that no fuse sees.
    [Fact]
    public void ShortAtBattery_NoFuseSeesIt()
    {
        HarnessFault fault = Off.Short("plus");

        Assert.Equal(FaultEnding.NotCleared, fault.Ending);
        Near(1200, fault.RemainingCurrent!.Value.Amperes);
        Assert.Empty(fault.Openings);
    }

    [Fact]
    public void PulledFB_FarEndIsLiveThroughFA() => Assert.Equal("FA", On.Open("FB").LiveThrough);

    // A short at bar B: 0.01 Ω, then 0.02 Ω beside 0.03 Ω over the radio's fuses: 12/0.022 = 545.5 A, main B 327.3 A, the radio's fuses 218.2 A. FA has opened after 360/218.2² = 7.56 ms;
    // main B has had 7.56/30.25 = 1/4 of its melting by then, and takes 3/4 of 3240/400² s at the 12/0.03 = 400 A that are left.
    [Fact]
    public void ShortAtBarB_RadioFuseFirstThenMainB()
    {
        HarnessFault fault = Off.Short("bar B");
        double first = 360 / Math.Pow(0.4 * 12 / 0.022, 2), share = first / (3240 / Math.Pow(0.6 * 12 / 0.022, 2));

        Assert.Equal("minus", fault.To);
        Assert.Equal(["FA", "main B"], fault.Openings.Where(o => o.IsSure).Select(o => o.Fuse));
        Assert.Equal(0.25, share, 12);
        Assert.Equal(first, fault.Openings[0].Longest!.Value.Seconds, 1e-12);
        Assert.Equal(first + (0.75 * 3240 / (400.0 * 400)), fault.Openings[1].Longest!.Value.Seconds, 1e-12);
    }
}
