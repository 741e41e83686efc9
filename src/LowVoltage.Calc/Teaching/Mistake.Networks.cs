namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about resistances together.</content>
public sealed partial class Mistake
{
    internal static Mistake SeriesForParallel { get; } = new("series for parallel",
        "Side by side the conductances add up; the total is below the smallest part. Added resistances belong to a series.");

    internal static Mistake ParallelForSeries { get; } = new("parallel for series",
        "One after the other the resistances simply add up; the reciprocals belong to parts side by side.");

    internal static Mistake ReciprocalForgotten { get; } = new("reciprocal not taken back",
        "The sum of the reciprocals is one over the resistance; turn it over at the end.");

    internal static Mistake MeanTaken { get; } = new("mean of the values",
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
