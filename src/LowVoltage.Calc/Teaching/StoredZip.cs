using System.Text;

namespace LowVoltage.Calc.Teaching;

/// <summary>A zip file whose entries are stored as they are, with fixed times.</summary>
/// <remarks>
/// The framework's own writer puts the operating system into each entry, and its deflate differs between versions; these bytes are the same everywhere. Format: the public application note
/// of the zip file (version 6.3), with neither compression nor ZIP64.
/// </remarks>
internal static class StoredZip
{
    private const ushort VersionNeeded = 20;
    private const ushort NamesAreUtf8 = 0x0800;

    // 1 January 1980, midnight: the first date that the format can tell.
    private const ushort FirstDate = 0x0021;

    internal static byte[] Write(IReadOnlyList<(string Name, byte[] Bytes)> files)
    {
        using MemoryStream stream = new();
        using BinaryWriter writer = new(stream);
        List<(byte[] Name, byte[] Bytes, uint Sum, uint Offset)> entries = [];
        foreach ((string name, byte[] bytes) in files)
        {
            (byte[] Name, byte[] Bytes, uint Sum, uint Offset) entry = (Encoding.UTF8.GetBytes(name), bytes, Crc32(bytes), (uint)stream.Position);
            entries.Add(entry);
            writer.Write(0x04034B50u);
            Common(writer, entry.Name, bytes, entry.Sum);
            writer.Write(entry.Name);
            writer.Write(bytes);
        }

        uint start = (uint)stream.Position;
        foreach ((byte[] name, byte[] bytes, uint sum, uint offset) in entries)
        {
            writer.Write(0x02014B50u);
            writer.Write(VersionNeeded);
            Common(writer, name, bytes, sum);
            // No comment, first disk, no attributes inside or outside.
            writer.Write((ushort)0);
            writer.Write((ushort)0);
            writer.Write((ushort)0);
            writer.Write(0u);
            writer.Write(offset);
            writer.Write(name);
        }

        uint size = (uint)stream.Position - start;
        writer.Write(0x06054B50u);
        writer.Write(0u);
        writer.Write((ushort)entries.Count);
        writer.Write((ushort)entries.Count);
        writer.Write(size);
        writer.Write(start);
        writer.Write((ushort)0);
        writer.Flush();
        return stream.ToArray();
    }

    /// <summary>The checksum of the format (polynomial 0xEDB88320, reflected).</summary>
    internal static uint Crc32(byte[] bytes)
    {
        uint sum = 0xFFFFFFFF;
        foreach (byte next in bytes)
        {
            sum ^= next;
            for (int bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) != 0 ? (sum >> 1) ^ 0xEDB88320 : sum >> 1;
            }
        }

        return ~sum;
    }

    // What the header before an entry and that in the directory have alike.
    private static void Common(BinaryWriter writer, byte[] name, byte[] bytes, uint sum)
    {
        writer.Write(VersionNeeded);
        writer.Write(NamesAreUtf8);
        writer.Write((ushort)0);
        writer.Write((ushort)0);
        writer.Write(FirstDate);
        writer.Write(sum);
        writer.Write((uint)bytes.Length);
        writer.Write((uint)bytes.Length);
        writer.Write((ushort)name.Length);
        writer.Write((ushort)0);
    }
}
