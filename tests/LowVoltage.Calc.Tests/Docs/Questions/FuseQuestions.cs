using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using Console = LowVoltage.Calc.Tests.Docs.Snippets.Console;

namespace LowVoltage.Calc.Tests.Docs.Questions;

/// <summary>Which fuse, where, and when it opens.</summary>
internal static class FuseQuestions
{
    public static void FuseForALoad()
    {
        #region fuse-for-a-load
        ElectricCurrent load = ElectricCurrent.FromAmperes(100 / 12.0);
        ElectricCurrent least = FuseLoading.LeastRatingFor(load, factor: 0.8);
        Console.WriteLine($"{least.Amperes:0.0} A, so the {FuseSeries.RoadVehicleBlade.SmallestAtLeast(least)}");
        #endregion
    }

    public static void TimeToBlow()
    {
        #region time-to-blow
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));
        foreach (double amperes in new[] { 15.0, 20, 35, 60 })
        {
            (Duration least, Duration longest) = fuse.OperatingTime(ElectricCurrent.FromAmperes(amperes));
            Console.WriteLine($"{amperes} A: {least.Seconds:0.###} s to {longest.Seconds:0.###} s");
        }
        #endregion
    }

    public static void FuseThatDoesNotBlow()
    {
        #region fuse-that-does-not-blow
        TimeCurrentCurve curve = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10)).Curve!;
        Console.WriteLine($"stays shut at {curve.NonFusingCurrent!.Value.Amperes:0.0} A for {curve.NonFusingTime!.Value.Hours:0} hours");
        Duration longest = curve.LongestTime(curve.FusingCurrent)!.Value;
        Console.WriteLine($"opens from {curve.FusingCurrent.Amperes:0.0} A up, within {longest.Minutes:0} minutes");
        #endregion
    }

    public static void FuseAndWireFit()
    {
        #region fuse-and-wire-fit
        CircuitRequirements lamp = CircuitRequirements.Create(
            Battery.LeadAcid(ElectricCurrent.FromAmperes(600)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(12)), Length.FromMeters(2),
            ReturnPath.Wire(Length.FromMeters(2)), Place.Create(Temperature.FromDegreesCelsius(50)), InsulationMaterial.PolyvinylChloride);
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(30));
        CircuitDesign asBuilt = CircuitDesigner.Verify(lamp, Conductor.Iso6722(MetricSize.Parse("2.5")), fuse, DesignRules.RoadVehicle);
        Console.WriteLine(asBuilt.Find(CheckKind.FuseProtectsWire));
        #endregion
    }

    public static void FuseNearTheBattery()
    {
        #region fuse-near-the-battery
        foreach (SourceDistance rule in SourceDistance.All)
        {
            Console.WriteLine(rule.Check(Length.FromCentimeters(70), sheathed: true, atBattery: true));
        }
        #endregion
    }

    public static void FuseOnALithiumPack()
    {
        #region fuse-on-a-lithium-pack
        ProspectiveCurrent shorted = ProspectiveCurrent.AtSource(Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100)));
        FuseRating blade = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(30));
        Console.WriteLine(FuseRatingChecks.BreakingCapacity(blade, shorted.Greatest!.Value));
        #endregion
    }

    public static void WhichOpensFirst()
    {
        #region which-opens-first
        FuseRating branch = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));
        foreach (double amperes in new[] { 20.0, 30, 60 })
        {
            FuseRating main = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));
            FuseSelectivity both = FuseAgainstFuse.Check(main, branch, ElectricCurrent.FromAmperes(300));
            Console.WriteLine($"{main.Current.Amperes} A before 10 A: {both.Verdict}");
        }
        #endregion
    }

    public static void StartOfAPump()
    {
        #region start-of-a-pump
        ElectricCurrent running = ElectricCurrent.FromAmperes(5), peak = ElectricCurrent.FromAmperes(20);
        StartWaveform start = StartWaveform.Create(
            [StartSurge.Constant("pump", peak, Duration.FromSeconds(0.3))], running, pathLimit: ElectricCurrent.FromAmperes(200));
        foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings.Where(rating => rating.Current.Amperes is >= 10 and <= 30))
        {
            Console.WriteLine($"{fuse.Current.Amperes} A: {StartAgainstFuse.Check(fuse, start, starts: 1000).Verdict}");
        }
        #endregion
    }
}
