using System.Globalization;
using System.Reflection;

namespace LowVoltage.Calc.Tests;

/// <summary>Reads a transcription under PublishedData: '#' lines are notes, then one header row, then the values.</summary>
internal sealed class PublishedTable
{
    private readonly Dictionary<string, int> columns;

    private PublishedTable(IReadOnlyList<string[]> lines)
    {
        columns = lines[0].Select((name, index) => (name, index)).ToDictionary(c => c.name, c => c.index, StringComparer.Ordinal);
        Rows = [.. lines.Skip(1).Select(cells => new Row(this, cells))];
    }

    public IReadOnlyList<Row> Rows { get; }

    public static PublishedTable Load(string fileName)
    {
        using StreamReader reader = new(Open(fileName));
        List<string[]> lines = [];
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                lines.Add(Split(line));
            }
        }

        return new PublishedTable(lines);
    }

    public static Stream Open(string fileName) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream(fileName)
        ?? throw new InvalidOperationException($"No embedded file {fileName} under PublishedData.");

    /// <summary>Half a unit in the last digit of a printed number: "2.525" gives 0.0005, "1049" gives 0.5.</summary>
    public static double HalfUnitInLastPlace(string printed)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : printed.Length - point - 1;
        return 0.5 * Math.Pow(10, -decimals);
    }

    private static string[] Split(string line)
    {
        List<string> cells = [];
        bool quoted = false;
        int start = 0;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i == line.Length || (line[i] == ',' && !quoted))
            {
                cells.Add(line[start..i].Trim().Trim('"'));
                start = i + 1;
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
        }

        return [.. cells];
    }

    internal sealed class Row(PublishedTable table, string[] cells)
    {
        public string Text(string column) => cells[table.columns[column]];

        public bool Has(string column) => Text(column).Length > 0;

        public double Number(string column) => double.Parse(Text(column), NumberStyles.Float, CultureInfo.InvariantCulture);

        public override string ToString() => string.Join(',', cells);
    }
}
