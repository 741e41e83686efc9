using System.Text;

namespace CircuitSchedule;

/// <summary>The input file: how it is written, found from its bytes and its header, and its rows, read one at a time.</summary>
internal sealed class ScheduleFile : IDisposable
{
    private readonly RecordReader reader;
    private readonly Header header;
    private Record? first;

    private ScheduleFile(FileEncoding encoding, Dialect dialect, RecordReader reader, Header header, Record first, IReadOnlyList<string> notes)
    {
        (Encoding, Dialect, this.reader, this.header, this.first, Notes) = (encoding.Name, dialect, reader, header, first, notes);
    }

    /// <summary>The name of the encoding.</summary>
    public string Encoding { get; }

    public Dialect Dialect { get; }

    /// <summary>What was found out about the file and should not stay unsaid.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>How much of the file was read, 0 to 1.</summary>
    public double Fraction => reader.Fraction;

    /// <param name="path">The file.</param>
    /// <param name="stated">The decimal sign, when the command line names it.</param>
    /// <exception cref="ScheduleFileException">The file as a whole cannot be used.</exception>
    public static ScheduleFile Open(string path, DecimalSign? stated = null)
    {
        if (!File.Exists(path))
        {
            throw new ScheduleFileException($"There is no file '{path}'.");
        }

        try
        {
            FileEncoding encoding = FileEncoding.Detect(path);
            using StreamReader text = new(path, encoding.Encoding, detectEncodingFromByteOrderMarks: false);
            FileStart start = FileStart.Of(path, text);
            DecimalSurvey decimals = DecimalSurvey.Of(path, encoding, start, stated);
            return Open(path, encoding, start, decimals);
        }
        catch (DecoderFallbackException)
        {
            throw new ScheduleFileException($"'{path}' is damaged: it begins as UTF-16 but is not UTF-16 throughout. Save it once more, in UTF-8.");
        }
    }

    private static ScheduleFile Open(string path, FileEncoding encoding, FileStart start, DecimalSurvey decimals)
    {
        RecordReader reader = new(path, encoding, start);
        try
        {
            return reader.TryRead(out Record names) && Header.Check(path, names, start.Separator) is { } header && reader.TryRead(out Record first)
                ? new ScheduleFile(encoding, new Dialect(start.Separator, decimals.Sign), reader, header, first, [.. new[] { encoding.Note, decimals.Note }.OfType<string>()])
                : throw new ScheduleFileException($"'{path}' holds no circuits: expected a header row with the column names and a row for each circuit.");
        }
        catch
        {
            reader.Dispose();
            throw;
        }
    }

    /// <summary>The rows, once.</summary>
    public IEnumerable<CircuitRow> Rows()
    {
        while (first is { } record)
        {
            yield return Row(record);
            first = reader.TryRead(out Record next) ? next : null;
        }
    }

    public void Dispose() => reader.Dispose();

    private CircuitRow Row(Record record)
    {
        string[] cells = Fitted(record.Cells);
        bool fits = cells.Length == header.Count;
        CircuitRow row = new(record.Line, header, fits ? cells : header.NameOnly(cells), record.Cells.Length, Dialect);
        if (record.IsTorn)
        {
            row.Report("", "a quotation mark stands in the middle of a cell, or is not closed. Put a cell that holds quotation marks in quotation marks, and double those inside.");
        }
        else if (!fits)
        {
            row.Report("", $"expected {header.Count} cells, as in the header, with {Dialect.NameOf(Dialect.Separator)} between them; found {record.Cells.Length}. "
                + (cells.Length > header.Count ? "Is there a separator too many, or a decimal comma?" : "Write the empty cells at the end of a row too: a last column that is filled in every row, such as note, keeps them."));
        }
        else if (record.Cells.Length < header.Count)
        {
            row.Assume("cells missing at the end of a row", "empty");
        }

        return row;
    }

    // Some programs leave out empty cells at the end of a row, or add some. With commas between the cells that is refused: a decimal comma would shift
    // the row and make up for it.
    private string[] Fitted(string[] cells)
    {
        bool strict = Dialect.Separator == ',';
        return cells.Length == header.Count ? cells
            : cells.Length > header.Count && (!strict || cells.Length == header.WrittenCount) && Array.TrueForAll(cells[header.Count..], string.IsNullOrEmpty) ? cells[..header.Count]
            : cells.Length < header.Count && !strict ? [.. cells, .. Enumerable.Repeat("", header.Count - cells.Length)]
            : cells;
    }
}
