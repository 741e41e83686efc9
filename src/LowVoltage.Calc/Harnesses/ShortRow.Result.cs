using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <content>What is told of a short that is cleared, and of one that stays.</content>
internal sealed partial class ShortRow
{
    private void Clear(ShortResult result, List<Course> courses, Course worst, double greatest)
    {
        result.Ending = FaultEnding.Cleared;
        int sure = worst.Sure;
        SortedSet<int> wrong = [];
        for (int n = 1; n < fuses.Length; n++)
        {
            if (n == sure || MayOpenBefore(n, courses, greatest))
            {
                _ = wrong.Add(n);
            }
        }

        result.Openings.Add(Opening(sure, greatest, worst.Seconds[sure], worst.Amperes));
        foreach (int n in wrong.Where(n => n != sure))
        {
            result.Openings.Add(Opening(n, greatest, null, worst.Amperes));
        }

        foreach (int n in wrong)
        {
            string[] lost = [.. LoadsBehind(fuses[n]).Except(LoadsBehind(fuses[0]))];
            if (lost.Length > 0)
            {
                result.WrongFuses.Add(at.Harness.BranchArray[fuses[n]].Id);
                result.LostLoads.AddRange(lost.Except(result.LostLoads));
                result.SurelyWrong |= n == sure && courses.TrueForAll(c => c.Sure == sure);
            }
        }

        FaultHeat heat = new(at, CurveOf(sure)!, courses.Min(c => c.Sure == sure ? c.Last[sure] : c.Amperes), AtFuse(sure, greatest));
        for (int n = 0; n < branches.Length; n++)
        {
            if (at.IsWire(branches[n]))
            {
                result.Wires.Add(heat.Of(branches[n], courses.Max(c => c.Others[n])));
            }
        }
    }

    private FuseOpening Opening(int n, double greatest, double? longest, double least)
    {
        TimeCurrentCurve? curve = CurveOf(n);
        double most = greatest + Carried(n);
        double? soonest = curve is not null && FuseMelting.MayOpen(curve, most) && curve.TryLeastSeconds(most, out double seconds) ? seconds : null;
        return new FuseOpening(at.Harness.BranchArray[fuses[n]].Id, soonest, longest, least, most);
    }

    // Before the nearest fuse has opened for sure, at the same current: at the least and at the greatest.
    private bool MayOpenBefore(int n, List<Course> courses, double greatest)
    {
        if (CurveOf(n) is not { } curve || CurveOf(0) is not { } nearest)
        {
            return false;
        }

        double most = greatest + Carried(n);
        bool atMost = FuseMelting.MayOpen(curve, most) && nearest.TryLongestSeconds(greatest, out double longest) && (!curve.TryLeastSeconds(most, out double least) || least <= longest);
        int place = Array.IndexOf(branches, fuses[n]);
        return atMost || courses.Exists(c =>
            FuseMelting.MayOpen(curve, c.Amperes + c.Others[place]) && (!curve.TryLeastSeconds(c.Amperes + c.Others[place], out double its) || its <= c.Seconds[0]));
    }

    // What a fuse carries for loads that the fault leaves alone, at most.
    private double Carried(int n) => Math.Max(0, at.Duty.On[fuses[n]] - (way.Branches.Length > 0 ? at.Duty.On[way.Branches[0]] : 0));

    private IEnumerable<string> LoadsBehind(int fuse) =>
        at.Harness.LoadArray.Where((l, k) => at.Duty.IsOn(k) && at.Graph.WayFrom(at.Harness.NodeIndex(l.Positive)).Branches.Contains(fuse)).Select(l => l.Id);

    private double AtFuse(int n, double greatest) => single < 0 ? greatest : Math.Min(Accept.MostAmperes, ProspectiveCurrent.GreatestAt(
        at.Harness.SourceArray[single].Source!.Numbers, way.Branches.Skip(Array.IndexOf(way.Branches, fuses[n]) + 1).Sum(at.Feeding.CoolOhms)));

    private void Stay(ShortResult result, Course worst, double greatest)
    {
        int unknown = Array.FindIndex(fuses, k => ((HarnessFuse)at.Harness.BranchArray[k]).Rating!.Curve is null);
        if (unknown >= 0)
        {
            (result.Ending, result.Reason) = (FaultEnding.Undetermined, $"No operating times are published for {at.Harness.BranchArray[fuses[unknown]]}.");
            return;
        }

        double fusing = fuses.Length == 0 || worst.Melts ? greatest : Math.Min(greatest, Enumerable.Range(0, fuses.Length).Min(n => CurveOf(n)!.FusingAmperes));
        result.Ending = FaultEnding.NotCleared;
        result.Reason = worst.Melts ? "A wire melts before a fuse has opened for sure."
            : fuses.Length > 0 && fusing <= worst.Amperes ? "As the wires heat, the current falls below what opens a fuse for sure." : "";
        result.Remaining = Math.Max(worst.Amperes, fusing);
        result.Holding = fuses.Length == 0 ? null : at.Harness.BranchArray[fuses[Enumerable.Range(0, fuses.Length).OrderBy(n => CurveOf(n)!.FusingAmperes).First()]].Id;
        for (int n = 0; n < branches.Length; n++)
        {
            if (at.IsWire(branches[n]))
            {
                FaultHeat.AddStaying(at, result, branches[n], result.Remaining.Value + worst.Others[n]);
            }
        }
    }
}
