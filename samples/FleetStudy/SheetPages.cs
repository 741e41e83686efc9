using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;

namespace FleetStudy;

/// <summary>Writes a sheet and its key as pages to print.</summary>
internal static class SheetPages
{
    /// <summary>Writes two files; a piece that is done again writes the same files again.</summary>
    public static void Write(string folder, long number, ProblemSheet sheet)
    {
        string name = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"sheet-{number:000000}"));
        Save(name + ".html", sheet.ToHtmlPage(SheetPart.Problems));
        Save(name + "-key.html", sheet.ToHtmlPage(SheetPart.Key));
    }

    // Whole or not at all: a killed process leaves a name of its own behind, never half a page.
    private static void Save(string path, string text)
    {
        string draft = $"{path}.{Guid.NewGuid():N}.part";
        File.WriteAllText(draft, text, new UTF8Encoding(false));
        File.Move(draft, path, overwrite: true);
    }
}
