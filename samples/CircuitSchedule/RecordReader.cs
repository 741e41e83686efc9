using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace CircuitSchedule;

/// <summary>One row of the file as cells.</summary>
/// <param name="Line">The line it begins at, from 1.</param>
/// <param name="Cells">The cells, blanks around them taken off.</param>
/// <param name="IsTorn">A quote stands where none belongs, or is not closed: the cells may hold more than they should.</param>
internal readonly record struct Record(int Line, string[] Cells, bool IsTorn);

/// <summary>Rows one after another, the file never as a whole in memory. Blank rows and rows that start with # are passed over.</summary>
internal sealed class RecordReader : IDisposable
{
    private readonly StreamReader text;
    private readonly CsvParser parser;
    private readonly int linesBefore;
    private bool torn;

    public RecordReader(string path, FileEncoding encoding, FileStart start)
    {
        text = new StreamReader(path, encoding.Encoding, detectEncodingFromByteOrderMarks: false);
        linesBefore = start.IsStated ? 1 : 0;
        if (start.IsStated)
        {
            text.ReadLine();
        }

        parser = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = start.Separator.ToString(),
            AllowComments = true,
            // A tab is a separator or a blank, as the file says.
            WhiteSpaceChars = start.Separator == '\t' ? [' ', '\u00A0'] : [' ', '\t', '\u00A0'],
            TrimOptions = TrimOptions.Trim,
            BadDataFound = _ => torn = true,
        });
    }

    /// <summary>How much of the file was read, 0 to 1.</summary>
    public double Fraction => text.BaseStream.Length == 0 ? 1 : (double)text.BaseStream.Position / text.BaseStream.Length;

    public bool TryRead(out Record record)
    {
        while (parser.Read())
        {
            torn = false;
            string[] cells = parser.Record!;

            // A spreadsheet writes a blank row as separators only, and may put a remark in quotes.
            if (!Array.TrueForAll(cells, string.IsNullOrEmpty) && !cells[0].StartsWith('#'))
            {
                record = new Record(linesBefore + FirstLine(cells), cells, torn);
                return true;
            }
        }

        record = default;
        return false;
    }

    public void Dispose()
    {
        parser.Dispose();
        text.Dispose();
    }

    // The parser counts the lines it has read; a row begins before the line breaks inside its cells. A quote that is not closed has taken the last one too.
    private int FirstLine(string[] cells)
    {
        if (!Array.Exists(cells, cell => cell.AsSpan().ContainsAny('\n', '\r')))
        {
            return parser.RawRow;
        }

        ReadOnlySpan<char> raw = parser.RawRecord.AsSpan().TrimStart("\r\n");
        bool endsRow = raw.EndsWith("\n") && raw.Count('"') % 2 == 0;
        return parser.RawRow - (raw.Count('\n') - (endsRow ? 1 : 0));
    }
}
