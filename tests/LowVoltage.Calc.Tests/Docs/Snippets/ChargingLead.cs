using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ChargingLead
{
    public static void LeadWithinTwoTenths()
    {
        #region lead-within-two-tenths
        var requirements = new CircuitRequirements
        {
            Source = Source.CurrentLimited(ElectricPotential.FromVolts(14.4), ElectricCurrent.FromAmperes(40)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(30)),
            Feed = Length.FromMeters(4),
            Return = ReturnPath.Wire(Length.FromMeters(4)),
            Joints = [Joint.Create("fuse and four lugs", ElectricResistance.FromMilliohms(1.5))],
            Upstream = ElectricResistance.Zero,
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
            DropLimit = DropLimit.Volts(ElectricPotential.FromVolts(0.2)),
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        CheckResult drop = design.Find(CheckKind.VoltageDrop)!.Value;

        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}");
        Console.WriteLine(
            $"{drop.Value:0.000} V lost of {drop.Limit:0.0} V, so "
            + $"{14.4 - drop.Value:0.00} V at the battery while it takes 30 A");
        Console.WriteLine(
            $"{design.ConductorMass.Kilograms:0.0} kg of copper, "
            + $"{(double)design.SupplyRange!.Nominal.PathLoss.Watts:0.0} W of heat");
        #endregion
    }
}
