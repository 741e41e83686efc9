using System.Globalization;

namespace LowVoltage.Calc.Conductors;

#if NET8_0_OR_GREATER
public readonly partial struct AwgSize : ISpanParsable<AwgSize>, ISpanFormattable
#else
public readonly partial struct AwgSize : IFormattable
#endif
{
    private const string Accepted = "14 AWG, AWG 14, 14, #14, 1/0, 4/0 AWG or 0000; sizes 4/0 to 40";

    /// <summary>Reads an AWG size, in the invariant culture: <c>14 AWG</c>, <c>AWG 14</c>, <c>14</c>, <c>#14</c>, <c>No. 14</c>, <c>1/0</c>, <c>4/0 AWG</c>, <c>0000</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not an AWG size; the message quotes it and says what is accepted.</exception>
    public static AwgSize Parse(string s) => Parse(s, CultureInfo.InvariantCulture);

    /// <summary>Reads an AWG size: <c>14 AWG</c>, <c>AWG 14</c>, <c>14</c>, <c>#14</c>, <c>No. 14</c>, <c>1/0</c>, <c>4/0 AWG</c>, <c>0000</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not an AWG size; the message quotes it and says what is accepted.</exception>
    public static AwgSize Parse(string s, IFormatProvider? provider) =>
        Parse((s ?? throw new ArgumentNullException(nameof(s))).AsSpan(), provider);

    /// <summary>Reads an AWG size: <c>14 AWG</c>, <c>AWG 14</c>, <c>14</c>, <c>#14</c>, <c>No. 14</c>, <c>1/0</c>, <c>4/0 AWG</c>, <c>0000</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="FormatException">The text is not an AWG size; the message quotes it and says what is accepted.</exception>
    public static AwgSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        TryParse(s, provider, out AwgSize result) ? result : throw SizeText.Refusal(s, "an AWG size", Accepted);

    /// <summary>Reads an AWG size, in the invariant culture; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an AWG size.</returns>
    public static bool TryParse(string? s, out AwgSize result) => TryParse(s.AsSpan(), CultureInfo.InvariantCulture, out result);

    /// <summary>Reads an AWG size; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an AWG size.</returns>
    public static bool TryParse(string? s, IFormatProvider? provider, out AwgSize result) => TryParse(s.AsSpan(), provider, out result);

    /// <summary>Reads an AWG size; answers false instead of throwing.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an AWG size.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out AwgSize result) => TryRead(s, provider, out result);

    /// <summary>The size as text, in the invariant culture.</summary>
    /// <returns>A text that <see cref="Parse(string, IFormatProvider)"/> reads back; <c>no size</c> where it is none, which no parser reads.</returns>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The size as text.</summary>
    /// <param name="format"><c>G</c> or nothing: <c>14 AWG</c>; <c>N</c>: <c>14</c>.</param>
    /// <param name="formatProvider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Write(format, formatProvider ?? CultureInfo.InvariantCulture);

    /// <summary>Writes the size as text into a buffer.</summary>
    /// <param name="destination">The buffer.</param>
    /// <param name="charsWritten">How many characters were written.</param>
    /// <param name="format"><c>G</c> or nothing: <c>14 AWG</c>; <c>N</c>: <c>14</c>.</param>
    /// <param name="provider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>Whether the buffer was long enough.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        SizeText.TryCopy(ToString(format.ToString(), provider), destination, out charsWritten);
}
