using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>Code on a page comes from a region that compiles, and the output below it is what that region prints.</summary>
/// <remarks>
/// A page includes a region of Docs/Snippets by name. The region stands in the method of the same name (<c>size-a-long-run</c> in
/// <c>SizeALongRun</c>); the first <c>text</c> block after the include is its output. <c>.ci/docs-outputs</c> writes the blocks anew.
/// </remarks>
public partial class SnippetPagesTests
{
    public static TheoryData<string> PagesWithSnippets() =>
        [.. DocsFolder.Pages.Where(page => Include().IsMatch(DocsFolder.Read(page))).Select(DocsFolder.Relative)];

    [Theory, MemberData(nameof(PagesWithSnippets))]
    public void Page_ShowsWhatItsSnippetsPrint(string page)
    {
        string path = Path.Combine(DocsFolder.Docs, page);
        string written = DocsFolder.Read(path), expected = WithOutputs(written);
        if (DocsFolder.Rewrites && written != expected)
        {
            File.WriteAllText(path, expected);
            return;
        }

        Assert.Equal(expected, written);
    }

    [Theory, MemberData(nameof(PagesWithSnippets))]
    public void Page_IncludesRegionsThatExist(string page)
    {
        string path = Path.Combine(DocsFolder.Docs, page);
        foreach (Match include in Include().Matches(DocsFolder.Read(path)))
        {
            string file = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, include.Groups["path"].Value));
            Assert.True(File.Exists(file), $"{page} includes {file}, which is not there.");
            Assert.Contains(include.Groups["region"].Value, Regions(file));
        }
    }

    [Fact]
    public void EveryRegion_IsOnAPage()
    {
        HashSet<string> shown = [.. DocsFolder.Pages.SelectMany(page => Include().Matches(DocsFolder.Read(page))).Select(match => $"{match.Groups["file"].Value}#{match.Groups["region"].Value}")];
        string[] there = [.. Directory.EnumerateFiles(DocsFolder.Snippets, "*.cs").SelectMany(file => Regions(file).Select(region => $"{Path.GetFileNameWithoutExtension(file)}#{region}"))];
        Assert.NotEmpty(there);
        Assert.Empty(there.Except(shown));
        Assert.Equal(there.Length, there.Distinct().Count());
    }

    private static string[] Regions(string file) => [.. RegionStart().Matches(DocsFolder.Read(file)).Select(match => match.Groups[1].Value)];

    private static string WithOutputs(string page)
    {
        StringBuilder result = new();
        int done = 0;
        foreach (Match include in Include().Matches(page))
        {
            if (Method(include.Groups["file"].Value, include.Groups["region"].Value) is not { } method)
            {
                continue;
            }

            int start = page.IndexOf("```text\n", include.Index, StringComparison.Ordinal);
            Assert.True(start >= 0, $"No output block follows {include.Value}.");
            start += "```text\n".Length;
            int end = page.IndexOf("```", start, StringComparison.Ordinal);
            Match next = include.NextMatch();
            Assert.True(!next.Success || start < next.Index, $"No output block between {include.Value} and {next.Value}.");
            result.Append(page, done, start - done).Append(Snippets.Console.Capture(method.CreateDelegate<Action>())).Append('\n');
            done = end;
        }

        return result.Append(page, done, page.Length - done).ToString();
    }

    /// <summary>The method that runs a region; none for a region that only declares something.</summary>
    private static MethodInfo? Method(string file, string region)
    {
        Type type = Type.GetType($"{typeof(Snippets.Console).Namespace}.{file}") ?? throw new InvalidOperationException($"No snippet class {file}.");
        string name = string.Concat(region.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
        MethodInfo? method = type.GetMethod(name, BindingFlags.Public | BindingFlags.Static);
        string source = DocsFolder.Read(Path.Combine(DocsFolder.Snippets, file + ".cs"));
        int start = source.IndexOf($"#region {region}\n", StringComparison.Ordinal);
        bool prints = start >= 0 && source[start..source.IndexOf("#endregion", start, StringComparison.Ordinal)].Contains("Console.", StringComparison.Ordinal);
        Assert.True(prints == method is not null, $"Region {region} of {file} prints: {prints}; method {name}: {method?.Name ?? "none"}.");
        return method;
    }

    [GeneratedRegex(@"\[!code-csharp\[\]\((?<path>[^)?]*/Snippets/(?<file>\w+)\.cs)\?name=(?<region>[\w-]+)\)\]")]
    private static partial Regex Include();

    [GeneratedRegex(@"^\s*#region (\S+)$", RegexOptions.Multiline)]
    private static partial Regex RegionStart();
}
