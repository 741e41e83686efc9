using System.Globalization;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Networks;

/// <content>The working.</content>
public sealed partial class ResistiveNetworkSolution
{
    /// <summary>The working: each element's current from the voltages of its nodes, then Kirchhoff's balance at every node.</summary>
    /// <returns>The steps; the last ones say that the currents at each node balance.</returns>
    /// <remarks>
    /// The node voltages are the solution of all balances together and stand in the steps as found; what follows proves them, since currents worked out from them cancel at every node.
    /// </remarks>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new("Network of sources and resistances");
        foreach (NetworkElement element in Network.ElementArray)
        {
            board.Given(element.Id, element.ToString());
        }

        if (!Exists)
        {
            board.State("voltages", Explanation, ResistiveNetwork.Kirchhoff);
            return board.Build();
        }

        board.Section("Node voltages");
        Symbol[] nodes = [.. Network.NodeArray.Select((name, k) => board.LookUp(
            $"voltage of node {name}", "V_" + Mark(k), volts[k], "V", ResistiveNetwork.Kirchhoff, k == 0 ? "The voltages at which the currents at every node balance; found for all nodes together." : ""))];
        board.Section("Currents");
        Symbol[] currents = new Symbol[amperes.Length];
        for (int k = 0; k < amperes.Length; k++)
        {
            currents[k] = Current(board, k, nodes);
        }

        board.Section("Balance at each node");
        for (int node = 0; node < nodes.Length; node++)
        {
            Balance(board, node, currents);
        }

        board.Note("Parts without a way to the reference", [.. FloatingIslands.Select(part => $"{string.Join(", ", part)}: counted from {part[0]}.")]);
        return board.Build("The currents at every node balance: the voltages are right.");
    }

    private Symbol Current(SolutionBuilder board, int k, Symbol[] nodes)
    {
        NetworkElement element = Network.ElementArray[k];
        string sought = element.Kind == NetworkElementKind.VoltageSource ? $"current that {element.Id} gives" : $"current of {element.Id} from {element.First} to {element.Second}";
        string name = "I_" + Mark(k);
        Symbol first = nodes[Network.IndexOf(element.First)], second = nodes[Network.IndexOf(element.Second)];
        Formula given(double value, string unit) => Formula.FromNumber(value, unit);
        return element.Kind switch
        {
            _ when element.IsTie => board.LookUp(sought, name, amperes[k], "A", ResistiveNetwork.Kirchhoff, "It has no resistance: its current is what the other elements at its node leave."),
            NetworkElementKind.Current => board.LookUp(sought, name, amperes[k], "A", null, "Stated."),
            NetworkElementKind.VoltageSource => board.Step(
                sought, name, (given(element.Value, "V") - (first - second)) / given(element.Ohms, "Ω"), amperes[k], "A", ResistiveNetwork.Kirchhoff),
            NetworkElementKind.ConstantPower => board.Step(sought, name, given(element.Value, "W") / (first - second), amperes[k], "A", ResistiveNetwork.Kirchhoff),
            _ => board.Step(sought, name, (first - second) / given(element.Value, "Ω"), amperes[k], "A", ResistiveNetwork.Kirchhoff),
        };
    }

    private void Balance(SolutionBuilder board, int node, Symbol[] currents)
    {
        Formula? sum = null;
        double left = 0;
        for (int k = 0; k < currents.Length; k++)
        {
            NetworkElement element = Network.ElementArray[k];
            bool starts = string.Equals(element.First, Network.NodeArray[node], StringComparison.Ordinal);
            if (!starts && !string.Equals(element.Second, Network.NodeArray[node], StringComparison.Ordinal))
            {
                continue;
            }

            // A source gives out of its first node, everything else takes from it.
            bool leaves = starts != (element.Kind == NetworkElementKind.VoltageSource);
            sum = (sum, leaves) switch
            {
                (null, true) => currents[k],
                (null, false) => -currents[k],
                (_, true) => sum + currents[k],
                _ => sum - currents[k],
            };
            left += leaves ? amperes[k] : -amperes[k];
        }

        // Rounding is all that is left: shown as the zero that it is, where the balance says so.
        double shown = Math.Abs(left) <= 1e-9 * Math.Max(1e-9, NetworkSolver.Largest(amperes)) ? 0 : left;
        board.Step($"sum of the currents that leave node {Network.NodeArray[node]}", "ΣI_" + Mark(node), sum!, shown, "A", ResistiveNetwork.Kirchhoff);
    }

    private static string Mark(int k) => (k + 1).ToString(CultureInfo.InvariantCulture);
}
