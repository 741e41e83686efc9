using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>Code on a page is a region that compiles, pasted, and the output below it is what that region prints: the plain file reads as the site does.</summary>
/// <remarks>
/// The line <c>&lt;!-- snippet: File.cs#size-a-long-run --&gt;</c> names a region of Docs/Snippets or Docs. One of Snippets stands in the method of the same name (<c>SizeALongRun</c>),
/// and the first <c>text</c> block after it is its output. <c>.ci/docs-outputs</c> writes both anew.
/// </remarks>
public partial class SnippetPagesTests
{
    public static TheoryData<string> PagesWithSnippets() =>
        [.. DocsFolder.Pages.Where(page => Snippet().IsMatch(DocsFolder.Read(page))).Select(DocsFolder.Relative)];

    [Theory, MemberData(nameof(PagesWithSnippets))]
    public void Page_HoldsItsSnippetsAsTheyCompileAndWhatTheyPrint(string page)
    {
        string path = Path.Combine(DocsFolder.Docs, page);
        string written = DocsFolder.Read(path), expected = WithOutputs(Snippet().Replace(written, Code));
        if (DocsFolder.Rewrites && written != expected)
        {
            File.WriteAllText(path, expected);
            return;
        }

        Assert.Equal(expected, written);
    }

    [Fact]
    public void EveryRegion_IsOnAPage()
    {
        HashSet<string> shown = [.. DocsFolder.Pages.SelectMany(page => Snippet().Matches(DocsFolder.Read(page))).Select(match => $"{match.Groups["file"].Value}#{match.Groups["region"].Value}")];
        string[] there = [.. Directory.EnumerateFiles(DocsFolder.Snippets, "*.cs").SelectMany(file => Regions(file).Select(region => $"{Path.GetFileNameWithoutExtension(file)}#{region}"))];
        Assert.NotEmpty(there);
        Assert.Empty(there.Except(shown));
        Assert.Equal(there.Length, there.Distinct().Count());
    }

    /// <summary>A repository shows its pages without DocFX: nothing on them may be an include.</summary>
    [Fact]
    public void NoPage_IncludesAnotherFile() =>
        Assert.All(DocsFolder.Pages, page => Assert.DoesNotMatch(@"\[!(code|include)", DocsFolder.Read(page)));

    private static string[] Regions(string file) => [.. RegionStart().Matches(DocsFolder.Read(file)).Select(match => match.Groups[1].Value)];

    private static string Code(Match snippet) => $"{snippet.Groups["head"].Value}{Region(snippet.Groups["file"].Value, snippet.Groups["region"].Value)}\n```";

    private static string Source(string file)
    {
        string snippet = Path.Combine(DocsFolder.Snippets, file + ".cs");
        return File.Exists(snippet) ? snippet : Path.Combine(Path.GetDirectoryName(DocsFolder.Snippets)!, file + ".cs");
    }

    private static string Region(string file, string name)
    {
        string[] lines = DocsFolder.Read(Source(file)).Split('\n');
        int start = Array.FindIndex(lines, line => line.Trim() == "#region " + name);
        Assert.True(start >= 0, $"{file}.cs has no region {name}.");
        int end = Array.FindIndex(lines, start, line => line.Trim() == "#endregion");
        int indent = lines[start].Length - lines[start].TrimStart().Length;
        return string.Join('\n', lines[(start + 1)..end].Select(line => line.Length > indent ? line[indent..] : "")).TrimEnd('\n');
    }

    private static string WithOutputs(string page)
    {
        StringBuilder result = new();
        int done = 0;
        foreach (Match snippet in Snippet().Matches(page))
        {
            if (Method(snippet.Groups["file"].Value, snippet.Groups["region"].Value) is not { } method)
            {
                continue;
            }

            int start = page.IndexOf("```text\n", snippet.Index + snippet.Length, StringComparison.Ordinal);
            Assert.True(start >= 0, $"No output block follows {snippet.Groups["head"].Value}.");
            start += "```text\n".Length;
            int end = page.IndexOf("```", start, StringComparison.Ordinal);
            Match next = snippet.NextMatch();
            Assert.True(!next.Success || start < next.Index, $"No output block between {snippet.Groups["head"].Value} and {next.Groups["head"].Value}.");
            result.Append(page, done, start - done).Append(Snippets.Console.Capture(method.CreateDelegate<Action>())).Append('\n');
            done = end;
        }

        return result.Append(page, done, page.Length - done).ToString();
    }

    /// <summary>The method that runs a region; none for a region that only declares something.</summary>
    private static MethodInfo? Method(string file, string region)
    {
        if (Path.GetDirectoryName(Source(file)) != DocsFolder.Snippets)
        {
            return null;
        }

        Type type = Type.GetType($"{typeof(Snippets.Console).Namespace}.{file}") ?? throw new InvalidOperationException($"No snippet class {file}.");
        string name = string.Concat(region.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
        MethodInfo? method = type.GetMethod(name, BindingFlags.Public | BindingFlags.Static);
        bool prints = Region(file, region).Contains("Console.", StringComparison.Ordinal);
        Assert.True(prints == method is not null, $"Region {region} of {file} prints: {prints}; method {name}: {method?.Name ?? "none"}.");
        return method;
    }

    [GeneratedRegex(@"(?<head><!-- snippet: (?<file>\w+)\.cs#(?<region>[\w-]+) -->\n```csharp\n)(?<code>.*?)\n```", RegexOptions.Singleline)]
    private static partial Regex Snippet();

    [GeneratedRegex(@"^\s*#region (\S+)$", RegexOptions.Multiline)]
    private static partial Regex RegionStart();
}
