using CircuitSchedule;

namespace CircuitPage;

/// <summary>A schedule file that was opened in the page: its circuits, to pick from.</summary>
internal sealed class ScheduleText
{
    /// <summary>More rows than anyone picks from; the rest is counted.</summary>
    public const int Most = 2000;

    private ScheduleText(string name, string howRead, IReadOnlyList<ScheduleChoice> circuits, int more, IReadOnlyList<string> notes) =>
        (Name, HowRead, Circuits, More, Notes) = (name, howRead, circuits, more, notes);

    public string Name { get; }

    public string HowRead { get; }

    public IReadOnlyList<ScheduleChoice> Circuits { get; }

    /// <summary>Rows beyond <see cref="Most"/>.</summary>
    public int More { get; }

    public IReadOnlyList<string> Notes { get; }

    /// <param name="path">The file; in a browser one in memory.</param>
    /// <exception cref="ScheduleFileException">The file as a whole cannot be used.</exception>
    public static ScheduleText Open(string path)
    {
        using ScheduleFile file = ScheduleFile.Open(path);
        List<ScheduleChoice> circuits = [];
        int more = 0;
        foreach (CircuitRow row in file.Rows())
        {
            if (circuits.Count < Most)
            {
                circuits.Add(ScheduleChoice.Of(row));
            }
            else
            {
                more++;
            }
        }

        return new ScheduleText(Path.GetFileName(path), $"{file.Dialect}, {file.Encoding}", circuits, more, file.Notes);
    }
}
