using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>A page with parts to be written anew, each between a comment with its name and a comment that ends it.</summary>
internal sealed class Page(string path)
{
    private string text = File.ReadAllText(path);

    /// <summary>docs/performance.md of the clone that this program was built in.</summary>
    internal static string Find()
    {
        for (DirectoryInfo? directory = new(AppContext.BaseDirectory); directory is not null; directory = directory.Parent)
        {
            string page = Path.Combine(directory.FullName, "docs", "performance.md");
            if (File.Exists(page))
            {
                return page;
            }
        }

        throw new FileNotFoundException("docs/performance.md is not above this program; name a page with --page.");
    }

    internal void Put(string name, IEnumerable<string> lines)
    {
        Regex part = new($"(<!-- measured: {Regex.Escape(name)} -->\n).*?(<!-- end -->)", RegexOptions.Singleline);
        if (part.Count(text) != 1)
        {
            throw new InvalidOperationException($"{path} must have one part named {name}.");
        }

        text = part.Replace(text, match => $"{match.Groups[1].Value}\n{string.Join('\n', lines)}\n\n{match.Groups[2].Value}");
    }

    internal void Save() => File.WriteAllText(path, text);
}
