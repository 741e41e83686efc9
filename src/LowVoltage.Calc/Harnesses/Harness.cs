using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A whole wiring harness: nodes, the wires, fuses, switches and chassis between them, sources, loads, and the load cases it is used in.</summary>
/// <remarks>
/// <para>A graph like any other: shared feeds and grounds, wires in parallel, rings, several sources. The ground is a conductor like every other one; a single circuit is a harness of one loop.</para>
/// <para>Made by <see cref="HarnessBuilder"/>. Immutable and thread-safe. A variation is made from <see cref="ToBuilder"/>.</para>
/// </remarks>
public sealed partial class Harness
{
    private readonly Dictionary<string, int> nodeIndices;
    private readonly Dictionary<string, int> branchIndices;
    private readonly Dictionary<string, int> sourceIndices;
    private readonly Dictionary<string, int> loadIndices;
    private HarnessGraph? graph;
    private HarnessElements? elements;

    internal Harness(HarnessParts parts)
    {
        Parts = parts;
        nodeIndices = Indices(parts.Nodes, n => n.Id);
        branchIndices = Indices(parts.Branches, b => b.Id);
        sourceIndices = Indices(parts.Sources, s => s.Id);
        loadIndices = Indices(parts.Loads, l => l.Id);
        CaseArray = parts.Cases.Length > 0 ? parts.Cases : UsualCases(parts.Loads);
        HasUsualCases = parts.Cases.Length == 0;
        Reference = parts.Reference ?? parts.Sources[0].Negative;
    }

    /// <summary>What it is called.</summary>
    public string Name => Parts.Name;

    /// <summary>The practice that it is checked and sized by.</summary>
    public DesignRules Rules => Parts.Rules;

    /// <summary>The node that voltages are counted from: as stated, else the negative terminal of the first source.</summary>
    public string Reference { get; }

    /// <summary>The nodes.</summary>
    public IReadOnlyList<HarnessNode> Nodes => Parts.Nodes;

    /// <summary>Wires, fuses, switches and stated resistances.</summary>
    public IReadOnlyList<HarnessBranch> Branches => Parts.Branches;

    /// <summary>The sources.</summary>
    public IReadOnlyList<HarnessSource> Sources => Parts.Sources;

    /// <summary>The loads.</summary>
    public IReadOnlyList<HarnessLoad> Loads => Parts.Loads;

    /// <summary>The load cases; where none was stated the usual ones: everything on, and each load that has a start starting while all others run.</summary>
    public IReadOnlyList<LoadCase> LoadCases => CaseArray;

    /// <summary>Whether no load case was stated, so that <see cref="LoadCases"/> are the usual ones.</summary>
    public bool HasUsualCases { get; }

    internal HarnessParts Parts { get; }

    internal LoadCase[] CaseArray { get; }

    internal HarnessBranch[] BranchArray => Parts.Branches;

    internal HarnessSource[] SourceArray => Parts.Sources;

    internal HarnessLoad[] LoadArray => Parts.Loads;

    /// <summary>What hangs on what with every switch closed.</summary>
    internal HarnessGraph Graph => graph ??= HarnessGraph.Of(this, []);

    /// <summary>The largest nominal voltage about, V.</summary>
    internal double NominalVolts => Parts.Sources.Max(s => s.Source?.Numbers.NominalVolts ?? s.Panel!.OpenVolts);

    /// <summary>The largest voltage that a source may have, V.</summary>
    internal double GreatestVolts => Parts.Sources.Max(s => s.Source?.Numbers.MaximumVolts ?? s.Panel!.OpenVolts);

    /// <summary>Solves the harness in one load case at one supply level: every voltage, current, loss and temperature.</summary>
    /// <param name="level">Where in its range every source is.</param>
    /// <param name="loadCase">The load case; <c>null</c> for everything on.</param>
    /// <returns>The solution, or the reason why there is none.</returns>
    /// <exception cref="ArgumentException">The load case names a load or switch that the harness does not have.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is not one of its enumeration.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor yet.</exception>
    public HarnessSolution Solve(SupplyLevel level = SupplyLevel.Nominal, LoadCase? loadCase = null)
    {
        LoadCase used = loadCase ?? LoadCase.AllOn;
        _ = SourceNumbers.Check(level, nameof(level));
        HarnessMistakes.RefuseUnknown(this, used, nameof(loadCase));
        RequireSized();
        HarnessNetwork network = new(this, ElementsOf(used), HarnessChange.None);
        return new HarnessSolution(this, used, level, network.Solve(level));
    }

    /// <summary>The same harness to be changed: its parts in a builder.</summary>
    /// <returns>A builder that holds all of it.</returns>
    public HarnessBuilder ToBuilder() => new(Parts);

    /// <summary>The same harness with wires in other conductors.</summary>
    /// <param name="conductors">Conductors by the names of their wires.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wire.</exception>
    public Harness WithConductors(IReadOnlyDictionary<string, Conductor> conductors)
    {
        _ = conductors ?? throw new ArgumentNullException(nameof(conductors));
        HarnessBranch[] changed = [.. Parts.Branches];
        foreach (KeyValuePair<string, Conductor> pair in conductors)
        {
            int k = BranchIndex(pair.Key, nameof(conductors));
            changed[k] = changed[k] is HarnessWire wire
                ? wire.WithConductor(pair.Value)
                : throw new ArgumentException($"{changed[k]} is no wire; it has no conductor.", nameof(conductors));
        }

        return new Harness(Parts with { Branches = changed });
    }

    /// <summary>The same harness with other fuse ratings.</summary>
    /// <param name="ratings">Ratings by the names of their fuses.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentNullException">The argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such fuse.</exception>
    public Harness WithFuses(IReadOnlyDictionary<string, Protection.FuseRating> ratings)
    {
        _ = ratings ?? throw new ArgumentNullException(nameof(ratings));
        HarnessBranch[] changed = [.. Parts.Branches];
        foreach (KeyValuePair<string, Protection.FuseRating> pair in ratings)
        {
            int k = BranchIndex(pair.Key, nameof(ratings));
            changed[k] = changed[k] is HarnessFuse fuse ? fuse.WithRating(pair.Value) : throw new ArgumentException($"{changed[k]} is no fuse.", nameof(ratings));
        }

        return new Harness(Parts with { Branches = changed });
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Name}: {Quantities.Accept.Text(Nodes.Count)} nodes, {Quantities.Accept.Text(Branches.Count)} branches, {Quantities.Accept.Text(Sources.Count)} sources, {Quantities.Accept.Text(Loads.Count)} loads";

    internal int NodeIndex(string id, string parameter = "node") => Find(nodeIndices, id, "node", parameter);

    internal int BranchIndex(string id, string parameter = "branch") => Find(branchIndices, id, "branch", parameter);

    internal int SourceIndex(string id, string parameter = "source") => Find(sourceIndices, id, "source", parameter);

    internal int LoadIndex(string id, string parameter = "load") => Find(loadIndices, id, "load", parameter);

    internal void RequireSized()
    {
        string[] open = [.. Parts.Branches.OfType<HarnessWire>().Where(w => w.Conductor is null).Select(w => w.Id)];
        if (open.Length > 0)
        {
            throw new InvalidOperationException($"These wires have no conductor yet: {HarnessName.List(open)}. State one, or have the harness sized.");
        }
    }

    internal void RequireFused()
    {
        string[] open = [.. Parts.Branches.OfType<HarnessFuse>().Where(f => f.Rating is null).Select(f => f.Id)];
        if (open.Length > 0)
        {
            throw new InvalidOperationException($"These fuses have no rating yet: {HarnessName.List(open)}. State one, or have the harness sized.");
        }
    }

    // Those of the load case asked last are kept: the levels of a supply, and what is asked again and again, need the order of elimination once. Two threads may both find them, alike.
    private HarnessElements ElementsOf(LoadCase used)
    {
        HarnessElements? known = Volatile.Read(ref elements);
        if (!ReferenceEquals(known?.Case, used))
        {
            known = new HarnessElements(this, used, HarnessChange.None, null);
            Volatile.Write(ref elements, known);
        }

        return known!;
    }

    private static LoadCase[] UsualCases(HarnessLoad[] loads) =>
        [LoadCase.AllOn, .. loads.Where(l => l.Load.Starts || l.Load.HasSurge).Select(l => LoadCase.Create($"{l.Id} starts").WithStarting(l.Id))];

    private static Dictionary<string, int> Indices<T>(T[] parts, Func<T, string> id)
    {
        Dictionary<string, int> indices = new(parts.Length, StringComparer.Ordinal);
        for (int k = 0; k < parts.Length; k++)
        {
            indices.Add(id(parts[k]), k);
        }

        return indices;
    }

    private static int Find(Dictionary<string, int> indices, string id, string what, string parameter) =>
        indices.TryGetValue(id ?? throw new ArgumentNullException(parameter), out int index)
            ? index
            : throw new ArgumentException($"There is no {what} {id}; there are {HarnessName.List(indices.Keys)}.", parameter);
}
