using System.Buffers;
using System.Globalization;
using System.Text;

namespace CircuitSchedule;

/// <summary>How the bytes of a file are text: by its byte-order mark; without one UTF-8 if they are valid UTF-8, else Windows-1252.</summary>
/// <param name="Encoding">Throws on bytes that are not of this encoding: nothing is silently replaced.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Note">What the reader of the schedule should know; null when nothing.</param>
internal sealed record FileEncoding(Encoding Encoding, string Name, string? Note)
{
    private static readonly Encoding Windows1252 =
        CodePagesEncodingProvider.Instance.GetEncoding(1252, EncoderFallback.ExceptionFallback, DecoderFallback.ExceptionFallback)!;

    /// <exception cref="ScheduleFileException">The bytes are no text that can be told.</exception>
    public static FileEncoding Detect(string path)
    {
        byte[] bytes = ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            using FileStream file = File.OpenRead(path);
            int first = file.ReadAtLeast(bytes.AsSpan(0, 4), 4, throwOnEndOfStream: false);
            FileEncoding? marked = ByMark(path, bytes.AsSpan(0, first));
            if (marked?.Encoding is UnicodeEncoding)
            {
                return marked;
            }

            file.Position = 0;
            ByteSurvey survey = ByteSurvey.Of(file, bytes);
            return survey.HasZero ? throw new ScheduleFileException(
                    $"'{path}' is not a text file that can be read: it holds bytes of value 0. Save the sheet as CSV in UTF-8; UTF-16 needs its byte-order mark.")
                : survey.InvalidUtf8Line is not { } line ? Utf8(path, marked is not null, survey.ReplacementLine)
                : marked is not null ? throw new ScheduleFileException($"'{path}' begins with the byte-order mark of UTF-8, but line {Text(line)} is not UTF-8. Save it once more, in one encoding.")
                : survey.UnassignedLine is { } bad ? throw new ScheduleFileException($"'{path}', line {Text(bad)}: the bytes are neither UTF-8 nor Windows-1252. Save the file in UTF-8.")
                : Legacy(path, line);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    private static FileEncoding? ByMark(string path, ReadOnlySpan<byte> start) => start switch
    {
        [0xFF, 0xFE, 0, 0] or [0, 0, 0xFE, 0xFF] => throw new ScheduleFileException($"'{path}' is in UTF-32. Save it in UTF-8."),
        [(byte)'P', (byte)'K', 3, 4] => throw new ScheduleFileException($"'{path}' is a workbook or another zip file, not text. Save the sheet as CSV in UTF-8."),
        [0xEF, 0xBB, 0xBF, ..] => new FileEncoding(new UTF8Encoding(true, true), "UTF-8", null),
        [0xFF, 0xFE, ..] => new FileEncoding(new UnicodeEncoding(false, true, true), "UTF-16", null),
        [0xFE, 0xFF, ..] => new FileEncoding(new UnicodeEncoding(true, true, true), "UTF-16", null),
        _ => null,
    };

    private static FileEncoding Utf8(string path, bool marked, int? replacementLine) => new(
        new UTF8Encoding(marked, true),
        "UTF-8",
        replacementLine is { } line
            ? $"{path}, line {Text(line)}: a letter was lost before this program read the file; the replacement character U+FFFD stands in its place."
            : null);

    // Shows the line as it was read: whoever knows the circuit sees at once whether that is right.
    private static FileEncoding Legacy(string path, int line)
    {
        string read = File.ReadLines(path, Windows1252).ElementAt(line - 1).Trim();
        string start = read.Length > 60 ? read[..60] + "..." : read;
        return new FileEncoding(
            Windows1252,
            "Windows-1252",
            $"{path} is not UTF-8 (first in line {Text(line)}). It was read as Windows-1252, which includes Latin-1; if this reads wrong, save the file in UTF-8: {start}");
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
