using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class WhatBreaks
{
    public static void BreakEverything()
    {
        #region break-everything
        Harness van = Van();
        FaultAudit audit = FaultAudit.Run(van);

        Console.WriteLine($"{audit.Faults.Count} faults, {audit.Findings.Count} of them to act on");
        foreach (HarnessFault fault in audit.Worst.Take(5))
        {
            Console.WriteLine($"{fault.Rank}: {fault.Text}");
        }
        #endregion
    }

    public static void LoseAGround()
    {
        #region lose-a-ground
        HarnessFault lost = FaultAudit.Run(Van()).Find(HarnessFaultKind.Interruption, "coupling ground")!;

        foreach (FaultedLoad load in lost.Loads)
        {
            Console.WriteLine(
                $"{load.Load}: {load.Effect}, "
                + $"{load.Before.Volts:0.00} V before, {load.After.Volts:0.00} V now, through {load.Through}");
        }
        #endregion
    }

    #region the-van
    private static Harness Van()
    {
        Place cabin = Place.Create(Temperature.FromDegreesCelsius(40));
        InsulationMaterial insulation = InsulationMaterial.CrossLinkedPolyethylene;
        Conductor Wire(string size) => Conductor.Iso6722(MetricSize.Parse(size));
        Load Lamp(double watts) => Load.Lamp(Power.FromWatts(watts), ElectricPotential.FromVolts(12));
        FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));

        return new HarnessBuilder("van with a trailer", DesignRules.RoadVehicle)
            .Terminals("battery +", "battery -", "charger +", "fused", "reading +", "tail line", "brake line", "trailer tail +", "trailer brake +")
            .Busbars("panel").Grounds("frame", "trailer ground")
            .Source("battery", "battery +", "battery -", Battery.LeadAcid(ElectricCurrent.FromAmperes(600)))
            .Source("charger", "charger +", "battery -", Source.CurrentLimited(ElectricPotential.FromVolts(14.2), ElectricCurrent.FromAmperes(30)))
            .Fuse("main fuse", "battery +", "fused", FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(60)))
            .Wire("main lead", "fused", "panel", Wire("16 mm²"), Length.FromMeters(1.5), cabin, insulation)
            .Wire("charger lead", "charger +", "panel", Wire("2.5 mm²"), Length.FromMeters(3), cabin, insulation)
            .Terminals("reading fused", "tail fused", "brake fused")
            .Fuse("reading fuse", "panel", "reading fused", Blade(25))
            .Wire("reading wire", "reading fused", "reading +", Wire("0.5 mm²"), Length.FromMeters(7), cabin, insulation)
            .Fuse("tail fuse", "panel", "tail fused", Blade(7.5))
            .Wire("tail wire", "tail fused", "tail line", Wire("1 mm²"), Length.FromMeters(5), cabin, insulation)
            .Fuse("brake fuse", "panel", "brake fused", Blade(10))
            .Switch("brake switch", "brake fused", "brake line", ElectricResistance.Zero, isClosed: false)
            .Wire("coupling tail", "tail line", "trailer tail +", Wire("1 mm²"), Length.FromMeters(6), cabin, insulation)
            .Wire("coupling brake", "brake line", "trailer brake +", Wire("1 mm²"), Length.FromMeters(6), cabin, insulation)
            .Wire("coupling ground", "trailer ground", "frame", Wire("2.5 mm²"), Length.FromMeters(6), cabin, insulation)
            .Chassis("chassis", "frame", "battery -", ElectricResistance.FromMilliohms(3))
            .Load("reading light", "reading +", "frame", Lamp(10))
            .Load("trailer tail lamp", "trailer tail +", "trailer ground", Lamp(10))
            .Load("trailer brake lamp", "trailer brake +", "trailer ground", Lamp(21))
            .Load("van brake lamp", "brake line", "frame", Lamp(21))
            .Build();
    }
    #endregion
}
