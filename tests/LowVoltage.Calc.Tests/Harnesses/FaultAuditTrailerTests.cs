using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using UnitsNet;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A trailer behind its coupling, and a towing vehicle with a charger at the far end of its bar: ten faults by hand.</summary>
/// <remarks>
/// Battery 12 V behind 0.01 Ω, main fuse 40 A, charger of 14 V that holds 25 A without a fuse of its own. Coupling contacts 0.02 Ω. Tail lamp 12 Ω and brake lamp 6 Ω on the trailer's ground, brake lamp
/// 6 Ω and dome lamp 12 Ω on the vehicle; the brake switch is open. The hitch joins the trailer to the frame with 8 Ω.
/// </remarks>
public class FaultAuditTrailerTests
{
    private static readonly Place Air = Place.Create(Temperature.FromDegreesCelsius(30));
    private static readonly Harness Insulated = Make(hitch: false);
    private static readonly Harness Hitched = Make(hitch: true);
    private static readonly FaultAudit Without = FaultAudit.Run(Insulated, [LoadCase.AllOn]);
    private static readonly FaultAudit With = FaultAudit.Run(Hitched, [LoadCase.AllOn]);

    private static Harness Make(bool hitch)
    {
        HarnessBuilder builder = new HarnessBuilder(hitch ? "trailer on a hitch" : "trailer", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "charger +", "tail line", "brake line", "trailer tail +", "trailer brake +").Busbars("bar").Grounds("trailer ground")
            .Source("battery", "plus", "minus", Battery(12, 0.01))
            .Fuse("main", "plus", "bar", Blade(40))
            .Source("charger", "charger +", "minus", Source.CurrentLimited(ElectricPotential.FromVolts(14), ElectricCurrent.FromAmperes(25)))
            .Wire("charger lead", "charger +", "bar", Conductor.Iso6722(MetricSize.FromSquareMillimeters(1)), Length.FromMeters(2), Air, InsulationMaterial.CrossLinkedPolyethylene)
            .Fuse("tail fuse", "bar", "tail line", Blade(10))
            .Switch("brake switch", "bar", "brake line", Ohms(0), isClosed: false)
            .Resistance("coupling tail", "tail line", "trailer tail +", Ohms(0.02))
            .Resistance("coupling brake", "brake line", "trailer brake +", Ohms(0.02))
            .Resistance("coupling ground", "trailer ground", "minus", Ohms(0.02))
            .Load("tail", "trailer tail +", "trailer ground", Lamp(12))
            .Load("trailer brake", "trailer brake +", "trailer ground", Lamp(6))
            .Load("brake", "brake line", "minus", Lamp(6))
            .Load("dome", "bar", "minus", Lamp(12));
        return hitch ? builder.Chassis("hitch", "trailer ground", "minus", Ohms(8)).Build() : builder.Build();
    }

    // The charger holds 25 A into the bar; what the loads leave of that charges the battery: V = 12 + 0.01·(25 − V/12 − V/R).
    private static double Bar(double ohms) => 12.25 / (1 + (0.01 / 12) + (0.01 / ohms));

    // The coupling's ground is lost: bar → tail 12 Ω → trailer ground → trailer brake 6 Ω backwards → coupling → brake lamp of the vehicle 6 Ω → minus: 24.04 Ω.
    [Fact]
    public void LostCouplingGround_BrakeLampOfTheVehicleGlows()
    {
        HarnessFault fault = Without.Open("coupling ground");
        double amperes = Bar(24.04) / 24.04;

        Assert.Equal(LoadEffect.Reversed, fault.On("trailer brake").Effect);
        Near(-6 * amperes, fault.On("trailer brake").After.Volts);
        Near(6 * amperes, fault.On("brake").After.Volts);
        Assert.Equal("coupling brake", fault.On("brake").Through);
        Assert.Equal("coupling brake", fault.On("trailer brake").Through);
    }

    // The tail lamp keeps 12 Ω of 24.04 Ω.
    [Fact]
    public void LostCouplingGround_TailLampKeepsHalf() => Near(12 * Bar(24.04) / 24.04, Without.Open("coupling ground").On("tail").After.Volts);

    // With the hitch, 8 Ω beside 6 + 0.02 + 6 Ω: 4.803 Ω. The tail lamp gets 12 of 16.823 Ω.
    [Fact]
    public void LostCouplingGround_HitchTakesOver()
    {
        double beside = 8 * 12.02 / 20.02, amperes = Bar(12.02 + beside) / (12.02 + beside);

        Near(12 * amperes, With.Open("coupling ground").On("tail").After.Volts);
        Near(-6 * amperes * beside / 12.02, With.Open("coupling ground").On("trailer brake").After.Volts);
    }

    // The hitch carries 0.25 % beside the coupling's 0.02 Ω: broken, nothing happens.
    [Fact]
    public void BrokenHitch_NobodyNotices() => Assert.Equal(FaultRank.Harmless, With.Open("hitch").Rank);

    // The charger at the far end: at the bar the battery gives 1200 A and the 40 A fuse opens; the charger's 25 A go on. 1 mm² (18.5 mΩ/m) carries that at 30 °C or not, and it is told which.
    [Fact]
    public void ShortAtBar_ChargerGoesOn()
    {
        HarnessFault fault = Without.Short("bar");

        Assert.Equal(FaultEnding.NotCleared, fault.Ending);
        Assert.Equal("main", Assert.Single(fault.Openings, o => o.IsSure).Fuse);
        Near(25, fault.RemainingCurrent!.Value.Amperes);
        FaultedWire lead = Assert.Single(fault.Wires);
        Assert.Equal("charger lead", lead.Wire);
        Near(25, lead.Current.Amperes);
        Assert.Contains("Fit a fuse where the current that stays comes from", fault.Text, StringComparison.Ordinal);
    }

    // The main fuse opens after (240 A)²·0.02 s at the soonest and (240 A)²·0.1 s at the latest over (1200 A)² of the battery alone.
    [Fact]
    public void ShortAtBar_MainFuseInItsBand()
    {
        FuseOpening main = Without.Short("bar").Openings.Single(o => o.Fuse == "main");

        Assert.Equal(240 * 240 * 0.02 / (1200.0 * 1200), main.Least!.Value.Seconds, 1e-12);
        Assert.Equal(240 * 240 * 0.1 / (1200.0 * 1200), main.Longest!.Value.Seconds, 1e-12);
    }

    // Behind the tail fuse everything passes it, from both sources: it clears alone. 12 V behind 0.01 Ω and 25 A of the charger beside: (12 + 0.01·25)/(0.01 + 0.04) = 245 A at the lamp at most, 240 A less what the dome lamp takes at the least.
    [Fact]
    public void ShortAtTailLamp_TailFuseClearsBothSources()
    {
        HarnessFault fault = Without.Short("trailer tail +");

        Assert.Equal("trailer ground", fault.To);
        Assert.Equal(FaultEnding.Cleared, fault.Ending);
        Assert.Equal("tail fuse", fault.Openings[0].Fuse);
        Near(12.25 / 0.05, fault.GreatestCurrent!.Value.Amperes);
        Assert.Equal(60 * 60 * 0.1 / Math.Pow(12 / 0.05, 2), fault.Openings[0].Longest!.Value.Seconds, 3e-5);
    }

    // The main fuse pulled: the bar stays live from the charger.
    [Fact]
    public void PulledMainFuse_BarStaysLiveFromTheCharger()
    {
        HarnessFault fault = Without.Open("main");

        Assert.Equal("charger lead", fault.LiveThrough);
        Assert.Contains("Disconnect the other source", fault.Text, StringComparison.Ordinal);
    }

    // The tail fuse pulled: the tail lamp is dead, and nothing on the brake side can feed it.
    [Fact]
    public void PulledTailFuse_TailDead() => Assert.Equal(["tail"], Without.Open("tail fuse").Loads.Select(l => l.Load));

    // Without the charger's 25 A the bar falls from 12.25 V to 12 V over the same resistances: by 2.04 %.
    [Fact]
    public void BrokenChargerLead_LoadsFallToTheBattery()
    {
        HarnessFault fault = Without.Open("charger lead");

        Assert.Equal(FaultRank.LoadDim, fault.Rank);
        Assert.Equal(12 / 12.25, fault.On("dome").After.Volts / fault.On("dome").Before.Volts, 1e-9);
    }

    // The charger's own terminal: its 25 A stay whatever opens; the battery's part comes over the main fuse, which ends that.
    [Fact]
    public void ShortAtCharger_ItsOwnCurrentStays()
    {
        HarnessFault fault = Without.Short("charger +");

        Assert.Equal(FaultEnding.NotCleared, fault.Ending);
        Near(25, fault.RemainingCurrent!.Value.Amperes);
        Assert.Contains(fault.Openings, o => o.Fuse == "main");
    }

    [Fact]
    public void BrokenCouplingTail_TailDead() => Assert.Equal(["tail"], Without.Open("coupling tail").Loads.Select(l => l.Load));
}
