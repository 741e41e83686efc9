using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Proof.Simulation;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>Small craft: warmer air never takes a thinner wire, and a full bundle carries no more than its own heat allows.</summary>
public class WarmBoatTests
{
    [Theory]
    [InlineData(150, 2)]
    [InlineData(200, 7)]
    [InlineData(250, 5)]
    [InlineData(350, 7)]
    public void Design_WarmerAir_TakesNoThinnerWire(double watts, int conductors)
    {
        double before = 0;
        foreach (double celsius in new double[] { 20, 30, 31, 38, 40, 45, 50 })
        {
            double area = CircuitDesigner.Design(Boat(watts, conductors, celsius), DesignRules.SmallCraft).Wire.Area.SquareMillimeters;
            Assert.True(area >= before * 0.999, $"{area} mm² at {celsius} °C, {before} mm² below");
            before = area;
        }
    }

    [Fact]
    public void HottestAmbient_OfADesignFor50_IsAtLeastThat()
    {
        CircuitRequirements asked = Boat(200, 7, 50);
        CircuitDesign design = CircuitDesigner.Design(asked, DesignRules.SmallCraft);
        Temperature hottest = CircuitDesigner.HottestAmbient(asked, design.Wire, design.Fuse!, DesignRules.SmallCraft).Value!.Value;
        Assert.InRange(hottest.DegreesCelsius, 50 - 1e-3, 90);
    }

    [Fact]
    public void Verify_24LoadedWires_RatedNoHigherThanTheirHeatAllows()
    {
        // The table halves its current for 7 to 24 wires: 35 A in 8 AWG. A bundle of 24 in still air leaves much less.
        OwnWire wire = new(Awg(8), InsulationMaterial.CrossLinkedPolyethylene, null);
        double allowed = OwnBundle.Amperes(wire, 24, 90, 30, 0);
        Assert.True(allowed * 1.06 < 35, $"{allowed}");
        CircuitDesign design = CircuitDesigner.Verify(Boat(100, 24, 30), Awg(8), Blade(15), DesignRules.SmallCraft);
        Assert.True(design.Of(CheckKind.ContinuousCurrent).Limit <= allowed * 1.06, design.Of(CheckKind.ContinuousCurrent).ToString());
    }

    private static CircuitRequirements Boat(double watts, int conductors, double celsius) => Circuit(
        Load.ConstantPower(W(watts)), feed: 1.5, ambient: celsius, conductors: conductors, insulation: InsulationMaterial.CrossLinkedPolyethylene, drop: DropLimit.Percent(10));
}
