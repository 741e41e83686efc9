using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Protection;

/// <content>Fuses of road vehicles.</content>
public sealed partial class OperatingTimeLimits
{
    private const double HundredHours = 360_000;
    private const double FourHours = 14_400;

    private static readonly Reference SmallBladeMemory = Memory("ISO 8820-3", Editions.Iso8820Part3, "types C and F: medium confidence; least times at 350 % and 600 % differ between editions (0.08 s and 0.03 s in SAE J1284)");

    private static readonly Reference SmallBlade135 = new()
    {
        Title = "ISO 8820-3", Edition = Editions.Iso8820Part3, Kind = ReferenceKind.FromMemory,
        Note = "0.75 s to 1800 s: a wiring page prints the times but names neither the multiple nor the type; 135 % and the types are from memory. Earlier SAE and DIN texts are remembered with 600 s; the longer time is carried, which is the safer for the wire.",
    };

    private static readonly Reference FormE = new()
    {
        Title = "DIN 72581-3", Locator = "form E", Kind = ReferenceKind.Standard,
        Note = "As a wiring page reproduces it, 20 A to 80 A. The 100 h are printed at 100 %; ISO 8820-3 is remembered with 110 %: the smaller current is carried.",
    };

    private static readonly Reference FormE600 = Memory("DIN 72581-3", "", "form E at 600 %: medium confidence");

    private static readonly Reference Strip = Memory("ISO 8820-5", "2015", "low confidence: only the scope (30 A to 500 A) was read; confirm before use");

    private static readonly Reference Glass = Memory("SAE J554", "1987", "medium confidence; the limit at 200 % depends on the rating and is not carried");

    /// <summary>Blade fuses of ISO 8820-3 types C (3 A to 40 A) and F (2 A to 30 A).</summary>
    /// <remarks>Every row is from memory. A wiring page prints the 0.75 s to 1800 s of 135 %, without naming the multiple or the type.</remarks>
    public static OperatingTimeLimits RoadVehicleBlade { get; } = SmallBlades("ISO 8820-3 type C", 3, 40);

    /// <summary>Small blade fuses of ISO 8820-3 type F (2 A to 30 A); the times of type C.</summary>
    /// <remarks>Every row is from memory. A wiring page prints the 0.75 s to 1800 s of 135 %, without naming the multiple or the type.</remarks>
    public static OperatingTimeLimits RoadVehicleSmallBlade { get; } = SmallBlades("ISO 8820-3 type F", 2, 30);

    /// <summary>High-current blade fuses, DIN 72581-3 form E and ISO 8820-3 type E (20 A to 80 A).</summary>
    public static OperatingTimeLimits RoadVehicleHighCurrentBlade { get; } = new(
        "DIN 72581-3 form E",
        FormE,
        [
            NonFusing(20, 80, 100, HundredHours, FormE),
            Gate(20, 80, 135, 60, 1800, FormE),
            Gate(20, 80, 200, 2, 60, FormE),
            Gate(20, 80, 350, 0.2, 7, FormE),
            Gate(20, 80, 600, 0.04, 1, FormE600),
        ]);

    /// <summary>Strip fuses of ISO 8820-5, types SF 30 and SF 51. From memory with low confidence: no series carries them by itself.</summary>
    /// <remarks>To use them knowingly: <c>FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip)</c>.</remarks>
    public static OperatingTimeLimits RoadVehicleStrip { get; } = new(
        "ISO 8820-5",
        Strip,
        [
            NonFusing(30, 500, 100, FourHours, Strip),
            Gate(30, 500, 135, 120, 1800, Strip),
            Gate(30, 500, 200, 1, 15, Strip),
            Gate(30, 500, 350, 0.3, 5, Strip),
            Gate(30, 500, 600, 0.1, 1, Strip),
        ]);

    /// <summary>Glass fuses of SAE J554 (4 A to 30 A), from memory. Only the conventional currents, so what a fault does is undetermined; the line drawn from them is far too long at high current.</summary>
    public static OperatingTimeLimits RoadVehicleGlass { get; } = new(
        "SAE J554", Glass, [NonFusing(4, 30, 110, FourHours, Glass), Gate(4, 30, 135, null, 3600, Glass)]);

    private static OperatingTimeLimits SmallBlades(string name, double leastRating, double mostRating) => new(
        name,
        SmallBlade135,
        [
            NonFusing(leastRating, mostRating, 110, HundredHours, SmallBladeMemory),
            Gate(leastRating, mostRating, 135, 0.75, 1800, SmallBlade135),
            Gate(leastRating, mostRating, 160, 0.25, 50, SmallBladeMemory),
            Gate(leastRating, mostRating, 200, 0.15, 5, SmallBladeMemory),
            Gate(leastRating, mostRating, 350, 0.04, 0.5, SmallBladeMemory),
            Gate(leastRating, mostRating, 600, 0.02, 0.1, SmallBladeMemory),
        ]);

    private static Reference Memory(string title, string edition, string note) =>
        new() { Title = title, Edition = edition, Kind = ReferenceKind.FromMemory, Note = note };
}
