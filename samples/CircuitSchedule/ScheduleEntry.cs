using LowVoltage.Calc;

namespace CircuitSchedule;

/// <summary>One line of the schedule: the answer, or what is wrong with the row.</summary>
internal sealed class ScheduleEntry
{
    public required int Line { get; init; }

    public required string Circuit { get; init; }

    /// <summary>The answer; null when the row has a problem.</summary>
    public CircuitAnswer? Answer { get; init; }

    public IReadOnlyList<Problem> Problems { get; init; } = [];

    public IReadOnlyList<Assumption> Assumptions { get; init; } = [];

    public static ScheduleEntry From(CircuitRow row, DesignRules practice)
    {
        CircuitDesign? design = row.Problems.Count == 0 ? DesignOf(row, practice) : null;
        return new ScheduleEntry
        {
            Line = row.Line,
            Circuit = row.Name("circuit"),
            Answer = design is null ? null : CircuitAnswer.Of(design),
            Problems = row.Problems,
            Assumptions = design is null ? [] : row.Assumptions,
        };
    }

    private static CircuitDesign? DesignOf(CircuitRow row, DesignRules practice)
    {
        DesignRules? rules = row.Has("practice") ? row.Choice("practice", Words.Practices) : practice;
        if (!row.Has("practice"))
        {
            row.Assume("practice", practice.Name);
        }

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
        return row.Build(() => CircuitDesigner.Design(requirements!, rules!), ("requirements", row.Has("supply_V") ? "supply_V" : "supply"));
    }
}
