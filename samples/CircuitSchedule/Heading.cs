namespace CircuitSchedule;

/// <summary>What stands above the schedule.</summary>
/// <param name="File">The name of the input file, without its folder.</param>
/// <param name="HowRead">How it is written.</param>
/// <param name="IsInvented">The shipped scenario describes nothing that exists.</param>
internal sealed record Heading(string File, string HowRead, bool IsInvented)
{
    public const string Title = "Circuit schedule";
    public const string Assumed = "Assumed where the file does not say";

    public string From => $"From {File}: {HowRead}.";

    public string Closing => IsInvented
        ? "All values are calculated. The scenario is invented: no such vehicle, boat or bench exists."
        : "All values are calculated for the circuits as the file describes them.";
}

/// <summary>Where a schedule goes: to the screen, to a page, to a result file. Rows are written as they come.</summary>
internal interface IScheduleWriter : IDisposable
{
    void Begin(Heading heading);

    void Row(ScheduleEntry entry);

    void End(Tally tally);
}
