namespace CircuitSchedule;

/// <summary>The first lines of a file: the line that may name the separator, and the header.</summary>
/// <param name="Separator">Between the cells.</param>
/// <param name="IsStated">A first line such as <c>sep=;</c> says so, and is no row.</param>
internal sealed record FileStart(char Separator, bool IsStated)
{
    /// <exception cref="ScheduleFileException">No separator can be told.</exception>
    public static FileStart Of(string path, TextReader text)
    {
        string? line = text.ReadLine();
        if (Stated(line) is { } stated)
        {
            return Dialect.Separators.Contains(stated, StringComparison.Ordinal)
                ? new FileStart(stated, true)
                : throw new ScheduleFileException($"'{path}', line 1: 'sep=' names {Dialect.NameOf(stated)} as the separator; accepted are a comma, a semicolon and a tab.");
        }

        while (line is not null && IsNote(line.TrimStart(' ', '"')))
        {
            line = text.ReadLine();
        }

        return new FileStart(SeparatorOf(path, line ?? ""), false);
    }

    // Spreadsheets write it with or without quotes, and read it themselves.
    private static char? Stated(string? line)
    {
        string bare = line?.Trim(' ', '"') ?? "";
        return bare.Length == 5 && bare.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) ? bare[4] : null;
    }

    // The one that cuts the header into the most known columns.
    private static char SeparatorOf(string path, string header)
    {
        char best = Dialect.Separators.MaxBy(separator => (Known(header, separator), header.Count(c => c == separator)));
        if (header.Length > 0 && !header.Contains(best, StringComparison.Ordinal) && Known(header, best) == 0)
        {
            char other = header.FirstOrDefault(c => c is '|' or ':' or '^' or '~');
            throw new ScheduleFileException($"'{path}': found no separator in the header '{Shortened(header)}'. Expected commas, semicolons or tabs between the column names"
                + (other == default ? "." : $"; found {Dialect.NameOf(other)}."));
        }

        return best;
    }

    private static int Known(string header, char separator) => header.Split(separator).Count(name => Column.IsKnown(name.Trim(' ', '"')));

    private static bool IsNote(string line) => string.IsNullOrWhiteSpace(line) || line[0] == '#' || line.Trim(',', ';', '\t', ' ', '"').Length == 0;

    private static string Shortened(string text) => text.Length > 60 ? text[..60] + "..." : text;
}
