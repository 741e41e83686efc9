using System.Globalization;

namespace LowVoltage.Calc.Conductors;

#if NET8_0_OR_GREATER
public readonly partial struct VehicleGaugeSize : ISpanParsable<VehicleGaugeSize>, ISpanFormattable
#else
public readonly partial struct VehicleGaugeSize : IFormattable
#endif
{
    private const string Accepted = "14 SAE, SAE 14, 14 or 1/0 SAE; sizes 20 to 8 even, 6, 4, 2, 1 and 1/0 to 4/0";

    /// <summary>Reads a vehicle gauge, in the invariant culture: <c>14 SAE</c>, <c>SAE 14</c>, <c>1/0 SAE</c>, <c>14</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a vehicle gauge; the message quotes it and says what is accepted.</exception>
    public static VehicleGaugeSize Parse(string s) => Parse(s, CultureInfo.InvariantCulture);

    /// <summary>Reads a vehicle gauge: <c>14 SAE</c>, <c>SAE 14</c>, <c>1/0 SAE</c>, <c>14</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a vehicle gauge; the message quotes it and says what is accepted.</exception>
    public static VehicleGaugeSize Parse(string s, IFormatProvider? provider) =>
        Parse((s ?? throw new ArgumentNullException(nameof(s))).AsSpan(), provider);

    /// <summary>Reads a vehicle gauge: <c>14 SAE</c>, <c>SAE 14</c>, <c>1/0 SAE</c>, <c>14</c>; any case.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <returns>The size.</returns>
    /// <exception cref="FormatException">The text is not a vehicle gauge; the message quotes it and says what is accepted.</exception>
    public static VehicleGaugeSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) =>
        TryParse(s, provider, out VehicleGaugeSize result) ? result : throw SizeText.Refusal(s, "a vehicle gauge", Accepted);

    /// <summary>Reads a vehicle gauge, in the invariant culture; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a vehicle gauge.</returns>
    public static bool TryParse(string? s, out VehicleGaugeSize result) => TryParse(s.AsSpan(), CultureInfo.InvariantCulture, out result);

    /// <summary>Reads a vehicle gauge; answers false instead of throwing.</summary>
    /// <param name="s">The text; may be null.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a vehicle gauge.</returns>
    public static bool TryParse(string? s, IFormatProvider? provider, out VehicleGaugeSize result) => TryParse(s.AsSpan(), provider, out result);

    /// <summary>Reads a vehicle gauge; answers false instead of throwing.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">A culture. The culture is not used.</param>
    /// <param name="result">The size, or no size.</param>
    /// <returns>Whether the text is a vehicle gauge.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out VehicleGaugeSize result) => TryRead(s, provider, out result);

    /// <summary>The size as text, in the invariant culture.</summary>
    /// <returns>A text that <see cref="Parse(string, IFormatProvider)"/> reads back; <c>no size</c> where it is none, which no parser reads.</returns>
    public override string ToString() => ToString(null, CultureInfo.InvariantCulture);

    /// <summary>The size as text.</summary>
    /// <param name="format"><c>G</c> or nothing: <c>14 SAE</c>; <c>N</c>: <c>14</c>.</param>
    /// <param name="formatProvider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>The text.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => Write(format, formatProvider ?? CultureInfo.InvariantCulture);

    /// <summary>Writes the size as text into a buffer.</summary>
    /// <param name="destination">The buffer.</param>
    /// <param name="charsWritten">How many characters were written.</param>
    /// <param name="format"><c>G</c> or nothing: <c>14 SAE</c>; <c>N</c>: <c>14</c>.</param>
    /// <param name="provider">A culture; <c>null</c> means the invariant one.</param>
    /// <returns>Whether the buffer was long enough.</returns>
    /// <exception cref="FormatException">The format is not one of these.</exception>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        SizeText.TryCopy(ToString(format.ToString(), provider), destination, out charsWritten);
}
