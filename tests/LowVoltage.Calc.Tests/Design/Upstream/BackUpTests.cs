using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>A fuse that breaks less than the prospective current behind a device that breaks it: IEC 60364-4-43, 434.5.1, from memory.</summary>
public class BackUpTests
{
    // 14.6 V over 0.4 mΩ + 5 mΩ: 2704 A, where a blade fuse breaks 1000 A.
    private const double Prospective = 14.6 / 0.0054;

    [Fact]
    public void LetThroughStatedAndBorne_Passes()
    {
        CheckResult check = Ask(Device().WithLetThrough(Joules(9000), Joules(10_000)));
        Assert.Equal(CheckOutcome.Pass, check.Outcome);
        Near(Prospective, check.Value, 1e-9);
        Assert.Equal(20_000, check.Limit);
        Assert.Equal("behind the 63 A main device (as stated), which breaks it and lets 9000 A²s through; the fuse withstands 10000 A²s there", check.Note);
        Assert.Equal("434.5.1", check.Reference.Locator);
    }

    [Fact]
    public void WireThatIsNotRated_ButHasRoomForShortCircuits_IsStillJudged()
    {
        // AWG 2 is not in the road-vehicle table; PVC may reach 160 °C in a short circuit whatever it carries, and 33.6 mm² bear far more than 9000 A²s.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), Pack, feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 1, upstreamMilliOhms: 5)
            .WithUpstreamProtection(Device().WithLetThrough(Joules(9000), Joules(10_000)));
        CircuitPath path = CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return);
        CheckResult check = CircuitDesigner.Verify(asked, path, Blade(4), LowVoltage.Calc.Tests.Checks.CheckCase.Table).Of(CheckKind.BreakingCapacity);
        Assert.Equal(CheckOutcome.Pass, check.Outcome);
        Assert.EndsWith("the fuse withstands 10000 A²s there", check.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void LetThroughMoreThanTheFuseBears_Fails()
    {
        CheckResult check = Ask(Device().WithLetThrough(Joules(9000), Joules(8000)));
        Assert.Equal((CheckOutcome.Fail, 1000.0), (check.Outcome, check.Limit));
        Assert.EndsWith("the fuse withstands 8000 A²s there", check.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheFuseBearsNotStated_IsUndeterminedAndNamesIt() =>
        Missing(Device().WithLetThrough(Joules(9000), null), "state the Joule integral that the 4 A blade fuse (ISO 8820-3 type C) withstands behind it");

    [Fact]
    public void LetThroughNotKnown_IsUndeterminedAndNamesIt() => Missing(Device(), "state the Joule integral that this lets through");

    [Fact]
    public void BreakingCapacityOfTheDeviceBeforeNotKnown_IsUndeterminedAndNamesIt() =>
        Missing(UpstreamProtection.Device("main device", A(63), V(80), null).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2)), "no d.c. breaking capacity is known for the 63 A main device");

    [Theory]
    [InlineData(80, 2000, "no device before it breaks that current at 14.6 V, the best one 2000 A")]
    [InlineData(12, 20_000, "no device before it breaks that current at 14.6 V, the best one 20000 A")]
    public void NoDeviceBeforeBreaksIt_Fails(double volts, double breaks, string said)
    {
        CheckResult check = Ask(UpstreamProtection.Device("main device", A(63), V(volts), A(breaks)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2)).WithLetThrough(Joules(1), Joules(1000)));
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Assert.Equal(said, check.Note);
    }

    /// <summary>Adiabatic by hand: K²·S²·ln((160 + 234.5)/(70 + 234.5)) with K = 226 A·√s/mm² (IEC 60949), S = 17.241 Ωmm²/km over the standard's largest resistance of the wire chosen.</summary>
    [Theory]
    [InlineData(0.97, CheckOutcome.Pass)]
    [InlineData(1.03, CheckOutcome.Fail)]
    public void LetThroughAgainstTheWireBehind_PassesUpToWhatItBears(double share, CheckOutcome outcome)
    {
        CircuitDesign plain = CircuitDesigner.Design(Fan(5, Pack), DesignRules.RoadVehicle);
        double section = 17.241 / plain.Wire.ResistancePerLength(C(20)).OhmsPerMeter / 1000;
        double harmless = 226 * 226 * section * section * Math.Log((160 + 234.5) / (70 + 234.5));
        CheckResult check = Ask(Device().WithLetThrough(Joules(share * harmless), Joules(1e9)));
        Assert.Equal(outcome, check.Outcome);
        if (outcome == CheckOutcome.Fail)
        {
            Assert.Contains("that takes the wire to", check.Note, StringComparison.Ordinal);
        }
    }

    /// <summary>The published gates of 63 A gG end at 820 A and 0.1 s: 67 240 A²s, more than a thin wire withstands.</summary>
    [Fact]
    public void LetThroughByPublishedTimes_IsTakenFromTheCurve()
    {
        CheckResult check = Ask(UpstreamProtection.Fuse(Gg(63)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2)));
        Assert.Contains("lets 67240 A²s through", check.Note, StringComparison.Ordinal);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
    }

    [Fact]
    public void DeviceBeforeNeedNotOpen_Fails()
    {
        CheckResult check = Ask(UpstreamProtection.Fuse(Gg(800)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(120, 2)));
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Assert.Contains("which need not open below 1280 A", check.Note, StringComparison.Ordinal); // 1.6 times the rating
    }

    [Fact]
    public void FuseThatBreaksTheCurrentItself_NeedsNoDeviceBefore()
    {
        CircuitRequirements asked = Fan(20, Pack).WithUpstreamProtection(Device());
        CheckResult check = CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Of(CheckKind.BreakingCapacity);
        Assert.Equal((CheckOutcome.Pass, 1000.0, ""), (check.Outcome, Math.Round(check.Limit!.Value, 3), check.Note));
    }

    [Fact]
    public void WithoutADeviceBefore_Fails() => Assert.Equal(CheckOutcome.Fail, CircuitDesigner.Design(Fan(5, Pack), DesignRules.RoadVehicle).Of(CheckKind.BreakingCapacity).Outcome);

    /// <summary>The device before it breaks just what flows, and the fuse bears just what that lets through.</summary>
    [Fact]
    public void BreaksAndBearsJustThat_Passes()
    {
        UpstreamProtection main = UpstreamProtection.Device("main device", A(63), V(80), A(Prospective)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2));
        Assert.Equal(CheckOutcome.Pass, Ask(main.WithLetThrough(Joules(9000), Joules(9000))).Outcome);
        Assert.Equal(CheckOutcome.Fail, Ask(main.WithLetThrough(Joules(9000), Joules(8999))).Outcome);
        UpstreamProtection less = UpstreamProtection.Device("main device", A(63), V(80), A(0.9999 * Prospective)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2));
        Assert.Equal(CheckOutcome.Fail, Ask(less.WithLetThrough(Joules(9000), Joules(9000))).Outcome);
    }

    /// <summary>It opens conventionally at the very current that the fuse breaks by itself: all that the fuse does not break opens it.</summary>
    [Theory]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    public void DeviceBeforeOpensFromWhereTheFuseEnds_IsJudgedByItsTimes(double fusing, bool opens)
    {
        TimeCurrentCurve curve = TimeCurrentCurve.CreateCircuitBreaker([], [new(fusing, 3600), new(2000, 0.01), new(20_000, 0.01)]);
        CheckResult check = Ask(UpstreamProtection.Device("main device", A(63), V(80), A(20_000), curve).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2)));
        Assert.Equal(!opens, check.Note.Contains("which need not open below 1001 A", StringComparison.Ordinal));
        Assert.Equal(opens, check.Note.Contains("A²s through", StringComparison.Ordinal));
    }

    [Fact]
    public void TwoDevicesBeforeOfUnknownCapacity_TheNearestIsNamed()
    {
        UpstreamProtection[] row =
        [
            UpstreamProtection.Device("far device", A(100), V(80), null).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 0.1)),
            UpstreamProtection.Device("near device", A(63), V(80), null).WithUpstream(MilliOhm(1)).WithLead(Lead(16, 1.5)),
        ];
        CheckResult check = CircuitDesigner.Design(Fan(5, Pack).WithUpstreamProtection(row), DesignRules.RoadVehicle).Of(CheckKind.BreakingCapacity);
        Assert.Equal((CheckOutcome.Undetermined, "no d.c. breaking capacity is known for the 63 A near device (as stated) before it"), (check.Outcome, check.Note));
    }

    [Theory]
    [InlineData(10_000.0, CheckOutcome.Pass, "behind the 100 A far device (as stated), which breaks it and lets 9000 A²s through; the fuse withstands 10000 A²s there")]
    [InlineData(null, CheckOutcome.Undetermined, "state the Joule integral that the 4 A blade fuse")]
    [InlineData(8000.0, CheckOutcome.Fail, "behind the 63 A near device (as stated)")]
    public void NearDeviceLetsTooMuchThrough_TheFarOneMayHoldItBack(double? withstood, CheckOutcome expected, string said)
    {
        UpstreamProtection[] row =
        [
            UpstreamProtection.Device("far device", A(100), V(80), A(20_000)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 0.1)).WithLetThrough(Joules(9000), withstood is { } joules ? Joules(joules) : null),
            UpstreamProtection.Device("near device", A(63), V(80), A(20_000)).WithUpstream(MilliOhm(1)).WithLead(Lead(16, 1.5)).WithLetThrough(Joules(9500), Joules(8000)),
        ];
        CheckResult check = CircuitDesigner.Design(Fan(5, Pack).WithUpstreamProtection(row), DesignRules.RoadVehicle).Of(CheckKind.BreakingCapacity);
        Assert.Equal(expected, check.Outcome);
        Assert.Contains(said, check.Note, StringComparison.Ordinal);
    }

    /// <summary>ETFE has no limit of its own for short circuits: from what the load leaves, which is not known where the wire is not rated.</summary>
    [Fact]
    public void WireNotRatedInInsulationWithoutRoom_IsUndeterminedAndSaysSo()
    {
        CircuitRequirements asked = Circuit(
            Load.ConstantCurrent(A(2)), Pack, feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 1, insulation: LowVoltage.Calc.Conductors.InsulationMaterial.Etfe, upstreamMilliOhms: 5)
            .WithUpstreamProtection(Device().WithLetThrough(Joules(9000), Joules(10_000)));
        CheckResult check = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), Blade(4), LowVoltage.Calc.Tests.Checks.CheckCase.Table)
            .Of(CheckKind.BreakingCapacity);
        Assert.Equal(CheckOutcome.Undetermined, check.Outcome);
        Assert.EndsWith("lets 9000 A²s through: the wire behind is not rated here, or not stated", check.Note, StringComparison.Ordinal);
    }

    /// <summary>Adiabatic: from 70 °C, (θ + 234.5 °C) grows by the exponential of the share of what takes it to 160 °C; copper that would go beyond 1083 °C has melted.</summary>
    [Theory]
    [InlineData(1.5, 214.5)]
    [InlineData(20, 1083)]
    public void WireHarmed_SaysHowHotItGets_AtMostMelting(double share, double celsius)
    {
        CircuitDesign plain = CircuitDesigner.Design(Fan(5, Pack), DesignRules.RoadVehicle);
        double section = 17.241 / plain.Wire.ResistancePerLength(C(20)).OhmsPerMeter / 1000;
        double harmless = 226 * 226 * section * section * Math.Log((160 + 234.5) / (70 + 234.5));
        Assert.Equal(celsius, Math.Min(1083, (304.5 * Math.Pow(394.5 / 304.5, share)) - 234.5), 0.1);
        string note = Ask(Device().WithLetThrough(Joules(share * harmless), Joules(1e9))).Note;
        string told = note.Split("that takes the wire to ")[1];
        Assert.EndsWith(" °C, at most 160 °C are allowed", told, StringComparison.Ordinal);
        Assert.Equal(celsius, double.Parse(told.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1.0);
    }

    /// <summary>The sheet holds the current against what the device before it breaks.</summary>
    [Fact]
    public void Sheet_ComparesWithTheDeviceBefore()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(5, Pack).WithUpstreamProtection(Device().WithLetThrough(Joules(9000), Joules(10_000))), DesignRules.RoadVehicle);
        Calc.Working.SolutionStep limit = LowVoltage.Calc.Tests.Checks.CheckCase.Steps(design, CheckKind.BreakingCapacity, "I_k ≤ I_mb").Steps.First(s => s.Symbol?.Spec == "I_mb");
        Assert.Equal(("breaking capacity of the device before it", 20_000.0, "A", "434.5.1"), (limit.Sought, limit.Result!.Value, limit.Unit, limit.Source!.Locator));
    }

    private static void Missing(UpstreamProtection main, string what)
    {
        CheckResult check = Ask(main);
        Assert.Equal(CheckOutcome.Undetermined, check.Outcome);
        Assert.Contains(what, check.Note, StringComparison.Ordinal);
    }

    private static UpstreamProtection Device() => UpstreamProtection.Device("main device", A(63), V(80), A(20_000)).WithUpstream(MilliOhm(0.5)).WithLead(Lead(16, 2));

    private static JouleIntegral Joules(double value) => JouleIntegral.FromAmpereSquaredSeconds(value);

    private static CheckResult Ask(UpstreamProtection main)
    {
        CircuitDesign plain = CircuitDesigner.Design(Fan(5, Pack), DesignRules.RoadVehicle), design = CircuitDesigner.Design(Fan(5, Pack).WithUpstreamProtection(main), DesignRules.RoadVehicle);
        Assert.Equal((plain.Wire, plain.Fuse), (design.Wire, design.Fuse));
        return design.Of(CheckKind.BreakingCapacity);
    }
}
