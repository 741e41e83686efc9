namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about the path of a current, out and back.</content>
public sealed partial class Mistake
{
    internal static Mistake OneWayTakenForLoop { get; } = new("one way taken for the loop",
        "The distance is one way only, but the current runs out and back, so the length of conductor is twice the distance.");

    internal static Mistake DoubledTwice { get; } = new("distance doubled twice",
        "Out and back is twice the distance; here it was doubled again.");

    internal static Mistake LoopDoubled { get; } = new("doubled once too often",
        "What is given already covers out and back together; it must not be doubled again.");

    internal static Mistake PieceDoubled { get; } = new("doubled for no reason",
        "The length given is that of the whole length of wire; nothing doubles it.");

    internal static Mistake ReturnForgotten { get; } = new("return path forgotten",
        "Only the way out was counted; the same current also flows back, through a return path that has a resistance too.");

    internal static Mistake ReturnTakenAsWire { get; } = new("return path taken for a second wire",
        "The return path has a resistance of its own; it is not a second wire like the feed.");

    internal static Mistake FeedForgotten { get; } = new("feed wire forgotten",
        "Only the return path was counted; the feed wire has a resistance too.");

    internal static Mistake OneLeadOnly { get; } = new("one lead only",
        "The current passes through both leads, out and back, and both drop volts.");

    internal static Mistake OneJointOnly { get; } = new("one joint only",
        "Every joint in the circuit carries the whole current; count them all.");

    internal static Mistake JointsForgotten { get; } = new("joints left out",
        "The joints are in the path too; their resistance adds to that of the wire.");

    internal static Mistake PowerForDrop { get; } = new("power given instead of voltage",
        "I²·R is a power in watts; the drop is I·R.");

    internal static Mistake SupplyAcrossWire { get; } = new("supply voltage put across the wire",
        "Only the drop lies across the wire, not the whole supply: its power is I²·R.");

    internal static Mistake SupplyAcrossJoint { get; } = new("supply voltage put across the joint",
        "Only a small drop lies across the joint, not the whole voltage: its power is I²·R.");

    internal static Mistake DropForVolts { get; } = new("drop given instead of what is left",
        "That is what is lost; what is left is the full voltage minus that.");

    internal static Mistake DropAdded { get; } = new("drop added",
        "The drop is lost along the way: it is subtracted, not added.");

    internal static Mistake DropInVolts { get; } = new("volts given instead of per cent",
        "That is the drop in volts; as a share it is divided by the voltage and multiplied by 100.");

    internal static Mistake PercentTakenAsVolts { get; } = new("per cent taken for volts",
        "The allowed drop is a share of the voltage; 3 % of 24 V, for instance, is 0.72 V, not 3 V.");

    internal static Mistake CurrentAtSupply { get; } = new("current taken at the supply voltage",
        "A load of constant power draws its current at its own, lower voltage, so it draws more than P/U of the supply.");

    internal static Mistake CurrentWithoutLeads { get; } = new("current without the leads",
        "The current was worked out as if the leads had no resistance; the whole circuit limits it.");

    private static Mistake[] OfPaths =>
    [
        OneWayTakenForLoop, DoubledTwice, LoopDoubled, PieceDoubled, ReturnForgotten, ReturnTakenAsWire, FeedForgotten, OneLeadOnly, OneJointOnly,
        JointsForgotten, PowerForDrop, SupplyAcrossWire, SupplyAcrossJoint, DropForVolts, DropAdded, DropInVolts, PercentTakenAsVolts,
        CurrentAtSupply, CurrentWithoutLeads,
    ];
}
