using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness solved in one load case at one supply level.</summary>
/// <remarks>
/// <para>Currents count from a branch's first node to its second; a source's is what it gives. Voltages are counted from the harness's reference; in a part that nothing joins to it, from that part's first node
/// (<see cref="FloatingIslands"/>).</para>
/// <para><b>Method.</b> Newton's method on the node voltages, the warmth of each wire inside. <b>Source.</b> Kirchhoff's laws; resistance at temperature as everywhere here. <b>Accuracy.</b>
/// <see cref="LargestBalance"/> is what rounding leaves of zero at the worst node.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed partial class HarnessSolution
{
    private readonly HarnessState state;

    internal HarnessSolution(Harness harness, LoadCase used, SupplyLevel level, HarnessState state)
    {
        Harness = harness;
        LoadCase = used;
        Level = level;
        this.state = state;
    }

    /// <summary>The harness.</summary>
    public Harness Harness { get; }

    /// <summary>The load case.</summary>
    public LoadCase LoadCase { get; }

    /// <summary>The supply level.</summary>
    public SupplyLevel Level { get; }

    /// <summary>Whether there is a solution.</summary>
    public bool Exists => state.Exists;

    /// <summary>Why there is none, in words; empty when there is one.</summary>
    public string Explanation => Exists ? "" : state.End == NetworkEnd.Unsettled
        ? "The calculation did not settle; nothing is known of this state."
        : $"The loads of constant power need more than can reach them: at most {Accept.Short(100 * state.Share)} % of each"
            + (state.Hardest >= 0 ? $"; load {Harness.LoadArray[state.Hardest].Id} loses the largest share of its voltage." : ".");

    /// <summary>The share of the constant powers that can be supplied, all by the same share; 1 when there is a solution.</summary>
    public Ratio SuppliableShare => Ratio.FromDecimalFractions(Exists ? 1 : state.Share);

    /// <summary>How many loads had to cut out, the worst first, for the rest to have a solution.</summary>
    public int DroppedOut => state.DroppedOut;

    /// <summary>The largest sum of currents left over at a node: what rounding leaves of zero.</summary>
    public ElectricCurrent LargestBalance => ElectricCurrent.FromAmperes(There(state.Balance));

    /// <summary>The parts that nothing joins to the reference, as the names of their nodes. A part that no source feeds is dead.</summary>
    public IReadOnlyList<IReadOnlyList<string>> FloatingIslands
    {
        get
        {
            int reference = Harness.NodeIndex(Harness.Reference);
            return [.. Enumerable.Range(0, state.Grounds.Length).Where(k => state.Grounds[k] != reference).GroupBy(k => state.Grounds[k])
                .Select(part => (IReadOnlyList<string>)[.. part.Select(k => Harness.Nodes[k].Id)])];
        }
    }

    /// <summary>Sources that have disconnected because their current passed their limit.</summary>
    public IReadOnlyList<string> Disconnected => [.. Harness.SourceArray.Where((_, k) => state.Disconnected[k]).Select(s => s.Id)];

    /// <summary>Power that the sources give, what is charged into them counted against it.</summary>
    public Power Given => Power.FromWatts(There(Enumerable.Range(0, Harness.SourceArray.Length).Sum(k => state.VoltsOfSource(k) * state.SourceAmperes[k])));

    /// <summary>Power turned into heat in wires, fuses, switches and chassis.</summary>
    public Power Lost => Power.FromWatts(There(Enumerable.Range(0, Harness.BranchArray.Length).Sum(LossWatts)));

    /// <summary>Power that the loads take.</summary>
    public Power Consumed => Power.FromWatts(There(Enumerable.Range(0, Harness.LoadArray.Length).Sum(k => state.VoltsAcross(k) * state.LoadAmperes[k])));

    /// <summary>What a person should know beside the numbers: voltages above what may be designed, loads that cut out, sources that are charged backwards.</summary>
    public IReadOnlyList<string> Remarks => HarnessRemarks.Of(this, state);

    internal HarnessState State => state;

    /// <summary>Voltage of a node.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>The voltage over the reference, or over the first node of its floating part.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricPotential VoltageOf(string node) => ElectricPotential.FromVolts(There(state.Volts[Harness.NodeIndex(node)]));

    /// <summary>Voltage of one node over another.</summary>
    /// <param name="node">Name of the node.</param>
    /// <param name="over">Name of the other, in the same part of the harness.</param>
    /// <returns>The voltage.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">There is no such node, or nothing joins the two.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricPotential VoltageBetween(string node, string over)
    {
        int a = Harness.NodeIndex(node), b = Harness.NodeIndex(over, nameof(over));
        return state.Grounds[a] == state.Grounds[b]
            ? ElectricPotential.FromVolts(There(state.Volts[a] - state.Volts[b]))
            : throw new ArgumentException($"Nothing joins node {over} to node {node}: there is no voltage between them to tell.", nameof(over));
    }

    /// <summary>Current of a branch from its first node to its second.</summary>
    /// <param name="branch">Name of the branch.</param>
    /// <returns>The current while the loads are on.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricCurrent CurrentOf(string branch) => ElectricCurrent.FromAmperes(There(state.Amperes[Harness.BranchIndex(branch)]));

    /// <summary>The current that heats a branch: with duty cycles (<see cref="DutyCycle"/>) less than <see cref="CurrentOf"/>.</summary>
    /// <param name="branch">Name of the branch.</param>
    /// <returns>The current, without sign.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricCurrent HeatingCurrentOf(string branch) => ElectricCurrent.FromAmperes(There(state.HeatAmperes[Harness.BranchIndex(branch)]));

    /// <summary>Power that a branch turns into heat while the loads are on.</summary>
    /// <param name="branch">Name of the branch.</param>
    /// <returns>The loss.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public Power LossOf(string branch) => Power.FromWatts(There(LossWatts(Harness.BranchIndex(branch))));

    /// <summary>Steady temperature of a wire's conductor.</summary>
    /// <param name="wire">Name of the wire.</param>
    /// <returns>The temperature; <c>null</c> where it would not settle below the metal's melting point, or the rules do not rate the wire.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch, or it is no wire.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public Temperature? TemperatureOf(string wire)
    {
        int k = Harness.BranchIndex(wire, nameof(wire));
        _ = There(0);
        if (Harness.BranchArray[k] is not HarnessWire)
        {
            throw new ArgumentException($"{Harness.BranchArray[k]} is no wire; it has no temperature here.", nameof(wire));
        }

        ref readonly SegmentState s = ref state.Wires[k];
        return s.IsRated && s.TrySteadyCelsius(state.HeatAmperes[k], out double celsius) && celsius < s.Conductor.Material.MeltingPointCelsius
            ? Temperature.FromDegreesCelsius(celsius)
            : null;
    }

    /// <summary>What a load does.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>Its condition; undetermined where there is no solution.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public LoadCondition ConditionOf(string load) => state.ConditionOf(Harness.LoadIndex(load));

    /// <summary>Voltage across a load.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The voltage; negative where it is fed backwards.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricPotential VoltageAt(string load) => ElectricPotential.FromVolts(There(state.VoltsAcross(Harness.LoadIndex(load))));

    /// <summary>Current of a load.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The current while it is on.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricCurrent CurrentAt(string load) => ElectricCurrent.FromAmperes(There(state.LoadAmperes[Harness.LoadIndex(load)]));

    /// <summary>Current that a source gives.</summary>
    /// <param name="source">Name of the source.</param>
    /// <returns>The current; negative when it is charged.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such source.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricCurrent CurrentFrom(string source) => ElectricCurrent.FromAmperes(There(state.SourceAmperes[Harness.SourceIndex(source)]));

    /// <summary>Voltage at the terminals of a source.</summary>
    /// <param name="source">Name of the source.</param>
    /// <returns>The voltage.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such source.</exception>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public ElectricPotential VoltageOfSource(string source) => ElectricPotential.FromVolts(There(state.VoltsOfSource(Harness.SourceIndex(source))));

    /// <inheritdoc/>
    public override string ToString() => Exists
        ? $"{Harness.Name}, {LoadCase.Name}: {Accept.Short((double)Consumed.Watts)} W in the loads, {Accept.Short((double)Lost.Watts)} W lost"
        : Explanation;

    private double LossWatts(int k)
    {
        double drop = state.Volts[Harness.Graph.From[k]] - state.Volts[Harness.Graph.To[k]];
        return drop * state.Amperes[k];
    }

    private double There(double value) => Exists
        ? value
        : throw new InvalidOperationException($"There is no solution to read: {Explanation} Ask {nameof(Exists)} first.");
}
