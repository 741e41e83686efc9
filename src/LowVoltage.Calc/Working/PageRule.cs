using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>The CSS rule of a printed page: paper, margins, and at the foot the title and the page's number.</summary>
internal static class PageRule
{
    /// <param name="paper">The paper.</param>
    /// <param name="foot">What stands at the left of the foot, with the number of the page at its right; null for pages without numbers.</param>
    /// <param name="landscape">Whether the paper lies on its side.</param>
    internal static string Of(SheetPaper paper, string? foot, bool landscape = false)
    {
        string size = paper switch
        {
            SheetPaper.A4 => "A4",
            SheetPaper.Letter => "letter",
            _ => landscape ? "" : "auto",
        };
        string numbers = foot is null
            ? ""
            : $"@bottom-left{{content:{Quoted(foot)};font:8pt Helvetica,Arial,sans-serif}}@bottom-right{{content:counter(page) ' / ' counter(pages);font:8pt Helvetica,Arial,sans-serif}}";
        return $"@page{{size:{(size + (landscape ? " landscape" : "")).Trim()};margin:16mm 15mm{(foot is null ? "" : " 18mm")};{numbers}}}";
    }

    // A CSS string that can hold any title: what is no plain letter or digit is written by its number.
    private static string Quoted(string title)
    {
        StringBuilder text = new("'");
        for (int i = 0; i < title.Length; i++)
        {
            int code = char.IsHighSurrogate(title[i]) && i + 1 < title.Length && char.IsLowSurrogate(title[i + 1]) ? char.ConvertToUtf32(title[i], title[++i]) : title[i];
            bool plain = code is ' ' or ',' or '.' or '-' or (>= '0' and <= '9') or (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');
            text.Append(plain ? ((char)code).ToString() : "\\" + code.ToString("x", CultureInfo.InvariantCulture) + " ");
        }

        return text.Append('\'').ToString();
    }
}
