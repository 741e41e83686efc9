namespace CircuitSchedule;

/// <summary>Columns of plain text that read the same on a terminal and in a file, of widths that are settled before the first row is known.</summary>
internal sealed class TextTable
{
    // The narrowest column that breaks no usual word or number, and the width at which hardly anything is broken into lines.
    private static readonly int[] Least = [12, 7, 12, 13, 7, 11, 12], Ample = [24, 14, 20, 19, 9, 18, 12];

    private readonly int[] widths;
    private readonly string gap;

    /// <param name="width">Columns of the whole table, <see cref="LeastWidth"/> or more.</param>
    public TextTable(int width)
    {
        gap = width < 100 ? " " : "  ";
        int room = Math.Min(width - (gap.Length * (Least.Length - 1)), Ample.Sum()) - Least.Sum(), more = Ample.Sum() - Least.Sum();
        widths = [.. Least.Zip(Ample, (least, ample) => least + ((ample - least) * room / more))];
        widths[0] += room - (widths.Sum() - Least.Sum());
    }

    public static int LeastWidth { get; } = Least.Sum() + Least.Length - 1;

    /// <summary>Breaks a text at line breaks and blanks into lines of at most a width; a longer word is cut.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        List<string> lines = [];
        foreach (string line in text.Split('\n'))
        {
            lines.Add("");
            foreach (string word in line.Split(' '))
            {
                Append(lines, word, width);
            }
        }

        return lines;
    }

    public string Rule() => string.Join(gap, widths.Select(width => new string('-', width)));

    /// <summary>One row as lines, each cell broken in its column. The last column ends each line.</summary>
    public IEnumerable<(string Start, string Last)> Lines(IReadOnlyList<string> cells)
    {
        IReadOnlyList<string>[] columns = [.. cells.Zip(widths, Wrap)];
        for (int i = 0; i < columns.Max(lines => lines.Count); i++)
        {
            string[] line = [.. columns.Select((lines, column) => (i < lines.Count ? lines[i] : "").PadRight(widths[column]))];
            yield return (string.Join(gap, line[..^1]) + gap, line[^1].TrimEnd());
        }
    }

    private static void Append(List<string> lines, string word, int width)
    {
        string last = lines[^1];
        if (last.Length > 0 && last.Length + 1 + word.Length <= width)
        {
            lines[^1] = $"{last} {word}";
            return;
        }

        if (last.Length > 0)
        {
            lines.Add("");
        }

        while (word.Length > width)
        {
            lines[^1] = word[..width];
            lines.Add("");
            word = word[width..];
        }

        lines[^1] = word;
    }
}
