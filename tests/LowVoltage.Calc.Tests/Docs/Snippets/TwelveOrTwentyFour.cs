using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class TwelveOrTwentyFour
{
    public static void TwelveOrTwentyFourVolts()
    {
        #region twelve-or-twenty-four-volts
        foreach (int blocks in new[] { 1, 2 })
        {
            CircuitDesign design = CircuitDesigner.Design(
                new CircuitRequirements
                {
                    Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(250), blocksInSeries: blocks),
                    Load = Load.ConstantPower(Power.FromWatts(120), efficiency: 0.9),
                    Feed = Length.FromMeters(8),
                    Return = ReturnPath.Wire(Length.FromMeters(8)),
                    Joints = [Joint.Create("fuse, holder and crimps", ElectricResistance.FromMilliohms(5))],
                    Upstream = ElectricResistance.FromMilliohms(12),
                    Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
                    Insulation = InsulationMaterial.CrossLinkedPolyethylene,
                },
                DesignRules.RoadVehicle);
            OperatingPoint nominal = design.SupplyRange!.Nominal;
            Console.WriteLine(
                $"{12 * blocks} V: {design.Wire} with {design.Fuse}, {nominal.Current.Amperes:0.0} A, "
                + $"{(double)nominal.PathLoss.Watts:0.0} W lost, {design.ConductorMass.Kilograms:0.00} kg of copper");
        }
        #endregion
    }
}
