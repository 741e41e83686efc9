using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <summary>What a note says. A check keeps this and the parts; the sentence is written when somebody reads it.</summary>
/// <remarks>A designer makes hundreds of checks for one that is read, and a sentence costs more than the check.</remarks>
internal enum NoteKind : byte
{
    /// <summary>The subject is the whole text.</summary>
    Plain,
    NoVoltageRating,
    NoBreakingCapacity,
    BreaksLess,
    Surge,
    NoLeastTime,
    SupplyIsWeak,
    NoTimes,
    FarEnd,
    FarEndNeverOpens,
    FarEndFalls,
    FarEndMelts,
    OverloadOpened,
    OverloadHeld,
    OverloadMelts,
    ShortFrom,
    DropNotCovered,
    StateDistance,
    StartAtLimit,
    StartTrips,
}

/// <summary>A note in parts: its kind, what it is about, and a number.</summary>
internal readonly struct CheckNote(NoteKind kind, object? subject, double number = 0)
{
    internal NoteKind Kind { get; } = kind;

    internal object? Subject { get; } = subject;

    internal double Number { get; } = number;

    public static implicit operator CheckNote(string text) => new(NoteKind.Plain, text);

    /// <summary>The sentence; <paramref name="value"/> is that of the check.</summary>
    internal string Write(double value) => Kind switch
    {
        NoteKind.NoVoltageRating => $"no d.c. voltage rating is published for the {Subject}",
        NoteKind.NoBreakingCapacity => $"no d.c. breaking capacity is published for the {Subject}",
        NoteKind.BreaksLess => $"up to {Accept.Short(value)} A at the source's terminals, the fuse breaks {Accept.Short(Number)} A: state the resistance of the supply lead to the fuse, "
            + "or protect the lead by a main fuse at the source that breaks that current",
        NoteKind.Surge => $"{Subject} draws up to {Accept.Short(Number)} A at switching on",
        NoteKind.NoLeastTime => NoLeastTime((FuseAndLoad)Subject!),
        NoteKind.SupplyIsWeak => $"the supply gives at most {Accept.Short(Number)} A, which the wire carries for ever",
        NoteKind.NoTimes => $"no operating times are published for the {Subject}",
        NoteKind.FarEnd => $"least prospective current at the far end {Accept.Short(Number)} A",
        NoteKind.FarEndNeverOpens => $"least prospective current at the far end {Accept.Short(Number)} A: the fuse need not open",
        NoteKind.FarEndFalls => $"least prospective current at the far end {Accept.Short(Number)} A, which falls as the wire heats: the fuse need not open",
        NoteKind.FarEndMelts => $"least prospective current at the far end {Accept.Short(Number)} A: the wire melts before the fuse has opened",
        NoteKind.OverloadOpened => Opened((FuseRating)Subject!),
        NoteKind.OverloadHeld => $"tightest up to {Accept.Short(Number)} A, at which the {Subject} need not open",
        NoteKind.OverloadMelts => $"tightest at {Accept.Short(Number)} A, where the {Subject} lets the wire melt; its melting point is shown",
        NoteKind.ShortFrom => $"from {Accept.Short(((InsulationMaterial)Subject!).ContinuousCelsius)} °C, worst at {Accept.Short(Number)} A",
        NoteKind.DropNotCovered => $"the allowance does not cover a nominal {Accept.Short(Number)} V; state one",
        NoteKind.StartAtLimit => $"the supply holds {Accept.Short(Number)} A and the start asks for more: whether the load starts is not known",
        NoteKind.StartTrips => $"the start takes more than the {Accept.Short(Number)} A at which the source disconnects",
        NoteKind.StateDistance => $"state how much conductor lies between the source and the fuse; at most {Accept.Short(Number)} m is allowed",
        _ => (string?)Subject ?? "",
    };

    private string Opened(FuseRating fuse) => fuse.TryLongestSeconds(Number, out double seconds)
        ? $"tightest at {Accept.Short(Number)} A, which the {fuse} may let pass for {Accept.Short(seconds)} s"
        : $"tightest at {Accept.Short(Number)} A";

    private string NoLeastTime(FuseAndLoad subject) =>
        $"no least operating time is published for the {subject.Fuse} at the {Accept.Short(Number)} A of the {subject.Load}";
}

/// <summary>The subject of a note about a fuse and the load that starts behind it.</summary>
internal sealed record FuseAndLoad(FuseRating Fuse, string Load);
