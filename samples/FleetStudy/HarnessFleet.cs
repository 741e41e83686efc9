using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;

namespace FleetStudy;

/// <summary>The invented harness of an invented maker of site vans, in every combination of its options.</summary>
/// <remarks>A variant's number is its options: the remainder by the number of batteries is the battery, what is left by the number of bodies the body, and so on.</remarks>
internal static class HarnessFleet
{
    // Open-circuit volts from empty to charging, and the resistance of battery and clamps, fresh and aged: invented, and small batteries throughout.
    private static readonly (string Name, Source Source)[] Batteries = [Small("A, 17 mΩ to 30 mΩ", 17, 30), Small("B, 20 mΩ to 38 mΩ", 20, 38), Small("C, 12 mΩ to 22 mΩ", 12, 22)];

    private static readonly double[] BodyMeters = [2.4, 3, 3.6, 4.2, 4.8, 5.4];
    private static readonly double[] LampSetBackMeters = [0, 0.4, 0.8, 1.2, 1.8, 2.4];
    private static readonly double[] LampWatts = [15, 25, 40, 60];
    private static readonly string[] LampWires = ["1 mm²", "1.5 mm²", "2.5 mm²", "4 mm²"];
    private static readonly double[] FridgeWatts = [0, 35, 50, 65];
    private static readonly double[] PumpAmperes = [3, 5];
    private static readonly string[] MainWires = ["6 mm²", "10 mm²", "16 mm²"];
    private static readonly double[] LampFuses = [5, 7.5];
    private static readonly string[] Grounds = ["body sheet", "wire"];
    private static readonly double[] AmbientCelsius = [25, 35, 45];
    private static readonly int[] Loaded = [2, 3, 6];
    private static readonly InsulationMaterial[] Insulations = [InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene];

    private static readonly Conductor[] LampConductors = [.. LampWires.Select(Wire)];
    private static readonly Conductor[] MainConductors = [.. MainWires.Select(Wire)];
    private static readonly Conductor BranchConductor = Wire("2.5 mm²"), GroundConductor = Wire("4 mm²");
    private static readonly FuseRating MainFuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(30));
    private static readonly FuseRating[] LampFuseRatings = [.. LampFuses.Select(Blade)];
    private static readonly FuseRating BranchFuse = Blade(10), SocketFuse = Blade(10);
    private static readonly ElectricPotential CutOut = ElectricPotential.FromVolts(10.4);
    private static readonly ElectricResistance Sheet = ElectricResistance.FromMilliohms(4), SwitchContact = ElectricResistance.FromMilliohms(8);

    /// <summary>What the variants differ in, the fastest first.</summary>
    public static IReadOnlyList<FleetAxis> Axes { get; } =
    [
        new("battery", [.. Batteries.Select(b => b.Name)]),
        new("body", [.. BodyMeters.Select(m => $"{N(m)} m")]),
        new("lamps set back", [.. LampSetBackMeters.Select(m => $"{N(m)} m")]),
        new("lamps", [.. LampWatts.Select(w => $"{N(w)} W")]),
        new("lamp wire", LampWires),
        new("fridge", [.. FridgeWatts.Select(w => w == 0 ? "none" : $"{N(w)} W")]),
        new("pump", [.. PumpAmperes.Select(a => $"{N(a)} A")]),
        new("main lead", MainWires),
        new("lamp fuse", [.. LampFuses.Select(a => $"{N(a)} A")]),
        new("ground", Grounds),
        new("warmest air", [.. AmbientCelsius.Select(c => $"{N(c)} °C")]),
        new("loaded wires in a bundle", [.. Loaded.Select(n => N(n))]),
        new("insulation", [.. Insulations.Select(i => i.ToString()!)]),
    ];

    /// <summary>How many variants there are.</summary>
    public static long Count { get; } = Axes.Aggregate(1L, (product, axis) => product * axis.Values.Length);

    /// <summary>The value of each option, by its place on the axis.</summary>
    public static int[] Options(long variant)
    {
        int[] chosen = new int[Axes.Count];
        for (int k = 0; k < chosen.Length; k++)
        {
            (variant, long rest) = Math.DivRem(variant, Axes[k].Values.Length);
            chosen[k] = (int)rest;
        }

        return chosen;
    }

    /// <summary>The harness of a variant.</summary>
    /// <exception cref="ArgumentException">The options do not go together: the maker's list has such lines, as any does.</exception>
    public static Harness Build(long variant)
    {
        int[] o = Options(variant);
        double body = BodyMeters[o[1]];
        InsulationMaterial insulation = Insulations[o[12]];
        Place place = Place.Create(Temperature.FromDegreesCelsius(AmbientCelsius[o[10]])).WithLoadedConductors(Loaded[o[11]]);
        HarnessBuilder van = new HarnessBuilder(string.Create(CultureInfo.InvariantCulture, $"site van, variant {variant} (invented)"), DesignRules.Bench)
            .Terminals("battery +", "battery −", "main out", "lamps fused", "lamps switched", "lamps +", "pump fused", "pump +", "socket fused", "socket +").Busbars("panel").Grounds("rear ground", "panel ground")
            .Source("battery", "battery +", "battery −", Batteries[o[0]].Source)
            .Fuse("main fuse", "battery +", "main out", MainFuse)
            .Wire("main lead", "main out", "panel", MainConductors[o[7]], Length.FromMeters(2.2), place, insulation)
            .Fuse("lamp fuse", "panel", "lamps fused", LampFuseRatings[o[8]])
            .Switch("lamp switch", "lamps fused", "lamps switched", SwitchContact)
            .Wire("lamp lead", "lamps switched", "lamps +", LampConductors[o[4]], Length.FromMeters(Math.Round(body - LampSetBackMeters[o[2]], 3)), place, insulation)
            .Load("work lamps", "lamps +", "rear ground", Load.ConstantPower(Power.FromWatts(LampWatts[o[3]]), minimumVoltage: ElectricPotential.FromVolts(9)))
            .Fuse("pump fuse", "panel", "pump fused", BranchFuse)
            .Wire("pump lead", "pump fused", "pump +", BranchConductor, Length.FromMeters(1.4), place, insulation)
            .Load("pump", "pump +", "panel ground", Load.ConstantCurrent(ElectricCurrent.FromAmperes(PumpAmperes[o[6]])))
            .Fuse("socket fuse", "panel", "socket fused", SocketFuse)
            .Wire("socket lead", "socket fused", "socket +", BranchConductor, Length.FromMeters(0.6), place, insulation)
            .Load("socket", "socket +", "panel ground", Load.ConstantCurrent(ElectricCurrent.FromAmperes(5)))
            .Wire("panel ground lead", "panel ground", "battery −", MainConductors[o[7]], Length.FromMeters(2.2), place, insulation);
        _ = o[9] == 0
            ? van.Chassis("body sheet", "rear ground", "battery −", Sheet)
            : van.Wire("rear ground lead", "rear ground", "battery −", GroundConductor, Length.FromMeters(body), place, insulation);
        if (FridgeWatts[o[5]] > 0)
        {
            _ = van.Terminals("fridge fused", "fridge +").Fuse("fridge fuse", "panel", "fridge fused", BranchFuse)
                .Wire("fridge lead", "fridge fused", "fridge +", BranchConductor, Length.FromMeters(Math.Round(body - 1.2, 3)), place, insulation)
                .Load("fridge", "fridge +", "rear ground", Load.ConstantPower(Power.FromWatts(FridgeWatts[o[5]]), minimumVoltage: CutOut));
        }

        return van.Build();
    }

    private static (string Name, Source Source) Small(string name, double leastMilliohms, double greatestMilliohms) => (name, Source.BehindResistance(
        ElectricPotential.FromVolts(12.2), ElectricPotential.FromVolts(12.8), ElectricPotential.FromVolts(14.2), ElectricResistance.FromMilliohms(leastMilliohms), ElectricResistance.FromMilliohms(greatestMilliohms)));

    private static Conductor Wire(string size) => Conductor.Iso6722(MetricSize.Parse(size));

    private static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));

    private static string N(double number) => number.ToString(CultureInfo.InvariantCulture);
}
