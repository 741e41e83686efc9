namespace CircuitSchedule;

/// <summary>The names of the columns in the order of the file.</summary>
internal sealed class Header
{
    private const int MostFaults = 10;

    private readonly Dictionary<string, int> places = [];

    private Header(string[] names, int writtenCount)
    {
        (Names, WrittenCount) = (names, writtenCount);
        for (int i = 0; i < names.Length; i++)
        {
            places[names[i]] = i;
        }
    }

    public IReadOnlyList<string> Names { get; }

    public int Count => Names.Count;

    /// <summary>With the empty names that stood at the end.</summary>
    public int WrittenCount { get; }

    /// <returns>The place of a column, from 0; -1 where the file has none of that name.</returns>
    public int PlaceOf(string column) => places.GetValueOrDefault(column, -1);

    /// <exception cref="ScheduleFileException">A column is unknown, missing or there twice; every such fault is named.</exception>
    public static Header Check(string path, Record record, char separator)
    {
        // An empty column at the end is what a spreadsheet leaves of one that was cleared.
        string[] names = record.Cells;
        while (names.Length > 1 && names[^1].Length == 0)
        {
            names = names[..^1];
        }

        List<string> faults = [.. names.Where(name => !Column.IsKnown(name)).Select(Unknown)];
        faults.AddRange(Column.All.Where(column => column.Required && !names.Contains(column.Name)).Select(column => $"missing column '{column.Name}': {column.Meaning}."));
        faults.AddRange(names.Where(Column.IsKnown).GroupBy(name => name).Where(same => same.Count() > 1).Select(same => $"column '{same.Key}' appears {same.Count()} times."));
        return faults.Count == 0 ? new Header(names, record.Cells.Length) : throw new ScheduleFileException(
            $"'{path}', header in line {record.Line}, read with {Dialect.NameOf(separator)} between the names:"
            + string.Concat(faults.Take(MostFaults).Select(fault => "\n  " + fault))
            + (faults.Count > MostFaults ? $"\n  and {faults.Count - MostFaults} more." : "") + "\n--help lists the columns; their case counts.");
    }

    /// <summary>A row of empty cells but for the name of the circuit: for a row whose cells don't fit the columns.</summary>
    public string[] NameOnly(string[] cells)
    {
        int place = PlaceOf("circuit");
        return [.. Enumerable.Range(0, Count).Select(i => i == place && i < cells.Length ? cells[i] : "")];
    }

    private static string Unknown(string name) => name.Length == 0 ? "a column without a name."
        : Column.Nearest(name) is { } near ? $"unknown column '{Flat(name)}'. Is '{near.Name}' meant: {near.Meaning}?"
        : $"unknown column '{Flat(name)}'.";

    private static string Flat(string name) => name.ReplaceLineEndings(" ") is { Length: > 60 } text ? text[..60] + "..." : name.ReplaceLineEndings(" ");
}
