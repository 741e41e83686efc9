using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a fault in one of several wires in parallel: the verdict, and the place where that wire gets hottest.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class ParallelWireOutcome
{
    private readonly ParallelWirePoint point;
    private readonly double limit;
    private readonly double melting;

    internal ParallelWireOutcome(string reason) => Reason = reason;

    internal ParallelWireOutcome(in ParallelWirePoint point, string device, double limit, double melting)
    {
        this.point = point;
        this.limit = limit;
        this.melting = melting;
        Verdict = point.Celsius <= limit ? ProtectionVerdict.Protected : ProtectionVerdict.NotProtected;
        string place = $"with the fault at {Accept.Short(100 * point.Position)} % of the length the {(point.IsFarPart ? "far" : "near")} part of that wire carries {Accept.Short(100 * point.Share)} % of the current";
        string end = Opens
            ? $"{place}; the {device} lets through up to {Accept.Short(point.Joules)} A²s, and {(Melts ? "the wire melts" : $"the wire is at {Accept.Short(point.Celsius)} °C")} against {Accept.Short(limit)} °C"
            : $"{place}; at the {Accept.Short(point.LeastAmperes)} A that may flow the {device} need not open";
        Reason = $"{(Verdict == ProtectionVerdict.Protected ? "Protected against a fault in one of the wires; worst" : "Not protected against a fault in one of the wires:")} {end}.";
    }

    /// <summary>The verdict.</summary>
    public ProtectionVerdict Verdict { get; }

    /// <summary>Whether the device opens for sure on a fault at the worst place.</summary>
    public bool Opens => point.Seconds > 0;

    /// <summary>Place of the worst fault as a share of the length from the source's end: 0 to 1.</summary>
    public double Position => point.Position;

    /// <summary>Whether the part of the wire beyond the fault is the hotter one there.</summary>
    public bool IsFarPart => point.IsFarPart;

    /// <summary>Share of the fault's current in the hotter part.</summary>
    public double Share => point.Share;

    /// <summary>The least current that the fault draws there, with which the device takes longest.</summary>
    public ElectricCurrent LeastCurrent => ElectricCurrent.FromAmperes(point.LeastAmperes);

    /// <summary>The device's longest time at that current; null where it need not open, and when nothing was evaluated.</summary>
    public Duration? LongestTime => Opens ? Duration.FromSeconds(point.Seconds) : null;

    /// <summary>Temperature of the wire by then, an upper bound; null when the metal melts, when the device need not open, and when nothing was evaluated.</summary>
    public Temperature? TemperatureReached => Opens && !Melts ? Temperature.FromDegreesCelsius(point.Celsius) : null;

    /// <summary>The limit that it is held against; null when nothing was evaluated.</summary>
    public Temperature? Limit => Verdict == ProtectionVerdict.NotEvaluated ? null : Temperature.FromDegreesCelsius(limit);

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;

    private bool Melts => point.Celsius >= melting;
}
