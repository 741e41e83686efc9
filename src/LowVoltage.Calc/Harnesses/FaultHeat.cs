using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses;

/// <summary>How hot a short makes the wires that one fuse's current flows through.</summary>
/// <remarks>
/// Up to the longest time that a fault may last by the rules, 5 s at most: no heat leaves, the most that the fuse lets through at any current between the least and the greatest. That is an upper bound, since
/// every wire gives off some heat. At currents that the fuse lets flow longer it is far too high; there the steady temperature at the same current bounds it from above as well, and the lower of both counts.
/// </remarks>
internal sealed class FaultHeat(FaultCase at, TimeCurrentCurve curve, double leastAmperes, double greatestAmperes)
{
    /// <summary>A wire that carries the fault, and others' current too.</summary>
    internal FaultedWire Of(int branch, double others)
    {
        double start = at.StartCelsius(branch), more = 1 + (others / leastAmperes);
        double joules = curve.GreatestLongestJouleIntegral(leastAmperes, Math.Max(leastAmperes, greatestAmperes), out double worst);
        double celsius = at.HeatedCelsius(branch, joules * more * more, start), seconds = at.Harness.Rules.FusePractice.FaultSeconds;
        if (curve.TryLongestSeconds(leastAmperes, out double longest) && longest > seconds)
        {
            celsius = Slow(branch, others, start, seconds, ref worst);
        }

        return New(at, branch, celsius, at.LimitCelsius(branch), worst, stays: false);
    }

    /// <summary>A wire through which the current stays.</summary>
    internal static void AddStaying(FaultCase at, ShortResult result, int branch, double amperes)
    {
        ref readonly SegmentState s = ref at.Wires[branch];
        if (s.IsRated)
        {
            result.Wires.Add(New(at, branch, at.SettledCelsius(branch, amperes), s.Site.Insulation.ContinuousCelsius, amperes, stays: true));
        }
        else
        {
            result.Reason += $"{(result.Reason.Length > 0 ? " " : "")}{at.Harness.BranchArray[branch].Id} is not rated where it runs: how hot it gets is undetermined.";
        }
    }

    internal static FaultedWire New(FaultCase at, int branch, double celsius, double limit, double amperes, bool stays) =>
        new(at.Harness.BranchArray[branch].Id, celsius, limit, amperes, celsius >= at.Wires[branch].Conductor.Material.MeltingPointCelsius, stays);

    // From one stated point of the curve to the next: the more of the Joule integrals at both ends, or the steady temperature at the larger current, whichever is less.
    private double Slow(int branch, double others, double start, double seconds, ref double worst)
    {
        double hottest = start, from = leastAmperes, most = Math.Max(leastAmperes, greatestAmperes);
        while (true)
        {
            double to = most;
            for (int i = 0; i < curve.LongestLine.Count; i++)
            {
                to = curve.LongestLine.X(i) > from * (1 + 1e-9) ? Math.Min(to, curve.LongestLine.X(i)) : to;
            }

            double a = After(branch, from, others, start), b = After(branch, to, others, start), celsius = Math.Max(a, b);
            if (curve.TryLongestSeconds(from, out double longest) && longest > seconds && at.Wires[branch].IsRated)
            {
                celsius = Math.Min(celsius, Math.Max(start, at.SettledCelsius(branch, to + others)));
            }

            (hottest, worst) = celsius > hottest ? (celsius, b > a ? to : from) : (hottest, worst);
            if (to >= most)
            {
                return hottest;
            }

            from = to;
        }
    }

    private double After(int branch, double amperes, double others, double start)
    {
        double more = amperes + others;
        return curve.TryLongestSeconds(amperes, out double seconds) ? at.HeatedCelsius(branch, more * more * seconds, start) : start;
    }
}
