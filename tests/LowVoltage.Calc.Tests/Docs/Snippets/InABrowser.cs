using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class InABrowser
{
    public static void WhatAPageShows()
    {
        CircuitRequirements requirements = new()
        {
            Name = "reading lamp",
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.Lamp(Power.FromWatts(21), ElectricPotential.FromVolts(12)),
            Feed = Length.FromMeters(4),
            Return = ReturnPath.Wire(Length.FromMeters(4)),
            Joints = [Joint.Create("joints", ElectricResistance.FromMilliohms(6))],
            Upstream = ElectricResistance.FromMilliohms(12),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(35), LoadedConductors = 4 },
            Insulation = InsulationMaterial.PolyvinylChloride,
        };
        #region what-a-page-shows
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        string drawing = design.Diagram.ToSvg("drawing"); // an svg element, to be put into the page

        Console.WriteLine($"{design.Verdict}: {design.Wire} with {design.Fuse}");
        foreach (CheckResult check in design.Checks.Take(3))
        {
            Console.WriteLine($"- {check}");
        }

        if (design.Fuse is { } fuse)
        {
            Console.WriteLine(CircuitDesigner.LongestRun(requirements, design.Wire, fuse, design.Rules));
            Console.WriteLine(CircuitDesigner.HottestAmbient(requirements, design.Wire, fuse, design.Rules));
        }
        #endregion
    }
}
