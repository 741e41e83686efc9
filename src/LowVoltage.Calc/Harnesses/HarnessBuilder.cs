using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Collects the parts of a harness and builds it; every mistake is named at once when it is built.</summary>
/// <remarks>
/// <code>
/// Harness van = new HarnessBuilder("van", DesignRules.RoadVehicle)
///     .Terminals("battery +", "battery −").Busbar("panel").Ground("frame")
///     .Source("battery", "battery +", "battery −", battery)
///     .Wire("main", "battery +", "panel", conductor, length, place, insulation)
///     …
///     .Build();
/// </code>
/// Not thread-safe; what it builds is.
/// </remarks>
public sealed partial class HarnessBuilder
{
    private readonly List<HarnessNode> nodes = [];
    private readonly List<HarnessBranch> branches = [];
    private readonly List<HarnessSource> sources = [];
    private readonly List<HarnessLoad> loads = [];
    private readonly List<LoadCase> cases = [];
    private readonly HarnessParts start;
    private string? reference;

    /// <summary>An empty harness.</summary>
    /// <param name="name">What it is called; may be empty.</param>
    /// <param name="rules">The practice that it is checked and sized by.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public HarnessBuilder(string name, DesignRules rules) =>
        start = new HarnessParts(name ?? throw new ArgumentNullException(nameof(name)), rules ?? throw new ArgumentNullException(nameof(rules)));

    internal HarnessBuilder(HarnessParts parts)
    {
        start = parts;
        reference = parts.Reference;
        nodes.AddRange(parts.Nodes);
        branches.AddRange(parts.Branches);
        sources.AddRange(parts.Sources);
        loads.AddRange(parts.Loads);
        cases.AddRange(parts.Cases);
    }

    /// <summary>Adds nodes.</summary>
    /// <param name="added">The nodes.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessBuilder Add(params HarnessNode[] added) => To(nodes, added, nameof(added));

    /// <summary>Adds wires, fuses, switches or stated resistances.</summary>
    /// <param name="added">The branches.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessBuilder Add(params HarnessBranch[] added) => To(branches, added, nameof(added));

    /// <summary>Adds sources.</summary>
    /// <param name="added">The sources.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessBuilder Add(params HarnessSource[] added) => To(sources, added, nameof(added));

    /// <summary>Adds loads.</summary>
    /// <param name="added">The loads.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessBuilder Add(params HarnessLoad[] added) => To(loads, added, nameof(added));

    /// <summary>Adds load cases. Where none is added the usual ones are used: see <see cref="Harness.LoadCases"/>.</summary>
    /// <param name="added">The cases.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    public HarnessBuilder Add(params LoadCase[] added) => To(cases, added, nameof(added));

    /// <summary>Takes a branch, source or load out.</summary>
    /// <param name="id">Its name.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    public HarnessBuilder Remove(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        int removed = branches.RemoveAll(b => b.Id == id) + sources.RemoveAll(s => s.Id == id) + loads.RemoveAll(l => l.Id == id);
        return removed > 0 ? this : throw new ArgumentException($"There is no branch, source or load {id}.", nameof(id));
    }

    /// <summary>Puts a branch in the place of the one of the same name.</summary>
    /// <param name="branch">The branch.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The branch is null.</exception>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    public HarnessBuilder Replace(HarnessBranch branch)
    {
        _ = branch ?? throw new ArgumentNullException(nameof(branch));
        int at = branches.FindIndex(b => b.Id == branch.Id);
        branches[at >= 0 ? at : throw new ArgumentException($"There is no branch {branch.Id}.", nameof(branch))] = branch;
        return this;
    }

    /// <summary>Adds terminals.</summary>
    /// <param name="ids">Their names.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public HarnessBuilder Terminals(params string[] ids) => Nodes(ids, NodeKind.Terminal);

    /// <summary>Adds splices.</summary>
    /// <param name="ids">Their names.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public HarnessBuilder Splices(params string[] ids) => Nodes(ids, NodeKind.Splice);

    /// <summary>Adds busbars.</summary>
    /// <param name="ids">Their names.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public HarnessBuilder Busbars(params string[] ids) => Nodes(ids, NodeKind.Busbar);

    /// <summary>Adds ground points.</summary>
    /// <param name="ids">Their names.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">The array or a name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public HarnessBuilder Grounds(params string[] ids) => Nodes(ids, NodeKind.Ground);

    /// <summary>Adds a wire; see <see cref="HarnessWire.Create"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="conductor">The conductor; <c>null</c> where it is to be sized.</param>
    /// <param name="length">Length from node to node, positive.</param>
    /// <param name="place">Where it runs.</param>
    /// <param name="insulation">Its insulation.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">A name, the place or the insulation is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive or is absurdly large.</exception>
    public HarnessBuilder Wire(string id, string from, string to, Conductor? conductor, Length length, Place place, InsulationMaterial insulation) =>
        Add(HarnessWire.Create(id, from, to, conductor, length, place, insulation));

    /// <summary>Adds a fuse; see <see cref="HarnessFuse.Create"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node on the source's side.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="rating">The rating; <c>null</c> where it is to be chosen.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public HarnessBuilder Fuse(string id, string from, string to, FuseRating? rating) => Add(HarnessFuse.Create(id, from, to, rating));

    /// <summary>Adds a switch; see <see cref="HarnessSwitch.Create"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Resistance of the closed contact, zero or greater.</param>
    /// <param name="isClosed">Whether it is closed where a load case does not say otherwise.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public HarnessBuilder Switch(string id, string from, string to, ElectricResistance resistance, bool isClosed = true) =>
        Add(HarnessSwitch.Create(id, from, to, resistance, isClosed));

    /// <summary>Adds a chassis between two of its points; see <see cref="HarnessResistance.Chassis"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Its resistance, the joints at both ends included, zero or greater.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public HarnessBuilder Chassis(string id, string from, string to, ElectricResistance resistance) => Add(HarnessResistance.Chassis(id, from, to, resistance));

    /// <summary>Adds a stated resistance; see <see cref="HarnessResistance.Create"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node that its current is counted from.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="resistance">Its resistance, zero or greater.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public HarnessBuilder Resistance(string id, string from, string to, ElectricResistance resistance) => Add(HarnessResistance.Create(id, from, to, resistance));

    /// <summary>Adds a source; see <see cref="HarnessSource.Create(string, string, string, Source)"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="positive">Name of the node at its positive terminal.</param>
    /// <param name="negative">Name of the node at its negative terminal.</param>
    /// <param name="source">What it is electrically.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public HarnessBuilder Source(string id, string positive, string negative, Source source) => Add(HarnessSource.Create(id, positive, negative, source));

    /// <summary>Adds a load; see <see cref="HarnessLoad.Create"/>.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="positive">Name of the node at its positive terminal.</param>
    /// <param name="negative">Name of the node at its negative terminal.</param>
    /// <param name="load">What it draws.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public HarnessBuilder Load(string id, string positive, string negative, Load load) => Add(HarnessLoad.Create(id, positive, negative, load));

    /// <summary>States the node that voltages are counted from; not stated, it is the negative terminal of the first source.</summary>
    /// <param name="node">Name of the node; <c>null</c> for that of the first source.</param>
    /// <returns>This builder.</returns>
    public HarnessBuilder Reference(string? node)
    {
        reference = node;
        return this;
    }

    /// <summary>Builds the harness.</summary>
    /// <returns>The harness.</returns>
    /// <exception cref="ArgumentException">Something does not fit: there is no source, a name is used twice or unknown, zero resistances or ideal voltages close a loop, a load case names what is
    /// not there. The message names every such mistake.</exception>
    public Harness Build()
    {
        HarnessParts parts = ToParts();
        List<string> mistakes = [.. HarnessMistakes.In(parts).Select(m => m.Text)];
        return mistakes.Count == 0 ? new Harness(parts) : throw new ArgumentException(
            mistakes.Count == 1 ? mistakes[0] : $"The harness has {Quantities.Accept.Text(mistakes.Count)} mistakes:\n{string.Join("\n", mistakes)}");
    }

    /// <summary>The harness with one load case alone.</summary>
    internal Harness WithOnly(LoadCase used) => new(ToParts() with { Cases = [used] });

    internal HarnessParts ToParts() => start with
    {
        Reference = reference,
        Nodes = [.. nodes],
        Branches = [.. branches],
        Sources = [.. sources],
        Loads = [.. loads],
        Cases = [.. cases],
    };

    private HarnessBuilder Nodes(string[] ids, NodeKind kind) => To(nodes, [.. (ids ?? throw new ArgumentNullException(nameof(ids))).Select(id => HarnessNode.Create(id, kind))], nameof(ids));

    private HarnessBuilder To<T>(List<T> list, T[] added, string parameter)
        where T : class
    {
        foreach (T part in added ?? throw new ArgumentNullException(parameter))
        {
            list.Add(part ?? throw new ArgumentNullException(parameter));
        }

        return this;
    }
}
