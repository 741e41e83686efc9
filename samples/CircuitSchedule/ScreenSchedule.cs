using LowVoltage.Calc.Design;

namespace CircuitSchedule;

/// <summary>The schedule for people: the table, then what fails, what is undetermined, what could not be read, and the cautions.</summary>
internal sealed class ScreenSchedule(Screen screen) : IScheduleWriter
{
    private readonly TextTable? table = screen.Width >= TextTable.LeastWidth ? new TextTable(screen.Width) : null;
    private Heading? heading;

    private TextWriter Output => screen.Output;

    public void Begin(Heading heading)
    {
        this.heading = heading;
        Output.WriteLine(Heading.Title);
        screen.WriteItem("", heading.From);
        Output.WriteLine();
        if (table is not null)
        {
            foreach ((string start, string last) in table.Lines(Cells.Titles))
            {
                Output.WriteLine((start + last).TrimEnd());
            }

            Output.WriteLine(table.Rule());
        }
    }

    public void Row(ScheduleEntry entry)
    {
        string[] cells = Cells.Of(entry);
        if (table is null)
        {
            WriteBlock(cells);
            return;
        }

        foreach ((string start, string last) in table.Lines(cells))
        {
            if (last.Length == 0)
            {
                Output.WriteLine(start.TrimEnd());
            }
            else
            {
                Output.Write(start);
                screen.WriteVerdict(last);
            }
        }
    }

    public void End(Tally tally)
    {
        if (table is not null)
        {
            Output.WriteLine(table.Rule());
        }

        screen.WriteItem("", tally.Summary);
        WriteAssumptions(tally);
        WriteFailing(tally);
        WriteUndetermined(tally);
        WriteBadRows(tally);
        Output.WriteLine();
        Output.WriteLine("Cautions");
        foreach (string caution in Cautions.General)
        {
            screen.WriteItem("  - ", caution);
        }

        Output.WriteLine();
        screen.WriteItem("", heading!.Closing);
    }

    public void Dispose() => Output.Flush();

    // Too narrow for columns: one line a fact.
    private void WriteBlock(string[] cells)
    {
        screen.WriteItem("", cells[0]);
        for (int i = 1; i < cells.Length - 1; i++)
        {
            screen.WriteItem($"  {Cells.Titles[i],-14}", cells[i].Replace('\n', ' '));
        }

        Output.Write($"  {Cells.Titles[^1],-14}");
        screen.WriteVerdict(cells[^1]);
        Output.WriteLine();
    }

    private void WriteAssumptions(Tally tally)
    {
        if (tally.Assumptions.Count > 0)
        {
            Output.WriteLine();
            Output.WriteLine(Heading.Assumed);
            foreach (string assumption in tally.Assumptions)
            {
                screen.WriteItem("  - ", assumption);
            }
        }
    }

    private void WriteFailing(Tally tally)
    {
        WriteTitle("Circuits that fail", tally.FirstFailing.Count, tally.Failing);
        foreach (ScheduleEntry entry in tally.FirstFailing)
        {
            screen.WriteItem("  ", $"{entry.Circuit}: {entry.Answer!.InWords}");
            WriteOwnCautions(entry);
            foreach (string advice in entry.Answer.Advice)
            {
                screen.WriteItem("    What would help: ", advice);
            }
        }
    }

    private void WriteUndetermined(Tally tally)
    {
        WriteTitle("Undetermined: not passed, to be settled before building", tally.FirstUndetermined.Count, tally.Undetermined);
        foreach (ScheduleEntry entry in tally.FirstUndetermined)
        {
            foreach (string check in entry.Answer!.Undetermined)
            {
                screen.WriteItem("  ", $"{entry.Circuit}: {check}");
            }

            WriteOwnCautions(entry);
        }
    }

    private void WriteBadRows(Tally tally)
    {
        WriteTitle("Bad rows: not designed", tally.FirstBad.Count, tally.BadRows);
        foreach (Problem problem in tally.FirstBad.SelectMany(entry => entry.Problems))
        {
            screen.WriteItem("  ", problem.ToString());
        }
    }

    private void WriteOwnCautions(ScheduleEntry entry)
    {
        foreach (string caution in entry.Answer!.OwnCautions)
        {
            screen.WriteItem("    ", caution);
        }
    }

    private void WriteTitle(string title, int shown, int all)
    {
        if (all > 0)
        {
            Output.WriteLine();
            screen.WriteItem("", shown == all ? title : $"{title} (the first {shown} of {all}; --list N shows more, --csv FILE has all)");
        }
    }
}
