using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc;

/// <content>The presets.</content>
public sealed partial class DesignRules
{
    private static readonly FuseSeries BladesAndStrips = FuseSeries.Combine(
        "blade, high-current blade and strip fuses",
        FuseSeries.RoadVehicleBlade,
        FuseSeries.RoadVehicleHighCurrentBlade,
        FuseSeries.RoadVehicleStrip51,
        FuseSeries.RoadVehicleBlade58,
        FuseSeries.RoadVehicleHighCurrentBlade58);

    /// <summary>Cars, vans, tractors, machines: metric road-vehicle cable, blade and strip fuses.</summary>
    /// <remarks>
    /// Rating: PVC cable by the lower of the road-vehicle table and the heat balance, better insulation by the heat balance, for which no table stands. Drop: 3 % of nominal out and back,
    /// common practice; the handbook's volts for single kinds of circuit are in <see cref="RoadVehicleVoltageDrop"/>.
    /// </remarks>
    public static DesignRules RoadVehicle => RoadVehiclePreset.Rules;

    /// <summary>Small craft: stranded copper by AWG, rated by the lower of 33 CFR 183.425 Table 5 and the heat balance; fuse within 7 in of the source.</summary>
    /// <remarks>
    /// Bundle factors of note 2 are applied below 50 V too, as a practice. The fuse is held to the wire's current, although the law allows 150 % of it below 50 V: the safer reading.
    /// The law sets no drop limit; 3 % is the voluntary standards' value for what matters on board.
    /// </remarks>
    public static DesignRules SmallCraft => SmallCraftPreset.Rules;

    /// <summary>Small craft in tinned cable: as <see cref="SmallCraft"/>, with stranded tinned copper in the sizes that shops carry.</summary>
    /// <remarks>
    /// The sizes of 33 CFR 183.425 Table 5 without 3 AWG. The metal is the most resistive class of tinned strands (see <see cref="ConductorSeries.AwgTinned"/>), so that a drop may ask for a size more.
    /// </remarks>
    public static DesignRules SmallCraftTinned => SmallCraftTinnedPreset.Rules;

    /// <summary>Light aircraft: tin-plated aircraft wire rated by FAA AC 43.13-1B Table 11-9, drop by Table 11-6.</summary>
    /// <remarks>The table contains 70 °C, 60 000 ft and its own bundle, so it is far below what a wire alone would carry. Approved data for the aircraft come first.</remarks>
    public static DesignRules LightAircraft => LightAircraftPreset.Rules;

    /// <summary>A bench, a robot, a cabinet: flexible metric wire in still air, rated by the heat balance.</summary>
    public static DesignRules Bench => BenchPreset.Rules;

    /// <summary>The presets: road vehicle, small craft, light aircraft, bench, and small craft in tinned cable.</summary>
    public static IReadOnlyList<DesignRules> Presets => AllPresets.Rules;

    // Each is made when it is first asked for: a program that follows one practice does not pay for the tables of the others.
    private static class RoadVehiclePreset
    {
        internal static readonly DesignRules Rules = new()
        {
            Name = "road vehicle",
            Conductors = ConductorSeries.RoadVehicle,
            Fuses = BladesAndStrips,
            Ampacity = AmpacityBasis.LowerOf(AmpacityBasis.RoadVehicleTable, AmpacityBasis.HeatBalance),
            DropLimit = DropLimit.Percent(3, Reference.CommonPractice("3 % of nominal for a vehicle circuit, out and back")),
            MinimumSection = Area.FromSquareMillimeters(0.5),
            MinimumSectionReference = Reference.CommonPractice("0.5 mm² is the thinnest cable laid singly in a vehicle"),
        };
    }

    private static class SmallCraftPreset
    {
        internal static readonly DesignRules Rules = new()
        {
            Name = "small craft",
            Conductors = ConductorSeries.AwgStranded.Only(
                "AWG, stranded copper, sizes of 33 CFR 183.425 Table 5",
                [.. new[] { 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3 }.Select(number => ConductorSize.FromAwg(AwgSize.FromNumber(number)))]),
            Fuses = BladesAndStrips,
            Ampacity = AmpacityBasis.LowerOf(AmpacityBasis.SmallCraftTable, AmpacityBasis.HeatBalance),
            DropLimit = DropLimit.Percent(3, SmallCraftVoltageDrop.AbycReference),
            MinimumSection = Area.FromSquareMillimeters(AwgSize.FromNumber(16).AreaSquareMillimeters),
            MinimumSectionReference = new Reference { Title = "33 CFR 183.425", Edition = "Code of Federal Regulations", Locator = "(e)", Kind = ReferenceKind.Law, Note = "16 AWG installed separately." },
            FusePractice = new FusePractice { Distance = SourceDistance.Cfr33 },
        };
    }

    private static class SmallCraftTinnedPreset
    {
        internal static readonly DesignRules Rules = new(SmallCraft)
        {
            Name = "tinned small craft",
            Conductors = ConductorSeries.AwgTinned.Only(
                "AWG, stranded tinned copper, sizes of 33 CFR 183.425 Table 5 that shops carry",
                [.. new[] { 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3 }.Select(number => ConductorSize.FromAwg(AwgSize.FromNumber(number)))]),
        };
    }

    private static class LightAircraftPreset
    {
        internal static readonly DesignRules Rules = new()
        {
            Name = "light aircraft",
            Conductors = ConductorSeries.AircraftWire,
            Fuses = BladesAndStrips,
            Ampacity = AmpacityBasis.AircraftTable,
            DropLimit = DropLimit.AircraftTable,
            MinimumSection = Area.FromSquareMillimeters(AircraftWireSize.FromNumber(22).AreaSquareMillimeters),
            MinimumSectionReference = new Reference
            {
                Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "chapter 11", Kind = ReferenceKind.FromMemory,
                Note = "Wires smaller than size 22 need special care in handling and are left to the specialist.",
            },
        };
    }

    private static class BenchPreset
    {
        internal static readonly DesignRules Rules = new()
        {
            Name = "bench",
            Conductors = ConductorSeries.Iec60228Class5,
            Fuses = BladesAndStrips,
            Ampacity = AmpacityBasis.HeatBalance,
            DropLimit = DropLimit.Percent(3, Reference.CommonPractice("3 % of nominal for a load at the end of a lead, out and back")),
            MinimumSection = Area.FromSquareMillimeters(0.5),
            MinimumSectionReference = Reference.CommonPractice("0.5 mm² is the thinnest wire handled without care on a bench"),
        };
    }

    private static class AllPresets
    {
        internal static readonly IReadOnlyList<DesignRules> Rules = Array.AsReadOnly([RoadVehicle, SmallCraft, LightAircraft, Bench, SmallCraftTinned]);
    }
}
