using System.Text;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Files in the encodings that people have, and bytes that are none.</summary>
public sealed class CircuitScheduleEncodingTests : ScheduleRunner
{
    private static readonly Dictionary<string, string> Fan = With(("circuit", "Lüfter"), ("feed_m", "2.25"), ("load_A", "3.8"));

    [Theory]
    [InlineData("utf-8", false, "UTF-8")]
    [InlineData("utf-8", true, "UTF-8")]
    [InlineData("utf-16", true, "UTF-16")]
    [InlineData("utf-16BE", true, "UTF-16")]
    public void Read_Encoding_IsFoundAndSaid(string name, bool mark, string said)
    {
        Encoding encoding = name == "utf-8" ? new UTF8Encoding(mark) : new UnicodeEncoding(name == "utf-16BE", mark);

        (int code, string output, string error) = Run(Written(Text(';', Fan), encoding));

        Assert.Equal((0, ""), (code, error));
        Assert.Contains("Lüfter", output, StringComparison.Ordinal);
        Assert.Contains($"decimal points, {said}.", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Lüfter", new byte[] { 0x4C, 0xFC, 0x66, 0x74, 0x65, 0x72 })]
    [InlineData("5 €", new byte[] { 0x35, 0x20, 0x80 })]
    public void Read_BytesThatAreNotUtf8_AreReadAsWindows1252AndSaid(string name, byte[] bytes)
    {
        // The letters from the code page's own table (from memory): FC is ü there and in Latin-1, 80 is the euro sign there only.
        byte[] ascii = Encoding.ASCII.GetBytes(Text(';', With(("circuit", "first")), With(("circuit", "@"))));
        int at = Array.IndexOf(ascii, (byte)'@');
        string path = Path.Combine(Folder, "old.csv");
        File.WriteAllBytes(path, [.. ascii[..at], .. bytes, .. ascii[(at + 1)..]]);

        (int code, string output, string error) = Run(path);

        Assert.Equal(0, code);
        Assert.Contains(name, output, StringComparison.Ordinal);
        Assert.Contains("semicolons between the cells, decimal points or commas, Windows-1252.", output, StringComparison.Ordinal);
        Assert.Contains($"is not UTF-8 (first in line 3). It was read as Windows-1252, which includes Latin-1; if this reads wrong, save the file in UTF-8: {name};", error, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', output + error);
    }

    [Fact]
    public void Read_LetterLostBefore_IsSaid()
    {
        (int code, _, string error) = Run(FileOf(With(), With(("circuit", "l\uFFFDfter"))));

        Assert.Equal(0, code);
        Assert.Contains("line 3: a letter was lost before this program read the file", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0, 0, 0x61, 0, 0, 0 }, "is in UTF-32. Save it in UTF-8.")]
    [InlineData(new byte[] { 0x61, 0, 0x62, 0, 0x0A, 0 }, "it holds bytes of value 0. Save the sheet as CSV in UTF-8; UTF-16 needs its byte-order mark.")]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0x61, 0x0A, 0xFC, 0x0A }, "begins with the byte-order mark of UTF-8, but line 2 is not UTF-8.")]
    [InlineData(new byte[] { 0x61, 0x0A, 0x62, 0x0A, 0x81, 0x0A }, "line 3: the bytes are neither UTF-8 nor Windows-1252.")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0, 0x00, 0xD8, 0x61, 0 }, "is damaged: it begins as UTF-16 but is not UTF-16 throughout.")]
    public void Read_BytesThatAreNoText_AreRefusedInWords(byte[] bytes, string expected)
    {
        string path = Path.Combine(Folder, "broken.csv");
        File.WriteAllBytes(path, bytes);

        (int code, string output, string error) = Run(path);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LettersCutByTheBuffer_AreStillUtf8()
    {
        // Over three buffers of two-byte letters, so that some letter lies across each end.
        string note = new('ü', 100_000);
        string path = Written("# x" + note + "\n" + Text(',', Fan));

        (int code, string output, string error) = Run(path);

        Assert.Equal((0, ""), (code, error));
        Assert.Contains("UTF-8", output, StringComparison.Ordinal);
    }
}
