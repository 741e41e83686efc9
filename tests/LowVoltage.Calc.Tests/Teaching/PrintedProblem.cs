using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>A problem as a student has it: nothing but printed text. Numbers are read from the text of the givens and from the table in the statement.</summary>
internal sealed class PrintedProblem
{
    private readonly Dictionary<string, string> givens;

    internal PrintedProblem(Problem problem)
    {
        Statement = problem.Statement;
        givens = problem.Givens.ToDictionary(given => given.Symbol, given => given.Text);
        // What is not in the statement a student does not have.
        Assert.All(givens.Values, text => Assert.True(Prints(Statement, text), $"{text} is not in: {Statement}"));
        Table = [.. Statement.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Skip(1).Select(line => line.Trim().Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))];
    }

    internal string Statement { get; }

    /// <summary>Whether a text stands in a statement as a whole: "2 A" is not in "12 A", nor "1.5" in "1.55".</summary>
    internal static bool Prints(string statement, string text) =>
        System.Text.RegularExpressions.Regex.IsMatch(statement, $@"(?<![\d.,]){System.Text.RegularExpressions.Regex.Escape(text)}(?![\d]|\.\d|/)");

    /// <summary>Every number that a statement prints.</summary>
    internal static IEnumerable<double> Numbers(string statement) =>
        System.Text.RegularExpressions.Regex.Matches(statement, @"(?<![\d.])\d+(\.\d+)?").Select(match => Number(match.Value));

    /// <summary>The rows of the table, without its head.</summary>
    internal string[][] Table { get; }

    internal double this[string symbol] => Number(givens[symbol].Split('\u00A0')[0]);

    internal bool Has(string symbol) => givens.ContainsKey(symbol);

    internal string Unit(string symbol) => string.Join(' ', givens[symbol].Split('\u00A0').Skip(1));

    /// <summary>A temperature in °C.</summary>
    internal double Celsius(string symbol) => Unit(symbol) == "°F" ? (this[symbol] - 32) / 1.8 : this[symbol];

    /// <summary>A gauge as printed, "14 AWG".</summary>
    internal double Gauge(string symbol) => Number(givens[symbol].Split(' ', '\u00A0')[0]);

    /// <summary>The fuse ratings in the sentence.</summary>
    internal double[] Ratings()
    {
        string before = Statement[..Statement.IndexOf(" A", Statement.IndexOf("7.5, 10", StringComparison.Ordinal), StringComparison.Ordinal)];
        return [.. before[(before.LastIndexOfAny([':', 'f'], before.IndexOf("7.5, 10", StringComparison.Ordinal)) + 1)..].Split(',').Select(Number)];
    }

    internal static double Number(string text) =>
        double.Parse(text.Trim().Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The number of a size or another cell, "2.5 mm²".</summary>
    internal static double First(string cell) => Number(cell.Split(' ', '\u00A0')[0]);
}
