namespace LowVoltage.Calc.Tests.Docs;

public class ReadmeTests
{
    [Theory, InlineData("README.md"), InlineData("PackageReadme.md")]
    public void Readme_HoldsTheFirstExampleAsItCompiles(string file)
    {
        string code = string.Join('\n', Region("FirstExample.cs", "first-example")).Replace("output.WriteLine", "Console.WriteLine", StringComparison.Ordinal);
        Assert.Contains(code, Text(file), StringComparison.Ordinal);
    }

    [Theory, InlineData("README.md"), InlineData("PackageReadme.md")]
    public void Readme_ShowsWhatTheFirstExamplePrints(string file)
    {
        using StringWriter output = new() { NewLine = "\n" };
        FirstExample.Run(output);
        Assert.Contains(output.ToString().TrimEnd(), Text(file), StringComparison.Ordinal);
    }

    private static string Text(string resource)
    {
        using StreamReader reader = new(PublishedTable.Open(resource));
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static IEnumerable<string> Region(string file, string name)
    {
        string[] lines = Text(file).Split('\n');
        int start = Array.FindIndex(lines, line => line.Trim() == "#region " + name);
        int end = Array.FindIndex(lines, start, line => line.Trim() == "#endregion");
        int indent = lines[start].Length - lines[start].TrimStart().Length;
        return lines[(start + 1)..end].Select(line => line.Length > indent ? line[indent..] : "");
    }
}
