using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

// One design and no more, or with "empty" nothing at all: the difference is what the first design of a process costs.
if (args.Length == 0)
{
    First.Design();
}

internal static class First
{
    // A method of its own: an empty run shall not load the library.
    internal static void Design()
    {
        CircuitDesign design = CircuitDesigner.Design(
            new CircuitRequirements
            {
                Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
                Load = Load.ConstantPower(Power.FromWatts(60)),
                Feed = Length.FromMeters(5.5),
                Return = ReturnPath.Wire(Length.FromMeters(5.5)),
                Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
                Insulation = InsulationMaterial.CrossLinkedPolyethylene,
            },
            DesignRules.RoadVehicle);
        Console.WriteLine($"{design.Wire.Name}, {design.Fuse}");
    }
}
