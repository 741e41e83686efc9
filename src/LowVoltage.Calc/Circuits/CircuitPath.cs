using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The way out and the way back between a source and a load, with the joints on it.</summary>
/// <remarks>Immutable. Out and back are given apart; nothing is doubled or halved.</remarks>
public sealed class CircuitPath
{
    private CircuitPath(Segment[] feed, Segment[] back, ReturnPath returnPath, Joint[] feedJoints, Joint[] returnJoints)
    {
        Feed = feed;
        ReturnSegments = back;
        Return = returnPath;
        FeedJoints = feedJoints;
        ReturnJoints = returnJoints;
        FeedArray = feed;
        BackArray = back;
        FeedJointArray = feedJoints;
        ReturnJointArray = returnJoints;
        double ohms = 0;
        foreach (Joint joint in feedJoints)
        {
            ohms += joint.Ohms;
        }

        double returning = 0;
        foreach (Joint joint in returnJoints)
        {
            returning += joint.Ohms;
        }

        FixedOhms = ohms + returning + returnPath.Ohms;
    }

    /// <summary>Segments of the way out.</summary>
    public IReadOnlyList<Segment> Feed { get; }

    /// <summary>The way back as it was given.</summary>
    public ReturnPath Return { get; }

    /// <summary>Segments of the way back, a wire like the feed worked out; empty for a chassis or a stated resistance.</summary>
    public IReadOnlyList<Segment> ReturnSegments { get; }

    /// <summary>Joints on the way out.</summary>
    public IReadOnlyList<Joint> FeedJoints { get; }

    /// <summary>Joints on the way back, where only this circuit's current flows.</summary>
    public IReadOnlyList<Joint> ReturnJoints { get; }

    internal Segment[] FeedArray { get; }

    internal Segment[] BackArray { get; }

    internal Joint[] FeedJointArray { get; }

    internal Joint[] ReturnJointArray { get; }

    /// <summary>Joints and stated resistance of the return, Ω.</summary>
    internal double FixedOhms { get; }

    /// <summary>A path of one feed segment and a return.</summary>
    /// <param name="feed">The way out.</param>
    /// <param name="returnPath">The way back.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static CircuitPath Create(Segment feed, ReturnPath returnPath) =>
        Create([feed ?? throw new ArgumentNullException(nameof(feed))], returnPath);

    /// <summary>A two-wire path in one call: out and back (round trip) in the same conductor, each way of the one-way length.</summary>
    /// <param name="conductor">The conductor of both ways.</param>
    /// <param name="oneWay">Length of one way, from the source to the load; the path has twice as much conductor. Positive.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive or is absurdly large.</exception>
    public static CircuitPath TwoWire(Conductor conductor, Length oneWay)
    {
        _ = conductor ?? throw new ArgumentNullException(nameof(conductor));
        double meters = Accept.Meters(oneWay, nameof(oneWay));
        return Create(Segment.Create(conductor, Length.FromMeters(meters)), ReturnPath.Wire(Length.FromMeters(meters)));
    }

    /// <summary>A path of known resistance, out and back together, of which the wires are not known: measured, or stated on a data sheet.</summary>
    /// <param name="outAndBack">The resistance that the current meets on its way out and back, zero or greater.</param>
    /// <returns>The path. It has no segments; what is known of it is a joint on the way out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    /// <remarks>
    /// For operating points and prospective currents; the temperature of conductors counts for nothing there. Nothing can be said of wires that are not known, so <see cref="CircuitDesigner"/> refuses it.
    /// A single stretch of known resistance within a path of wires is a <see cref="Joint"/>.
    /// </remarks>
    public static CircuitPath OfResistance(ElectricResistance outAndBack) =>
        new([], [], ReturnPath.Stated, [Joint.Create("stated resistance, out and back", ElectricResistance.FromOhms(Accept.OhmsOrZero(outAndBack, nameof(outAndBack))))], []);

    /// <summary>A path of a chain of feed segments and a return.</summary>
    /// <param name="feed">The way out, at least one segment.</param>
    /// <param name="returnPath">The way back. A wire like the feed needs a feed of one conductor throughout.</param>
    /// <returns>The path.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no segment, or the return is to be like a feed of several sizes.</exception>
    public static CircuitPath Create(IReadOnlyList<Segment> feed, ReturnPath returnPath)
    {
        Segment[] segments = ReturnPath.Require(feed, nameof(feed));
        _ = returnPath ?? throw new ArgumentNullException(nameof(returnPath));
        return new CircuitPath(segments, Back(segments, returnPath), returnPath, [], []);
    }

    /// <summary>The same path with joints on the way out added.</summary>
    /// <param name="joints">The joints.</param>
    /// <returns>A copy with them.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public CircuitPath WithFeedJoints(params Joint[] joints) => new(FeedArray, BackArray, Return, [.. FeedJoints, .. Require(joints)], [.. ReturnJoints]);

    /// <summary>The same path with joints on the way back added.</summary>
    /// <param name="joints">The joints.</param>
    /// <returns>A copy with them.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public CircuitPath WithReturnJoints(params Joint[] joints) => new(FeedArray, BackArray, Return, [.. FeedJoints], [.. ReturnJoints, .. Require(joints)]);

    /// <summary>Resistance of the whole path, out and back and joints, with every conductor at one temperature.</summary>
    /// <param name="temperature">Conductor temperature, −100 °C to 1000 °C; a segment's own temperature is not used here.</param>
    /// <returns>The resistance that this circuit's current meets.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public ElectricResistance ResistanceAt(Temperature temperature) =>
        ElectricResistance.FromOhms(OhmsAt(ConductorTemperature.Celsius(temperature, nameof(temperature))));

    /// <summary>The same path, where wires are needed.</summary>
    internal CircuitPath OfWires(string name) => FeedArray.Length > 0
        ? this
        : throw new ArgumentException($"{name} is a resistance without wires, which cannot be checked; accepted is a path of segments.", name);

    internal double OhmsAt(double celsius)
    {
        double ohms = FixedOhms;
        foreach (Segment segment in FeedArray)
        {
            ohms += segment.OhmsAt(celsius);
        }

        foreach (Segment segment in BackArray)
        {
            ohms += segment.OhmsAt(celsius);
        }

        return ohms;
    }

    private static Segment[] Back(Segment[] feed, ReturnPath returnPath)
    {
        if (returnPath.Kind != ReturnKind.SameConductor)
        {
            return [.. returnPath.Segments];
        }

        foreach (Segment segment in feed)
        {
            if (!segment.Conductor.Equals(feed[0].Conductor) || segment.Parallel != feed[0].Parallel)
            {
                throw new ArgumentException(
                    "The return is to be a wire like the feed, but the feed has several sizes: give the return as segments.", nameof(returnPath));
            }
        }

        return [feed[0].Like(returnPath.Meters, feed.Length == 1)];
    }

    private static Joint[] Require(Joint[] joints)
    {
        _ = joints ?? throw new ArgumentNullException(nameof(joints));
        foreach (Joint joint in joints)
        {
            _ = joint ?? throw new ArgumentNullException(nameof(joints));
        }

        return joints;
    }
}
