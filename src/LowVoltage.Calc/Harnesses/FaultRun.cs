namespace LowVoltage.Calc.Harnesses;

/// <summary>Goes through every fault of every load case and keeps the worst of each.</summary>
internal sealed class FaultRun(Harness harness, IProgress<double>? progress, CancellationToken cancellation)
{
    private readonly Dictionary<(HarnessFaultKind Kind, string Place), int> found = [];
    private readonly List<HarnessFault> faults = [];
    private int done;
    private int all;

    internal HarnessFault[] All()
    {
        List<CaseGroup> groups = CaseGroup.Of(harness);
        all = groups.Count * (harness.Nodes.Count + harness.BranchArray.Length);
        foreach (CaseGroup group in groups)
        {
            cancellation.ThrowIfCancellationRequested();
            FaultCase at = new(harness, group);
            Shorts(at);
            Opens(at);
        }

        progress?.Report(1);
        // In seven digits, so that two faults that weigh the same stand in the order of the harness, whatever rounding says.
        return [.. faults.OrderBy(f => f.Rank).ThenByDescending(f => (float)f.Weight)];
    }

    private void Shorts(FaultCase at)
    {
        FaultReturns returns = new(at);
        ShortAudit audit = new(at);
        for (int node = 0; node < harness.Nodes.Count; node++)
        {
            Step();
            int to = returns.ReturnOf(node);
            if (to < 0)
            {
                continue;
            }

            Keep(Short(at, audit, HarnessFaultKind.ShortToReturn, node, to));
            int ground = returns.GroundNear(to);
            if (ground >= 0 && ground != node)
            {
                Keep(Short(at, audit, HarnessFaultKind.ShortToGround, node, ground));
            }
        }
    }

    private void Opens(FaultCase at)
    {
        OpenAudit audit = new(at);
        for (int branch = 0; branch < harness.BranchArray.Length; branch++)
        {
            Step();
            if (!at.Duty.Open.Contains(branch))
            {
                Keep(Interruption(at, audit, branch));
            }
        }
    }

    private HarnessFault Short(FaultCase at, ShortAudit audit, HarnessFaultKind kind, int node, int to)
    {
        ShortResult result = audit.Of(node, to);
        string place = harness.Nodes[node].Id, other = harness.Nodes[to].Id;
        result.Wires.Sort((a, b) => Excess(b).CompareTo(Excess(a)));
        bool hot = result.Wires.Count > 0 && result.Wires[0].IsTooHot;
        FaultRank rank = result.Ending switch
        {
            FaultEnding.NotCleared => hot ? FaultRank.BurnsOn : FaultRank.NotCleared,
            FaultEnding.Undetermined => FaultRank.Undetermined,
            FaultEnding.Cleared => hot ? FaultRank.WireTooHot : result.WrongFuses.Count > 0 ? FaultRank.WrongFuseFirst : FaultRank.Harmless,
            _ => FaultRank.Harmless,
        };
        return new HarnessFault(kind, place, other, at.Case.Name)
        {
            Rank = rank,
            Ending = result.Ending,
            LeastAmperes = result.Least,
            GreatestAmperes = result.Greatest,
            RemainingAmperes = result.Ending == FaultEnding.NotCleared ? result.Remaining : null,
            Openings = result.Openings.AsReadOnly(),
            Wires = result.Wires.AsReadOnly(),
            WrongFuses = result.WrongFuses.AsReadOnly(),
            LostLoads = result.LostLoads.AsReadOnly(),
            Reason = result.Reason,
            Places = [place, other, .. result.Openings.Select(o => o.Fuse), .. result.Wires.Where(w => w.IsTooHot).Select(w => w.Wire), .. result.LostLoads],
            Text = FaultText.OfShort(harness, place, other, result),
            Weight = rank switch
            {
                FaultRank.BurnsOn or FaultRank.WireTooHot => Excess(result.Wires[0]),
                FaultRank.WrongFuseFirst => (result.SurelyWrong ? 1000 : 0) + result.LostLoads.Count,
                _ => result.Remaining ?? result.Greatest ?? 0,
            },
        };
    }

    private HarnessFault Interruption(FaultCase at, OpenAudit audit, int branch)
    {
        (List<FaultedLoad> loads, string? live, string reason) = audit.Of(branch);
        FaultRank rank = reason.Length > 0 ? FaultRank.Undetermined
            : live is not null || loads.Exists(l => l.Effect is LoadEffect.Reversed or LoadEffect.FedBack) ? FaultRank.FedBack
            : loads.Exists(l => l.Effect is LoadEffect.Dead or LoadEffect.DropsOut) ? FaultRank.LoadDead
            : loads.Count > 0 ? FaultRank.LoadDim : FaultRank.Harmless;
        string id = harness.BranchArray[branch].Id;
        return new HarnessFault(HarnessFaultKind.Interruption, id, null, at.Case.Name)
        {
            Rank = rank,
            Loads = loads.AsReadOnly(),
            LiveThrough = live,
            Reason = reason,
            Places = [id, .. loads.Select(l => l.Load), .. loads.Where(l => l.Through is not null).Select(l => l.Through!).Distinct()],
            Text = FaultText.OfOpen(harness, branch, loads, live, reason),
            Weight = loads.Count(l => l.Effect == LoadEffect.Reversed) + (0.001 * loads.Count) + (0.01 * loads.Sum(l => Math.Abs(l.AfterVolts - l.BeforeVolts)) / harness.NominalVolts),
        };
    }

    private void Keep(HarnessFault fault)
    {
        if (!found.TryGetValue((fault.Kind, fault.Place), out int index))
        {
            found.Add((fault.Kind, fault.Place), faults.Count);
            faults.Add(fault);
        }
        else if (fault.IsWorseThan(faults[index]))
        {
            faults[index] = fault;
        }
    }

    private void Step()
    {
        cancellation.ThrowIfCancellationRequested();
        progress?.Report((double)done++ / all);
    }

    private static double Excess(FaultedWire wire) => wire.Melts ? 1e3 + (wire.Celsius / wire.LimitCelsius) : wire.Celsius / wire.LimitCelsius;
}
