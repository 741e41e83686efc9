namespace CircuitSchedule;

/// <summary>Columns of plain text that read the same on a console and in a file.</summary>
internal static class TextTable
{
    private const string Gap = "  ";

    /// <summary>Breaks a text at line breaks and blanks into lines of at most a width; a longer word keeps a line of its own.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width) => [.. text.Split('\n').SelectMany(line => WrapLine(line, width))];

    /// <summary>Writes a text with a mark in front, such as a name or a dash, and its further lines indented under the text.</summary>
    public static void WriteItem(TextWriter output, string mark, string text)
    {
        IReadOnlyList<string> lines = Wrap(text, 116 - mark.Length);
        output.WriteLine(mark + lines[0]);
        foreach (string line in lines.Skip(1))
        {
            output.WriteLine(new string(' ', mark.Length) + line);
        }
    }

    /// <summary>Writes one row, each cell wrapped in its column.</summary>
    public static void WriteRow(TextWriter output, int[] widths, params string[] cells)
    {
        IReadOnlyList<string>[] columns = [.. cells.Zip(widths, Wrap)];
        for (int i = 0; i < columns.Max(lines => lines.Count); i++)
        {
            IEnumerable<string> line = columns.Select((lines, column) => (i < lines.Count ? lines[i] : "").PadRight(widths[column]));
            output.WriteLine(string.Join(Gap, line).TrimEnd());
        }
    }

    public static void WriteRule(TextWriter output, int[] widths) => output.WriteLine(string.Join(Gap, widths.Select(width => new string('-', width))));

    private static List<string> WrapLine(string text, int width)
    {
        List<string> lines = [""];
        foreach (string word in text.Split(' '))
        {
            string last = lines[^1];
            if (last.Length == 0)
            {
                lines[^1] = word;
            }
            else if (last.Length + 1 + word.Length <= width)
            {
                lines[^1] = last + " " + word;
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }
}
