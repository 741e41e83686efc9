using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>Miniature, industrial and North American series.</content>
public sealed partial class FuseSeries
{
    private const string MiniatureNote =
        "250 V a.c. The ends of the series and the breaking capacities were read in teaching notes; the steps (R10) from memory.";

    private static readonly Reference Gg = new()
    {
        Title = "IEC 60269-1", Kind = ReferenceKind.FromMemory,
        Note = "A d.c. rating must be marked on the fuse-link; none is carried here.",
    };

    private static readonly Reference GgBlades = new()
    {
        Title = "IEC 60269-2", Edition = "2013", Locator = "fuse system A", Kind = ReferenceKind.FromMemory,
        Note = "250 V is the smaller of its d.c. voltages, 25 kA the least d.c. breaking capacity that it asks for up to 750 V. Only fuse-links that are marked with a d.c. rating.",
    };

    private static readonly Reference Nec = new()
    {
        Title = "NFPA 70 (National Electrical Code)", Edition = "2023", Locator = "240.6(A)", Kind = ReferenceKind.Law,
        Note = "Standard ampere ratings as two summaries print them. Voltage rating and breaking capacity belong to the device.",
    };

    private static readonly Reference NecBreakers = new()
    {
        Title = "NFPA 70 (National Electrical Code)", Edition = "2023", Locator = "240.6(A)", Kind = ReferenceKind.FromMemory,
        Note = "10 A, new in 2023, is from memory; the others as two summaries print them. Voltage rating and breaking capacity belong to the device.",
    };

    /// <summary>IEC 60127-2 sheet 1: 5 mm × 20 mm, quick-acting (fast-blow), high breaking capacity (1500 A a.c.), 50 mA to 6.3 A.</summary>
    public static FuseSeries Iec60127Sheet1 { get; } =
        Miniature("sheet 1", "quick-acting miniature fuse", StandardRatings.Iec60127Sheet1, 1500, 0, OperatingTimeLimits.Iec60127Sheet1);

    /// <summary>IEC 60127-2 sheet 2: quick-acting (fast-blow), low breaking capacity (35 A or ten times the rating, a.c.), 32 mA to 10 A.</summary>
    /// <remarks>8 A and 10 A are in later editions only (from memory).</remarks>
    public static FuseSeries Iec60127Sheet2 { get; } =
        Miniature("sheet 2", "quick-acting miniature fuse", StandardRatings.Iec60127Sheet2, 35, 10, OperatingTimeLimits.Iec60127Sheet2);

    /// <summary>IEC 60127-2 sheet 3: time-lag (slow-blow), low breaking capacity (35 A or ten times the rating, a.c.), 32 mA to 10 A.</summary>
    /// <remarks>8 A and 10 A are in later editions only (from memory).</remarks>
    public static FuseSeries Iec60127Sheet3 { get; } =
        Miniature("sheet 3", "time-lag miniature fuse", StandardRatings.Iec60127Sheet3, 35, 10, OperatingTimeLimits.Iec60127Sheet3);

    /// <summary>IEC 60127-2 sheet 5: time-lag (slow-blow), high breaking capacity (1500 A a.c.), 1 A to 6.3 A.</summary>
    public static FuseSeries Iec60127Sheet5 { get; } =
        Miniature("sheet 5", "time-lag miniature fuse", StandardRatings.Iec60127Sheet5, 1500, 0, OperatingTimeLimits.Iec60127Sheet5);

    /// <summary>gG fuse-links of IEC 60269: 2 A to 1250 A. From memory.</summary>
    public static FuseSeries IndustrialGg { get; } = Create(new FuseSeriesDefinition
    {
        Name = "IEC 60269-1 gG",
        Kind = "gG fuse-link",
        Reference = Gg,
        Ratings = ToCurrents(StandardRatings.IndustrialGg),
        Limits = OperatingTimeLimits.IndustrialGg,
        Rerating = AmbientRerating.IndustrialGg,
    });

    /// <summary>gG fuse-links with blade contacts for direct current, IEC 60269-2 fuse system A: 16 A to 1250 A, 250 V d.c., 25 kA d.c. From memory.</summary>
    /// <remarks>
    /// High-breaking fuses for lithium packs and 48 V banks. The standard leaves a fuse-link without a d.c. rating where none is marked: take one that is marked 250 V d.c. or more. The times
    /// are those of gG, which hold for direct current of a short time constant. Below 16 A no gates at high current are carried, so none of those ratings is here.
    /// Other high-breaking types (gR and aR of IEC 60269-4, gPV of IEC 60269-6, those of UL 248) are not carried: their d.c. times or ratings were not known well enough. They can be stated with
    /// the maker's data: <see cref="Create"/>.
    /// </remarks>
    public static FuseSeries IndustrialGgBladeContacts { get; } = Create(new FuseSeriesDefinition
    {
        Name = "IEC 60269-2 gG, 250 V",
        Kind = "gG fuse-link",
        Reference = GgBlades,
        Ratings = ToCurrents([.. StandardRatings.IndustrialGg.Where(amperes => amperes >= 16)]),
        VoltageRating = ElectricPotential.FromVolts(250),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromKiloamperes(25),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
        Limits = OperatingTimeLimits.IndustrialGg,
        Rerating = AmbientRerating.IndustrialGg,
    });

    /// <summary>Standard ratings of fuses, NEC 240.6(A), with those that are for fuses only (1, 3, 6 and 601 A).</summary>
    public static FuseSeries NationalElectricalCodeFuses { get; } = Create(Plain(
        "NEC 240.6(A)",
        "fuse",
        Nec,
        Rising(StandardRatings.NationalElectricalCode, StandardRatings.NationalElectricalCodeFusesOnly)));

    /// <summary>Standard ratings of inverse-time circuit-breakers, NEC 240.6(A) of 2023: from 10 A, which earlier editions do not have.</summary>
    public static FuseSeries NationalElectricalCodeBreakers { get; } =
        Create(Plain("NEC 240.6(A) breakers", "circuit-breaker", NecBreakers, StandardRatings.NationalElectricalCode));

    private static FuseSeries Miniature(string sheet, string kind, double[] amperes, double breaking, double multiple, OperatingTimeLimits limits) =>
        Create(new FuseSeriesDefinition
        {
            Name = "IEC 60127-2 " + sheet,
            Kind = kind,
            Reference = new() { Title = "IEC 60127-2", Locator = sheet, Kind = ReferenceKind.FromMemory, Note = MiniatureNote },
            Ratings = ToCurrents(amperes),
            VoltageRating = ElectricPotential.FromVolts(250),
            VoltageBasis = RatingBasis.AlternatingCurrent,
            BreakingCapacity = ElectricCurrent.FromAmperes(breaking),
            BreakingCapacityBasis = RatingBasis.AlternatingCurrent,
            BreakingMultiple = multiple,
            Limits = limits,
        });

    private static double[] Rising(double[] some, double[] others)
    {
        double[] all = [.. some, .. others];
        Array.Sort(all);
        return all;
    }
}
