using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Writes the working of a solved harness: one node, one branch, one source or one load.</summary>
internal sealed class HarnessWorking(HarnessState state)
{
    private readonly Harness harness = state.Harness;

    /// <summary>The currents that leave a node: together nothing.</summary>
    internal WorkedSolution Node(int node)
    {
        string id = harness.Nodes[node].Id;
        if (Begin($"Node {id}") is not { } board)
        {
            return Unsolved($"Node {id}");
        }

        _ = board.LookUp($"voltage of node {id}", "V", state.Volts[node], "V", ResistiveNetwork.Kirchhoff, "The voltage at which the currents at every node balance; found for all nodes together.");
        List<Formula> parts = [];
        double sum = 0, most = 0;
        int count = 0;
        foreach ((string what, double amperes) in Leaving(node))
        {
            parts.Add(board.LookUp(what, $"I_{Mark(count++)}", amperes, "A", null));
            sum += amperes;
            most = Math.Max(most, Math.Abs(amperes));
        }

        if (parts.Count == 0)
        {
            board.State("currents", "Nothing is connected here.");
            return board.Build("Nothing is connected here.");
        }

        // Rounding is all that is left: shown as the zero that it is, where the balance says so.
        _ = board.Step($"sum of the currents that leave node {id}", "ΣI", Formula.Total(parts), Math.Abs(sum) <= 1e-9 * Math.Max(1, most) ? 0 : sum, "A", ResistiveNetwork.Kirchhoff);
        return board.Build($"At node {id} the currents balance.");
    }

    /// <summary>Resistance, drop and loss of a branch at its current.</summary>
    internal WorkedSolution Branch(int branch)
    {
        HarnessBranch at = harness.BranchArray[branch];
        if (Begin(at.ToString()!) is not { } board)
        {
            return Unsolved(at.ToString()!);
        }

        Symbol current = board.Given($"current from {at.From} to {at.To}", "I", state.Amperes[branch], "A");
        Symbol ohms = at is HarnessWire ? WireOhms(board, branch) : board.Given($"resistance of the {at.Word}", "R", at.FixedOhms, "Ω");
        Symbol drop = board.Step($"voltage from {at.From} to {at.To}", "ΔU", ohms * current, ohms.Value * current.Value, "V", ResistiveNetwork.Kirchhoff);
        _ = board.Step("power turned into heat", "P", ohms * Formula.Square(current), ohms.Value * current.Value * current.Value, "W", null);
        return board.Build($"{at}: {Accept.Short(current.Value)} A, {Accept.Short(drop.Value)} V.");
    }

    /// <summary>What reaches a load: the voltage of the source less every drop on the way out and back.</summary>
    internal WorkedSolution Load(int load)
    {
        HarnessLoad at = harness.LoadArray[load];
        if (Begin(at.ToString()) is not { } board)
        {
            return Unsolved(at.ToString());
        }

        int plus = harness.NodeIndex(at.Positive), minus = harness.NodeIndex(at.Negative);
        FeedWay feed = harness.Graph.WayFrom(plus), back = harness.Graph.WayFrom(minus);
        Symbol top = board.LookUp($"voltage of node {harness.Nodes[feed.EndNode].Id}, where the way out begins", "V_s", state.Volts[feed.EndNode], "V", ResistiveNetwork.Kirchhoff, EndWords(feed.End));
        Symbol bottom = board.LookUp($"voltage of node {harness.Nodes[back.EndNode].Id}, where the way back ends", "V_r", state.Volts[back.EndNode], "V", ResistiveNetwork.Kirchhoff, EndWords(back.End));
        Formula left = top - bottom;
        double volts = top.Value - bottom.Value;
        int count = 0;
        board.Section("The way out");
        foreach (int k in Enumerable.Reverse(feed.Branches))
        {
            (left, volts) = Less(board, k, harness.Graph.To[k] == FarNode(k), left, volts, ref count);
        }

        board.Section("The way back");
        foreach (int k in back.Branches)
        {
            (left, volts) = Less(board, k, harness.Graph.From[k] == FarNode(k), left, volts, ref count);
        }

        board.Section("At the load");
        Symbol across = board.Step($"voltage across load {at.Id}", "U", left, volts, "V", ResistiveNetwork.Kirchhoff);
        _ = board.LookUp($"current of load {at.Id} at that voltage", "I", state.LoadAmperes[load], "A", null, $"{at.Load}.");
        return board.Build($"Load {at.Id}, {Words(state.ConditionOf(load))}: {Accept.Short(across.Value)} V, {Accept.Short(state.LoadAmperes[load])} A.");
    }

    /// <summary>What a source gives.</summary>
    internal WorkedSolution Source(int source)
    {
        HarnessSource at = harness.SourceArray[source];
        if (Begin(at.ToString()) is not { } board)
        {
            return Unsolved(at.ToString());
        }

        Symbol current = board.LookUp($"current that {at.Id} gives", "I", state.SourceAmperes[source], "A", ResistiveNetwork.Kirchhoff, state.SourceAmperes[source] < 0 ? "Less than nothing: it is being charged." : "");
        Symbol terminal = board.LookUp("voltage at its terminals", "U", state.VoltsOfSource(source), "V", ResistiveNetwork.Kirchhoff);
        if (at.Source is { } its && its.Numbers.OhmsAt(state.Level) > 0 && !state.Disconnected[source] && state.SourceAmperes[source] < its.Numbers.HeldAmperes * (1 - 1e-9) && its.Numbers.HeldAmperes is not < double.PositiveInfinity)
        {
            double volts = its.Numbers.VoltsAt(state.Level), ohms = its.Numbers.OhmsAt(state.Level);
            Symbol open = board.LookUp("voltage without current", "V_0", volts, "V", its.Reference), inner = board.LookUp("internal resistance", "R_i", ohms, "Ω", its.Reference);
            _ = board.Step("what its resistance leaves", "U_c", open - (inner * current), volts - (ohms * current.Value), "V", ResistiveNetwork.Kirchhoff);
        }

        return board.Build($"Source {at.Id}: {Accept.Short(current.Value)} A at {Accept.Short(terminal.Value)} V.");
    }

    private Symbol WireOhms(SolutionBuilder board, int branch)
    {
        HarnessWire wire = (HarnessWire)harness.BranchArray[branch];
        SegmentState s = state.Wires[branch];
        Symbol each = board.LookUp($"resistance of {s.Conductor} at 20 °C", "R′_20", s.Conductor.OhmsPerMeter20, "Ω/m", s.Conductor.Reference);
        Symbol length = board.Given("length", "l", wire.Meters, "m"), alpha = board.LookUp("temperature coefficient", "α", s.Conductor.Material.TemperatureCoefficient, "1/K", s.Conductor.Material.Reference);
        Symbol warm = Warmth(board, s, branch);
        Formula ohms = each * length * (1 + (alpha * (warm - Formula.FromNumber(20, "°C"))));
        ohms = wire.Parallel == 1 ? ohms : ohms / board.Given("wires side by side", "n", wire.Parallel, "");
        ohms = wire.FixedOhms == 0 ? ohms : ohms + board.Given("joints", "R_j", wire.FixedOhms, "Ω");
        return board.Step("resistance of the wire as warm as it is", "R", ohms, s.OhmsAt(warm.Value) + wire.FixedOhms, "Ω", s.Conductor.Material.Reference);
    }

    private Symbol Warmth(SolutionBuilder board, in SegmentState s, int branch)
    {
        double heat = state.HeatAmperes[branch];
        Symbol start = board.Given(s.IsRated ? "temperature of the air" : "temperature that the insulation allows, since the wire is not rated here", "θ_0", s.BaseCelsius, "°C");
        if (!s.IsRated || s.RiseKelvins == 0)
        {
            return start;
        }

        Symbol rated = board.LookUp("continuous current where it runs", "I_z", s.RatedAmperes, "A", s.Site.Rating.ReferenceFor(s.Conductor));
        Symbol rise = board.LookUp("its rise of temperature at that current", "Δθ_z", s.RiseKelvins, "K", s.Site.Rating.ReferenceFor(s.Conductor));
        Symbol heating = board.LookUp("r.m.s. current", "I_h", heat, "A", null);
        return board.Step("temperature of the conductor, its rise as the square of the current", "θ", start + (rise * Formula.Square(heating / rated)), s.CelsiusAt(heat), "°C", null);
    }

    // One drop more; against the branch's own direction its current counts the other way.
    private (Formula Left, double Volts) Less(SolutionBuilder board, int branch, bool along, Formula left, double volts, ref int count)
    {
        HarnessBranch at = harness.BranchArray[branch];
        double drop = state.Volts[harness.Graph.From[branch]] - state.Volts[harness.Graph.To[branch]], its = along ? drop : -drop, amperes = along ? state.Amperes[branch] : -state.Amperes[branch];
        Symbol symbol = board.LookUp($"drop of {at}", $"ΔU_{Mark(count++)}", its, "V", ResistiveNetwork.Kirchhoff, $"{Accept.Short(amperes)} A flow through it.");
        return (left - symbol, volts - its);
    }

    private int FarNode(int branch)
    {
        _ = harness.Graph.IsFedFromOneEnd(branch, out int far);
        return far;
    }

    private IEnumerable<(string What, double Amperes)> Leaving(int node)
    {
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (harness.Graph.From[k] == node || harness.Graph.To[k] == node)
            {
                bool leaves = harness.Graph.From[k] == node;
                yield return ($"current into {harness.BranchArray[k]}", leaves ? state.Amperes[k] : 0 - state.Amperes[k]);
            }
        }

        for (int k = 0; k < harness.LoadArray.Length; k++)
        {
            HarnessLoad load = harness.LoadArray[k];
            if (harness.NodeIndex(load.Positive) == node || harness.NodeIndex(load.Negative) == node)
            {
                yield return ($"current into load {load.Id}", harness.NodeIndex(load.Positive) == node ? state.LoadAmperes[k] : 0 - state.LoadAmperes[k]);
            }
        }

        for (int k = 0; k < harness.SourceArray.Length; k++)
        {
            HarnessSource source = harness.SourceArray[k];
            if (harness.NodeIndex(source.Positive) == node || harness.NodeIndex(source.Negative) == node)
            {
                yield return ($"current into source {source.Id}", harness.NodeIndex(source.Positive) == node ? 0 - state.SourceAmperes[k] : state.SourceAmperes[k]);
            }
        }
    }

    private SolutionBuilder? Begin(string title)
    {
        if (!state.Exists)
        {
            return null;
        }

        SolutionBuilder board = new(title) { Once = true };
        board.Given("harness", harness.Name);
        board.Given("load case", state.Case.Name);
        board.Given("supply level", state.Level.ToString().ToLowerInvariant());
        return board;
    }

    private WorkedSolution Unsolved(string title)
    {
        SolutionBuilder board = new(title);
        string why = new HarnessSolution(harness, state.Case, state.Level, state).Explanation;
        board.State("voltages", why, ResistiveNetwork.Kirchhoff);
        return board.Build(why);
    }

    private static string EndWords(FeedEnd end) => end switch
    {
        FeedEnd.SeveralSources => "Several sources feed it.",
        FeedEnd.Ring => "It is fed round a ring.",
        FeedEnd.Dead => "No source reaches it.",
        _ => "",
    };

    private static string Words(LoadCondition condition) => condition switch
    {
        LoadCondition.Off => "switched off",
        LoadCondition.CutOut => "cut out",
        LoadCondition.Restartable => "cut out, but may start again",
        LoadCondition.Starved => "starved",
        LoadCondition.Reversed => "fed backwards",
        LoadCondition.Dead => "dead",
        LoadCondition.Running => "running",
        _ => "undetermined",
    };

    private static string Mark(int k) => (k + 1).ToString(CultureInfo.InvariantCulture);
}
