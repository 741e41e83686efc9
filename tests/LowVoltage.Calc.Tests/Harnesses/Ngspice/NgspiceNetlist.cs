using System.Globalization;
using System.Text;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses.Ngspice;

/// <summary>A harness at its nominal supply with every load on, as a netlist for ngspice: node n0, n1 … in the order of the harness, the reference is 0.</summary>
/// <remarks>
/// A wire is the closed form of U = A·I + B·I³ (by sinh), a lamp I₀·u^0.55 from a tenth of its voltage on and a resistance below, a constant power P/U from its least voltage on (0.5 V without one) and a resistance below, a constant current
/// is one at any voltage.
/// </remarks>
internal sealed class NgspiceNetlist
{
    private const double LeastVolts = 0.5;

    private readonly Harness harness;
    private readonly StringBuilder text = new();
    private int count;

    private NgspiceNetlist(Harness harness) => this.harness = harness;

    /// <summary>The random harness of a seed without what gives a limited current; straight: every wire at the resistance that it has before it warms, every load a resistance.</summary>
    public static Harness Make(bool straight, int seed, int branches)
    {
        Harness made = RandomPublicHarness.Make(seed, branches);
        HarnessSource[] sources = [.. made.SourceArray.Where(s => s.Panel is null ? s.Source!.Numbers.Action != LimitAction.Holds : !straight)];
        if (!straight)
        {
            return new Harness(made.Parts with { Reference = made.Reference, Sources = sources, Cases = [LoadCase.AllOn] });
        }

        SegmentState[] wires = HarnessWires.StatesOf(made, LoadCase.AllOn);
        HarnessBranch[] branchesNow = [.. made.BranchArray.Select((b, k) => b is HarnessWire
            ? HarnessResistance.Create(b.Id, b.From, b.To, ElectricResistance.FromOhms(b.FixedOhms + wires[k].Law().Ohms)) : b)];
        HarnessLoad[] loads = [.. made.LoadArray.Select(l => l.WithLoad(Load.Resistance(ElectricResistance.FromOhms(12 / l.Load.CurrentAt(ElectricPotential.FromVolts(12), LoadState.Running).Amperes))))];
        return new Harness(made.Parts with { Reference = made.Reference, Sources = sources, Branches = branchesNow, Loads = loads, Cases = [LoadCase.AllOn] });
    }

    /// <summary>Whether every load runs: a cut-out is a state that ngspice does not know of.</summary>
    public static bool Runs(Harness harness, HarnessSolution at) =>
        at.Exists && at.DroppedOut == 0 && at.Disconnected.Count == 0 && harness.Loads.All(l => at.ConditionOf(l.Id) == LoadCondition.Running);

    public static string Of(Harness harness, string title) => new NgspiceNetlist(harness).Write(title);

    private string Write(string title)
    {
        _ = text.Append("* ").Append(title).Append('\n');
        SegmentState[] wires = HarnessWires.StatesOf(harness, LoadCase.AllOn);
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            AddBranch(harness.BranchArray[k], wires[k]);
        }

        foreach (HarnessSource source in harness.SourceArray)
        {
            AddSource(source);
        }

        foreach (HarnessLoad load in harness.LoadArray)
        {
            AddLoad(load);
        }

        return text.ToString();
    }

    private void AddBranch(HarnessBranch branch, SegmentState wire)
    {
        string from = Node(branch.From), to = Node(branch.To);
        double ohms = branch.FixedOhms, cubic = 0;
        if (branch is HarnessWire)
        {
            (double own, cubic) = wire.Law();
            ohms += own;
        }

        if (ohms == 0)
        {
            Line($"V{++count} {from} {to} 0");
        }
        else if (cubic == 0)
        {
            Line($"R{++count} {from} {to} {Text(ohms)}");
        }
        else
        {
            double scale = 2 * Math.Sqrt(ohms / (3 * cubic));
            Line($"B{++count} {from} {to} I={Text(scale)}*sinh(asinh({Text(3 / (ohms * scale))}*V({from},{to}))/3)");
        }
    }

    private void AddSource(HarnessSource source)
    {
        string plus = Node(source.Positive), minus = Node(source.Negative), inside = $"s{++count}";
        if (source.Panel is { } panel)
        {
            Line($"B{count} {minus} {plus} I=max({Text(panel.ShortAmperes)}-{Text(panel.SaturationAmperes)}*(exp(min(V({plus},{minus})/{Text(panel.SlopeVolts)},100))-1),0)");
            return;
        }

        SourceNumbers numbers = source.Source!.Numbers;
        Line($"V{count} {inside} {minus} {Text(numbers.NominalVolts)}");
        Line($"R{count} {inside} {plus} {Text(numbers.NominalOhms)}");
    }

    private void AddLoad(HarnessLoad load)
    {
        string plus = Node(load.Positive), minus = Node(load.Negative), across = $"V({plus},{minus})";
        LoadLaw law = load.Load.LawAt(LoadState.Running);
        if (load.Load is LampLoad lamp)
        {
            string share = $"({across}/{Text(lamp.RatedVolts)})";
            Line($"B{++count} {plus} {minus} I={Text(lamp.RatedCurrent.Amperes)}*{share}*max({share},0.1)^(-0.45)");
        }
        else if (!law.Exact)
        {
            throw new InvalidOperationException($"No netlist for {load}.");
        }

        if (law.Siemens > 0)
        {
            Line($"R{++count} {plus} {minus} {Text(1 / law.Siemens)}");
        }

        if (law.Amperes > 0)
        {
            Line($"I{++count} {plus} {minus} {Text(law.Amperes)}");
        }

        if (law.Watts > 0)
        {
            string least = Text(load.Load.MinimumVolts ?? LeastVolts);
            Line($"B{++count} {plus} {minus} I={Text(law.Watts)}*{across}/max({across},{least})^2");
        }
    }

    private void Line(string line) => text.Append(line).Append('\n');

    private string Node(string id) => id == harness.Reference ? "0" : $"n{harness.NodeIndex(id).ToString(CultureInfo.InvariantCulture)}";

    private static string Text(double number) => number.ToString("G17", CultureInfo.InvariantCulture);
}
