using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class Landing
{
    public static void FirstAnswer()
    {
        #region first-answer
        // An invented van: a cooler 5.5 m from the fuse panel, a second wire as the way back.
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantPower(Power.FromWatts(60), efficiency: 0.9)
                .WithMinimumVoltage(ElectricPotential.FromVolts(10.5)),
            Feed = Length.FromMeters(5.5),
            Return = ReturnPath.Wire(Length.FromMeters(5.5)),
            Joints = [Joint.Create("fuse, holder and crimps", ElectricResistance.FromMilliohms(8))],
            Upstream = ElectricResistance.FromMilliohms(12),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };

        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);

        Console.WriteLine(design);
        Console.WriteLine($"the check that decides: {design.Find(CheckKind.VoltageDrop)}");
        Console.WriteLine($"the next smaller size:  {design.Rejected[^1]}");
        #endregion
    }
}
