using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <content>The second network, of r.m.s. currents.</content>
internal sealed partial class EnclosureNetwork
{
    // The same wires and sources with what the loads draw on the square average, solved as stated for its middle.
    private EnclosureSystem HeatNetwork()
    {
        EnclosureElement[] of = new EnclosureElement[elements.Count];
        Element[] plain = new Element[elements.Count];
        foreach ((int load, EnclosureLoad at) in Loads)
        {
            double amperes = state.LoadAmperes[load] * at.HeatShare.High;
            of[OfLoad[load]] = new EnclosureDraw(at.Positive, at.Negative) { Amperes0 = amperes };
            plain[OfLoad[load]] = Element.Drawn(at.Positive, at.Negative, amperes);
        }

        for (int k = 0; k < OfBranch.Length; k++)
        {
            if (OfBranch[k] >= 0)
            {
                (double ohms, double cubic) = Nominal(k);
                EnclosureElement at = elements[OfBranch[k]];
                of[OfBranch[k]] = new EnclosureLine(at.Positive, at.Negative) { Ohms = wires.Ohms[k] };
                plain[OfBranch[k]] = Element.Resistance(at.Positive, at.Negative, ohms + (cubic * state.HeatAmperes[k] * state.HeatAmperes[k]));
            }
        }

        for (int k = 0; k < OfSource.Length; k++)
        {
            if (OfSource[k] >= 0)
            {
                (of[OfSource[k]], plain[OfSource[k]]) = HeatSource(k, elements[OfSource[k]]);
            }
        }

        NetworkSolver solver = new(NetworkShape.Create(harness.Nodes.Count, harness.NodeIndex(harness.Reference), plain, [.. ties]), plain, [.. ties]);
        _ = solver.Solve();
        for (int k = 0; k < of.Length; k++)
        {
            (of[k].Volts0, of[k].Amperes0) = (solver.Volts[of[k].Positive] - solver.Volts[of[k].Negative], solver.Amperes[k]);
            of[k].Amperes = Interval.At(of[k].Amperes0);
        }

        return SystemOf(of, [.. solver.Volts]);
    }

    private (EnclosureElement Of, Element Plain) HeatSource(int k, EnclosureElement at)
    {
        HarnessSource source = harness.SourceArray[k];
        if (source.Panel is { } panel)
        {
            return (new EnclosurePanel(at.Positive, at.Negative, panel), Element.Solar(at.Positive, at.Negative, panel.ShortAmperes, panel.SaturationAmperes, panel.SlopeVolts));
        }

        SourceNumbers numbers = source.Source!.Numbers;
        double volts = numbers.VoltsAt(state.Level), ohms = numbers.OhmsAt(state.Level);
        return at is EnclosureSupply supply
            ? (new EnclosureSupply(at.Positive, at.Negative, numbers.LimitAmperes, ohms) { Source = supply.Source }, Element.Supply(at.Positive, at.Negative, volts, numbers.LimitAmperes, ohms))
            : (new EnclosureLine(at.Positive, at.Negative) { Source = ((EnclosureLine)at).Source, Ohms = Interval.At(ohms) }, Element.Battery(at.Positive, at.Negative, volts, ohms));
    }
}
