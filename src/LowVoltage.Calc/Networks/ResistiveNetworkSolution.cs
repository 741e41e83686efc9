using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Networks;

/// <summary>Voltages, currents and powers of a <see cref="ResistiveNetwork"/>; or the reason why there are none.</summary>
/// <remarks>
/// Only loads of constant power can leave a network without an answer; the members that read one then throw <see cref="InvalidOperationException"/>. Of two answers the one of the
/// higher voltages is given: it is the one that stands. Immutable and thread-safe.
/// </remarks>
public sealed partial class ResistiveNetworkSolution
{
    private readonly double[] volts;
    private readonly double[] amperes;
    private readonly Dictionary<string, int> elements = new(StringComparer.Ordinal);

    private ResistiveNetworkSolution(ResistiveNetwork network, NetworkSolver solver, NetworkEnd end)
    {
        Network = network;
        volts = [.. solver.Volts];
        amperes = new double[network.ElementArray.Length];
        (int element, int tie) = (0, 0);
        for (int k = 0; k < amperes.Length; k++)
        {
            NetworkElement own = network.ElementArray[k];
            double through = own.IsTie ? solver.TieAmperes[tie++] : solver.Amperes[element++];
            amperes[k] = own.Kind == NetworkElementKind.VoltageSource ? 0 - through : through;
            elements.Add(own.Id, k);
        }

        Exists = end == NetworkEnd.Solved;
        Explanation = Exists ? "" : Why(network, solver, end);
        LargestWattsShare = solver.Share;
    }

    /// <summary>The network that was solved.</summary>
    public ResistiveNetwork Network { get; }

    /// <summary>Whether there is an answer.</summary>
    public bool Exists { get; }

    /// <summary>Why there is none, in words; empty when there is one.</summary>
    public string Explanation { get; }

    /// <summary>The share of the constant powers that could be supplied, all by the same share; 1 when there is an answer.</summary>
    public Ratio SuppliableShare => Ratio.FromDecimalFractions(LargestWattsShare);

    /// <summary>The parts that nothing joins to the reference, as the names of their nodes; each part's voltages are counted from its first node. Usually none.</summary>
    public IReadOnlyList<IReadOnlyList<string>> FloatingIslands { get; private init; } = [];

    /// <summary>The largest sum of currents left over at a node: what rounding leaves of zero.</summary>
    public ElectricCurrent LargestBalance => ElectricCurrent.FromAmperes(There(BalanceAmperes));

    /// <summary>Power that the voltage sources give, those that take some counted against it.</summary>
    public Power Given => Power.FromWatts(Sum(e => e.Kind == NetworkElementKind.VoltageSource, GivenWatts));

    /// <summary>Power turned into heat in the resistances, those behind the voltages included.</summary>
    public Power Heat => Power.FromWatts(Sum(_ => true, HeatWatts));

    /// <summary>Power that stated currents and constant powers draw; a current that drives gives, and counts against it.</summary>
    public Power Drawn => Power.FromWatts(Sum(e => e.Kind is NetworkElementKind.Current or NetworkElementKind.ConstantPower, TakenWatts));

    internal double LargestWattsShare { get; }

    private double BalanceAmperes { get; init; }

    /// <summary>Voltage of a node over the reference, or over the first node of its floating part.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>The voltage.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="node"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public ElectricPotential VoltageOf(string node) => ElectricPotential.FromVolts(There(volts[Network.IndexOf(node, nameof(node))]));

    /// <summary>Voltage of one node over another.</summary>
    /// <param name="node">Name of the node.</param>
    /// <param name="over">Name of the other; of the same part of the network.</param>
    /// <returns>The voltage.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">There is no such node, or nothing joins the two.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public ElectricPotential VoltageBetween(string node, string over)
    {
        (int a, int b) = Joined(node, over);
        return ElectricPotential.FromVolts(There(volts[a] - volts[b]));
    }

    /// <summary>Current of an element from its first node to its second; of a voltage source the current that it gives, out of its positive node.</summary>
    /// <param name="element">Name of the element.</param>
    /// <returns>The current; negative when it flows the other way: a source is being charged.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="element"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public ElectricCurrent CurrentOf(string element) => ElectricCurrent.FromAmperes(There(amperes[IndexOf(element)]));

    /// <summary>Power that an element takes from the network between its two nodes; negative for one that gives.</summary>
    /// <param name="element">Name of the element.</param>
    /// <returns>The power: what a resistance turns into heat, what a load draws, less than nothing for a source that gives.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="element"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such element.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public Power PowerOf(string element) => Power.FromWatts(There(TakenWatts(IndexOf(element))));

    /// <summary>The network as it is seen from two of its nodes: one voltage behind one resistance.</summary>
    /// <param name="node">Name of the node.</param>
    /// <param name="over">Name of the other; of the same part of the network.</param>
    /// <returns>The equivalent.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">There is no such node, or nothing joins the two.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public TheveninEquivalent EquivalentAt(string node, string over)
    {
        (int a, int b) = Joined(node, over);
        _ = There(0);
        NetworkSolver solver = Network.ToSolver();
        _ = solver.Solve();
        (double open, double ohms) = solver.Thevenin(a, b);
        return new TheveninEquivalent(open, ohms);
    }

    /// <inheritdoc/>
    public override string ToString() => Exists
        ? $"{volts.Length} nodes, {amperes.Length} elements, {Accept.Text((double)Heat.Watts)} W of heat"
        : Explanation;

    internal static ResistiveNetworkSolution Of(ResistiveNetwork network)
    {
        NetworkSolver solver = network.ToSolver();
        NetworkEnd end = solver.Solve();
        return new ResistiveNetworkSolution(network, solver, end)
        {
            BalanceAmperes = solver.Balance,
            FloatingIslands = Islands(network, solver.Grounds),
        };
    }

    private static List<IReadOnlyList<string>> Islands(ResistiveNetwork network, int[] grounds)
    {
        int reference = network.IndexOf(network.Reference);
        return [.. Enumerable.Range(0, grounds.Length).Where(k => grounds[k] != reference).GroupBy(k => grounds[k])
            .Select(part => (IReadOnlyList<string>)[.. part.Select(k => network.NodeArray[k])])];
    }

    private static string Why(ResistiveNetwork network, NetworkSolver solver, NetworkEnd end)
    {
        if (end == NetworkEnd.Unsettled)
        {
            return "The calculation did not settle; nothing is known of this network.";
        }

        NetworkElement[] loads = Array.FindAll(network.ElementArray, e => !e.IsTie);
        return $"The loads of constant power need more than can reach them: at most {Accept.Text(100 * solver.Share)} % of each. "
            + $"{loads[solver.Hardest].Id} at node {loads[solver.Hardest].First} loses the most voltage.";
    }

    private (int Node, int Over) Joined(string node, string over)
    {
        int a = Network.IndexOf(node, nameof(node)), b = Network.IndexOf(over, nameof(over));
        foreach (IReadOnlyList<string> island in FloatingIslands)
        {
            if (island.Contains(node, StringComparer.Ordinal) != island.Contains(over, StringComparer.Ordinal))
            {
                throw new ArgumentException($"Nothing joins node {over} to node {node}: there is no voltage between them to tell.", nameof(over));
            }
        }

        return (a, b);
    }

    private int IndexOf(string element) =>
        elements.TryGetValue(element ?? throw new ArgumentNullException(nameof(element)), out int index)
            ? index
            : throw new ArgumentException($"There is no element {element}; the elements are {string.Join(", ", Network.ElementArray.Select(e => e.Id))}.", nameof(element));

    private double Across(int k) =>
        volts[Network.IndexOf(Network.ElementArray[k].First)] - volts[Network.IndexOf(Network.ElementArray[k].Second)];

    private double TakenWatts(int k) => Network.ElementArray[k].Kind == NetworkElementKind.VoltageSource ? -Across(k) * amperes[k] : Across(k) * amperes[k];

    private double GivenWatts(int k) => Network.ElementArray[k].Value * amperes[k];

    private double HeatWatts(int k)
    {
        NetworkElement element = Network.ElementArray[k];
        double ohms = element.Kind switch
        {
            NetworkElementKind.Resistance => element.Value,
            NetworkElementKind.VoltageSource => element.Ohms,
            _ => 0,
        };
        return amperes[k] * amperes[k] * ohms;
    }

    private double Sum(Func<NetworkElement, bool> counts, Func<int, double> watts) =>
        There(Enumerable.Range(0, amperes.Length).Where(k => counts(Network.ElementArray[k])).Sum(watts));

    private double There(double value) => Exists
        ? value
        : throw new InvalidOperationException($"There is no answer to read: {Explanation} Ask {nameof(Exists)} first.");
}
