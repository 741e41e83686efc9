using System.Net;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>A table that a phone has no room for folds there: the first cell of a row as its heading, the others below with the names of their columns.</summary>
/// <remarks>What it is stays said for those who hear it: a folded table is laid out as blocks, and blocks would lose the roles.</remarks>
public static partial class TableMarkup
{
    /// <summary>Characters that fit beside each other at 390 px, beside the padding of the cells.</summary>
    private const int Room = 30;

    public static string Fold(string table)
    {
        string[] heads = [.. Head().Matches(table).Select(head => Plain(head.Groups["text"].Value))];
        if (heads.Length < 2 || heads.Length != Math.Max(heads.Length, Row().Matches(table).Select(row => Cell().Count(row.Value)).DefaultIfEmpty(0).Max()) || !IsWide(table, heads))
        {
            return table;
        }

        string folded = Row().Replace(table, row =>
        {
            int column = 0;
            return Cell().Replace(row.Value, cell => $"<td role=\"cell\"{Label(heads[column++])}{cell.Groups["rest"].Value}").Replace("<tr>", "<tr role=\"row\">", StringComparison.Ordinal);
        });
        folded = HeadTag().Replace(folded, "<th role=\"columnheader\"");
        return folded.Replace("<thead>", "<thead role=\"rowgroup\">", StringComparison.Ordinal).Replace("<tbody>", "<tbody role=\"rowgroup\">", StringComparison.Ordinal)
            .Replace("<table>", heads.Length > 7 ? "<table role=\"table\" class=\"folds wide\">" : "<table role=\"table\" class=\"folds\">", StringComparison.Ordinal);
    }

    private static string Label(string head) => head.Length > 0 ? $" data-label=\"{WebUtility.HtmlEncode(head)}\"" : "";

    /// <summary>Whether the longest words of the columns, side by side, need more than a phone has, or four columns and more are squeezed into it.</summary>
    private static bool IsWide(string table, string[] heads)
    {
        int[] longest = [.. heads.Select(Longest)];
        foreach (Match row in Row().Matches(table))
        {
            int column = 0;
            foreach (string cell in Cell().Matches(row.Value).Select(cell => Plain(cell.Value)))
            {
                longest[column] = Math.Max(longest[column++], Longest(cell));
            }
        }

        return longest.Sum() + (2 * heads.Length) > Room || heads.Length > 4;
    }

    private static int Longest(string text) => text.Split(' ', '-', '/').Max(word => word.Length);

    private static string Plain(string html) => WebUtility.HtmlDecode(Tag().Replace(html, "")).Trim();

    [GeneratedRegex("<th(?![a-z])[^>]*>(?<text>.*?)</th>", RegexOptions.Singleline)]
    private static partial Regex Head();

    [GeneratedRegex("<th(?=[ >])")]
    private static partial Regex HeadTag();

    [GeneratedRegex("<tr>(?:(?!<th[ >]).)*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Row();

    [GeneratedRegex("<td(?<rest>[^>]*>.*?</td>)", RegexOptions.Singleline)]
    private static partial Regex Cell();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();
}
