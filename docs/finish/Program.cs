using LowVoltage.Calc.Docs.Finish;

// The folder of the site that DocFX has built. Every page of it is finished in place; a formula that cannot be read fails the run.
string site = args.Length == 1 ? args[0] : throw new ArgumentException("Give the folder of the built site.");
int pages = 0, formulas = 0, wrong = 0;
foreach (string path in Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories))
{
    string built = File.ReadAllText(path);
    if (!built.Contains("<article", StringComparison.Ordinal))
    {
        continue;
    }

    try
    {
        File.WriteAllText(path, Page.Finish(built, out int found));
        formulas += found;
        pages++;
    }
    catch (FormatException unread)
    {
        Console.Error.WriteLine($"{Path.GetRelativePath(site, path)}: {unread.Message}");
        wrong++;
    }
}

string index = Path.Combine(site, "index.json");
if (File.Exists(index))
{
    File.WriteAllText(index, SearchIndex.Shorten(File.ReadAllText(index)));
}

Console.WriteLine($"{pages} pages finished, {formulas} formulas written as MathML");
return wrong == 0 ? 0 : 1;
