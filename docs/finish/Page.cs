using System.Net;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>What a built page still needs before it is read: formulas as MathML, coloured code, tables that fold, numbers that keep their units, a skip link.</summary>
/// <remarks>A browser then loads neither the renderer of formulas (2.3 MB) nor that of code (1.1 MB). DocFX alone builds a site that works too: it loads both.</remarks>
public static partial class Page
{
    public static string Finish(string page, out int formulas)
    {
        int found = 0;
        string text = Formula().Replace(page, match =>
        {
            found++;
            string latex = WebUtility.HtmlDecode(match.Groups["latex"].Value);
            bool display = match.Groups["open"].Value == @"\[";
            return MathMarkup.Write(latex, display);
        });
        text = Code().Replace(text, match => CodeMarkup.Write(match.Groups["language"].Value, match.Groups["code"].Value));
        text = Table().Replace(text, match => TableMarkup.Fold(match.Value));
        text = Article().Replace(text, match => Spacing.KeepUnits(match.Value));
        formulas = found;
        return WithSkipLink(text);
    }

    private static string WithSkipLink(string page)
    {
        page = Body().Replace(page, match => match.Value + "\n    <a class=\"skip-link\" href=\"#content\">Skip to the content</a>", 1);
        return page.Replace("<article ", "<article id=\"content\" tabindex=\"-1\" ", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"<(?<tag>span|div) class=""math"">\s*(?<open>\\\(|\\\[)(?<latex>.*?)(?:\\\)|\\\])\s*</\k<tag>>", RegexOptions.Singleline)]
    private static partial Regex Formula();

    [GeneratedRegex(@"<pre><code(?: class=""(?:lang-)?(?<language>[\w-]*)[^""]*"")?[^>]*>(?<code>.*?)</code></pre>", RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex("<table.*?</table>", RegexOptions.Singleline)]
    private static partial Regex Table();

    [GeneratedRegex("<article.*?</article>", RegexOptions.Singleline)]
    private static partial Regex Article();

    [GeneratedRegex("<body[^>]*>")]
    private static partial Regex Body();
}
