using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc;

/// <content>Made and varied by calls: for languages without object initialisers of <c>init</c> properties (C# before 9, Visual Basic, PowerShell).</content>
public sealed partial class CircuitRequirements
{
    /// <summary>Requirements with what every circuit must state; the rest as if not stated, to be added by the <c>With…</c> methods.</summary>
    /// <param name="source">The battery or supply.</param>
    /// <param name="load">What is fed.</param>
    /// <param name="feed">Length of the feed, one way. Above zero.</param>
    /// <param name="returnPath">The way back.</param>
    /// <param name="place">Where the wire runs.</param>
    /// <param name="insulation">The insulation of the wire.</param>
    /// <returns>The requirements.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static CircuitRequirements Create(Source source, Load load, Length feed, ReturnPath returnPath, Place place, InsulationMaterial insulation) => new()
    {
        Source = source,
        Load = load,
        Feed = feed,
        Return = returnPath,
        Place = place,
        Insulation = insulation,
    };

    /// <summary>The same circuit with another name.</summary>
    /// <param name="name">See <see cref="Name"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    public CircuitRequirements WithName(string name) => new(this) { Name = name };

    /// <summary>The same circuit on another source.</summary>
    /// <param name="source">See <see cref="Source"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The source is null.</exception>
    public CircuitRequirements WithSource(Source source) => new(this) { Source = source };

    /// <summary>The same circuit with another load.</summary>
    /// <param name="load">See <see cref="Load"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The load is null.</exception>
    public CircuitRequirements WithLoad(Load load) => new(this) { Load = load };

    /// <summary>The same circuit with another length of feed; the return stays.</summary>
    /// <param name="feed">See <see cref="Feed"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public CircuitRequirements WithFeed(Length feed) => new(this) { Feed = feed };

    /// <summary>The same circuit with another way back.</summary>
    /// <param name="returnPath">See <see cref="Return"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The return is null.</exception>
    public CircuitRequirements WithReturn(ReturnPath returnPath) => new(this) { Return = returnPath ?? throw new ArgumentNullException(nameof(returnPath)) };

    /// <summary>The same circuit with these joints instead of its own.</summary>
    /// <param name="joints">See <see cref="Joints"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The joints, or one of them, are null.</exception>
    public CircuitRequirements WithJoints(params Joint[] joints) => new(this) { Joints = joints };

    /// <summary>The same circuit with another supply lead.</summary>
    /// <param name="upstream">See <see cref="Upstream"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is outside its range.</exception>
    public CircuitRequirements WithUpstream(ElectricResistance? upstream) => new(this) { Upstream = upstream };

    /// <summary>The same circuit behind these main fuses or breakers instead of its own.</summary>
    /// <param name="upstreamProtection">See <see cref="UpstreamProtection"/>; from the source on.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The devices, or one of them, are null.</exception>
    /// <exception cref="ArgumentException">A device sits nearer to the source than the one before it.</exception>
    public CircuitRequirements WithUpstreamProtection(params UpstreamProtection[] upstreamProtection) => new(this) { UpstreamProtection = upstreamProtection };

    /// <summary>The same circuit with its fuse elsewhere.</summary>
    /// <param name="fuseDistance">See <see cref="FuseDistance"/>.</param>
    /// <param name="sheathed">See <see cref="SheathedToFuse"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public CircuitRequirements WithFuseDistance(Length? fuseDistance, bool sheathed) => new(this) { FuseDistance = fuseDistance, SheathedToFuse = sheathed };

    /// <summary>The same circuit with other air around its fuse.</summary>
    /// <param name="fuseAmbient">See <see cref="FuseAmbient"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public CircuitRequirements WithFuseAmbient(Temperature? fuseAmbient) => new(this) { FuseAmbient = fuseAmbient };

    /// <summary>The same circuit started another number of times.</summary>
    /// <param name="starts">See <see cref="Starts"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public CircuitRequirements WithStarts(int? starts) => new(this) { Starts = starts };

    /// <summary>The same circuit in another place.</summary>
    /// <param name="place">See <see cref="Place"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    public CircuitRequirements WithPlace(Place place) => new(this) { Place = place };

    /// <summary>The same circuit with wire of another insulation.</summary>
    /// <param name="insulation">See <see cref="Insulation"/>.</param>
    /// <param name="wall">See <see cref="Wall"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The insulation is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wall is outside its range.</exception>
    public CircuitRequirements WithInsulation(InsulationMaterial insulation, Length? wall) => new(this) { Insulation = insulation, Wall = wall };

    /// <summary>The same circuit for a load that runs for short times only, or not.</summary>
    /// <param name="intermittent">See <see cref="Intermittent"/>.</param>
    /// <returns>A copy.</returns>
    public CircuitRequirements WithIntermittent(bool intermittent) => new(this) { Intermittent = intermittent };

    /// <summary>The same circuit in another number of equal wires side by side.</summary>
    /// <param name="wires">See <see cref="ParallelWires"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The number is null.</exception>
    public CircuitRequirements WithParallelWires(ParallelWires wires) => new(this) { ParallelWires = wires ?? throw new ArgumentNullException(nameof(wires)) };

    /// <summary>The same circuit with an allowance of its own for the drop.</summary>
    /// <param name="limit">See <see cref="DropLimit"/>.</param>
    /// <returns>A copy.</returns>
    public CircuitRequirements WithDropLimit(DropLimit? limit) => new(this) { DropLimit = limit };

    /// <summary>The same circuit with another length of feed, m; a wire return grows in proportion.</summary>
    internal CircuitRequirements Stretched(double meters) => new(this)
    {
        Feed = Length.FromMeters(meters),
        Return = Return.Kind == ReturnKind.SameConductor ? ReturnPath.Wire(Length.FromMeters(Return.Meters * meters / feedMeters)) : Return,
    };
}
