using System.Globalization;
using System.Text;
using LowVoltage.Calc.Design;

namespace CircuitSchedule;

/// <summary>Writes a calculation sheet for each circuit into a folder: a page to print and to sign, named by the circuit's place in the file and its name.</summary>
internal sealed class SheetFolder(string folder, SheetDetails details) : IScheduleWriter
{
    private const int LongestName = 40;

    private int written;

    public void Begin(Heading heading) => Directory.CreateDirectory(folder);

    public void Row(ScheduleEntry entry)
    {
        if (entry.Answer is not { } answer)
        {
            return;
        }

        written++;
        using OutputFile file = new(Path.Combine(folder, FileName(entry)), new UTF8Encoding(false));
        file.Text.Write(answer.Sheet(details).ToHtmlPage());
        file.Complete();
    }

    public void End(Tally tally)
    {
    }

    public void Dispose()
    {
    }

    /// <summary>How many sheets there are.</summary>
    public int Count => written;

    // Letters and digits of any alphabet; what else a name holds no file system need take.
    private static string FileName(ScheduleEntry entry)
    {
        string plain = string.Join('-', new string([.. entry.Circuit.Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return $"{entry.Line.ToString("0000", CultureInfo.InvariantCulture)}-{(plain.Length > LongestName ? plain[..LongestName] : plain)}.html";
    }
}
