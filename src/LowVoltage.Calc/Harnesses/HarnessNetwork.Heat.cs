using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Networks;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>How loads with a duty cycle warm the wires.</content>
internal sealed partial class HarnessNetwork
{
    private bool HasDuty() => Array.Exists(harness.LoadArray, l => used.UseOf(l.Id) != LoadUse.Off && !l.Load.HeatFactor(plan.StateOf(l)).Equals(1.0));

    // The r.m.s. current of every branch: the loads' r.m.s. currents through the wires as they now are. Returns by how much a wire's factor moved.
    private double FindHeat(HarnessState state)
    {
        List<Element> elements = [];
        foreach (Element element in solver.Elements)
        {
            elements.Add(element.Law == ElementLaw.Cubic ? Straightened(element, elements.Count) : element);
        }

        for (int k = 0; k < plan.OfLoad.Length; k++)
        {
            double share = HeatShare(state, k);
            for (int e = plan.OfLoad[k].First; e < plan.OfLoad[k].First + plan.OfLoad[k].Count; e++)
            {
                Element old = solver.Elements[e];
                elements[e] = Element.Drawn(old.Positive, old.Negative, solver.Amperes[e] * share);
            }
        }

        Tie[] ties = solver.TiesNow;
        heat ??= NewHeat([.. elements], ties);
        elements.CopyTo(heat.Elements);
        for (int k = 0; k < ties.Length; k++)
        {
            heat.SetTie(k, ties[k].Volts);
        }

        if (heat.Solve() != NetworkEnd.Solved)
        {
            return 0;
        }

        return TakeHeat(state);
    }

    private NetworkSolver NewHeat(Element[] elements, Tie[] ties) => new(plan.HeatShape(elements, ties), elements, ties);

    private double TakeHeat(HarnessState state)
    {
        double moved = 0, most = state.Amperes.Length == 0 ? 0 : state.Amperes.Max(Math.Abs);
        for (int k = 0; k < plan.OfBranch.Length; k++)
        {
            (int element, int tie) = plan.OfBranch[k];
            double through = Math.Abs(element >= 0 ? heat!.Amperes[element] : tie >= 0 ? heat!.TieAmperes[tie] : 0), on = Math.Abs(state.Amperes[k]);
            state.HeatAmperes[k] = through;
            double factor = on > 1e-9 * most ? through / on : 1;
            moved = Math.Max(moved, Math.Abs(factor - factors[k]));
            factors[k] = factor;
        }

        return moved;
    }

    private double HeatShare(HarnessState state, int load)
    {
        HarnessLoad at = harness.LoadArray[load];
        double on = state.LoadAmperes[load], volts = state.VoltsAcross(load);
        return Math.Abs(on) > 0 && volts > 0 ? at.Load.HeatingAmperesAt(volts, plan.StateOf(at)) / at.Load.AmperesAt(volts, plan.StateOf(at)) : 1;
    }

    private Element Straightened(in Element wire, int k)
    {
        double amperes = solver.Amperes[k];
        return Element.Resistance(wire.Positive, wire.Negative, wire.A + (wire.B * amperes * amperes));
    }
}
