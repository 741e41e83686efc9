using LowVoltage.Calc;

namespace CircuitSchedule;

/// <summary>Rows in, answers out, in the order of the file: a block at a time over all processors, the next block while the last one is written.</summary>
internal static class Schedule
{
    // Small enough that the first lines come at once and little is kept, large enough that the processors have something to share.
    private const int Block = 256;

    public static IEnumerable<ScheduleEntry> Design(IEnumerable<CircuitRow> rows, DesignRules practice, CancellationToken stop)
    {
        using IEnumerator<CircuitRow[]> blocks = rows.Chunk(Block).GetEnumerator();
        Task<ScheduleEntry[]>? next = Next(blocks, practice, stop);
        while (next is not null)
        {
            ScheduleEntry[] done = next.GetAwaiter().GetResult();
            next = Next(blocks, practice, stop);
            foreach (ScheduleEntry entry in done)
            {
                stop.ThrowIfCancellationRequested();
                yield return entry;
            }
        }
    }

    // Reading stays on the caller's thread: a file is read by one.
    private static Task<ScheduleEntry[]>? Next(IEnumerator<CircuitRow[]> blocks, DesignRules practice, CancellationToken stop) => blocks.MoveNext()
        ? Work(blocks.Current, practice, stop)
        : null;

    private static Task<ScheduleEntry[]> Work(CircuitRow[] rows, DesignRules practice, CancellationToken stop) => Task.Run(
        () =>
        {
            ScheduleEntry[] entries = new ScheduleEntry[rows.Length];
            Parallel.For(0, rows.Length, new ParallelOptions { CancellationToken = stop }, i => entries[i] = ScheduleEntry.From(rows[i], practice));
            return entries;
        },
        stop);
}
