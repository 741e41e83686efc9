using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class LongRun
{
    public static void SizeALongRun()
    {
        #region size-a-long-run
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(4)),
            Feed = Length.FromMeters(12),
            Return = ReturnPath.Wire(Length.FromMeters(12)),
            Joints = [Joint.Create("fuse, holder, two plugs", ElectricResistance.FromMilliohms(10))],
            Upstream = ElectricResistance.FromMilliohms(12),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
            Insulation = InsulationMaterial.PolyvinylChloride,
            DropLimit = DropLimit.Percent(3),
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        DesignLimit<Length> longest = CircuitDesigner.LongestRun(
            requirements, design.Wire!, design.Fuse!, DesignRules.RoadVehicle);

        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}");
        Console.WriteLine(design.Find(CheckKind.VoltageDrop));
        Console.WriteLine($"next smaller: {design.Rejected[^1]}");
        Console.WriteLine($"with that wire and fuse up to {longest.Value!.Value.Meters:0.0} m one way");
        #endregion
    }
}
