using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>A drop that the supply lead and the joints have used up before the wire begins: no copper in the wire cures that.</summary>
public class LostBeforeTheWireTests
{
    /// <summary>It took 95 mm² for 2.5 m, the lead alone lost 0.53 V of the 0.36 V.</summary>
    [Fact]
    public void LeadLosesMoreThanIsAllowed_WireDoesNotGrow()
    {
        CircuitRequirements asked = Lamp(upstreamMilliOhms: 8.9);
        CircuitDesign design = CircuitDesigner.Design(asked, DesignRules.RoadVehicle), alone = CircuitDesigner.Design(Lamp(0), DesignRules.RoadVehicle);

        Assert.True(design.IsNearest);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.VoltageDrop).Outcome);
        Assert.InRange(design.Wire.Area.SquareMillimeters, 0.99 * alone.Wire.Area.SquareMillimeters, 1.3 * alone.Wire.Area.SquareMillimeters);
        Assert.Contains(design.Advice, text => text.StartsWith("No wire is thick enough: what was stated beside it", StringComparison.Ordinal));
    }

    /// <summary>By itself the wire keeps to the allowance: the drop less what the lead takes of it.</summary>
    [Theory]
    [InlineData(8.9)]
    [InlineData(14)]
    [InlineData(20)]
    public void LeadLosesMoreThanIsAllowed_WireKeepsToItByItself(double upstreamMilliOhms)
    {
        CircuitDesign design = CircuitDesigner.Design(Lamp(upstreamMilliOhms), DesignRules.RoadVehicle);
        Assert.InRange(design.Of(CheckKind.VoltageDrop).Value!.Value - (60 * upstreamMilliOhms / 1000), 0.2, 0.36);
    }

    /// <summary>The start of a large lamp fails beside the drop, whatever the size, and more copper lets only more of it through.</summary>
    [Theory]
    [InlineData(20, false)]
    [InlineData(30, false)]
    [InlineData(20, true)]
    [InlineData(30, true)]
    public void LeadLosesMoreThanIsAllowedAndTheStartFails_WireDoesNotGrow(double upstreamMilliOhms, bool withMain)
    {
        DesignRules rules = new(DesignRules.RoadVehicle) { Fuses = Upstream.Mains.HighBreakingBlades };
        CircuitRequirements asked = Large(upstreamMilliOhms);
        asked = withMain ? asked.WithUpstreamProtection(Upstream.Mains.OnTerminal(Upstream.Mains.Gg(63), 35, 1)) : asked;
        CircuitDesign design = CircuitDesigner.Design(asked, rules), alone = CircuitDesigner.Design(Large(0), rules);

        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.VoltageDrop).Outcome);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.InrushHeld).Outcome);
        Assert.True(design.Wire.Area.SquareMillimeters <= 1.3 * alone.Wire.Area.SquareMillimeters, $"{design} against {alone}");
    }

    [Fact]
    public void LeadLosesAllButALittle_WireStillGrows()
    {
        CircuitDesign design = CircuitDesigner.Design(Lamp(upstreamMilliOhms: 4), DesignRules.RoadVehicle), alone = CircuitDesigner.Design(Lamp(0), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.VoltageDrop).Outcome);
        Assert.True(design.Wire.Area > alone.Wire.Area);
    }

    private static CircuitRequirements Large(double upstreamMilliOhms) => Circuit(
        Load.Lamp(W(420), V(12)), Source.BehindResistance(V(12), MilliOhm(4)), feed: 2.5, insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: upstreamMilliOhms);

    // 60 A over 2.5 m each way; of 12 V 3 % are allowed.
    private static CircuitRequirements Lamp(double upstreamMilliOhms) => Circuit(
        Load.ConstantCurrent(A(60)), Source.BehindResistance(V(12), MilliOhm(4)), feed: 2.5, insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: upstreamMilliOhms);
}
