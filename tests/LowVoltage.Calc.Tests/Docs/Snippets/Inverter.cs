using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class Inverter
{
    public static void WireForAnInverter()
    {
        #region wire-for-an-inverter
        var requirements = new CircuitRequirements
        {
            Source = Battery.LithiumIronPhosphate(cellsInSeries: 4, ElectricCharge.FromAmpereHours(200)),
            Load = Load.ConstantPower(Power.FromWatts(1000), efficiency: 0.88, minimumVoltage: ElectricPotential.FromVolts(9.5)),
            Feed = Length.FromMeters(1.2),
            Return = ReturnPath.Wire(Length.FromMeters(1.2)),
            Joints = [Joint.Create("fuse, switch, four lugs", ElectricResistance.FromMilliohms(0.8))],
            Upstream = ElectricResistance.FromMilliohms(0.2),
            Ambient = Temperature.FromDegreesCelsius(40),
            Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);

        SupplyRange range = design.SupplyRange!;
        Console.WriteLine($"full pack {range.Maximum.Current.Amperes:0} A, nominal {range.Nominal.Current.Amperes:0} A, empty pack {range.Minimum.Current.Amperes:0} A");
        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}");
        foreach (DesignCheck open in design.OpenPoints)
        {
            Console.WriteLine($"{open}: {open.Note}");
        }
        #endregion
    }
}
