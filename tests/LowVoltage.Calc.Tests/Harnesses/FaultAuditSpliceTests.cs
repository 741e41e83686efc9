using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using UnitsNet;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A feed, a splice and two lamps behind one fuse, with a branch much thinner than its fuse asks for: nine faults by hand.</summary>
/// <remarks>
/// 12 V behind 0.02 Ω, air 30 °C. ISO 6722 lets 1.5 mm² have 12.7 mΩ/m and 0.5 mm² 37.1 mΩ/m at 20 °C; copper 0.393 % per kelvin. Cross-linked polyethylene: 90 °C continuously, 250 °C in a short circuit.
/// </remarks>
public class FaultAuditSpliceTests
{
    private const double Cool = 1 + (0.00393 * 10);
    private const double Hot = 1 + (0.00393 * 70);

    private static readonly Place Air = Place.Create(Temperature.FromDegreesCelsius(30));
    private static readonly Harness Small = Make(10, 5);
    private static readonly Harness Large = Make(30, 10);
    private static readonly Harness Long = Make(10, 10);
    private static readonly FaultAudit Ten = FaultAudit.Run(Small);
    private static readonly FaultAudit Thirty = FaultAudit.Run(Large);

    private static Harness Make(double fuse, double far) => new HarnessBuilder($"splice, {fuse} A", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "fused", "near +", "far +").Splices("splice").Grounds("frame")
        .Source("battery", "plus", "minus", Battery(12, 0.02))
        .Fuse("F1", "plus", "fused", Blade(fuse))
        .Wire("feed", "fused", "splice", Conductor.Iso6722(MetricSize.FromSquareMillimeters(1.5)), Length.FromMeters(4), Air, InsulationMaterial.CrossLinkedPolyethylene)
        .Wire("near wire", "splice", "near +", Conductor.Iso6722(MetricSize.FromSquareMillimeters(1.5)), Length.FromMeters(1), Air, InsulationMaterial.CrossLinkedPolyethylene)
        .Wire("far wire", "splice", "far +", Conductor.Iso6722(MetricSize.FromSquareMillimeters(0.5)), Length.FromMeters(far), Air, InsulationMaterial.CrossLinkedPolyethylene)
        .Chassis("chassis", "frame", "minus", Ohms(0.002))
        .Load("near", "near +", "frame", Lamp(12))
        .Load("far", "far +", "frame", Lamp(12))
        .Build();

    // Behind the splice, 5 m of 0.5 mm²: 0.02 + 0.002 + 4·0.0127·1.0393 + 5·0.0371·1.0393 Ω, with the wires as cool as the air.
    [Fact]
    public void ShortBehindSplice_GreatestCurrent() =>
        Assert.Equal(12 / (0.022 + (0.0508 * Cool) + (0.1855 * Cool)), Ten.Short("far +").GreatestCurrent!.Value.Amperes, 1e-6);

    // With the wires at 90 °C and the near lamp drawing its 1 A at most, which takes 1 A·(0.022 + 0.0508·Hot) Ω of the voltage.
    [Fact]
    public void ShortBehindSplice_LeastCurrent()
    {
        double shared = 0.022 + (0.0508 * Hot), least = Ten.Short("far +").LeastCurrent!.Value.Amperes;

        Assert.InRange(least, (12 - (1.0 * shared)) / (shared + (0.1855 * Hot)), (12 - (0.9 * shared)) / (shared + (0.1855 * Hot)));
    }

    // Some 37 A at first, between 3.5 and two times 10 A: by the line between 5 s and 0.5 s. As the wire heats the current falls, so it takes longer than at the first current, and less than the 5 s at 20 A.
    [Fact]
    public void ShortBehindSplice_TenAmperes_IsCleared()
    {
        HarnessFault fault = Ten.Short("far +");
        double first = fault.LeastCurrent!.Value.Amperes, longest = 0.5 * Math.Pow(first / 35, Math.Log(0.1 / 0.5) / Math.Log(6 / 3.5));

        Assert.InRange(first, 35, 60);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
        Assert.InRange(fault.Openings[0].Longest!.Value.Seconds, longest * 1.001, 5);
        Assert.Equal("far wire", fault.Wires[0].Wire);
    }

    // 10 m instead of 5: 12 V less 0.09 V over 0.56 Ω is 21.4 A, where the fuse takes nearly 5 s. By then (21.4 A)²·4 s heat 0.5 mm² by 60 K and more, the current falls under 20 A, and no end is in sight that is proven without loss of heat.
    [Fact]
    public void ShortBehindLongWire_TenAmperes_IsNotProvenToClear()
    {
        HarnessFault fault = FaultAudit.Run(Long).Short("far +");

        Assert.InRange(fault.LeastCurrent!.Value.Amperes, 21, 22);
        Assert.Equal(FaultEnding.NotCleared, fault.Ending);
        Assert.NotEmpty(fault.Reason);
    }

    // A 30 A fuse need not open below 40.5 A, and 29.6 A flow at most: the fault stays, and 0.5 mm² cannot carry that.
    [Fact]
    public void ShortBehindSplice_ThirtyAmperes_BurnsOn()
    {
        HarnessFault fault = Thirty.Short("far +");

        Assert.Equal(FaultRank.BurnsOn, fault.Rank);
        Assert.Equal("far wire", fault.Wires[0].Wire);
        Assert.True(fault.Wires[0].IsTooHot);
        Assert.Empty(fault.Openings);
        Assert.Equal(12 / (0.022 + (0.4218 * Cool)), fault.RemainingCurrent!.Value.Amperes, 1e-6);
    }

    // It is the worst that this harness has.
    [Fact]
    public void ThirtyAmperes_WorstIsTheThinWire()
    {
        Assert.Equal("far +", Thirty.Worst[0].Place);
        Assert.Contains("danger of fire", Thirty.Worst[0].Text, StringComparison.Ordinal);
        Assert.Contains("far wire", Thirty.Worst[0].Places);
    }

    // At the splice the loop is short: 12 V over 0.022 + 0.0528 Ω is 160 A, and (60 A)²·0.1 s = 360 A²s heats 1.5 mm² from 90 °C by little.
    [Fact]
    public void ShortAtSplice_TenAmperes_FeedStaysCool()
    {
        HarnessFault fault = Ten.Short("splice");
        FaultedWire feed = fault.Wires.Single(w => w.Wire == "feed");

        // θ + 234.5 = (90 + 234.5)·exp(360/(226.5²·S²)), S the section that 12.7 mΩ/m stands for: 17.241/12.7 = 1.358 mm².
        double expected = (324.5 * Math.Exp(360 / Math.Pow(226.5 * 17.241 / 12.7, 2))) - 234.5;
        Assert.Equal("frame", fault.To);
        Assert.Equal(expected, feed.Temperature.DegreesCelsius, 0.1);
        Assert.False(feed.IsTooHot);
    }

    // The feed broken: both lamps dead. The near wire broken: the near lamp, and the far one gains 1 A·0.07 Ω, less than 2 %.
    [Fact]
    public void BrokenFeed_BothDead() => Assert.Equal(["far", "near"], Ten.Open("feed").Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));

    [Fact]
    public void BrokenNearWire_NearDead() => Assert.Equal(["near"], Ten.Open("near wire").Loads.Select(l => l.Load));

    // 1 m of 1.5 mm² more than at the splice.
    [Fact]
    public void ShortAtNearLamp_GreatestCurrent() => Assert.Equal(12 / (0.022 + (0.0635 * Cool)), Ten.Short("near +").GreatestCurrent!.Value.Amperes, 1e-6);

    // At the splice a 30 A fuse sees some 137 A at least, between 105 A (0.5 s) and 180 A (0.1 s).
    [Fact]
    public void ShortAtSplice_ThirtyAmperes_OpensBetweenItsPoints() => Assert.InRange(Thirty.Short("splice").Openings[0].Longest!.Value.Seconds, 0.1, 0.5);

    // The shared ground lost: both lamps hang between the splice and a frame that floats at the splice's voltage.
    [Fact]
    public void LostGround_BothDead() => Assert.Equal(["far", "near"], Ten.Open("chassis").Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));
}
