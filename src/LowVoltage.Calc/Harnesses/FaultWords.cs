using System.Text;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>The words of an audit as a whole.</summary>
internal static class FaultWords
{
    internal static IReadOnlyList<string> Assumptions(Harness harness, IReadOnlyList<LoadCase> cases)
    {
        List<string> lines =
        [
            $"Load cases: {HarnessName.List(cases.Select(c => c.Name))}; what starts counts as running. Of each fault the worst case is told.",
            "One fault at a time. A short is dead, without resistance or arc of its own; one with resistance draws less and may open nothing.",
            "Least current: sources at their weakest, wires as hot as their insulation allows, every load drawing its running current while it has voltage. Greatest: sources at their strongest, wires cool, loads off.",
            "Heating in a fault counts no loss of heat, which is an upper bound; a current that stays is told by the steady temperature that it leads to.",
            "A source that disconnects by itself is not counted on to end a fault.",
        ];
        if (harness.SourceArray.Any(s => s.Panel is not null || s.Source!.Numbers.Action == Circuits.LimitAction.Holds))
        {
            lines.Add("Chargers, alternators and panels are looked at both giving what they can and giving nothing.");
        }

        return lines.AsReadOnly();
    }

    internal static IReadOnlyList<string> Cautions(IReadOnlyList<HarnessFault> faults)
    {
        List<string> lines = [];
        if (faults.Any(f => f.Rank <= FaultRank.NotCleared))
        {
            lines.Add("A short in this harness can keep flowing. Do not use it until that is cured.");
        }

        if (faults.Any(f => f.Rank == FaultRank.Undetermined))
        {
            lines.Add("Some faults could not be told from what was stated. They are undetermined, not harmless.");
        }

        lines.AddRange(Design.Cautions.General);
        return lines.AsReadOnly();
    }

    internal static string Report(FaultAudit audit)
    {
        StringBuilder text = new();
        _ = text.Append(audit.Harness.Name).Append(": ").Append(Accept.Text(audit.Faults.Count)).Append(" faults\n\n");
        int n = 0;
        foreach (HarnessFault fault in audit.Worst)
        {
            _ = text.Append(Accept.Text(++n)).Append(". ").Append(fault.Text).Append('\n');
        }

        _ = text.Append(n > 0 ? "\n" : "");
        for (FaultRank rank = FaultRank.BurnsOn; rank <= FaultRank.Harmless; rank++)
        {
            int count = audit.Count(rank);
            if (count > 0)
            {
                _ = text.Append(Accept.Text(count)).Append(' ').Append(Word(rank)).Append('\n');
            }
        }

        Append(text, "Assumed", audit.Assumptions);
        Append(text, "Caution", audit.Cautions);
        return text.ToString();
    }

    private static void Append(StringBuilder text, string head, IReadOnlyList<string> lines)
    {
        _ = text.Append('\n').Append(head).Append('\n');
        foreach (string line in lines)
        {
            _ = text.Append("- ").Append(line).Append('\n');
        }
    }

    private static string Word(FaultRank rank) => rank switch
    {
        FaultRank.BurnsOn => "not cleared, with a wire beyond its limit",
        FaultRank.NotCleared => "not cleared",
        FaultRank.WireTooHot => "cleared, with a wire too hot",
        FaultRank.Undetermined => "undetermined",
        FaultRank.WrongFuseFirst => "where the wrong fuse may open",
        FaultRank.FedBack => "that feed something back",
        FaultRank.LoadDead => "that leave a load dead",
        FaultRank.LoadDim => "that dim a load, or give it more",
        _ => "without a finding",
    };
}
