using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Two rear lamps, each with a tail and a brake filament on one ground wire: ten faults by hand.</summary>
/// <remarks>12 V behind 0.01 Ω. Tail filaments 24 Ω, brake filaments 6 Ω; every wire and ground 0.05 Ω. The brake switch is open.</remarks>
public class FaultAuditFilamentsTests
{
    private static readonly Harness Rear = new HarnessBuilder("rear lamps", DesignRules.RoadVehicle)
        .Terminals("plus", "minus", "tail left +", "tail right +", "brake left +", "brake right +").Busbars("panel", "tails", "brakes").Grounds("left ground", "right ground")
        .Source("battery", "plus", "minus", Battery(12, 0.01))
        .Fuse("F1", "plus", "panel", Blade(10))
        .Switch("tail switch", "panel", "tails", Ohms(0))
        .Switch("brake switch", "panel", "brakes", Ohms(0), isClosed: false)
        .Resistance("tail left wire", "tails", "tail left +", Ohms(0.05))
        .Resistance("tail right wire", "tails", "tail right +", Ohms(0.05))
        .Resistance("brake left wire", "brakes", "brake left +", Ohms(0.05))
        .Resistance("brake right wire", "brakes", "brake right +", Ohms(0.05))
        .Resistance("left strap", "left ground", "minus", Ohms(0.05))
        .Resistance("right strap", "right ground", "minus", Ohms(0.05))
        .Load("tail left", "tail left +", "left ground", Lamp(24))
        .Load("brake left", "brake left +", "left ground", Lamp(6))
        .Load("tail right", "tail right +", "right ground", Lamp(24))
        .Load("brake right", "brake right +", "right ground", Lamp(6))
        .Build();

    private static readonly FaultAudit Audit = FaultAudit.Run(Rear, [LoadCase.AllOn]);
    private static readonly FaultAudit Braking = FaultAudit.Run(Rear, [LoadCase.Create("braking").WithSwitch("brake switch", isClosed: true)]);

    // Tail left 24 Ω, then brake left backwards 6 Ω, over both brake wires to brake right 6 Ω and its strap, beside the right tail lamp.
    // Thévenin by hand: the way has 24 + 6 + 6 Ω and wires 0.05 (tail) + 2·0.05 (brakes); it ends at the right ground, which carries tail right as well.
    private static (double Way, double Tail) LostLeft()
    {
        // Mesh currents a (the long way) and b (tail right), shared: battery 0.01 Ω and right strap 0.05 Ω.
        // a·(36.15 + 0.06) + b·0.06 = 12;  a·0.06 + b·(24.05 + 0.06) = 12
        double p = 36.21, q = 24.11, m = 0.06, det = (p * q) - (m * m);
        return (12 * (q - m) / det, 12 * (p - m) / det);
    }

    [Fact]
    public void LostGround_BrakeFilamentIsFedBackwards()
    {
        FaultedLoad left = Audit.Open("left strap").On("brake left");

        Assert.Equal(LoadEffect.Reversed, left.Effect);
        Near(-6 * LostLeft().Way, left.After.Volts);
        Assert.Equal("brake left wire", left.Through);
    }

    // The other brake lamp glows with the tail lamp's current: it should be dark.
    [Fact]
    public void LostGround_OtherBrakeLampGlows()
    {
        FaultedLoad right = Audit.Open("left strap").On("brake right");

        Assert.Equal(LoadEffect.FedBack, right.Effect);
        Near(6 * LostLeft().Way, right.After.Volts);
        Near(0, right.Before.Volts);
        Assert.Equal("brake right wire", right.Through);
    }

    // The tail lamp itself keeps 24 Ω of 36 Ω: two thirds of its voltage, by another way than its own.
    [Fact]
    public void LostGround_TailLampGlowsWithTwoThirds()
    {
        FaultedLoad tail = Audit.Open("left strap").On("tail left");

        Near(24 * LostLeft().Way, tail.After.Volts);
        Assert.InRange(tail.After.Volts / 12, 0.65, 0.67);
    }

    // The same from the other side.
    [Fact]
    public void LostGround_RightIsTheMirror() => Near(-6 * LostLeft().Way, Audit.Open("right strap").On("brake right").After.Volts);

    // With the brakes on, tail left 24 Ω and brake left 6 Ω both hang on the panel: only their wires' difference is left, nothing to see.
    [Fact]
    public void LostGround_Braking_BothFilamentsDark() =>
        Assert.Equal(["brake left", "tail left"], Braking.Open("left strap").Loads.Where(l => l.Effect == LoadEffect.Dead).Select(l => l.Load));

    // A lamp's own wire: that lamp and no other.
    [Fact]
    public void BrokenTailWire_OneLampDead()
    {
        Assert.Equal(["tail left"], Audit.Open("tail left wire").Loads.Select(l => l.Load));
        Assert.Equal(FaultRank.LoadDead, Audit.Open("tail left wire").Rank);
    }

    // Braking, a short at the brake lamp: 12 V over 0.01 + 0.05 + 0.05 Ω; beyond six times 10 A the fuse lets through (60 A)²·0.02 s at least, at that current and the 1 A of tail lamps behind the fuse.
    [Fact]
    public void ShortAtBrakeLamp_Braking_IsCleared()
    {
        HarnessFault fault = Braking.Short("brake left +");

        Assert.Equal("left ground", fault.To);
        Near(12 / 0.11, fault.GreatestCurrent!.Value.Amperes);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
        Assert.InRange(fault.Openings[0].Least!.Value.Seconds, 3600 * 0.02 / Math.Pow((12 / 0.11) + 5, 2), 3600 * 0.02 / Math.Pow(12 / 0.11, 2));
    }

    // With the brake switch open nothing reaches the brake lamp: a short there is no fault that shows.
    [Fact]
    public void ShortAtBrakeLamp_SwitchOpen_NoCurrent() => Assert.DoesNotContain(Audit.Faults, f => f.Place == "brake left +" && f.Ending != FaultEnding.NoCurrent);

    // Both tail lamps hang on their switch; the brake filaments had no voltage to lose.
    [Fact]
    public void TailSwitchOpen_BothTailsDead() => Assert.Equal(["tail left", "tail right"], Audit.Open("tail switch").Loads.Select(l => l.Load));

    [Fact]
    public void BrokenBrakeWire_Braking_OneBrakeLampDead() => Assert.Equal(["brake right"], Braking.Open("brake right wire").Loads.Select(l => l.Load));

    // The grounds of both tail lamps come together at minus: nothing but the battery's 0.01 Ω is left.
    [Fact]
    public void ShortAtTails_ReturnsComeTogetherAtMinus()
    {
        Assert.Equal("minus", Audit.Short("tails").To);
        Near(1200, Audit.Short("tails").GreatestCurrent!.Value.Amperes);
        Assert.Equal(FaultEnding.Cleared, Audit.Short("tails").Ending);
    }

    // A tail lamp: 12 V over 0.01, 0.05 and 0.05 Ω.
    [Fact]
    public void ShortAtTailLamp_WireAndStrapAreInTheLoop() => Near(12 / 0.11, Audit.Short("tail right +").GreatestCurrent!.Value.Amperes);
}
