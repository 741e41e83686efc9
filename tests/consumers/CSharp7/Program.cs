using System;
using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using UnitsNet;

// An invented van: a fan in the roof. Everything is said without init and required, and the numbers are the same to the last bit as anywhere else.
internal static class Program
{
    private static int Main()
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        Place roof = Place.Create(Temperature.FromDegreesCelsius(50)).WithLoadedConductors(6);
        CircuitRequirements fan = CircuitRequirements.Create(
                Battery.LeadAcid(ElectricCurrent.FromAmperes(600)),
                Load.Motor(ElectricCurrent.FromAmperes(4), ElectricCurrent.FromAmperes(12), ElectricCurrent.FromAmperes(16), Duration.FromSeconds(0.1)).WithThermalCutOut(),
                Length.FromMeters(4.5),
                ReturnPath.Wire(Length.FromMeters(4.5)),
                roof,
                InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B))
            .WithName("roof fan")
            .WithUpstream(ElectricResistance.FromMilliohms(14));

        DesignRules rules = DesignRules.RoadVehicle.WithFusePractice(DesignRules.RoadVehicle.FusePractice.WithFaultTime(Duration.FromSeconds(2)));
        CircuitDesign design = CircuitDesigner.Design(fan, rules);
        Console.WriteLine(design);
        foreach (CheckResult check in design.Checks)
        {
            Console.WriteLine(check.Kind.Id + " " + check.Outcome + " " + (check.Value.HasValue ? BitConverter.DoubleToInt64Bits(check.Value.Value).ToString("x16", CultureInfo.InvariantCulture) : "-"));
        }

        FuseSeries own = FuseSeries.Create(FuseSeriesDefinition.Create("invented", "fuse", new[] { ElectricCurrent.FromAmperes(5), ElectricCurrent.FromAmperes(10) }, LowVoltage.Calc.References.Reference.CommonPractice("invented")));
        Console.WriteLine(own.Ratings.Count);
        return design.Verdict == Verdict.Pass ? 0 : 1;
    }
}
