using System.Buffers;
using System.IO.Compression;

namespace SolarEconomics.Files;

/// <summary>Measures what a zip archive really unpacks to, whatever its directory says, and refuses one made to fill memory.</summary>
internal static class Unpacking
{
    /// <summary>Up to so much any archive may unpack to. Unit: bytes.</summary>
    private const long Harmless = 64L << 20;

    /// <summary>A workbook of the largest sheet stays below this. Unit: bytes.</summary>
    private const long Most = 1L << 30;

    /// <summary>Sheets of readings shrink ten to thirty times; an archive that shrinks more than this is made to.</summary>
    private const long MostTimes = 100;

    private const int MostEntries = 10_000;

    internal static void Check(Stream stream, string file, CancellationToken cancel)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        if (archive.Entries.Count == 0) throw Throw.EmptyArchive(file);
        if (archive.Entries.Count > MostEntries) throw Throw.UnpacksTooLarge(file);
        if (archive.GetEntry("xl/workbook.bin") is not null) throw Throw.OtherWorkbook(file, "a binary workbook (.xlsb)");
        if (archive.GetEntry("content.xml") is not null && archive.GetEntry("mimetype") is not null) throw Throw.OtherWorkbook(file, "an OpenDocument file (.ods)");
        if (!archive.Entries.Any(e => e.FullName.StartsWith("xl/", StringComparison.OrdinalIgnoreCase))) throw Throw.NoWorkbook(file, archive.Entries[0].FullName);
        var buffer = ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            var unpacked = 0L;
            foreach (var entry in archive.Entries)
            {
                using var content = entry.Open();
                while (content.Read(buffer) is > 0 and var read)
                {
                    cancel.ThrowIfCancellationRequested();
                    unpacked += read;
                    if (unpacked > Most || (unpacked > Harmless && unpacked > MostTimes * stream.Length)) throw Throw.UnpacksTooLarge(file);
                }
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }
}
