using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A stretch of wire from node to node: conductor, length, number in parallel, insulation, where it runs, and the joints at its ends.</summary>
/// <remarks>Immutable. A variation is a copy: <c>wire.WithConductor(…)</c>. Without a conductor it is to be sized; until then the harness cannot be solved.</remarks>
public sealed class HarnessWire : HarnessBranch
{
    private readonly Joint[] joints;

    private HarnessWire(string id, string from, string to, Conductor? conductor, double meters, int parallel, Place place, InsulationMaterial insulation, double? wall, Joint[] joints)
        : base(id, from, to)
    {
        Conductor = conductor;
        Meters = meters;
        Parallel = parallel;
        Place = place;
        Insulation = insulation;
        WallMillimeters = wall;
        this.joints = joints;
        foreach (Joint joint in joints)
        {
            FixedOhms += joint.Ohms;
        }
    }

    /// <summary>The conductor; <c>null</c> where it is to be sized.</summary>
    public Conductor? Conductor { get; }

    /// <summary>Length from node to node.</summary>
    public Length Length => Length.FromMeters(Meters);

    /// <summary>How many such wires lie side by side and share the current.</summary>
    public int Parallel { get; }

    /// <summary>Where it runs.</summary>
    public Place Place { get; }

    /// <summary>Its insulation.</summary>
    public InsulationMaterial Insulation { get; }

    /// <summary>Wall thickness of the insulation; <c>null</c> means the usual one for the size.</summary>
    public Length? Wall => WallMillimeters is { } wall ? Length.FromMillimeters(wall) : null;

    /// <summary>The joints at its ends and on its way.</summary>
    public IReadOnlyList<Joint> Joints => joints;

    internal double Meters { get; }

    internal double? WallMillimeters { get; }

    internal override double FixedOhms { get; }

    internal override string Word => "wire";

    /// <summary>A wire as it is laid.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="conductor">The conductor; <c>null</c> where it is to be sized.</param>
    /// <param name="length">Length from node to node, positive.</param>
    /// <param name="place">Where it runs.</param>
    /// <param name="insulation">Its insulation.</param>
    /// <returns>The wire.</returns>
    /// <exception cref="ArgumentNullException">A name, the place or the insulation is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive or is absurdly large.</exception>
    public static HarnessWire Create(string id, string from, string to, Conductor? conductor, Length length, Place place, InsulationMaterial insulation) => new(
        id, from, to, conductor, Accept.Meters(length, nameof(length)), 1, place ?? throw new ArgumentNullException(nameof(place)), insulation ?? throw new ArgumentNullException(nameof(insulation)), null, []);

    /// <summary>The same wire in another conductor.</summary>
    /// <param name="conductor">The conductor; <c>null</c> where it is to be sized.</param>
    /// <returns>A copy.</returns>
    public HarnessWire WithConductor(Conductor? conductor) => new(Id, From, To, conductor, Meters, Parallel, Place, Insulation, WallMillimeters, joints);

    /// <summary>The same wire, several of them side by side.</summary>
    /// <param name="parallel">How many, 1 to 100.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public HarnessWire WithParallel(int parallel) => new(Id, From, To, Conductor, Meters, Accept.Count(parallel, 1, 100, nameof(parallel)), Place, Insulation, WallMillimeters, joints);

    /// <summary>The same wire with a stated wall of insulation.</summary>
    /// <param name="wall">Wall thickness, 0 to 20 mm; <c>null</c> for the usual one.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wall is outside its range.</exception>
    public HarnessWire WithWall(Length? wall) => new(
        Id, From, To, Conductor, Meters, Parallel, Place, Insulation,
        wall is { } given ? Accept.Within(Accept.MetersOrZero(given, nameof(wall)) * 1000, 0, 20, "mm", nameof(wall)) : null,
        joints);

    /// <summary>The same wire with these joints in place of its own.</summary>
    /// <param name="joints">The joints.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessWire WithJoints(params Joint[] joints)
    {
        _ = joints ?? throw new ArgumentNullException(nameof(joints));
        return new(Id, From, To, Conductor, Meters, Parallel, Place, Insulation, WallMillimeters, [.. joints.Select(j => j ?? throw new ArgumentNullException(nameof(joints), "A joint is null."))]);
    }

    /// <summary>The same wire in another place.</summary>
    /// <param name="place">Where it runs.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    public HarnessWire WithPlace(Place place) => new(Id, From, To, Conductor, Meters, Parallel, place ?? throw new ArgumentNullException(nameof(place)), Insulation, WallMillimeters, joints);

    internal HarnessWire WithMeters(double meters) => new(Id, From, To, Conductor, meters, Parallel, Place, Insulation, WallMillimeters, joints);
    /// <summary>The same with a wall in mm as a document states it, without the way by metres.</summary>
    internal HarnessWire WithWallMillimeters(double? wall) => new(Id, From, To, Conductor, Meters, Parallel, Place, Insulation, wall, joints);

    /// <inheritdoc/>
    public override string ToString() =>
        $"wire {Id}, {Accept.Short(Meters)} m of {(Parallel == 1 ? "" : $"{Accept.Text(Parallel)} × ")}{Conductor?.ToString() ?? "a size to be chosen"}";
}
