namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about batteries and lamps.</content>
public sealed partial class Mistake
{
    internal static Mistake SourceForgotten { get; } = new("source resistance forgotten",
        "The battery's own resistance is in the path too.");

    internal static Mistake WireResistanceForgotten { get; } = new("resistance of the wires forgotten",
        "The wires are in the path too and add to the battery's own resistance.");

    internal static Mistake OpenVoltageOnly { get; } = new("whole voltage instead of the difference",
        "The resistance follows from how far the voltage falls, not from the whole voltage.");

    internal static Mistake LoadedVoltageOnly { get; } = new("loaded voltage instead of the difference",
        "That uses the voltage under load; what counts is how far the voltage has fallen.");

    internal static Mistake MinutesForHours { get; } = new("minutes for hours",
        "Ampere-hours count hours; divide the minutes by 60.");

    internal static Mistake SecondsForMinutes { get; } = new("divided by 60 twice",
        "Minutes become hours by dividing by 60 once; 3600 belongs to seconds.");

    internal static Mistake ShareForgotten { get; } = new("share forgotten",
        "Only the stated share counts, not the whole.");

    internal static Mistake ShareComplement { get; } = new("share that stays in the battery",
        "That is the share that stays in the battery, not the share that may be used.");

    internal static Mistake LampAsResistor { get; } = new("lamp taken for a fixed resistance",
        "A filament is hotter at a higher voltage and cooler at a lower one, and its resistance goes with that: the current changes less than the voltage.");

    internal static Mistake Unchanged { get; } = new("taken as unchanged",
        "The first value was kept, but at another voltage it changes.");

    internal static Mistake CurrentUnchanged { get; } = new("current taken as unchanged",
        "The current at the rated voltage was kept, but at another voltage it changes.");

    private static Mistake[] OfSources =>
    [
        SourceForgotten, WireResistanceForgotten, OpenVoltageOnly, LoadedVoltageOnly, MinutesForHours, SecondsForMinutes, ShareForgotten,
        ShareComplement, LampAsResistor, Unchanged, CurrentUnchanged,
    ];
}
