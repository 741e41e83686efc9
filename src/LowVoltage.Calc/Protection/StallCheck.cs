using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a stalled motor.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class StallCheck
{
    private readonly StallFinding found;

    internal StallCheck(in StallFinding found, string device, int weakest, double least, double greatest)
    {
        this.found = found;
        WeakestWire = weakest;
        string current = least.Equals(greatest) ? $"{Accept.Short(least)} A" : $"{Accept.Short(least)} A to {Accept.Short(greatest)} A";
        string hot = found.Reached is double celsius ? $"the wire is at {Accept.Short(celsius)} °C" : "the wire melts";
        string when = $"{hot} against {Accept.Short(found.Limit)} °C at {Accept.Short(found.Amperes)} A";
        Reason = $"Stalled, the motor draws {current}. " + found.Outcome switch
        {
            StallOutcome.DeviceOpens => $"The {device} opens within {Accept.Short(found.Seconds)} s; {when}. It does not protect the motor itself.",
            StallOutcome.WireBears => $"The {device} need not open; {when}, which it bears. Only a thermal cut-out of the motor's own ends that.",
            StallOutcome.WireTooHot => $"Too much: {when}.",
            _ => $"No operating times are published for the {device}, and the wire does not carry that continuously: {when}.",
        };
    }

    /// <summary>The outcome.</summary>
    public StallOutcome Outcome => found.Outcome;

    /// <summary>Index of the wire that decides.</summary>
    public int WeakestWire { get; }

    /// <summary>The device's longest time at the least current; null where it need not open.</summary>
    public Duration? LongestTime => found.Seconds > 0 ? Duration.FromSeconds(found.Seconds) : null;

    /// <summary>The current at which the wire is nearest to its limit.</summary>
    public ElectricCurrent TightestCurrent => ElectricCurrent.FromAmperes(found.Amperes);

    /// <summary>Temperature of the wire when the device has opened at that current, or that it settles at; null when the metal melts.</summary>
    public Temperature? TemperatureReached => found.Reached is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The limit that it is held against.</summary>
    public Temperature Limit => Temperature.FromDegreesCelsius(found.Limit);

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;
}
