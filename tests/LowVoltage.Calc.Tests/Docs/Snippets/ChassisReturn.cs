using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ChassisReturn
{
    public static void ChassisOrWire()
    {
        #region chassis-or-wire
        var ways = new (string Name, ReturnPath Path)[]
        {
            ("wire", ReturnPath.Wire(Length.FromMeters(4))),
            ("chassis of 2 mΩ", ReturnPath.Chassis(ElectricResistance.FromMilliohms(2))),
            ("chassis, rusty bolt, 40 mΩ", ReturnPath.Chassis(ElectricResistance.FromMilliohms(40))),
        };

        foreach ((string name, ReturnPath back) in ways)
        {
            CircuitDesign design = CircuitDesigner.Design(
                new CircuitRequirements
                {
                    Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
                    Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(8)),
                    Feed = Length.FromMeters(4),
                    Return = back,
                    Joints = [Joint.Create("fuse, holder and crimps", ElectricResistance.FromMilliohms(6))],
                    Upstream = ElectricResistance.FromMilliohms(12),
                    Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
                    Insulation = InsulationMaterial.CrossLinkedPolyethylene,
                },
                DesignRules.RoadVehicle);
            Console.WriteLine($"{name}: {design}");
        }
        #endregion
    }
}
