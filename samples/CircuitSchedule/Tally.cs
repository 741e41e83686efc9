using LowVoltage.Calc.Checks;

namespace CircuitSchedule;

/// <summary>What adds up while the rows go by: counts, the circuits to talk about below the table, and what was assumed where the file does not say.</summary>
/// <param name="list">How many circuits each list keeps.</param>
internal sealed class Tally(int list)
{
    private readonly Dictionary<Assumption, int> assumptions = [];
    private readonly List<ScheduleEntry> failing = [], undetermined = [], bad = [];

    public int Circuits { get; private set; }

    public int Passing { get; private set; }

    public int Failing { get; private set; }

    public int Undetermined { get; private set; }

    public int BadRows { get; private set; }

    public int Mistakes { get; private set; }

    /// <summary>The first circuits that fail.</summary>
    public IReadOnlyList<ScheduleEntry> FirstFailing => failing;

    /// <summary>The first circuits that are undetermined.</summary>
    public IReadOnlyList<ScheduleEntry> FirstUndetermined => undetermined;

    /// <summary>The first bad rows.</summary>
    public IReadOnlyList<ScheduleEntry> FirstBad => bad;

    /// <summary>What was assumed where rows do not say, with the number of rows.</summary>
    public IReadOnlyList<string> Assumptions => [.. assumptions.Select(pair => $"{pair.Key.What}: {pair.Key.Value} ({Numbers.Count(pair.Value, "row")})")];

    public string Summary => $"{Numbers.Count(Circuits, "circuit")}: {Passing} pass, {Undetermined} undetermined, {Failing} fail, {Numbers.Count(BadRows, "bad row")}";

    public int ExitCode => BadRows > 0 ? Program.BadInput : Failing > 0 ? Program.SomeCircuitFails : Undetermined > 0 ? Program.SomeUndetermined : Program.AllPass;

    public void Add(ScheduleEntry entry)
    {
        Circuits++;
        Mistakes += entry.Problems.Count;
        List<ScheduleEntry>? kept = null;
        switch (entry.Answer?.Verdict)
        {
            case null:
                (BadRows, kept) = (BadRows + 1, bad);
                break;
            case Verdict.Fail:
                (Failing, kept) = (Failing + 1, failing);
                break;
            case Verdict.Undetermined:
                (Undetermined, kept) = (Undetermined + 1, undetermined);
                break;
            default:
                Passing++;
                break;
        }

        if (kept is not null && kept.Count < list)
        {
            kept.Add(entry);
        }

        foreach (Assumption one in entry.Assumptions)
        {
            assumptions[one] = assumptions.GetValueOrDefault(one) + 1;
        }
    }
}
