using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>The search index loads with every page. Of a page it keeps how it begins, and each further word once, unless every fourth page has it.</summary>
public static class SearchIndex
{
    /// <summary>How much of a page's beginning stays as it reads: the results show it.</summary>
    private const int Shown = 120;

    private static readonly char[] Between = [' ', '\n', '\t', '(', ')', '[', ']', '{', '}', '<', '>', ',', ';', ':', '"', '\'', '=', '|', '?', '!', '`', '$', '/', '+', '·'];

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Shorten(string json)
    {
        JsonObject entries = JsonNode.Parse(json)!.AsObject();
        Dictionary<string, int> pages = new(StringComparer.OrdinalIgnoreCase);
        foreach ((_, JsonNode? entry) in entries)
        {
            foreach (string word in Words(Text(entry)))
            {
                pages[word] = pages.GetValueOrDefault(word) + 1;
            }
        }

        foreach ((_, JsonNode? entry) in entries)
        {
            string text = Text(entry), shown = text[..Math.Min(Shown, text.Length)];
            HashSet<string> said = Words(shown);
            entry!["summary"] = shown + " " + string.Join(' ', Words(text).Where(word => pages[word] * 4 <= entries.Count && !said.Contains(word)));
        }

        return entries.ToJsonString(Plain);
    }

    private static string Text(JsonNode? entry) => (string?)entry!["summary"] ?? "";

    private static HashSet<string> Words(string text) => new(
        text.Split(Between, StringSplitOptions.RemoveEmptyEntries).Select(word => word.Trim('.', '-')).Where(word => word.Count(char.IsLetter) >= 2), StringComparer.OrdinalIgnoreCase);
}
