using LowVoltage.Calc;

namespace CircuitSchedule;

/// <summary>One line of the schedule: the design, or what is wrong with the row.</summary>
public sealed class ScheduleEntry
{
    public required int Line { get; init; }

    public required string Circuit { get; init; }

    /// <summary>The answer; null when the row has a problem.</summary>
    public CircuitDesign? Design { get; init; }

    public IReadOnlyList<Problem> Problems { get; init; } = [];

    public static ScheduleEntry From(CircuitRow row)
    {
        CircuitDesign? design = row.Problems.Count == 0 ? DesignOf(row) : null;
        return new ScheduleEntry { Line = row.Line, Circuit = row.Text("circuit"), Design = design, Problems = row.Problems };
    }

    private static CircuitDesign? DesignOf(CircuitRow row)
    {
        DesignRules? rules = row.Choice("practice", Words.Practices);
        CircuitRequirements? requirements = CircuitCells.Read(row);
        if (row.Problems.Count == 0)
        {
            row.ReportUnused();
        }

        if (row.Problems.Count > 0)
        {
            return null;
        }

        // The designer itself refuses a supply above 60 V.
        return row.Build(() => CircuitDesigner.Design(requirements!, rules!), ("requirements", "supply"));
    }
}
