using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The how-to on JSON: its code compiles and prints what the page shows.</summary>
public partial class JsonPageTests
{
    [Fact]
    public void Page_HoldsTheCodeAsItCompilesAndWhatItPrints()
    {
        string path = Path.Combine(DocsFolder.Docs, "howto", "json.md"), page = DocsFolder.Read(path);
        int shown = 0;
        string own = Snippet().Replace(page, match =>
        {
            shown++;
            string region = match.Groups["region"].Value;
            return $"<!-- snippet: JsonExample.cs#{region} -->\n```csharp\n{Region(region)}\n```\n\nprints\n\n```text\n{Printed(region)}\n```";
        });
        Assert.Equal(2, shown);
        if (DocsFolder.Rewrites)
        {
            File.WriteAllText(path, own);
            return;
        }

        Assert.Equal(own, page);
    }

    private static string Printed(string region)
    {
        using StringWriter output = new() { NewLine = "\n" };
        if (region == "use")
        {
            JsonExample.Run(output);
        }
        else
        {
            JsonExample.Mistakes(output);
        }

        return output.ToString().ReplaceLineEndings("\n").TrimEnd();
    }

    private static string Region(string name)
    {
        string[] lines = DocsFolder.Read(Path.Combine(DocsFolder.Snippets, "..", "JsonExample.cs")).Split('\n');
        int start = Array.FindIndex(lines, line => line.Trim() == "#region " + name), end = Array.FindIndex(lines, start, line => line.Trim() == "#endregion");
        int indent = lines[start].Length - lines[start].TrimStart().Length;
        return string.Join('\n', lines[(start + 1)..end].Select(line => line.Length > indent ? line[indent..] : "")).TrimEnd();
    }

    [GeneratedRegex("<!-- snippet: JsonExample\\.cs#(?<region>[a-z]+) -->\n```csharp\n.*?```\n\nprints\n\n```text\n.*?```", RegexOptions.Singleline)]
    private static partial Regex Snippet();
}
