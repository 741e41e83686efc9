using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class FortyEightVolts
{
    public static void ConverterOnSixteenCells()
    {
        #region converter-on-sixteen-cells
        FuseSeries highBreaking = FuseSeries.IndustrialGgBladeContacts; // gG, 250 V d.c., 25 kA
        CircuitPath lead = CircuitPath.TwoWire(Conductor.Iec60228(MetricSize.FromSquareMillimeters(25), Iec60228Class.Flexible), Length.FromMeters(1.5));
        UpstreamProtection main = UpstreamProtection
            .Fuse(highBreaking.SmallestAtLeast(ElectricCurrent.FromAmperes(63)))
            .WithUpstream(ElectricResistance.Zero)
            .WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(9000)) // its data sheet; this one is invented
            .WithLead(lead);
        var converter = new CircuitRequirements
        {
            Source = Battery.LithiumIronPhosphate(cellsInSeries: 16, ElectricCharge.FromAmpereHours(100)),
            Load = Load.ConstantPower(Power.FromWatts(400), efficiency: 0.92),
            Feed = Length.FromMeters(3),
            Return = ReturnPath.Wire(Length.FromMeters(3)),
            Upstream = lead.ResistanceAt(Temperature.FromDegreesCelsius(20)),
            UpstreamProtection = [main],
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(30) },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        CircuitDesign design = CircuitDesigner.Design(converter, new DesignRules(DesignRules.Bench) { Fuses = highBreaking });

        Console.WriteLine(design);
        foreach (CheckKind kind in new[] { CheckKind.FuseVoltage, CheckKind.BreakingCapacity, CheckKind.MainFuseProtectsLead, CheckKind.MainFuseBreakingCapacity, CheckKind.SelectivityOfFuses })
        {
            Console.WriteLine($"- {design.Find(kind)}");
        }

        Console.WriteLine($"With 58 V blades: {CircuitDesigner.Design(converter, new DesignRules(DesignRules.Bench) { Fuses = FuseSeries.RoadVehicleBlade58 })}");
        #endregion
    }
}
