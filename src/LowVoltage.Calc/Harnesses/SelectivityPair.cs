using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A fuse against the fuse before it on the way to a load.</summary>
public sealed class SelectivityPair
{
    private SelectivityPair(string upstream, string downstream, FuseSelectivity answer)
    {
        Upstream = upstream;
        Downstream = downstream;
        Answer = answer;
    }

    /// <summary>Name of the fuse nearer to the source.</summary>
    public string Upstream { get; }

    /// <summary>Name of the fuse nearer to the load.</summary>
    public string Downstream { get; }

    /// <summary>Whether the downstream fuse alone opens, up to which current, and why.</summary>
    public FuseSelectivity Answer { get; }

    /// <inheritdoc/>
    public override string ToString() => $"{Downstream} before {Upstream}: {Answer}";

    internal static IReadOnlyList<SelectivityPair> Of(Harness harness)
    {
        CaseDuty duty = new(harness, CaseGroup.Of(harness)[0]);
        HarnessBranches branches = new(duty);
        List<SelectivityPair> pairs = [];
        List<ZoneEnd> ends = ZoneEnd.Of(duty);
        foreach (ZoneEnd end in ends.Where(e => e.NextFuse >= 0 && e.Fuse >= 0))
        {
            HarnessFuse before = (HarnessFuse)harness.BranchArray[end.Fuse], after = (HarnessFuse)harness.BranchArray[end.NextFuse];
            ZoneEnd? own = ends.Find(e => e.Fuse == end.NextFuse);
            double prospective = own is null || branches.OfFuse(own, harness.LoadArray[0].Load, 1) is not { } state ? double.NaN : state.BoundedAtFuseAmperes;
            if (prospective > 0)
            {
                pairs.Add(new SelectivityPair(before.Id, after.Id, FuseAgainstFuse.Check(before.Rating!, after.Rating!, ElectricCurrent.FromAmperes(prospective))));
            }
        }

        return pairs.AsReadOnly();
    }
}
