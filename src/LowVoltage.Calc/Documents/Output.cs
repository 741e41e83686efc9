using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace LowVoltage.Calc.Documents;

/// <summary>Writing: members by what describes them, numbers as the shortest text that reads back as the same double.</summary>
internal static class Output
{
    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,

        // Letters such as ² and ° as they are.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    /// <summary>What a writer writes, with line feeds alone on every system.</summary>
    internal static string Text(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> buffer = new(4096);
        using (Utf8JsonWriter json = new(buffer, Readable))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan).Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    internal static void Put(this Utf8JsonWriter json, Member<double> member, double value) => json.WriteNumber(member.Encoded, value);

    internal static void Put(this Utf8JsonWriter json, Member<int> member, int value) => json.WriteNumber(member.Encoded, value);

    internal static void Put(this Utf8JsonWriter json, Member<string> member, string value) => json.WriteString(member.Encoded, value);

    internal static void Put(this Utf8JsonWriter json, Member<bool> member, bool value) => json.WriteBoolean(member.Encoded, value);

    /// <summary>Writes a value that is not the one that is meant where the member is left out.</summary>
    internal static void PutUnless(this Utf8JsonWriter json, Member<double> member, double value, double usual)
    {
        if (!value.Equals(usual))
        {
            json.WriteNumber(member.Encoded, value);
        }
    }

    internal static void PutUnless(this Utf8JsonWriter json, Member<int> member, int value, int usual)
    {
        if (value != usual)
        {
            json.WriteNumber(member.Encoded, value);
        }
    }

    internal static void PutIf(this Utf8JsonWriter json, Member<double> member, double? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(member.Encoded, known);
        }
    }

    internal static void PutIf(this Utf8JsonWriter json, Member<int> member, int? value)
    {
        if (value is { } known)
        {
            json.WriteNumber(member.Encoded, known);
        }
    }

    internal static void PutIf(this Utf8JsonWriter json, Member<bool> member, bool value)
    {
        if (value)
        {
            json.WriteBoolean(member.Encoded, true);
        }
    }

    internal static void PutIf(this Utf8JsonWriter json, Member<string> member, string value)
    {
        if (value.Length > 0)
        {
            json.WriteString(member.Encoded, value);
        }
    }

    internal static void PutKind(this Utf8JsonWriter json, string kind) => json.WriteString(KindForm.Kind, kind);

    /// <summary>Writes a member that a part writes.</summary>
    internal static void Put<T>(this Utf8JsonWriter json, Member<T> member, T value, Action<Utf8JsonWriter, T> write)
    {
        json.WritePropertyName(member.Encoded);
        write(json, value);
    }

    internal static void PutAll<T>(this Utf8JsonWriter json, Member<T[]> member, IEnumerable<T> values, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(member.Encoded);
        foreach (T value in values)
        {
            write(json, value);
        }

        json.WriteEndArray();
    }

    internal static void PutAll(this Utf8JsonWriter json, Member<double[]> member, IEnumerable<double> values) => json.PutAll(member, values, (to, value) => to.WriteNumberValue(value));

    internal static void PutAll(this Utf8JsonWriter json, Member<string[]> member, IEnumerable<string> values) => json.PutAll(member, values, (to, value) => to.WriteStringValue(value));

    /// <summary>A number that a calculation takes to a stored one: the guess where it does, else a neighbour of it that does.</summary>
    /// <remarks>What is stored came from some number by that calculation, so one is there within a few units in the last place; the rounded guess is tried first, as the plainer one.</remarks>
    internal static double Undone(double guess, double stored, Func<double, double> calculation)
    {
        double plain = double.Parse(guess.ToString("G15", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture), below = guess, above = guess;
        if (calculation(plain).Equals(stored))
        {
            return plain;
        }

        for (int i = 0; i < 16; i++)
        {
            if (calculation(above).Equals(stored))
            {
                return above;
            }

            if (calculation(below).Equals(stored))
            {
                return below;
            }

            above = Math.BitIncrement(above);
            below = Math.BitDecrement(below);
        }

        return guess;
    }
}
