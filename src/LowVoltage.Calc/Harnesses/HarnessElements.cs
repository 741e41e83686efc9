using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness in one load case laid out as elements between nodes, with the order in which its voltages are eliminated: found once, solved as often as wanted.</summary>
/// <remarks>Never changed once made, but for the shape of its second network, which any thread that needs it finds alike.</remarks>
internal sealed class HarnessElements
{
    internal const int Gone = -1;

    private readonly Harness harness;
    private readonly HarnessChange change;
    private NetworkShape? heatShape;

    /// <param name="harness">The harness.</param>
    /// <param name="used">The load case.</param>
    /// <param name="change">What is different from the harness as stated.</param>
    /// <param name="rated">The wires of this load case where they are known already.</param>
    internal HarnessElements(Harness harness, LoadCase used, HarnessChange change, SegmentState[]? rated)
    {
        this.harness = harness;
        this.change = change;
        Case = used;
        Wires = rated ?? HarnessWires.StatesOf(harness, used);
        OfBranch = new (int, int)[harness.BranchArray.Length];
        OfSource = new (int, int)[harness.SourceArray.Length];
        OfLoad = new (int, int)[harness.LoadArray.Length];
        List<Element> elements = [];
        List<Tie> ties = [];
        int[] open = OpenBranches(harness, used, change);
        Graph = open.Length == 0 ? harness.Graph : HarnessGraph.Of(harness, open);
        AddBranches(elements, ties, open);
        AddSources(elements, ties);
        AddLoads(elements);
        (ShortElement, ShortTie) = AddShort(elements, ties);
        All = [.. elements];
        Ties = [.. ties];
        Shape = NetworkShape.Create(harness.Nodes.Count, harness.NodeIndex(harness.Reference), All, Ties);
    }

    internal LoadCase Case { get; }

    internal SegmentState[] Wires { get; }

    internal HarnessGraph Graph { get; }

    internal Element[] All { get; }

    internal Tie[] Ties { get; }

    internal NetworkShape Shape { get; }

    internal (int Element, int Tie)[] OfBranch { get; }

    internal (int Element, int Tie)[] OfSource { get; }

    internal (int First, int Count)[] OfLoad { get; }

    internal int ShortElement { get; }

    internal int ShortTie { get; }

    /// <summary>The shape of the network that finds the r.m.s. currents: the same with each load a stated current.</summary>
    internal NetworkShape HeatShape(Element[] elements, Tie[] ties) => heatShape ??= NetworkShape.Create(harness.Nodes.Count, harness.NodeIndex(harness.Reference), elements, ties);

    /// <summary>A wire, warmed by its own current times a factor.</summary>
    internal Element WireElement(int k, double factor)
    {
        (double ohms, double cubic) = Wires[k].Law();
        return Element.Wire(harness.Graph.From[k], harness.Graph.To[k], harness.BranchArray[k].FixedOhms + ohms, cubic * factor * factor);
    }

    internal LoadState StateOf(HarnessLoad load) => Case.UseOf(load.Id) switch
    {
        LoadUse.Starting => LoadState.Peak,
        LoadUse.Stalled => LoadState.LockedRotor,
        _ => LoadState.Running,
    };

    /// <summary>Branches that carry nothing: those that the change opens, and open switches.</summary>
    private static int[] OpenBranches(Harness harness, LoadCase used, HarnessChange change) =>
        [.. change.Open.Concat(Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessSwitch contact && !used.IsClosed(contact))).Distinct()];

    private void AddBranches(List<Element> elements, List<Tie> ties, int[] gone)
    {
        HashSet<int> open = [.. gone];
        for (int k = 0; k < OfBranch.Length; k++)
        {
            HarnessBranch branch = harness.BranchArray[k];
            OfBranch[k] = (Gone, Gone);
            if (open.Contains(k))
            {
                continue;
            }

            double stated = change.Ohms is { } ohms ? ohms[k] : branch.FixedOhms;
            if (branch is HarnessWire && change.Ohms is null)
            {
                OfBranch[k] = (elements.Count, Gone);
                elements.Add(WireElement(k, 1));
            }
            else if (stated > 0)
            {
                OfBranch[k] = (elements.Count, Gone);
                elements.Add(Element.Resistance(Graph.From[k], Graph.To[k], stated));
            }
            else
            {
                OfBranch[k] = (Gone, ties.Count);
                ties.Add(new Tie(Graph.From[k], Graph.To[k], 0));
            }
        }
    }

    private void AddSources(List<Element> elements, List<Tie> ties)
    {
        for (int k = 0; k < OfSource.Length; k++)
        {
            HarnessSource source = harness.SourceArray[k];
            OfSource[k] = (Gone, Gone);
            if (change.BatteriesOnly && (source.Panel is not null || source.Source!.Numbers.Action == LimitAction.Holds))
            {
                continue;
            }

            int plus = harness.NodeIndex(source.Positive), minus = harness.NodeIndex(source.Negative);
            if (source.Panel is { } panel)
            {
                OfSource[k] = (elements.Count, Gone);
                elements.Add(Element.Solar(plus, minus, panel.ShortAmperes, panel.SaturationAmperes, panel.SlopeVolts));
                continue;
            }

            SourceNumbers numbers = source.Source!.Numbers;
            if (HarnessNetwork.IsIdeal(numbers))
            {
                OfSource[k] = (Gone, ties.Count);
                ties.Add(new Tie(plus, minus, numbers.NominalVolts));
                continue;
            }

            OfSource[k] = (elements.Count, Gone);
            Element element = numbers.Action == LimitAction.Holds
                ? Element.Supply(plus, minus, numbers.NominalVolts, numbers.LimitAmperes, numbers.NominalOhms)
                : Element.Battery(plus, minus, numbers.NominalVolts, numbers.NominalOhms);
            element.Trips = numbers.Action == LimitAction.Disconnects && !change.SourcesStay ? numbers.LimitAmperes : double.PositiveInfinity;
            elements.Add(element);
        }
    }

    private void AddLoads(List<Element> elements)
    {
        for (int k = 0; k < OfLoad.Length; k++)
        {
            HarnessLoad load = harness.LoadArray[k];
            int first = elements.Count;
            bool isOn = !change.LoadsOff && Case.UseOf(load.Id) != LoadUse.Off;
            if (isOn && change.LoadAmperes is { } drawn)
            {
                if (drawn[k] > 0)
                {
                    elements.Add(Element.Steady(harness.NodeIndex(load.Positive), harness.NodeIndex(load.Negative), drawn[k]));
                }
            }
            else if (isOn)
            {
                LoadElements.Add(elements, harness.NodeIndex(load.Positive), harness.NodeIndex(load.Negative), load.Load, StateOf(load), staysOn: change.LoadsStayOn);
            }

            OfLoad[k] = (first, elements.Count - first);
        }
    }

    private (int Element, int Tie) AddShort(List<Element> elements, List<Tie> ties)
    {
        if (change.Short is not { } fault)
        {
            return (Gone, Gone);
        }

        if (fault.Ohms > 0)
        {
            elements.Add(Element.Resistance(fault.A, fault.B, fault.Ohms));
            return (elements.Count - 1, Gone);
        }

        ties.Add(new Tie(fault.A, fault.B, 0));
        return (Gone, ties.Count - 1);
    }
}
