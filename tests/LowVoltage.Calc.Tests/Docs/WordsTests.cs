using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The words that DEVELOPERS.md says not to write stand nowhere that a user reads: docs, READMEs, XML docs and messages of the library, samples.</summary>
public partial class WordsTests
{
    /// <summary>Every text of a reader, by its path from the top of the clone.</summary>
    public static TheoryData<string> Texts() => [.. Folders().SelectMany(Files).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Texts))]
    public void Text_HasNoneOfTheDroppedWords(string path)
    {
        string text = DocsFolder.Read(Path.Combine(DocsFolder.Root, path));
        Assert.Empty(Dropped().Matches(text).Select(match => $"{path}, line {text[..match.Index].Count(c => c == '\n') + 1}: {match.Value}"));
    }

    [Fact]
    public void WordList_FindsItsOwnWords()
    {
        string[] words = [.. List()];
        Assert.True(words.Length >= 20, $"{words.Length} words read from DEVELOPERS.md");
        Assert.All(words, word => Assert.Matches(Dropped(), $"It {word.ToUpperInvariant()}, then."));
        Assert.DoesNotMatch(Dropped(), "The fuse opens. The circuit is open. Undetermined is not a pass.");
    }

    private static Regex Dropped() => new($@"(?<!\w)({string.Join('|', List().Select(word => Regex.Escape(word).Replace(@"\ ", @"\s+(?:///\s+)?", StringComparison.Ordinal)))})(?!\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static IEnumerable<string> List()
    {
        string guide = DocsFolder.Read(Path.Combine(DocsFolder.Root, "DEVELOPERS.md"));
        string table = guide.Split("<!-- dropped words -->")[1].Split("<!-- end -->")[0];
        return Row().Matches(table).Skip(2).SelectMany(row => row.Groups["words"].Value.Split(';', StringSplitOptions.TrimEntries));
    }

    private static IEnumerable<(string Folder, string Pattern)> Folders() =>
        [("docs", "*.md"), ("src", "*.cs"), ("src", "*.md"), ("samples", "*.cs"), ("samples", "*.md"), (".", "README.md")];

    private static IEnumerable<string> Files((string Folder, string Pattern) what) => Directory
        .EnumerateFiles(Path.Combine(DocsFolder.Root, what.Folder), what.Pattern, what.Folder == "." ? SearchOption.TopDirectoryOnly : SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(DocsFolder.Root, path).Replace('\\', '/'))
        .Where(path => !path.Split('/').Any(part => part is "bin" or "obj" or "_site" or "api"));

    [GeneratedRegex(@"^\| [^|]+ \| (?<words>[^|]+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
