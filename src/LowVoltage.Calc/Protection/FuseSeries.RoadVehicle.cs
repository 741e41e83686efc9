using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>Fuses of road vehicles.</content>
public sealed partial class FuseSeries
{
    private const string BladeNote =
        "Ratings as several published lists agree; 32 V or 58 V d.c. and 1000 A from the abstract of a national adoption (GB/T 31465.3-2015).";

    private static readonly Reference BladeC = Standard("ISO 8820-3", Editions.Iso8820Part3, "type C", BladeNote + " 35 A stands in one list only.");

    private static readonly Reference BladeF = Standard("ISO 8820-3", Editions.Iso8820Part3, "type F", BladeNote);

    private static readonly Reference BladeE = Standard(
        "ISO 8820-3", Editions.Iso8820Part3, "type E", BladeNote + " 100 A stands in one list only and is the end of the standard's scope; its operating times are not known.");

    private static readonly Reference BladeCapacity = Standard("ISO 8820-3", Editions.Iso8820Part3, "scope", "1000 A, from the abstract of a national adoption (GB/T 31465.3-2015).");

    private static readonly Reference Strip = new()
    {
        Title = "ISO 8820-5", Edition = "2015", Kind = ReferenceKind.FromMemory,
        Note = "The single ratings are from memory; 30 A to 500 A, 32 V and 2000 A from the abstract. Operating times are not carried.",
    };

    private static readonly Reference BoltedMemory = new()
    {
        Title = "ISO 8820-4", Kind = ReferenceKind.FromMemory,
        Note = "Low confidence; neither rated voltage nor breaking capacity nor operating times are carried.",
    };

    private static readonly Reference GlassBulletin = Standard(
        "SAE J554", "1987", "", "Ratings and body lengths from a bulletin that states to follow the standard; the breaking capacity is not known.");

    private static readonly Reference TorpedoList = Standard(
        "DIN 72581-1", "", "", "Ratings from an encyclopaedia article; rated voltage and breaking capacity are not known.");

    /// <summary>ISO 8820-3 type C, the regular (medium) blade fuse: 1 A to 40 A, 32 V d.c., 1000 A. Operating times from 3 A.</summary>
    public static FuseSeries RoadVehicleBlade { get; } = Blade("ISO 8820-3 type C", "blade fuse", 32, StandardRatings.BladeC, BladeC, OperatingTimeLimits.RoadVehicleBlade);

    /// <summary>ISO 8820-3 type C for 58 V d.c.</summary>
    public static FuseSeries RoadVehicleBlade58 { get; } =
        Blade("ISO 8820-3 type C, 58 V", "blade fuse", 58, StandardRatings.BladeC, BladeC, OperatingTimeLimits.RoadVehicleBlade);

    /// <summary>ISO 8820-3 type F, the small (miniature) blade fuse: 2 A to 30 A, 32 V d.c., 1000 A.</summary>
    public static FuseSeries RoadVehicleSmallBlade { get; } =
        Blade("ISO 8820-3 type F", "small blade fuse", 32, StandardRatings.BladeF, BladeF, OperatingTimeLimits.RoadVehicleSmallBlade);

    /// <summary>ISO 8820-3 type F for 58 V d.c.</summary>
    public static FuseSeries RoadVehicleSmallBlade58 { get; } =
        Blade("ISO 8820-3 type F, 58 V", "small blade fuse", 58, StandardRatings.BladeF, BladeF, OperatingTimeLimits.RoadVehicleSmallBlade);

    /// <summary>ISO 8820-3 type E, the high-current blade fuse: 20 A to 100 A, 32 V d.c., 1000 A. Operating times up to 80 A.</summary>
    public static FuseSeries RoadVehicleHighCurrentBlade { get; } =
        Blade("ISO 8820-3 type E", "high-current blade fuse", 32, StandardRatings.BladeE, BladeE, OperatingTimeLimits.RoadVehicleHighCurrentBlade);

    /// <summary>ISO 8820-3 type E for 58 V d.c.</summary>
    public static FuseSeries RoadVehicleHighCurrentBlade58 { get; } =
        Blade("ISO 8820-3 type E, 58 V", "high-current blade fuse", 58, StandardRatings.BladeE, BladeE, OperatingTimeLimits.RoadVehicleHighCurrentBlade);

    /// <summary>ISO 8820-5 type SF 30, the short strip fuse: 30 A to 200 A, 32 V d.c., 2000 A. No operating times.</summary>
    public static FuseSeries RoadVehicleStrip30 { get; } = Create(StripOf("SF 30", StandardRatings.Strip30));

    /// <summary>ISO 8820-5 type SF 51, the long strip fuse: 80 A to 500 A, 32 V d.c., 2000 A. No operating times.</summary>
    public static FuseSeries RoadVehicleStrip51 { get; } = Create(StripOf("SF 51", StandardRatings.Strip51));

    /// <summary>ISO 8820-4 type A, cartridge fuse with female contacts. Ratings from memory; nothing else is known.</summary>
    public static FuseSeries RoadVehicleFemaleContacts { get; } =
        Create(Plain("ISO 8820-4 type A", "cartridge fuse", BoltedMemory, StandardRatings.FemaleContacts));

    /// <summary>ISO 8820-4 type B, cartridge fuse with bolt-in contacts. Ratings from memory; nothing else is known.</summary>
    public static FuseSeries RoadVehicleBoltInContacts { get; } =
        Create(Plain("ISO 8820-4 type B", "bolt-in cartridge fuse", BoltedMemory, StandardRatings.BoltInContacts));

    /// <summary>SAE J554 glass fuses whose length codes the rating: 4 A to 30 A, 32 V.</summary>
    public static FuseSeries RoadVehicleGlass { get; } = Create(new FuseSeriesDefinition
    {
        Name = "SAE J554",
        Kind = "glass fuse",
        Reference = GlassBulletin,
        Ratings = ToCurrents(StandardRatings.Glass),
        VoltageRating = ElectricPotential.FromVolts(32),
        Limits = OperatingTimeLimits.RoadVehicleGlass,
        BodyMillimeters = StandardRatings.GlassMillimeters,
    });

    /// <summary>DIN 72581-1 ceramic torpedo fuses, 6 mm × 25 mm: 5 A to 25 A.</summary>
    public static FuseSeries RoadVehicleTorpedo { get; } = Create(Plain("DIN 72581-1", "torpedo fuse", TorpedoList, StandardRatings.Torpedo));

    private static FuseSeries Blade(string name, string kind, double volts, double[] amperes, Reference reference, OperatingTimeLimits limits) =>
        Create(new FuseSeriesDefinition
        {
            Name = name,
            Kind = kind,
            Reference = reference,
            Ratings = ToCurrents(amperes),
            VoltageRating = ElectricPotential.FromVolts(volts),
            VoltageBasis = RatingBasis.DirectCurrent,
            BreakingCapacity = ElectricCurrent.FromAmperes(1000),
            BreakingCapacityBasis = RatingBasis.DirectCurrent,
            BreakingCapacityReference = BladeCapacity,
            Limits = limits,
        });

    private static FuseSeriesDefinition StripOf(string type, double[] amperes) => new()
    {
        Name = "ISO 8820-5 type " + type,
        Kind = "strip fuse",
        Reference = Strip,
        Ratings = ToCurrents(amperes),
        VoltageRating = ElectricPotential.FromVolts(32),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromAmperes(2000),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
    };

    private static FuseSeriesDefinition Plain(string name, string kind, Reference reference, double[] amperes) =>
        new() { Name = name, Kind = kind, Reference = reference, Ratings = ToCurrents(amperes) };

    private static Reference Standard(string title, string edition, string locator, string note) =>
        new() { Title = title, Edition = edition, Locator = locator, Kind = ReferenceKind.Standard, Note = note };

    // A loop: a query over quantities is compiled anew for each of them, in every process.
    private static ElectricCurrent[] ToCurrents(double[] amperes)
    {
        ElectricCurrent[] currents = new ElectricCurrent[amperes.Length];
        for (int i = 0; i < currents.Length; i++)
        {
            currents[i] = ElectricCurrent.FromAmperes(amperes[i]);
        }

        return currents;
    }
}
