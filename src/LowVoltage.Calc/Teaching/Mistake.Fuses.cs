namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about the choice of a fuse and the time it takes.</content>
public sealed partial class Mistake
{
    internal static Mistake FuseForLoadNotWire { get; } = new("fuse sized for the load but not the wire",
        "The wire carries the load, but the fuse lets more than that through: the wire must carry what the fuse allows.");

    internal static Mistake FuseByTheTable { get; } = new("fuse chosen by the table current",
        "The fuse follows the load: the smallest that carries it. The table current is what the wire could carry by itself in a cooler place.");

    internal static Mistake LoadingForgotten { get; } = new("loading of the fuse forgotten",
        "A fuse may carry only the stated share of its rating continuously; divide the load's current by that share first.");

    internal static Mistake LoadingComplement { get; } = new("the rest taken for the loading share",
        "The share is what the fuse may carry, not what must be kept free.");

    internal static Mistake LoadingMultiplied { get; } = new("load multiplied by the loading share",
        "The share holds for the fuse, so the rating is the load divided by it.");

    internal static Mistake LoadingTwice { get; } = new("loading of the fuse applied twice",
        "The load is divided by the loading share only once.");

    internal static Mistake TooLargeByOne { get; } = new("one rating larger than needed",
        "A smaller rating already carries the load; a larger one only protects less.");

    internal static Mistake LeastForLongest { get; } = new("least time for longest",
        "The table gives a least and a longest time; the question asks for the longest.");

    internal static Mistake OneMultipleTooLow { get; } = new("row of a smaller multiple",
        "The row of the table belongs to the multiple of the rating; divide the current by the rating first.");

    internal static Mistake LeastOfNextGate { get; } = new("least time of a larger multiple",
        "That is the least time at a larger multiple; the question asks for the longest time at this one.");

    internal static Mistake NextGate { get; } = new("time of the next larger multiple",
        "The current lies below that multiple, so the fuse may take longer than that.");

    internal static Mistake NotInterpolated { get; } = new("time of the next smaller multiple",
        "The current lies between two of the multiples given, and so does the time.");

    internal static Mistake LinearForLogarithmic { get; } = new("straight line on linear axes",
        "Between two multiples the line is straight on logarithmic axes, not on linear ones.");

    private static Mistake[] OfFuses =>
    [
        FuseForLoadNotWire, FuseByTheTable, LoadingForgotten, LoadingComplement, LoadingMultiplied, LoadingTwice, TooLargeByOne, LeastForLongest,
        OneMultipleTooLow, LeastOfNextGate, NextGate, NotInterpolated, LinearForLogarithmic,
    ];
}
