using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class LithiumPack
{
    public static void FanOnALithiumPack()
    {
        #region fan-on-a-lithium-pack
        // 4 m of 10 mm² each way to the fuse panel, behind a main fuse at the pack.
        CircuitPath lead = CircuitPath.TwoWire(Conductor.Iso6722(MetricSize.FromSquareMillimeters(10)), Length.FromMeters(4));
        ElectricResistance links = ElectricResistance.FromMilliohms(0.3);
        UpstreamProtection main = UpstreamProtection
            .Fuse(FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(ElectricCurrent.FromAmperes(32)))
            .WithUpstream(links)
            .WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(1800)) // its data sheet; this one is invented
            .WithLead(lead);
        var fan = new CircuitRequirements
        {
            Source = Battery.LithiumIronPhosphate(cellsInSeries: 4, ElectricCharge.FromAmpereHours(200)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(3.2)),
            Feed = Length.FromMeters(4.5),
            Return = ReturnPath.Wire(Length.FromMeters(4.5)),
            Upstream = links + lead.ResistanceAt(Temperature.FromDegreesCelsius(20)),
            UpstreamProtection = [main],
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(30) },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        CircuitDesign design = CircuitDesigner.Design(fan, DesignRules.RoadVehicle);

        Console.WriteLine(design);
        foreach (CheckKind kind in new[] { CheckKind.BreakingCapacity, CheckKind.MainFuseProtectsLead, CheckKind.MainFuseBreakingCapacity, CheckKind.FaultOpensMainFuse, CheckKind.SelectivityOfFuses })
        {
            Console.WriteLine($"- {design.Find(kind)}");
        }

        CircuitDesign beside = CircuitDesigner.Design(
            fan.WithUpstream(links).WithUpstreamProtection(main.WithLead(null)), DesignRules.RoadVehicle);
        Console.WriteLine($"Panel beside the pack: {beside}");
        #endregion
    }
}
