using System.Globalization;

namespace LowVoltage.Calc.Conductors;

#if NET8_0_OR_GREATER
public readonly partial struct KcmilSize : ISpanParsable<KcmilSize>, ISpanFormattable
#else
public readonly partial struct KcmilSize : IFormattable
#endif
{
    private const string Accepted = "250 kcmil, 250 MCM or 250, above 211.6 (4/0 AWG)";

    /// <summary>Reads a kcmil size, in the invariant culture: <c>250 kcmil</c>, <c>250 MCM</c>, <c>250</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a kcmil size; the message quotes it and says what is accepted.</exception>
    public static KcmilSize Parse(string s) => Parse(s, CultureInfo.InvariantCulture);

    /// <summary>Reads a kcmil size: <c>250 kcmil</c>, <c>250 MCM</c>, <c>250</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. Its decimal separator is used; <c>null</c> means the invariant one.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a kcmil size; the message quotes it and says what is accepted.</exception>
    public static KcmilSize Parse(string s, IFormatProvider? provider) =>
        Parse((s ?? throw new ArgumentNullException(nameof(s))).AsSpan(), provider);

    /// <summary>Reads a kcmil size: <c>250 kcmil</c>, <c>250 MCM</c>, <c>250</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. Its decimal separator is used; <c>null</c> means the invariant one.</param>
    /// <returns>The size.</returns>
    /// <exception cref="FormatException">The text is not a kcmil size; the message quotes it and says what is accepted.</exception>
    public static KcmilSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        TryParse(s, provider, out KcmilSize result) ? result : throw SizeText.RefusalIn(s, "a kcmil size", Accepted, provider);

    /// <summary>Reads a kcmil size, in the invariant culture; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a kcmil size.</returns>
    public static bool TryParse(string? s, out KcmilSize result) => TryParse(s.AsSpan(), CultureInfo.InvariantCulture, out result);

    /// <summary>Reads a kcmil size; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="provider">A culture. Its decimal separator is used; <c>null</c> means the invariant one.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a kcmil size.</returns>
    public static bool TryParse(string? s, IFormatProvider? provider, out KcmilSize result) => TryParse(s.AsSpan(), provider, out result);

    /// <summary>Reads a kcmil size; answers false instead of throwing.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. Its decimal separator is used; <c>null</c> means the invariant one.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a kcmil size.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out KcmilSize result) => TryRead(s, provider, out result);

    /// <summary>The size as text, in the invariant culture.</summary>
    /// <returns>A text that <see cref="Parse(string, IFormatProvider)"/> reads back; <c>no size</c> where it is none, which no parser reads.</returns>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The size as text.</summary>
    /// <param name="format">A numeric format for the number; nothing means all digits.</param>
    /// <param name="formatProvider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Write(format, formatProvider ?? CultureInfo.InvariantCulture);

    /// <summary>Writes the size as text into a buffer.</summary>
    /// <param name="destination">The buffer.</param>
    /// <param name="charsWritten">How many characters were written.</param>
    /// <param name="format">A numeric format for the number; nothing means all digits.</param>
    /// <param name="provider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>Whether the buffer was long enough.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        SizeText.TryCopy(ToString(format.ToString(), provider), destination, out charsWritten);
}
