namespace LowVoltage.Calc.Teaching;

/// <summary>Words around a number that do not change it.</summary>
internal static class AnswerWords
{
    private static readonly HashSet<string> Before = new(StringComparer.OrdinalIgnoreCase)
    {
        "approx", "approximately", "about", "around", "roughly", "circa", "ca", "c", "nearly", "almost", "answer", "result", "the", "is", "it", "my", "option", "choice", "letter", "wire",
    };

    private static readonly HashSet<string> After = new(StringComparer.OrdinalIgnoreCase) { "approx", "approximately", "about", "roughly", "ca" };

    /// <summary>The text without "about", "the answer is" and the like; whether it said that the number is a size.</summary>
    internal static string Strip(string text, out bool size)
    {
        size = false;
        string rest = text.Trim();
        while (Word(rest, 0) is { Length: > 0 } word)
        {
            bool says = word.Equals("size", StringComparison.OrdinalIgnoreCase);
            string after = rest.Substring(word.Length).TrimStart('.', ' ');
            if (after.Length == 0 || (!says && !Before.Contains(word)))
            {
                break;
            }

            size |= says;
            rest = after;
        }

        int last = rest.LastIndexOf(' ');
        return last > 0 && After.Contains(rest.Substring(last + 1)) ? rest.Substring(0, last).Trim() : rest;
    }

    private static string Word(string text, int at)
    {
        int end = at;
        while (end < text.Length && char.IsLetter(text[end]))
        {
            end++;
        }

        return text.Substring(at, end - at);
    }
}
