using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class BatteryShort
{
    public static void WhatABatteryPushes()
    {
        #region what-a-battery-pushes
        FuseRating blade = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(30));
        Source[] batteries =
        [
            Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600), stringsInParallel: 2),
            Battery.LithiumIronPhosphate(cellsInSeries: 4, ElectricCharge.FromAmpereHours(100)),
        ];
        foreach (Source battery in batteries)
        {
            ProspectiveCurrent current = ProspectiveCurrent.AtSource(battery);
            RatingCheck check = FuseRatingChecks.BreakingCapacity(blade, current.Greatest!.Value);
            Console.WriteLine(
                $"{battery.Name}, {battery.LeastResistance.Milliohms:0.0} to {battery.GreatestResistance.Milliohms:0.0} mΩ: "
                + $"{current.Least!.Value.Amperes:0} to {current.Greatest.Value.Amperes:0} A; blade fuse at the terminals: {check.Verdict}");
        }
        #endregion
    }
}
