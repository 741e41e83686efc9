using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <content>What changes from one solve to the next.</content>
internal sealed partial class HarnessNetwork
{
    private void SetWires()
    {
        for (int k = 0; k < plan.OfBranch.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire && change.Ohms is null && plan.OfBranch[k].Element >= 0)
            {
                solver.Elements[plan.OfBranch[k].Element].B = plan.WireElement(k, factors[k]).B;
            }
        }
    }

    private void SetSources(SupplyLevel level)
    {
        for (int k = 0; k < plan.OfSource.Length; k++)
        {
            if (harness.SourceArray[k].Source is not { } source || plan.OfSource[k] == (HarnessElements.Gone, HarnessElements.Gone))
            {
                continue;
            }

            double volts = source.Numbers.VoltsAt(level), ohms = source.Numbers.OhmsAt(level);
            if (plan.OfSource[k].Tie >= 0)
            {
                solver.SetTie(plan.OfSource[k].Tie, volts);
                continue;
            }

            ref Element element = ref solver.Elements[plan.OfSource[k].Element];
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
}
