using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A source as SI doubles.</summary>
internal readonly record struct SourceNumbers(
    double MinimumVolts, double NominalVolts, double MaximumVolts, double LeastOhms, double NominalOhms, double GreatestOhms)
{
    internal double LimitAmperes { get; init; } = double.PositiveInfinity;

    internal LimitAction Action { get; init; } = LimitAction.None;

    /// <summary>What bounds a short circuit where sources with and without a held limit are in series; null for all others.</summary>
    internal SeriesLimits? Beyond { get; init; }

    /// <summary>The limit that the source holds; +∞ for one that has none or that disconnects.</summary>
    internal double HeldAmperes => Action == LimitAction.Holds ? LimitAmperes : double.PositiveInfinity;

    /// <summary>Whether a supply that holds its limit in series with others has given up its voltage: the others would push the load's current through it backwards.</summary>
    internal bool Collapses(bool limited) => limited && Beyond is not null;

    /// <summary>The most that can flow through some ohms, the source's own included, while it holds its limits, A; +∞ for one that holds none.</summary>
    internal double HeldThrough(SupplyLevel level, double ohms) => Beyond?.Amperes(level == SupplyLevel.Maximum, VoltsAt(level), ohms) ?? HeldAmperes;

    internal static SourceNumbers Range(
        in ElectricPotential minimum, in ElectricPotential nominal, in ElectricPotential maximum, double leastOhms, double nominalOhms, double greatestOhms)
    {
        double least = Accept.Volts(minimum, nameof(minimum));
        double middle = Accept.Within(Accept.Volts(nominal, nameof(nominal)), least, Accept.MostVolts, "V", nameof(nominal));
        double most = Accept.Within(Accept.Volts(maximum, nameof(maximum)), middle, Accept.MostVolts, "V", nameof(maximum));
        return new SourceNumbers(least, middle, most, leastOhms, nominalOhms, greatestOhms);
    }

    internal double VoltsAt(SupplyLevel level) => level switch
    {
        SupplyLevel.Minimum => MinimumVolts,
        SupplyLevel.Maximum => MaximumVolts,
        _ => NominalVolts,
    };

    internal double OhmsAt(SupplyLevel level) => level switch
    {
        SupplyLevel.Minimum => GreatestOhms,
        SupplyLevel.Maximum => LeastOhms,
        _ => NominalOhms,
    };

    internal static SupplyLevel Check(SupplyLevel level, string name) =>
        level is SupplyLevel.Minimum or SupplyLevel.Nominal or SupplyLevel.Maximum
            ? level
            : throw new ArgumentOutOfRangeException(name, level, $"{name} must be Minimum, Nominal or Maximum; it was {Accept.Text((int)level)}.");
}
