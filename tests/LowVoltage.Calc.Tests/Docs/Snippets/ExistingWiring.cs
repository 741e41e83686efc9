using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ExistingWiring
{
    public static void CheckWiringThatExists()
    {
        #region check-wiring-that-exists
        // What is there: 4 m of 2.5 mm², a pigtail of 0.75 mm², back through the chassis, a 20 A blade fuse.
        CircuitPath path = CircuitPath.Create(
            [
                Segment.Create(Conductor.Iso6722(MetricSize.Parse("2.5 mm²")), Length.FromMeters(4)),
                Segment.Create(Conductor.Iso6722(MetricSize.Parse("0.75 mm²")), Length.FromMeters(0.4)),
            ],
            ReturnPath.Chassis(ElectricResistance.FromMilliohms(3)))
            .WithFeedJoints(Joint.Create("fuse, holder, plug", ElectricResistance.FromMilliohms(9)));
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(20));
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(9)),
            Feed = Length.FromMeters(4.4),
            Return = path.Return,
            Upstream = ElectricResistance.FromMilliohms(12),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(45), LoadedConductors = 4 },
            Insulation = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
        };

        CircuitDesign found = CircuitDesigner.Verify(requirements, path, fuse, DesignRules.RoadVehicle);

        Console.WriteLine($"{found.Verdict}");
        foreach (CheckResult check in found.Checks.Where(check => check.Outcome != CheckOutcome.Pass))
        {
            Console.WriteLine(check);
        }

        foreach (string advice in found.Advice)
        {
            Console.WriteLine(advice);
        }
        #endregion
    }
}
