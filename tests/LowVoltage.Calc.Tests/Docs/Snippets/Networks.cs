using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class Networks
{
    public static void FedFromBothEnds()
    {
        #region fed-from-both-ends
        ResistiveNetwork network = ResistiveNetwork.Create(
            reference: "minus",
            NetworkElement.VoltageSource("bow battery", "bow", "minus", ElectricPotential.FromVolts(12.7), ElectricResistance.FromMilliohms(9)),
            NetworkElement.VoltageSource("stern battery", "stern", "minus", ElectricPotential.FromVolts(12.4), ElectricResistance.FromMilliohms(15)),
            NetworkElement.Resistance("bow wire", "bow", "pump", ElectricResistance.FromMilliohms(20)),
            NetworkElement.Resistance("stern wire", "stern", "pump", ElectricResistance.FromMilliohms(30)),
            NetworkElement.ConstantPower("pump motor", "pump", "minus", Power.FromWatts(300)));

        ResistiveNetworkSolution solution = network.Solve();
        Console.WriteLine($"{solution.VoltageOf("pump").Volts:0.00} V at the pump");
        foreach (string battery in new[] { "bow battery", "stern battery" })
        {
            Console.WriteLine($"{battery} gives {solution.CurrentOf(battery).Amperes:0.0} A");
        }

        Console.WriteLine($"{solution.Heat.Watts:0.0} W of heat, {solution.Drawn.Watts:0.0} W at the pump");
        #endregion
    }

    public static void SideBySide()
    {
        #region side-by-side
        ParallelSources idle = ParallelSources.Solve(
            total: ElectricCurrent.Zero,
            SupplyLevel.Nominal,
            Source.BehindResistance(ElectricPotential.FromVolts(12.7), ElectricResistance.FromMilliohms(9)),
            Source.BehindResistance(ElectricPotential.FromVolts(12.4), ElectricResistance.FromMilliohms(15)));

        foreach (SourceShare share in idle.Shares)
        {
            Console.WriteLine($"{share.Source}: {share.Current.Amperes:0.0} A{(share.IsCharged ? ", charged" : "")}");
        }
        #endregion
    }
}
