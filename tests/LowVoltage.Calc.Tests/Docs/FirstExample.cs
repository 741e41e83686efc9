using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The README's first example. The README holds this region and what it prints; a test compares both.</summary>
internal static class FirstExample
{
    public static void Run(TextWriter output)
    {
        #region first-example
        // An invented van: a 40 A main fuse on the battery, 4 m of 25 mm² to the fuse panel, then a cooler 5.5 m on, a second wire as the way back.
        UpstreamProtection main = UpstreamProtection
            .Fuse(FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(ElectricCurrent.FromAmperes(40)))
            .WithUpstream(ElectricResistance.Zero)
            .WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(3000)) // from its data sheet
            .WithLead(CircuitPath.TwoWire(Conductor.Iso6722(MetricSize.FromSquareMillimeters(25)), Length.FromMeters(4)));
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantPower(Power.FromWatts(60), efficiency: 0.9, minimumVoltage: ElectricPotential.FromVolts(10.5)),
            Feed = Length.FromMeters(5.5),
            Return = ReturnPath.Wire(Length.FromMeters(5.5)),
            Joints = [Joint.Create("fuse, holder and crimps", ElectricResistance.FromMilliohms(8))],
            Upstream = ElectricResistance.FromMilliohms(12),
            UpstreamProtection = [main],
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };

        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);

        output.WriteLine(design);
        foreach (CheckResult check in design.Checks)
        {
            output.WriteLine($"- {check}");
        }

        output.WriteLine($"Next smaller size: {design.Rejected[^1]}");
        #endregion
    }
}
