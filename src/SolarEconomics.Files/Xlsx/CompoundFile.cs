using System.Buffers.Binary;
using System.Text;

namespace SolarEconomics.Files;

/// <summary>A file of the compound form that came before the zip: workbooks before 2007, and every workbook locked by a password. Only the names of its parts are read.</summary>
/// <remarks>Source: files-cfb (the open specification of the compound file form, from memory).</remarks>
internal static class CompoundFile
{
    private const int HeaderBytes = 512;
    private const int EntryBytes = 128;
    private const int FirstFatInHeader = 76;
    private const int FatsInHeader = 109;

    /// <summary>A directory of a workbook has a dozen parts; a chain that goes on is broken.</summary>
    private const int MostSectors = 256;

    /// <summary>How such a file begins.</summary>
    internal static ReadOnlySpan<byte> Mark => [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    /// <summary>Names of its parts, as far as they can be read; none of a file that is cut off or broken.</summary>
    internal static IReadOnlyList<string> Parts(Stream stream)
    {
        var header = new byte[HeaderBytes];
        if (stream.ReadAtLeast(header, HeaderBytes, throwOnEndOfStream: false) < HeaderBytes) return [];
        var shift = BinaryPrimitives.ReadUInt16LittleEndian(header.AsSpan(30));
        if (shift is not (9 or 12)) return [];
        var sector = new byte[1 << shift];
        var names = new List<string>();
        var next = BinaryPrimitives.ReadInt32LittleEndian(header.AsSpan(48));
        for (var turn = 0; next >= 0 && turn < MostSectors && TryRead(stream, next, sector); turn++)
        {
            for (var at = 0; at < sector.Length; at += EntryBytes) Add(sector.AsSpan(at, EntryBytes), names);
            next = Next(stream, header, next, sector);
        }
        return names;
    }

    private static void Add(ReadOnlySpan<byte> entry, List<string> names)
    {
        // Bytes of the name with the zero at its end.
        var length = BinaryPrimitives.ReadUInt16LittleEndian(entry[64..]);
        if (length is >= 2 and <= 64) names.Add(Encoding.Unicode.GetString(entry[..(length - 2)]));
    }

    /// <summary>The sector that follows, from the table of sectors; below 0 at the end of a chain.</summary>
    private static int Next(Stream stream, ReadOnlySpan<byte> header, int current, byte[] sector)
    {
        var perSector = sector.Length / sizeof(int);
        var table = current / perSector;
        if (table >= FatsInHeader) return -1;
        var at = BinaryPrimitives.ReadInt32LittleEndian(header[(FirstFatInHeader + (table * sizeof(int)))..]);
        return at >= 0 && TryRead(stream, at, sector) ? BinaryPrimitives.ReadInt32LittleEndian(sector.AsSpan(current % perSector * sizeof(int))) : -1;
    }

    private static bool TryRead(Stream stream, int number, byte[] sector)
    {
        var from = (number + 1L) * sector.Length;
        if (from >= stream.Length) return false;
        stream.Position = from;
        Array.Clear(sector);
        return stream.ReadAtLeast(sector, sector.Length, throwOnEndOfStream: false) > 0;
    }
}
