using System.Globalization;

namespace LowVoltage.Calc.Conductors;

#if NET8_0_OR_GREATER
public readonly partial struct AircraftWireSize : ISpanParsable<AircraftWireSize>, ISpanFormattable
#else
public readonly partial struct AircraftWireSize : IFormattable
#endif
{
    private const string Accepted = "20 aircraft, aircraft 20, 20 or 1/0 aircraft; sizes 24 to 2 even, 1 and 1/0 to 4/0";

    /// <summary>Reads an aircraft wire size, in the invariant culture: <c>20 aircraft</c>, <c>aircraft 20</c>, <c>1/0 aircraft</c>, <c>20</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not an aircraft wire size; the message quotes it and says what is accepted.</exception>
    public static AircraftWireSize Parse(string s) => Parse(s, CultureInfo.InvariantCulture);

    /// <summary>Reads an aircraft wire size: <c>20 aircraft</c>, <c>aircraft 20</c>, <c>1/0 aircraft</c>, <c>20</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not an aircraft wire size; the message quotes it and says what is accepted.</exception>
    public static AircraftWireSize Parse(string s, IFormatProvider? provider) =>
        Parse((s ?? throw new ArgumentNullException(nameof(s))).AsSpan(), provider);

    /// <summary>Reads an aircraft wire size: <c>20 aircraft</c>, <c>aircraft 20</c>, <c>1/0 aircraft</c>, <c>20</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="FormatException">The text is not an aircraft wire size; the message quotes it and says what is accepted.</exception>
    public static AircraftWireSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        TryParse(s, provider, out AircraftWireSize result) ? result : throw SizeText.Refusal(s, "an aircraft wire size", Accepted);

    /// <summary>Reads an aircraft wire size, in the invariant culture; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an aircraft wire size.</returns>
    public static bool TryParse(string? s, out AircraftWireSize result) => TryParse(s.AsSpan(), CultureInfo.InvariantCulture, out result);

    /// <summary>Reads an aircraft wire size; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an aircraft wire size.</returns>
    public static bool TryParse(string? s, IFormatProvider? provider, out AircraftWireSize result) => TryParse(s.AsSpan(), provider, out result);

    /// <summary>Reads an aircraft wire size; answers false instead of throwing.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is an aircraft wire size.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out AircraftWireSize result) => TryRead(s, provider, out result);

    /// <summary>The size as text, in the invariant culture.</summary>
    /// <returns>A text that <see cref="Parse(string, IFormatProvider)"/> reads back; <c>no size</c> where it is none, which no parser reads.</returns>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The size as text.</summary>
    /// <param name="format"><c>G</c> or nothing: <c>20 aircraft</c>; <c>N</c>: <c>20</c>.</param>
    /// <param name="formatProvider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Write(format, formatProvider ?? CultureInfo.InvariantCulture);

    /// <summary>Writes the size as text into a buffer.</summary>
    /// <param name="destination">The buffer.</param>
    /// <param name="charsWritten">How many characters were written.</param>
    /// <param name="format"><c>G</c> or nothing: <c>20 aircraft</c>; <c>N</c>: <c>20</c>.</param>
    /// <param name="provider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>Whether the buffer was long enough.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        SizeText.TryCopy(ToString(format.ToString(), provider), destination, out charsWritten);
}
