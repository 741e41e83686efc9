using System.Globalization;

namespace CircuitSchedule;

/// <summary>What is wrong with one cell, or with a row as a whole when no column is named.</summary>
public sealed record Problem(int Line, string Column, string Message)
{
    public override string ToString() => Column.Length > 0 ? $"line {Line}, {Column}: {Message}" : $"line {Line}: {Message}";
}

/// <summary>One row of the file. Reads cells by column name and collects the problems, so that one run shows more than the first.</summary>
public sealed class CircuitRow(int line, IReadOnlyDictionary<string, string> cells)
{
    // Beyond any wiring, and still within the decimal that UnitsNet keeps power in.
    private const double Largest = 1e15;

    private readonly HashSet<string> read = [];
    private readonly List<Problem> problems = [];

    public int Line => line;

    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>How a cell is quoted in a message.</summary>
    public static string Found(string text) => text.Length == 0 ? "found an empty cell." : $"found '{text}'.";

    /// <summary>A number with a decimal point, whatever the machine's culture; no thousands separators, so that 1,5 is never 15.</summary>
    public static bool TryNumber(string text, out double number)
    {
        NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(text, style, CultureInfo.InvariantCulture, out number) && Math.Abs(number) <= Largest;
    }

    public bool Has(string column) => Text(column).Length > 0;

    /// <summary>The text of a cell; empty where the file has no such column.</summary>
    public string Text(string column)
    {
        read.Add(column);
        return cells.GetValueOrDefault(column, "");
    }

    public string RequiredText(string column)
    {
        if (!Has(column))
        {
            Report(column, "expected a text; found an empty cell.");
        }

        return Text(column);
    }

    public double Number(string column)
    {
        if (TryNumber(Text(column), out double number))
        {
            return number;
        }

        Report(column, "expected a number with a decimal point, such as 2.5; " + Found(Text(column)));
        return double.NaN;
    }

    public double? OptionalNumber(string column) => Has(column) ? Number(column) : null;

    public int Count(string column)
    {
        if (!int.TryParse(Text(column), NumberStyles.None, CultureInfo.InvariantCulture, out int count))
        {
            Report(column, "expected a whole number; " + Found(Text(column)));
        }

        return count;
    }

    public int Count(string column, int whenEmpty) => Has(column) ? Count(column) : whenEmpty;

    public T? Choice<T>(string column, Dictionary<string, T> words)
    {
        if (!words.TryGetValue(Text(column), out T? chosen))
        {
            Report(column, $"expected one of {Words.List(words)}; {Found(Text(column))}");
        }

        return chosen;
    }

    public bool YesNo(string column) => Has(column) && Choice(column, Words.YesNo);

    /// <summary>
    /// Makes an object of the library's from cells already read. When the library refuses a number, its own message is reported for the
    /// column that fed the parameter.
    /// </summary>
    /// <returns>The object; null when it was refused or one of its cells already has a problem.</returns>
    public T? Build<T>(Func<T> make, params (string Parameter, string Column)[] columns)
        where T : class
    {
        if (problems.Exists(problem => Array.Exists(columns, pair => pair.Column == problem.Column)))
        {
            return null;
        }

        try
        {
            return make();
        }
        catch (ArgumentOutOfRangeException refusal)
        {
            string column = Array.Find(columns, pair => pair.Parameter == refusal.ParamName).Column ?? "";
            Report(column, refusal.Message.Split(" (Parameter")[0]);
            return null;
        }
    }

    public void Report(string column, string message) => problems.Add(new Problem(line, column, message));

    /// <summary>Reports filled cells that nothing asked for: ignored in silence, they would mislead whoever filled them in.</summary>
    public void ReportUnused()
    {
        foreach (string column in cells.Keys.Where(column => column != "note" && !read.Contains(column) && Has(column)))
        {
            Report(column, "expected an empty cell, because this supply, load and return don't use it; " + Found(Text(column)));
        }
    }
}
