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

    /// <summary>Whoever pastes the example has the namespaces that it compiles with here; the two first ones reach this file by its own namespace and by the project.</summary>
    [Theory, InlineData("README.md"), InlineData("PackageReadme.md")]
    public void Readme_NamesTheNamespacesOfTheFirstExample(string file)
    {
        IEnumerable<string> own = Usings(Text("FirstExample.cs")).Append("using LowVoltage.Calc;").Append("using UnitsNet;");
        Assert.Equal(own.Order(StringComparer.Ordinal), Usings(Text(file)).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Usings(string text) =>
        text.Split('\n').Select(line => line.Trim()).Where(line => line.StartsWith("using ", StringComparison.Ordinal) && line.EndsWith(';'));

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
