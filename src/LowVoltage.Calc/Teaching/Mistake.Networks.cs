namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about resistances together.</content>
public sealed partial class Mistake
{
    internal static Mistake SeriesForParallel { get; } = new("series for parallel",
        "In parallel the conductances add up, and the total is below the smallest part. Resistances are added when they are in series.");

    internal static Mistake ParallelForSeries { get; } = new("parallel for series",
        "In series the resistances simply add up; reciprocals belong to parts in parallel.");

    internal static Mistake ReciprocalForgotten { get; } = new("reciprocal not inverted at the end",
        "The sum of the reciprocals is one over the resistance; invert it at the end.");

    internal static Mistake MeanTaken { get; } = new("average of the values",
        "Resistances are not averaged: in series they add, in parallel their reciprocals do.");

    internal static Mistake PartForgotten { get; } = new("one part left out",
        "One of the parts given is missing from the sum.");

    internal static Mistake OneLoadOnly { get; } = new("one load only",
        "The loads run together, so their powers add up.");

    private static Mistake[] OfNetworks =>
    [
        SeriesForParallel, ParallelForSeries, ReciprocalForgotten, MeanTaken, PartForgotten, OneLoadOnly,
    ];
}
