namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The pages of the site on disk, and the switch that lets a test run write them anew.</summary>
internal static class DocsFolder
{
    /// <summary>Set to 1 by <c>.ci/docs-outputs</c> and <c>.ci/validation-tables</c>: tests then write what they would compare.</summary>
    public static bool Rewrites => Environment.GetEnvironmentVariable("LOWVOLTAGE_DOCS_WRITE") == "1";

    public static string Root { get; } = Find();

    public static string Docs => Path.Combine(Root, "docs");

    public static string Snippets => Path.Combine(Root, "tests", "LowVoltage.Calc.Tests", "Docs", "Snippets");

    /// <summary>Pages written by hand; what is generated or built is left out.</summary>
    public static IEnumerable<string> Pages => Directory.EnumerateFiles(Docs, "*.md", SearchOption.AllDirectories)
        .Where(path => !Relative(path).StartsWith("_site/", StringComparison.Ordinal) && !Relative(path).StartsWith("api/", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    public static string Read(string path) => File.ReadAllText(path).ReplaceLineEndings("\n");

    public static string Relative(string path) => Path.GetRelativePath(Docs, path).Replace('\\', '/');

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "LowVoltage.Calc.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests must run inside the repository: the pages of docs/ are compared with what the snippets print.");
    }
}
