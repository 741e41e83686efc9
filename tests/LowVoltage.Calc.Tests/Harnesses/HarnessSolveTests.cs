using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A harness solved: laws of circuit theory on answers that a person can work out.</summary>
public class HarnessSolveTests
{
    private static readonly Place Cabin = Place.Create(Temperature.FromDegreesCelsius(30));

    // Two lamps of 12 Ω behind one resistance of 1 Ω at 13 V: 13/(1 + 6) A in all.
    [Fact]
    public void Solve_TwoResistancesBehindOne_ShareTheCurrent()
    {
        Harness harness = new HarnessBuilder("two lamps", DesignRules.RoadVehicle)
            .Terminals("plus", "minus").Busbars("panel")
            .Source("battery", "plus", "minus", Source.Ideal(ElectricPotential.FromVolts(13)))
            .Resistance("lead", "plus", "panel", ElectricResistance.FromOhms(1))
            .Load("left", "panel", "minus", Load.Resistance(ElectricResistance.FromOhms(12)))
            .Load("right", "panel", "minus", Load.Resistance(ElectricResistance.FromOhms(12)))
            .Build();
        HarnessSolution at = harness.Solve();

        Assert.True(at.Exists);
        Assert.Equal(13.0 / 7, at.CurrentOf("lead").Amperes, 12);
        Assert.Equal(13.0 / 14, at.CurrentAt("left").Amperes, 12);
        Assert.Equal(13.0 * 6 / 7, at.VoltageAt("right").Volts, 12);
        Assert.Equal(13.0 / 7, at.CurrentFrom("battery").Amperes, 12);
        Assert.Equal(LoadCondition.Running, at.ConditionOf("left"));
        Assert.Equal((double)at.Given.Watts, (double)(at.Lost + at.Consumed).Watts, 9);
    }

    // One lamp's ground is lost where both lamps' grounds meet: two lamps of 6 Ω in series across 12 V through the shared stud.
    [Fact]
    public void Solve_LostGround_FeedsAnotherLampBackwards()
    {
        Harness harness = new HarnessBuilder("lost ground", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "left +", "right +").Grounds("stud")
            .Source("battery", "plus", "minus", Source.Ideal(ElectricPotential.FromVolts(12)))
            .Switch("left switch", "plus", "left +", ElectricResistance.Zero)
            .Switch("right switch", "plus", "right +", ElectricResistance.Zero, isClosed: false)
            .Switch("stud to minus", "stud", "minus", ElectricResistance.Zero, isClosed: false)
            .Load("left", "left +", "stud", Load.Resistance(ElectricResistance.FromOhms(6)))
            .Load("right", "right +", "stud", Load.Resistance(ElectricResistance.FromOhms(6)))
            .Load("pilot", "right +", "minus", Load.Resistance(ElectricResistance.FromOhms(6)))
            .Build();
        HarnessSolution at = harness.Solve();

        // 12 V over three times 6 Ω in a row.
        Assert.Equal(2.0 / 3, at.CurrentAt("left").Amperes, 12);
        Assert.Equal(-2.0 / 3, at.CurrentAt("right").Amperes, 12);
        Assert.Equal(4, at.VoltageAt("pilot").Volts, 12);
        Assert.Equal(LoadCondition.Reversed, at.ConditionOf("right"));
        Assert.Contains(at.Remarks, r => r.Contains("right is fed backwards", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(SupplyLevel.Minimum)]
    [InlineData(SupplyLevel.Nominal)]
    [InlineData(SupplyLevel.Maximum)]
    public void Solve_OneLoop_IsTheCircuitToTwelveDigits(SupplyLevel level)
    {
        Conductor wire = DesignRules.RoadVehicle.Conductors.SmallestAtLeast(Area.FromSquareMillimeters(1.5));
        Source battery = Battery.LeadAcid(ElectricCurrent.FromAmperes(600));
        Load load = Load.Together(Load.ConstantPower(Power.FromWatts(60)), Load.Motor(
            ElectricCurrent.FromAmperes(5), ElectricCurrent.FromAmperes(20), ElectricCurrent.FromAmperes(20), Duration.FromSeconds(0.3)).WithDutyCycle(DutyCycle.FromFraction(0.3)));
        CircuitRequirements asked = new()
        {
            Source = battery,
            Load = load,
            Feed = Length.FromMeters(3.5),
            Return = ReturnPath.Chassis(ElectricResistance.FromMilliohms(3)),
            Place = Cabin,
            Insulation = InsulationMaterial.PolyvinylChloride,
            Upstream = ElectricResistance.FromMilliohms(2),
        };
        CircuitDesign circuit = CircuitDesigner.Verify(asked, wire, FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(15)), DesignRules.RoadVehicle);
        OperatingPoint point = level switch { SupplyLevel.Minimum => circuit.SupplyRange.Minimum, SupplyLevel.Maximum => circuit.SupplyRange.Maximum, _ => circuit.SupplyRange.Nominal };

        Harness harness = new HarnessBuilder("one loop", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "panel", "fused", "pump +").Grounds("frame")
            .Source("battery", "plus", "minus", battery)
            .Resistance("lead", "plus", "panel", ElectricResistance.FromMilliohms(2))
            .Fuse("F1", "panel", "fused", FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(15)))
            .Wire("feed", "fused", "pump +", wire, Length.FromMeters(3.5), Cabin, InsulationMaterial.PolyvinylChloride)
            .Chassis("chassis", "frame", "minus", ElectricResistance.FromMilliohms(3))
            .Load("pump", "pump +", "frame", load)
            .Build();
        HarnessSolution at = harness.Solve(level);

        Assert.True(at.Exists);
        Assert.Equal(point.Current.Amperes, at.CurrentOf("feed").Amperes, 1e-12 * point.Current.Amperes);
        Assert.Equal(point.VoltageAtLoad.Volts, at.VoltageAt("pump").Volts, 1e-12 * 12);
        Assert.Equal(point.HeatingCurrent.Amperes, at.HeatingCurrentOf("feed").Amperes, 1e-12 * point.Current.Amperes);
    }
}
