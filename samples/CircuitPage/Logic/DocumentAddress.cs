using System.Buffers.Text;
using System.IO.Compression;
using System.Text;

namespace CircuitPage;

/// <summary>A whole JSON document in the address: compressed, then base64 for addresses.</summary>
internal static class DocumentAddress
{
    public const string Prefix = "document=";

    // An address that mail and chat programs still carry.
    public const int Longest = 8000;

    private const int LongestDocument = 1 << 20;

    /// <returns>The address without the #; null where it would be too long to send.</returns>
    public static string? Write(string document)
    {
        using MemoryStream packed = new();
        using (DeflateStream deflate = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            deflate.Write(Encoding.UTF8.GetBytes(document));
        }

        string text = Prefix + Base64Url.EncodeToString(packed.ToArray());
        return text.Length <= Longest ? text : null;
    }

    /// <returns>The document; null where the address holds none.</returns>
    public static string? Read(string address)
    {
        if (!address.StartsWith(Prefix, StringComparison.Ordinal))
        {
            return null;
        }

        try
        {
            using DeflateStream inflate = new(new MemoryStream(Base64Url.DecodeFromChars(address.AsSpan(Prefix.Length))), CompressionMode.Decompress);
            byte[] bytes = new byte[LongestDocument];
            int length = inflate.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return length == 0 ? null : new UTF8Encoding(false, true).GetString(bytes, 0, length);
        }
        catch (Exception damaged) when (damaged is FormatException or InvalidDataException or DecoderFallbackException)
        {
            return null;
        }
    }
}
