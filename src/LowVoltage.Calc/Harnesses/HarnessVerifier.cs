using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Asks every check of every wire, fuse and load of a harness over its load cases, and keeps of each question the answer that says most against it.</summary>
internal sealed class HarnessVerifier
{
    private static readonly CheckKind[] Against = [CheckKind.FuseProtectsWire, CheckKind.OverloadTemperature, CheckKind.ShortCircuitTemperature];

    private readonly Harness harness;
    private readonly Dictionary<(string Kind, string Place, string? Wire), int> at = [];
    private readonly List<HarnessCheck> checks = [];
    private readonly bool[] fed;

    internal HarnessVerifier(Harness harness)
    {
        this.harness = harness;
        fed = new bool[harness.LoadArray.Length];
    }

    /// <summary>Loads that no load case feeds.</summary>
    internal IEnumerable<string> NeverFed => harness.LoadArray.Where((_, k) => !fed[k]).Select(l => l.Id);

    internal List<HarnessCheck> Run(CancellationToken cancellation)
    {
        foreach (CaseGroup group in CaseGroup.Of(harness))
        {
            cancellation.ThrowIfCancellationRequested();
            Ask(new CaseDuty(harness, group), cancellation);
        }

        return checks;
    }

    private void Ask(CaseDuty duty, CancellationToken cancellation)
    {
        HarnessBranches branches = new(duty);
        FuseEnds ends = new(duty);
        HashSet<int> protectedWires = [], asked = [], started = [];
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire wire)
            {
                AskAll(branches.OfWire(k), CheckScope.Wire, wire.Id, wire.Id, duty.Group.Steady.Name);
            }
        }

        foreach (ZoneEnd end in ends.Own)
        {
            protectedWires.UnionWith([.. end.Path, .. end.Back, .. end.Upstream]);
            if (end.Load >= 0)
            {
                fed[end.Load] = true;
                AskLoad(duty, branches, end);
            }
        }

        foreach (ZoneEnd end in ends.Own.Concat(ends.Rings))
        {
            cancellation.ThrowIfCancellationRequested();
            if (AskFuse(duty, branches, end))
            {
                _ = asked.Add(end.Fuse);
            }
        }

        started.UnionWith(ends.Own.Concat(ends.Rings).Concat(ends.Starts).Where(end => end.Load >= 0).Select(end => end.Fuse));
        AskOtherFuses(duty, branches, asked, started);
        foreach (ZoneEnd end in ends.Starts)
        {
            cancellation.ThrowIfCancellationRequested();
            AskStarts(duty, branches, end);
        }

        // What lies in a ring or between sources is on no load's only way: it is held against what the fuses at its ends let through.
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire && !protectedWires.Contains(k) && duty.On[k] > 0)
            {
                AskTie(duty, branches, k);
            }
        }
    }

    private void AskTie(CaseDuty duty, HarnessBranches branches, int branch)
    {
        string id = harness.BranchArray[branch].Id, name = duty.Group.Steady.Name;
        AskOne(CheckKind.OvercurrentProtection, branches.OfTie(branch), id, id, name);
        foreach (int node in new[] { duty.Graph.From[branch], duty.Graph.To[branch] })
        {
            if (branches.OfTieFuse(branch, node) is not var (state, fuse))
            {
                continue;
            }

            foreach (CheckKind kind in Against)
            {
                AskOne(kind, state, fuse, id, name);
            }
        }
    }

    private void AskLoad(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        string id = harness.LoadArray[end.Load].Id;
        WireDuty of = branches.LoadDuties[end.Load];
        if (of.Exists || of.LargestWatts < of.WantedWatts)
        {
            AskAll(branches.OfLoad(end, of, duty.Starts.PointsOf(end.Load)), CheckScope.Load, id, null, duty.Group.Steady.Name);
        }

        foreach ((string name, WireDuty while_) in duty.Starts.OthersOf(end.Load, of))
        {
            AskOne(CheckKind.LoadVoltage, branches.OfLoad(end, while_, []), id, null, name);
        }
    }

    // Beside a busbar, between sources, in a ring, in the way back: no wire was asked with it, but it carries a current and has to break one.
    private void AskOtherFuses(CaseDuty duty, HarnessBranches branches, HashSet<int> asked, HashSet<int> started)
    {
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (harness.BranchArray[k] is not HarnessFuse fuse || !(duty.On[k] > 0))
            {
                continue;
            }

            if (!asked.Contains(k))
            {
                BranchState state = branches.OfDevice(k);
                CheckKind[] kinds = [CheckKind.FuseCarriesLoad, CheckKind.FuseVoltage, CheckKind.BreakingCapacity, .. branches.IsInFeed(k) ? [CheckKind.FuseDistance] : Array.Empty<CheckKind>()];
                Array.ForEach(kinds, kind => AskOne(kind, state, fuse.Id, null, duty.Group.Steady.Name));
            }

            if (!started.Contains(k))
            {
                foreach ((BranchState state, string name) in branches.OfDividedStarts(k))
                {
                    AskOne(CheckKind.InrushHeld, state, fuse.Id, null, name);
                }
            }
        }
    }

    // The current of a start passes every fuse on its way.
    private void AskStarts(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        foreach (StartLoads start in StartLoads.Of(duty, branches, end))
        {
            if (branches.OfFuse(start) is { } state)
            {
                AskOne(CheckKind.InrushHeld, state, harness.BranchArray[end.Fuse].Id, null, start.Name);
            }
            else
            {
                Unknown(duty, branches, end);
            }
        }
    }

    // Whether anything was asked.
    private bool AskFuse(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        string place = end.Fuse >= 0 ? harness.BranchArray[end.Fuse].Id : FirstWire(end) ?? "";
        string? only = end.Path.Concat(end.Back).Count(k => harness.BranchArray[k] is HarnessWire) == 1 ? FirstWire(end) : null;
        string toward = end.Load >= 0 ? harness.LoadArray[end.Load].Id : harness.BranchArray[end.NextFuse].Id;
        bool first = true;
        foreach (StartLoads start in StartLoads.Of(duty, branches, end))
        {
            if (branches.OfFuse(start) is not { } state)
            {
                Unknown(duty, branches, end);
                return false;
            }

            // Right behind the fuse, without a wire, or with others: what is asked of the fuse alone, or of each, is asked elsewhere.
            if (state.Stretches.Length == 0 || start.End.IsOfStart)
            {
                AskOne(CheckKind.InrushHeld, state, place, only, start.Name);
                continue;
            }

            foreach (Check check in CheckKind.Catalogue.Where(check => check.Scope == CheckScope.Fuse))
            {
                AskOne(check, state, place, only, check.IsOfStart ? start.Name : duty.Group.Steady.Name, check.Where == "far end" ? toward : null);
            }

            first = false;
        }

        AskLeads(duty, branches, end, place);
        return !first;
    }

    // In a fault or an overload behind its first fuse a wire at the source carries the same current for as long: nothing else opens it.
    private void AskLeads(CaseDuty duty, HarnessBranches branches, ZoneEnd end, string place)
    {
        if (end.WithLeads(harness) is { } exposed && branches.OfFuse(exposed, HarnessBranches.AnyLoad, 1) is { } state)
        {
            foreach (CheckKind kind in Against)
            {
                AskOne(kind, state, place, null, duty.Group.Steady.Name);
            }
        }
    }

    // No equivalent of what feeds it could be found: its wires are undetermined, never passed.
    private void Unknown(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        foreach (int k in end.Path.Concat(end.Back).Where(k => harness.BranchArray[k] is HarnessWire))
        {
            AskOne(CheckKind.OvercurrentProtection, branches.OfWire(k, fedFromSeveralSides: true), harness.BranchArray[k].Id, harness.BranchArray[k].Id, duty.Group.Steady.Name);
        }
    }

    private string? FirstWire(ZoneEnd end) =>
        Enumerable.Reverse(end.Path).Concat(end.Back).Select(k => harness.BranchArray[k]).OfType<HarnessWire>().FirstOrDefault()?.Id;

    private void AskAll(BranchState state, CheckScope scope, string place, string? wire, string name)
    {
        foreach (Check check in CheckKind.Catalogue)
        {
            if (check.Scope == scope)
            {
                AskOne(check, state, place, wire, name);
            }
        }
    }

    private void AskOne(CheckKind kind, BranchState state, string place, string? wire, string name, string? toward = null)
    {
        Check check = (Check)kind;
        if (!check.TryAsk(state, out CheckResult result))
        {
            return;
        }

        string? its = result.Stretch?.Part ?? wire;
        HarnessCheck found = new(result, place, its, toward, name, result.Outcome == CheckOutcome.Pass ? "" : check.Advice(result, state));
        (string, string, string?) key = (check.Id, place, its);
        if (!at.TryGetValue(key, out int index))
        {
            at.Add(key, checks.Count);
            checks.Add(found);
        }
        else if (found.IsWorseThan(checks[index]))
        {
            checks[index] = found;
        }
    }
}
