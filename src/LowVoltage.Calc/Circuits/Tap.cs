using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>One section of a tapped run and the load at its far end.</summary>
public sealed class Tap
{
    private Tap(double meters, double amperes, double? ohmsPerMeter)
    {
        Meters = meters;
        Amperes = amperes;
        OhmsPerMeter = ohmsPerMeter;
    }

    /// <summary>Length from the tap before, or from the feed.</summary>
    public Length Section => Length.FromMeters(Meters);

    /// <summary>Current taken at the end of the section.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    internal double Meters { get; }

    internal double Amperes { get; }

    internal double? OhmsPerMeter { get; }

    /// <summary>A section of the run's own conductors.</summary>
    /// <param name="section">Length from the tap before, or from the feed, positive.</param>
    /// <param name="current">Current taken at its end, zero or greater; zero for a change of size or for the far feed.</param>
    /// <returns>The tap.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Tap Create(Length section, ElectricCurrent current) =>
        new(Accept.Meters(section, nameof(section)), Accept.AmperesOrZero(current, nameof(current)), null);

    /// <summary>The same tap at the end of a section of other conductors.</summary>
    /// <param name="feed">Resistance per length of the feed in this section.</param>
    /// <param name="back">Resistance per length of the return in this section.</param>
    /// <returns>A copy with those.</returns>
    public Tap WithResistance(LinearResistance feed, LinearResistance back) => new(Meters, Amperes, feed.OhmsPerMeter + back.OhmsPerMeter);
}
