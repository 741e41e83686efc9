using LowVoltage.Calc.Teaching;
using Sheet = LowVoltage.Calc.Teaching.ProblemSheet;

namespace LowVoltage.Calc.Samples.ProblemSheet;

/// <summary>Writes sheets, keys, tables and packages, and says which.</summary>
internal sealed class SheetFiles(Options options, TextWriter output)
{
    internal void Write(Sheet sheet)
    {
        if (options.ClassSet is not { } variants)
        {
            Write(sheet, "");
            return;
        }

        ClassSet set = ClassSet.Create(sheet, variants);
        for (int v = 0; v < set.Variants.Count; v++)
        {
            Write(set.Variants[v], "-" + ClassSet.Label(v));
        }

        string? marker = options.MarkerFile ?? (options.Folder is { } folder ? Path.Combine(folder, $"sheet-{options.Seed}-answers.html") : null);
        if (marker is not null)
        {
            Save(marker, IsPage(marker) ? set.ToHtmlPage(options.Layout) : set.ToMarkdown(), "the answers by variant and problem, for the marker");
        }
    }

    private void Write(Sheet sheet, string variant)
    {
        if (options.HtmlFile is { } html)
        {
            Save(Named(html, variant), sheet.ToHtmlPage(SheetPart.Problems, options.Layout), "the problems, to print");
        }

        if (options.KeyFile is { } key)
        {
            Save(Named(key, variant), IsPage(key) ? sheet.ToHtmlPage(SheetPart.Key, options.Layout) : sheet.ToMarkdown(SheetPart.Key, options.Layout), "the key");
        }

        if (options.QtiFile is { } qti)
        {
            Save(Named(qti, variant), sheet.ToQtiPackage(options.QtiVersion), "a quiz package, with its answers");
        }

        if (options.Folder is { } folder)
        {
            string name = Path.Combine(folder, $"sheet-{options.Seed}{variant}");
            Save(name + ".html", sheet.ToHtmlPage(SheetPart.Problems, options.Layout), "the problems, to print");
            Save(name + ".md", sheet.ToMarkdown(SheetPart.Problems, options.Layout), "the problems");
            Save(name + "-key.html", sheet.ToHtmlPage(SheetPart.Key, options.Layout), "the key, to print");
            Save(name + "-key.md", sheet.ToMarkdown(SheetPart.Key, options.Layout), "the key: answers, usual mistakes and worked solutions");
        }
    }

    private static bool IsPage(string file) => Path.GetExtension(file).Equals(".html", StringComparison.OrdinalIgnoreCase) || Path.GetExtension(file).Equals(".htm", StringComparison.OrdinalIgnoreCase);

    private static string Named(string file, string variant) => variant.Length == 0 ? file : Path.Combine(Path.GetDirectoryName(file) ?? "", Path.GetFileNameWithoutExtension(file) + variant + Path.GetExtension(file));

    private void Save(string file, string text, string what) => Save(file, new System.Text.UTF8Encoding(false).GetBytes(text), what);

    private void Save(string file, byte[] bytes, string what)
    {
        if (Path.GetDirectoryName(file) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }

        File.WriteAllBytes(file, bytes);
        output.WriteLine($"{file}: {what}");
    }
}
