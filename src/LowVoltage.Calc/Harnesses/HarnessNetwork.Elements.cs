using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Networks;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>Branches, sources and loads as elements of the network.</content>
internal sealed partial class HarnessNetwork
{
    /// <summary>Branches that carry nothing: those that the change opens, and open switches.</summary>
    private static int[] OpenBranches(Harness harness, LoadCase used, HarnessChange change) =>
        [.. change.Open.Concat(Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessSwitch contact && !used.IsClosed(contact))).Distinct()];

    private void AddBranches(List<Element> elements, List<Tie> ties, int[] gone)
    {
        HashSet<int> open = [.. gone];
        for (int k = 0; k < ofBranch.Length; k++)
        {
            HarnessBranch branch = harness.BranchArray[k];
            ofBranch[k] = (Gone, Gone);
            if (open.Contains(k))
            {
                continue;
            }

            double stated = change.Ohms is { } ohms ? ohms[k] : branch.FixedOhms;
            if (branch is HarnessWire && change.Ohms is null)
            {
                ofBranch[k] = (elements.Count, Gone);
                elements.Add(WireElement(k));
            }
            else if (stated > 0)
            {
                ofBranch[k] = (elements.Count, Gone);
                elements.Add(Element.Resistance(graph.From[k], graph.To[k], stated));
            }
            else
            {
                ofBranch[k] = (Gone, ties.Count);
                ties.Add(new Tie(graph.From[k], graph.To[k], 0));
            }
        }
    }

    private Element WireElement(int k)
    {
        (double ohms, double cubic) = wires[k].Law();
        return Element.Wire(harness.Graph.From[k], harness.Graph.To[k], harness.BranchArray[k].FixedOhms + ohms, cubic * factors[k] * factors[k]);
    }

    private void SetWires()
    {
        for (int k = 0; k < ofBranch.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire && change.Ohms is null && ofBranch[k].Element >= 0)
            {
                solver.Elements[ofBranch[k].Element].B = WireElement(k).B;
            }
        }
    }

    private void AddSources(List<Element> elements, List<Tie> ties)
    {
        for (int k = 0; k < ofSource.Length; k++)
        {
            HarnessSource source = harness.SourceArray[k];
            ofSource[k] = (Gone, Gone);
            if (change.BatteriesOnly && (source.Panel is not null || source.Source!.Numbers.Action == LimitAction.Holds))
            {
                continue;
            }

            int plus = harness.NodeIndex(source.Positive), minus = harness.NodeIndex(source.Negative);
            if (source.Panel is { } panel)
            {
                ofSource[k] = (elements.Count, Gone);
                elements.Add(Element.Solar(plus, minus, panel.ShortAmperes, panel.SaturationAmperes, panel.SlopeVolts));
                continue;
            }

            SourceNumbers numbers = source.Source!.Numbers;
            if (IsIdeal(numbers))
            {
                ofSource[k] = (Gone, ties.Count);
                ties.Add(new Tie(plus, minus, numbers.NominalVolts));
                continue;
            }

            ofSource[k] = (elements.Count, Gone);
            Element element = numbers.Action == LimitAction.Holds
                ? Element.Supply(plus, minus, numbers.NominalVolts, numbers.LimitAmperes, numbers.NominalOhms)
                : Element.Battery(plus, minus, numbers.NominalVolts, numbers.NominalOhms);
            element.Trips = numbers.Action == LimitAction.Disconnects && !change.SourcesStay ? numbers.LimitAmperes : double.PositiveInfinity;
            elements.Add(element);
        }
    }

    private void SetSources(SupplyLevel level)
    {
        for (int k = 0; k < ofSource.Length; k++)
        {
            if (harness.SourceArray[k].Source is not { } source || ofSource[k] == (Gone, Gone))
            {
                continue;
            }

            double volts = source.Numbers.VoltsAt(level), ohms = source.Numbers.OhmsAt(level);
            if (ofSource[k].Tie >= 0)
            {
                solver.SetTie(ofSource[k].Tie, volts);
                continue;
            }

            ref Element element = ref solver.Elements[ofSource[k].Element];
            element.A = volts;
            if (element.Law == ElementLaw.Supply)
            {
                element.C = ohms;
            }
            else
            {
                element.B = 1 / ohms;
            }
        }
    }

    private void AddLoads(List<Element> elements)
    {
        for (int k = 0; k < ofLoad.Length; k++)
        {
            HarnessLoad load = harness.LoadArray[k];
            int first = elements.Count;
            bool isOn = !change.LoadsOff && used.UseOf(load.Id) != LoadUse.Off;
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

            ofLoad[k] = (first, elements.Count - first);
        }
    }
}
