using System.Buffers;

namespace SolarEconomics.Files;

/// <summary>Cells of a sheet that are shown as one.</summary>
/// <param name="Left">First column, counted from 0.</param>
/// <param name="Right">Last column.</param>
/// <param name="Top">First row, counted from 1.</param>
/// <param name="Bottom">Last row.</param>
internal sealed record MergedArea(int Left, int Right, int Top, int Bottom)
{
    private static readonly byte[] Mark = "mergeCell"u8.ToArray();

    /// <summary>What its first cell holds, once its row was read.</summary>
    internal SheetCell? First { get; set; }

    /// <summary>The areas of a sheet from top to bottom. They stand behind its rows, so most sheets, which have none, are only searched for the word.</summary>
    internal static Queue<MergedArea> Of(WorkbookArchive book, WorkbookSheet sheet)
    {
        var areas = new List<MergedArea>();
        if (!IsMarked(book, sheet)) return new Queue<MergedArea>();
        using var xml = Xml.Open(book.OpenPart(sheet.Path));
        while (xml.Read())
            if (xml.Begins("mergeCell") && xml.Attribute("ref") is { } span && span.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon
                && SheetCell.TryPlace(span.AsSpan(0, colon), out var left, out var top) && SheetCell.TryPlace(span.AsSpan(colon + 1), out var right, out var bottom))
                areas.Add(new MergedArea(left, right, top, bottom));
        return new Queue<MergedArea>(areas.OrderBy(a => a.Top));
    }

    private static bool IsMarked(WorkbookArchive book, WorkbookSheet sheet)
    {
        var buffer = ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            using var part = book.OpenPart(sheet.Path);
            for (var kept = 0; part.Read(buffer, kept, buffer.Length - kept) is > 0 and var read;)
            {
                var known = buffer.AsSpan(0, kept + read);
                if (known.IndexOf(Mark) >= 0) return true;
                kept = Math.Min(Mark.Length, known.Length);
                known[^kept..].CopyTo(buffer);
            }
            return false;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }
}
