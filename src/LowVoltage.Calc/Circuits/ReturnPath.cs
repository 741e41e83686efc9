using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The way back from the load to the source: a wire, the chassis as ground (earth) return, or a conductor shared with others.</summary>
/// <remarks>Immutable. A return shared with other circuits drops I·R and, on top of it, the others' current times R.</remarks>
public sealed class ReturnPath
{
    private ReturnPath(ReturnKind kind, double meters, double ohms, double otherAmperes, IReadOnlyList<Segment> segments)
    {
        Kind = kind;
        Meters = meters;
        Ohms = ohms;
        OtherAmperes = otherAmperes;
        Segments = segments;
    }

    /// <summary>How the current comes back.</summary>
    public ReturnKind Kind { get; }

    /// <summary>The segments of the return; empty for a chassis, a stated resistance or a wire like the feed.</summary>
    public IReadOnlyList<Segment> Segments { get; }

    /// <summary>Current of the other circuits in a shared return.</summary>
    public ElectricCurrent OtherCurrent => ElectricCurrent.FromAmperes(OtherAmperes);

    /// <summary>Length of a wire like the feed, m; otherwise 0.</summary>
    internal double Meters { get; }

    /// <summary>Stated resistance, Ω; otherwise 0.</summary>
    internal double Ohms { get; }

    internal double OtherAmperes { get; }

    /// <summary>Whether the way back is a wire beside the feed, and not a chassis or an unknown conductor.</summary>
    internal bool IsOfWire => Kind is ReturnKind.SameConductor or ReturnKind.Segments or ReturnKind.SharedSegments;

    internal bool IsShared => Kind is ReturnKind.SharedSegments or ReturnKind.SharedResistance;

    /// <summary>The way back of a path whose resistance was stated whole.</summary>
    internal static ReturnPath Stated { get; } = new(ReturnKind.Stated, 0, 0, 0, []);

    /// <summary>A wire of the same conductor, and as many side by side, as the feed.</summary>
    /// <param name="length">Length of the return alone, positive.</param>
    /// <returns>The return.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive or is absurdly large.</exception>
    public static ReturnPath Wire(Length length) => new(ReturnKind.SameConductor, Accept.Meters(length, nameof(length)), 0, 0, []);

    /// <summary>A chain of segments.</summary>
    /// <param name="segments">At least one.</param>
    /// <returns>The return.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static ReturnPath Wire(params Segment[] segments) => new(ReturnKind.Segments, 0, 0, 0, Require(segments));

    /// <summary>A chassis, hull or frame as the negative: ground return, earth return.</summary>
    /// <param name="resistance">Its resistance between the two ground points, zero or greater.</param>
    /// <returns>The return.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public static ReturnPath Chassis(ElectricResistance resistance) =>
        new(ReturnKind.Chassis, 0, Accept.OhmsOrZero(resistance, nameof(resistance)), 0, []);

    /// <summary>A stated resistance that other circuits use as well.</summary>
    /// <param name="resistance">Resistance of the shared part, zero or greater.</param>
    /// <param name="otherCurrent">Current of the others in it, zero or greater.</param>
    /// <returns>The return.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ReturnPath Shared(ElectricResistance resistance, ElectricCurrent otherCurrent) => new(
        ReturnKind.SharedResistance,
        0,
        Accept.OhmsOrZero(resistance, nameof(resistance)),
        Accept.AmperesOrZero(otherCurrent, nameof(otherCurrent)),
        []);

    /// <summary>Segments that other circuits use as well.</summary>
    /// <param name="segments">At least one.</param>
    /// <param name="otherCurrent">Current of the others in them, zero or greater.</param>
    /// <returns>The return.</returns>
    /// <exception cref="ArgumentNullException">The list or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or absurdly large.</exception>
    public static ReturnPath Shared(IReadOnlyList<Segment> segments, ElectricCurrent otherCurrent) =>
        new(ReturnKind.SharedSegments, 0, 0, Accept.AmperesOrZero(otherCurrent, nameof(otherCurrent)), Require(segments));

    internal static Segment[] Require(IReadOnlyList<Segment> segments, string name = "segments")
    {
        _ = segments ?? throw new ArgumentNullException(name);
        if (segments.Count == 0)
        {
            throw new ArgumentException("At least one segment is needed.", name);
        }

        foreach (Segment segment in segments)
        {
            _ = segment ?? throw new ArgumentNullException(name);
        }

        return [.. segments];
    }
}
