using LowVoltage.Calc.Checks;
using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace CircuitSchedule;

/// <summary>The schedule for people: the table, then what fails, what is open, what could not be read, and the cautions.</summary>
internal static class SchedulePrinter
{
    private static readonly int[] Widths = [22, 12, 18, 19, 9, 18, 8];

    public static void Print(IReadOnlyList<ScheduleEntry> entries, bool invented, TextWriter output)
    {
        output.WriteLine("Circuit schedule");
        output.WriteLine();
        TextTable.WriteRow(output, Widths, "Circuit", "Load current over supply range", "Wire", "Fuse", "Largest drop", "Governed by", "Verdict");
        TextTable.WriteRule(output, Widths);
        foreach (ScheduleEntry entry in entries)
        {
            TextTable.WriteRow(output, Widths, Cells(entry));
        }

        TextTable.WriteRule(output, Widths);
        output.WriteLine(Summary(entries));
        PrintFailures(entries, output);
        PrintUndetermined(entries, output);
        PrintProblems(entries, output);
        PrintCautions(output);
        output.WriteLine();
        output.WriteLine(invented
            ? "All values are calculated. The scenario is invented: no such vehicle, boat or bench exists."
            : "All values are calculated for the circuits as the file describes them.");
    }

    private static string[] Cells(ScheduleEntry entry)
    {
        if (entry.Design is not { } design)
        {
            return [entry.Circuit, "-", "-", "-", "-", "-", "BAD ROW"];
        }

        (string current, string drop) = ("-", "-");
        if (design.SupplyRange is { MostCurrent: { } most, MostDrop: { } worst } range)
        {
            current = Currents(range, most);
            drop = $"{Numbers.Short(worst.Drop.Volts)} V\n{Numbers.Short(worst.DropOfNominal.Percent)} %";
        }

        return
        [
            entry.Circuit, current, design.Wire?.Name ?? "none fits", Fuse(design.Fuse), drop, design.Governing.Name, WordFor(design.Verdict),
        ];
    }

    private static string Fuse(FuseRating? fuse) =>
        fuse is null ? "none fits" : $"{Numbers.Six(fuse.Current.Amperes)} A {fuse.Series.Kind}\n({fuse.Series.Name})";

    private static string Currents(SupplyRange range, OperatingPoint most)
    {
        double least = Math.Min(range.Minimum.Current.Amperes, Math.Min(range.Nominal.Current.Amperes, range.Maximum.Current.Amperes));
        (string low, string high) = (Numbers.Short(least), Numbers.Short(most.Current.Amperes));
        return low == high ? $"{high} A" : $"{low}-{high} A";
    }

    private static string WordFor(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.Undetermined => "undetermined",
        _ => "FAIL",
    };

    private static string Summary(IReadOnlyList<ScheduleEntry> entries)
    {
        int Count(Verdict verdict) => entries.Count(entry => entry.Design?.Verdict == verdict);
        return $"{entries.Count} circuits: {Count(Verdict.Pass)} pass, {Count(Verdict.Undetermined)} undetermined, "
            + $"{Count(Verdict.Fail)} fail, {entries.Count(entry => entry.Problems.Count > 0)} bad rows";
    }

    private static void PrintFailures(IReadOnlyList<ScheduleEntry> entries, TextWriter output)
    {
        PrintTitle(output, "Circuits that fail", entries.Any(entry => entry.Design is { IsFeasible: false }));
        foreach (ScheduleEntry entry in entries.Where(entry => entry.Design is { IsFeasible: false }))
        {
            TextTable.WriteItem(output, "  ", $"{entry.Circuit}: {entry.Design}");
            WriteOwnCautions(entry.Design!, output);
            foreach (string advice in entry.Design!.Advice)
            {
                TextTable.WriteItem(output, "    What would help: ", advice);
            }
        }
    }

    private static void PrintUndetermined(IReadOnlyList<ScheduleEntry> entries, TextWriter output)
    {
        PrintTitle(output, "Undetermined: not passed, to be settled before building", entries.Any(entry => entry.Design?.Verdict == Verdict.Undetermined));
        foreach (ScheduleEntry entry in entries.Where(entry => entry.Design?.Verdict == Verdict.Undetermined))
        {
            foreach (CheckResult open in entry.Design!.Undetermined)
            {
                TextTable.WriteItem(output, "  ", $"{entry.Circuit}: {open}");
            }

            WriteOwnCautions(entry.Design!, output);
        }
    }

    private static void PrintProblems(IReadOnlyList<ScheduleEntry> entries, TextWriter output)
    {
        PrintTitle(output, "Bad rows: not designed", entries.Any(entry => entry.Problems.Count > 0));
        foreach (Problem problem in entries.SelectMany(entry => entry.Problems))
        {
            TextTable.WriteItem(output, "  ", problem.ToString());
        }
    }

    // The cautions of this circuit beyond those that hold for all.
    private static void WriteOwnCautions(CircuitDesign design, TextWriter output)
    {
        foreach (string caution in design.Cautions.Except(Cautions.General))
        {
            TextTable.WriteItem(output, "    ", caution);
        }
    }

    private static void PrintCautions(TextWriter output)
    {
        PrintTitle(output, "Cautions", true);
        foreach (string caution in Cautions.General)
        {
            TextTable.WriteItem(output, "  - ", caution);
        }
    }

    private static void PrintTitle(TextWriter output, string title, bool needed)
    {
        if (needed)
        {
            output.WriteLine();
            output.WriteLine(title);
        }
    }
}
