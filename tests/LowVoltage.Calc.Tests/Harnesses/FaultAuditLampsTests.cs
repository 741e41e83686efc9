using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Two lamps on one ground stud, a pilot lamp on the right one's feed: ten faults by hand.</summary>
/// <remarks>12 V behind 0.02 Ω, one fuse of 10 A, chassis 0.01 Ω. The lamps have 6 Ω, the pilot 12 Ω.</remarks>
public class FaultAuditLampsTests
{
    private static readonly LoadCase RightOff = LoadCase.Create("right off").WithSwitch("right switch", isClosed: false);

    private static readonly Harness Lamps = new HarnessBuilder("lamps", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "left +", "right +").Busbars("panel").Grounds("stud")
        .Source("battery", "plus", "minus", Battery(12, 0.02))
        .Fuse("F1", "plus", "panel", Blade(10))
        .Switch("left switch", "panel", "left +", Ohms(0))
        .Switch("right switch", "panel", "right +", Ohms(0))
        .Chassis("chassis", "stud", "minus", Ohms(0.01))
        .Load("left", "left +", "stud", Lamp(6))
        .Load("right", "right +", "stud", Lamp(6))
        .Load("pilot", "right +", "minus", Lamp(12))
        .Build();

    private static readonly FaultAudit AllOn = FaultAudit.Run(Lamps, [LoadCase.AllOn]);
    private static readonly FaultAudit LeftOnly = FaultAudit.Run(Lamps, [RightOff]);

    // The ground is lost with the right switch open: panel → left 6 Ω → stud → right 6 Ω backwards → pilot 12 Ω → minus. 12 V over 24 Ω and the battery's 0.02 Ω.
    [Fact]
    public void LostGround_OneSwitchOpen_TwoLampsInSeriesFeedThePilot()
    {
        HarnessFault fault = LeftOnly.Open("chassis");
        double amperes = 12 / 24.02;

        Assert.Equal(FaultRank.FedBack, fault.Rank);
        Assert.Equal(LoadEffect.Reversed, fault.On("right").Effect);
        Near(-6 * amperes, fault.On("right").After.Volts);
        Near(-amperes, fault.On("right").Current.Amperes);
        Assert.Equal("left", fault.On("right").Through);
        Assert.Equal(LoadEffect.FedBack, fault.On("pilot").Effect);
        Near(12 * amperes, fault.On("pilot").After.Volts);
        Assert.Equal("right", fault.On("pilot").Through);
    }

    // Of the left lamp's nearly 12 V (battery 0.02 Ω, chassis 0.01 Ω beside 18 Ω of the other lamps) 3 V are left: it has lost its own way back and finds another.
    [Fact]
    public void LostGround_OneSwitchOpen_LeftLampGlowsByAnotherWay()
    {
        FaultedLoad left = LeftOnly.Open("chassis").On("left");

        Near(12 * 6 / (6.02 + (0.01 * 18 / 18.01)), left.Before.Volts);
        Near(6 * 12 / 24.02, left.After.Volts);
        Assert.Equal(LoadEffect.FedBack, left.Effect);
    }

    // Both switches closed: both lamps hang on the same panel at both ends. No voltage is left over either; the pilot has its own way back.
    [Fact]
    public void LostGround_BothOn_BothDark()
    {
        HarnessFault fault = AllOn.Open("chassis");

        Assert.Equal(FaultRank.LoadDead, fault.Rank);
        Assert.Equal(["left", "right"], fault.Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));
        Assert.DoesNotContain(fault.Loads, l => l.Load == "pilot");
    }

    // The only fuse: everything is dead, and no other source keeps its far end live.
    [Fact]
    public void PulledFuse_AllDead()
    {
        HarnessFault fault = AllOn.Open("F1");

        Assert.Equal(["left", "pilot", "right"], fault.Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));
        Assert.Null(fault.LiveThrough);
    }

    // The left switch takes 2 A off a battery of 0.02 Ω: the others gain 0.04 V of 12 V, less than 2 %.
    [Fact]
    public void LeftSwitchOpen_OnlyLeftDead() => Assert.Equal(["left"], AllOn.Open("left switch").Loads.Select(l => l.Load));

    // left + to its own other terminal: the fault loop is battery 0.02 Ω and chassis 0.01 Ω, 400 A. Beyond six times 10 A the fuse lets through (60 A)²·0.1 s at most and (60 A)²·0.02 s at least.
    [Fact]
    public void ShortAtLamp_GreatestAndLeastTime()
    {
        HarnessFault fault = AllOn.Short("left +");

        Assert.Equal("stud", fault.To);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
        Near(400, fault.GreatestCurrent!.Value.Amperes);
        FuseOpening opening = Assert.Single(fault.Openings);
        Assert.Equal("F1", opening.Fuse);
        Assert.Equal(60 * 60 * 0.1 / Math.Pow(fault.LeastCurrent!.Value.Amperes, 2), opening.Longest!.Value.Seconds, 1e-9);
    }

    // The pilot has 1 A, the lamps 2 A each: everything is tied to the shorted terminal by closed switches, so nothing draws but a rest through the chassis' 4 V. The least is the greatest less what the right lamp and the pilot still take.
    [Fact]
    public void ShortAtLamp_LeastCurrentIsLessByWhatTheOthersTake()
    {
        double least = AllOn.Short("left +").LeastCurrent!.Value.Amperes;

        Assert.InRange(least, 400 - (0.02 / 0.03 * 1.01), 400);
    }

    // The panel feeds all three: their returns come together at minus. 12 V over the battery alone.
    [Fact]
    public void ShortAtPanel_ReturnsComeTogetherAtMinus()
    {
        HarnessFault fault = AllOn.Short("panel");

        Assert.Equal("minus", fault.To);
        Near(600, fault.GreatestCurrent!.Value.Amperes);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
    }

    // At the battery's own terminal nothing lies between: 600 A stay.
    [Fact]
    public void ShortAtBattery_IsNotCleared()
    {
        HarnessFault fault = AllOn.Short("plus");

        Assert.Equal(FaultRank.NotCleared, fault.Rank);
        Near(600, fault.RemainingCurrent!.Value.Amperes);
        Assert.Contains("cover it", fault.Text, StringComparison.Ordinal);
    }

    // The right lamp's terminal: its own other terminal is the stud, the same 0.03 Ω.
    [Fact]
    public void ShortAtRightLamp_IsTheSameLoop()
    {
        Assert.Equal("stud", AllOn.Short("right +").To);
        Near(400, AllOn.Short("right +").GreatestCurrent!.Value.Amperes);
    }

    // With its switch open no source reaches it but through lamps.
    [Fact]
    public void ShortAtRightLamp_SwitchOpen_NoCurrent() => Assert.Equal(FaultEnding.NoCurrent, LeftOnly.Short("right +").Ending);

    // The right switch feeds the right lamp and the pilot.
    [Fact]
    public void RightSwitchOpen_RightAndPilotDead() => Assert.Equal(["pilot", "right"], AllOn.Open("right switch").Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));
}
