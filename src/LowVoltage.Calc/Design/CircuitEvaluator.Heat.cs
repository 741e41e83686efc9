using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Design;

/// <content>Continuous current and the temperature of the wire in place.</content>
internal sealed partial class CircuitEvaluator
{
    private void CheckHeat(ref CheckList list, in WireDuty duty)
    {
        HeatFinding finding = new() { HottestCelsius = Ambient };
        Heat(links, duty.HeatingAmperes, ref finding);
        Heat(shared, duty.HeatingAmperes + othersAmperes, ref finding);
        serviceCelsius = finding.HottestCelsius;
        list.Add(finding.Tightest);
        list.Add(new CheckResult(
            CheckKind.ConductorTemperature,
            finding.HottestCelsius,
            requirements.Insulation.ContinuousCelsius,
            requirements.Insulation.Reference,
            finding.Unsettled ? "the wire finds no steady temperature at this current; its melting point is shown" : ""));
    }

    private void Heat(ChainLink[] chain, double amperes, ref HeatFinding finding)
    {
        for (int i = 0; i < chain.Length; i++)
        {
            ref readonly ChainLink link = ref chain[i];
            CheckResult check = new(CheckKind.ContinuousCurrent, amperes, link.RatedAmperes, rating.ReferenceFor(link.Conductor));
            finding.Tightest = finding.Tightest.Limit == 0 || check.Margin < finding.Tightest.Margin ? check : finding.Tightest;
            if (!rating.TryCelsius(link.Conductor, amperes / link.Parallel, link.RatedAmperes / link.Parallel, Ambient, out double celsius))
            {
                finding.Unsettled = true;
                celsius = link.Conductor.Material.MeltingPointCelsius;
            }

            finding.HottestCelsius = Math.Max(finding.HottestCelsius, celsius);
        }
    }

    private struct HeatFinding
    {
        internal CheckResult Tightest;
        internal double HottestCelsius;
        internal bool Unsettled;
    }
}
