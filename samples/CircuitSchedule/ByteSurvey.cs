using System.Buffers;
using System.Text;

namespace CircuitSchedule;

/// <summary>What the bytes of a file can be, found in one pass: the lines, from 1, at which each doubt first shows.</summary>
internal sealed class ByteSurvey
{
    public bool HasZero { get; private set; }

    public int? InvalidUtf8Line { get; private set; }

    /// <summary>First line with a byte that Windows-1252 has no letter for.</summary>
    public int? UnassignedLine { get; private set; }

    /// <summary>First line with U+FFFD, which stands where a letter was lost before.</summary>
    public int? ReplacementLine { get; private set; }

    public static ByteSurvey Of(Stream file, byte[] buffer)
    {
        ByteSurvey survey = new();
        int line = 1, kept = 0, read;
        do
        {
            read = file.Read(buffer, kept, buffer.Length - kept);
            ReadOnlySpan<byte> all = buffer.AsSpan(0, kept + read);
            int taken = survey.Scan(all, read == 0, ref line);
            kept = all.Length - taken;
            all[taken..].CopyTo(buffer);
        }
        while (read > 0);
        return survey;
    }

    /// <returns>How many bytes were taken; a letter that the buffer cuts in two is left for the next turn.</returns>
    private int Scan(ReadOnlySpan<byte> bytes, bool last, ref int line)
    {
        int at = 0;
        while (at < bytes.Length)
        {
            // The line feeds are counted and the zero bytes found among the ASCII, which is nearly all.
            int ascii = bytes[at..].IndexOfAnyExceptInRange((byte)0, (byte)0x7F);
            ReadOnlySpan<byte> plain = ascii < 0 ? bytes[at..] : bytes.Slice(at, ascii);
            line += plain.Count((byte)'\n');
            HasZero |= plain.Contains((byte)0);
            at += plain.Length;
            if (at < bytes.Length)
            {
                OperationStatus status = Rune.DecodeFromUtf8(bytes[at..], out Rune rune, out int length);
                if (status == OperationStatus.NeedMoreData && !last)
                {
                    return at;
                }

                Note(status, rune, bytes[at], line);
                at += status == OperationStatus.Done ? length : 1;
            }
        }

        return at;
    }

    private void Note(OperationStatus status, Rune rune, byte first, int line)
    {
        if (status != OperationStatus.Done)
        {
            InvalidUtf8Line ??= line;
        }
        else if (rune == Rune.ReplacementChar)
        {
            ReplacementLine ??= line;
        }

        if (first is 0x81 or 0x8D or 0x8F or 0x90 or 0x9D)
        {
            UnassignedLine ??= line;
        }
    }
}
