using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>Code with its comments, strings, keywords and numbers marked; what a program printed as a sample of output.</summary>
/// <remarks>Neither is a <c>code</c> in a <c>pre</c>: a page that has one loads a highlighter for two hundred languages.</remarks>
public static partial class CodeMarkup
{
    private const string Words =
        "abstract as async await base bool break case catch class const continue decimal default do double else enum event false finally float for foreach function get if in init int interface "
        + "internal is let long mutable namespace new not null object of open out override param params partial private protected public readonly record ref required return sealed set static "
        + "string struct switch then this throw true try type typeof using val var virtual void when where while with yield";

    private static readonly HashSet<string> Keywords = [.. Words.Split(' ')];

    private static readonly Dictionary<string, string> Names = new()
    {
        ["csharp"] = "C# code", ["fsharp"] = "F# code", ["powershell"] = "PowerShell script", ["json"] = "JSON", ["xml"] = "XML", ["vb"] = "Visual Basic code", ["csv"] = "CSV file",
    };

    public static string Write(string language, string code)
    {
        string plain = code.TrimEnd('\n');
        return Names.TryGetValue(language, out string? name)
            ? $"<pre class=\"code\" data-name=\"{name}\">{Coloured(WebUtility.HtmlDecode(plain), language == "powershell")}</pre>"
            : $"<pre class=\"output\" data-name=\"output or command\"><samp>{plain}</samp></pre>";
    }

    private static string Coloured(string code, bool hashes)
    {
        StringBuilder text = new();
        foreach (Match token in Tokens().Matches(code))
        {
            string kind = token.Groups["comment"].Success && (hashes || token.Value[0] != '#') ? "comment"
                : token.Groups["string"].Success ? "string"
                : token.Groups["number"].Success ? "number"
                : token.Groups["word"].Success && Keywords.Contains(token.Value) ? "keyword"
                : "";
            string shown = token.Value.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
            text.Append(kind.Length > 0 ? $"<span class=\"{kind}\">{shown}</span>" : shown);
        }

        return text.ToString();
    }

    [GeneratedRegex(@"(?<comment>//[^\n]*|\#(?![rin]\b)[^\n]*)|(?<string>[$@]*""(?:\\.|[^""\\\n])*""|'(?:\\.|[^'\\\n])*')|(?<number>\b\d[\d_.]*(?:e[+-]?\d+)?[a-zA-Z]?\b)|(?<word>[A-Za-z_]\w*)|.", RegexOptions.Singleline)]
    private static partial Regex Tokens();
}
