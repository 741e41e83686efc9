namespace HarnessReport;

/// <summary>Columns of plain text; a cell that is too long goes on below.</summary>
internal sealed class Table(int[] widths, TextWriter output)
{
    public void Write(params string[] cells)
    {
        IReadOnlyList<string>[] columns = [.. cells.Zip(widths, Wrap)];
        for (int line = 0; line < columns.Max(c => c.Count); line++)
        {
            output.WriteLine(string.Join("  ", columns.Select((c, k) => (line < c.Count ? c[line] : "").PadRight(widths[k]))).TrimEnd());
        }
    }

    public void Rule() => output.WriteLine(string.Join("  ", widths.Select(w => new string('-', w))));

    /// <summary>Breaks a text at blanks into lines of at most a width; a longer word is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        List<string> lines = [""];
        foreach (string word in text.Split(' ', '\n'))
        {
            string rest = word;
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + rest.Length > width)
            {
                lines.Add("");
            }

            for (; rest.Length > width; rest = rest[width..])
            {
                lines[^1] = rest[..width];
                lines.Add("");
            }

            lines[^1] = lines[^1].Length == 0 ? rest : $"{lines[^1]} {rest}";
        }

        return lines;
    }
}
