using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace CircuitSchedule;

/// <summary>The input file as rows. Comma or semicolon, quoted cells, blank lines, lines that start with #, and a byte-order mark are all fine.</summary>
public static class ScheduleFile
{
    /// <exception cref="ScheduleFileException">The file as a whole cannot be used.</exception>
    public static IReadOnlyList<CircuitRow> Read(string path)
    {
        string text = File.Exists(path) ? File.ReadAllText(path) : throw new ScheduleFileException($"There is no file '{path}'.");
        if (text.Contains('\0'))
        {
            throw new ScheduleFileException($"'{path}' is not a text file. Save the sheet as CSV, in UTF-8.");
        }

        List<(int Line, string[] Cells)> lines = [.. Lines(text)];
        if (lines.Count < 2)
        {
            throw new ScheduleFileException($"'{path}' holds no circuits: expected a header row with the column names and a row for each circuit.");
        }

        string[] header = lines[0].Cells;
        string faults = HeaderFaults(header);
        return faults.Length == 0
            ? [.. lines.Skip(1).Select(line => Row(header, line.Cells, line.Line))]
            : throw new ScheduleFileException($"'{path}', header in line {lines[0].Line}: {faults}");
    }

    private static IEnumerable<(int Line, string[] Cells)> Lines(string text)
    {
        string header = text.Split('\n').FirstOrDefault(line => !IsNote(line.TrimStart(' ', '"')), "");
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture)
        {
            Delimiter = header.Contains(';') ? ";" : ",",
            AllowComments = true,
            TrimOptions = TrimOptions.Trim,
            BadDataFound = null,
        };
        using CsvParser parser = new(new StringReader(text), configuration);
        while (parser.Read())
        {
            string[] cells = parser.Record!;

            // A spreadsheet writes a blank row as separators only, and may put a remark in quotes.
            if (!Array.TrueForAll(cells, string.IsNullOrEmpty) && !cells[0].StartsWith('#'))
            {
                // The parser counts the lines it has read; a row begins before the line breaks inside its cells.
                yield return (parser.RawRow - cells.Sum(cell => cell.Count(c => c == '\n')), cells);
            }
        }
    }

    private static bool IsNote(string line) => string.IsNullOrWhiteSpace(line) || line[0] == '#';

    private static string HeaderFaults(string[] header)
    {
        string[] known = [.. Column.All.Select(column => column.Name)];
        List<string> faults = [];
        faults.AddRange(header.Where(name => !known.Contains(name)).Select(name => $"unknown column '{name}'."));
        faults.AddRange(Column.All.Where(column => column.Required && !header.Contains(column.Name)).Select(column => $"missing column '{column.Name}'."));
        faults.AddRange(header.GroupBy(name => name).Where(names => names.Count() > 1).Select(names => $"column '{names.Key}' stands there {names.Count()} times."));
        return faults.Count == 0 ? "" : string.Join(" ", faults) + $" Known columns, case counts: {string.Join(", ", known)}.";
    }

    private static CircuitRow Row(string[] header, string[] cells, int line)
    {
        // Strict, because a decimal comma in a comma-separated row makes one cell into two and moves all that follow.
        bool fits = cells.Length == header.Length;
        CircuitRow row = new(line, fits ? header.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second) : new() { ["circuit"] = cells[0] });
        if (!fits)
        {
            row.Report("", $"expected {header.Length} cells, as in the header; found {cells.Length}. Is there a separator too many, a decimal comma, or a quote not closed?");
        }
        else if (Array.Exists(cells, cell => cell.Contains('\n')))
        {
            row.Report("", "expected each cell on one line; found a line break inside a cell. Is a quote not closed?");
        }

        return row;
    }
}

/// <summary>The file as a whole cannot be used: it is not there, or its header is wrong.</summary>
public sealed class ScheduleFileException(string message) : Exception(message);
