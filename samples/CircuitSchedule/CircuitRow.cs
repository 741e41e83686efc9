using System.Globalization;

namespace CircuitSchedule;

/// <summary>One row of the file. Reads cells by column name and collects the problems, so that one run shows more than the first.</summary>
internal sealed class CircuitRow(int line, Header header, string[] cells, int given, Dialect dialect)
{
    private readonly bool[] read = new bool[header.Count];
    private readonly List<Problem> problems = [];
    private readonly List<Assumption> assumptions = [];

    public int Line => line;

    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>What the row does not say, and what is assumed instead.</summary>
    public IReadOnlyList<Assumption> Assumptions => assumptions;

    /// <summary>How a cell is quoted in a message.</summary>
    public string Found(string column)
    {
        int place = header.PlaceOf(column);
        return place < 0 ? "the file has no such column."
            : place >= given ? "the row ends before it."
            : Text(column) is { Length: > 0 } text ? $"found '{Shortened(text)}'."
            : "found an empty cell.";
    }

    /// <summary>Whether a cell is filled in, asked without needing what it holds: it still counts as unused.</summary>
    public bool Gives(string column) => header.PlaceOf(column) is >= 0 and int place && cells[place].Length > 0;

    /// <summary>A number as this file writes it.</summary>
    public bool TryNumber(string text, out double number) => NumberText.Read(text, dialect.Decimals, out number) == NumberReading.Number;

    public bool Has(string column) => Text(column).Length > 0;

    /// <summary>The text of a cell; empty where the file has no such column.</summary>
    public string Text(string column)
    {
        int place = header.PlaceOf(column);
        if (place < 0)
        {
            return "";
        }

        read[place] = true;
        return cells[place];
    }

    /// <summary>A name: the line breaks that a cell may hold become blanks.</summary>
    public string Name(string column) => string.Join(' ', Text(column).Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    /// <summary>Notes what is assumed where the row does not say, so that the schedule can tell.</summary>
    public void Assume(string what, string value) => assumptions.Add(new Assumption(what, value));

    public string RequiredName(string column)
    {
        string name = Name(column);
        if (name.Length == 0)
        {
            Report(column, "expected a text; " + Found(column));
        }

        return name;
    }

    public double Number(string column)
    {
        string text = Text(column);
        NumberReading reading = NumberText.Read(text, dialect.Decimals, out double number);
        if (reading != NumberReading.Number)
        {
            Report(column, reading == NumberReading.Ambiguous
                ? $"found '{text}', which can be read with and without a thousands separator. Write it without one, or name the file's decimal sign: --decimal comma, --decimal point."
                : $"expected {dialect.Example}; {Found(column)}");
        }

        return number;
    }

    public double? OptionalNumber(string column) => Has(column) ? Number(column) : null;

    public int Count(string column)
    {
        if (!int.TryParse(Text(column), NumberStyles.None, CultureInfo.InvariantCulture, out int count))
        {
            Report(column, "expected a whole number; " + Found(column));
        }

        return count;
    }

    public int Count(string column, int whenEmpty) => Has(column) ? Count(column) : whenEmpty;

    public T? Choice<T>(string column, Dictionary<string, T> words)
    {
        if (!words.TryGetValue(Text(column), out T? chosen))
        {
            Report(column, $"expected one of {Words.List(words)}; {Found(column)}");
        }

        return chosen;
    }

    /// <summary>A kind that the row may leave to what its other cells imply.</summary>
    public T? Kind<T>(string column, Dictionary<string, T> words, string? implied)
        where T : class
    {
        if (Has(column) || implied is null)
        {
            return Choice(column, words);
        }

        Assume($"kind of {column}", $"{implied}, from the columns filled in");
        return words[implied];
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
        catch (ArgumentException refusal)
        {
            string column = Array.Find(columns, pair => pair.Parameter == refusal.ParamName).Column ?? "";
            Report(column, Without(refusal.ParamName, refusal.Message.Split(" (Parameter")[0]));
            return null;
        }
    }

    public void Report(string column, string message) => problems.Add(new Problem(line, column, message));

    /// <summary>Reports filled cells that nothing asked for: silently ignored, they would mislead whoever filled them in.</summary>
    public void ReportUnused()
    {
        for (int place = 0; place < header.Count; place++)
        {
            if (!read[place] && cells[place].Length > 0 && header.Names[place] != "note")
            {
                Report(header.Names[place], "expected an empty cell, because this supply, load and return don't use it; " + Found(header.Names[place]));
            }
        }
    }

    // The column is named already.
    private static string Without(string? parameter, string message) =>
        parameter is { Length: > 0 } && message.StartsWith(parameter, StringComparison.Ordinal) ? message[parameter.Length..].TrimStart(':', ' ') : message;

    // A quote that is not closed takes the rows behind it into its cell.
    private static string Shortened(string text)
    {
        string flat = text.ReplaceLineEndings("\u21B5");
        return flat.Length > 60 ? flat[..60] + "..." : flat;
    }
}
