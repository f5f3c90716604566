using System.Text;

namespace SolarEconomics;

/// <summary>How a table with days in its rows and times of the day in its columns is laid out.</summary>
internal sealed record DayTableHead(Encoding Encoding, string[] Above, string[] Headers, CsvTable Table, IReadOnlyList<SlotGroup> Groups)
{
    private const int LinesLookedAt = 60;
    private const int RowsLookedAt = 400;

    /// <summary>Quotation marks above the rows that are never closed.</summary>
    internal IReadOnlyList<(int Line, int Field, string Raw)> NeverClosed { get; private init; } = [];

    /// <summary>The head of such a table; <see langword="null"/> where the file is none.</summary>
    internal static DayTableHead? Find(RecordFile file)
    {
        var encoding = CsvText.EncodingOf(file.Head);
        var neverClosed = new List<(int Line, int Field, string Raw)>();
        var lines = CsvText.HeadLines(file, encoding, (line, field, raw) => neverClosed.Add((line, field, raw)));
        for (var line = 0; line < Math.Min(lines.Count - 1, LinesLookedAt); line++)
        {
            if (lines[line].Length < SlotHeaders.Fewest * 2) continue;
            foreach (var delimiter in CsvSniff.Delimiters)
            {
                var headers = CsvText.Fields(lines[line], delimiter);
                if (headers.Length <= SlotHeaders.Fewest || SlotHeaders.FindAll(headers) is not { Count: > 0 } groups) continue;
                var rows = lines.Skip(line + 1).Take(RowsLookedAt).Where(l => !string.IsNullOrWhiteSpace(l)).Select(l => CsvText.Fields(l, delimiter)).ToList();
                var stamp = DateColumn(rows, headers.Length, groups);
                if (stamp < 0) continue;
                var dated = rows.FindAll(r => stamp < r.Length && IsDay(r[stamp]));
                return new DayTableHead(encoding, [.. lines.Take(line)], headers, new CsvTable(delimiter, stamp, line + 2, dated), groups)
                {
                    NeverClosed = [.. neverClosed.Where(n => n.Line < line + 2)],
                };
            }
        }
        return null;
    }

    /// <summary>Fields that are neither the date nor an interval.</summary>
    internal IEnumerable<int> OtherColumns
    {
        get
        {
            var slots = Groups.SelectMany(g => g.Slots.Select(s => s.Column)).ToHashSet();
            return Enumerable.Range(0, Headers.Length).Where(i => i != Table.StampIndex && !slots.Contains(i));
        }
    }

    private static int DateColumn(List<string[]> rows, int fields, IReadOnlyList<SlotGroup> groups)
    {
        var slots = groups.SelectMany(g => g.Slots.Select(s => s.Column)).ToHashSet();
        var (best, most) = (-1, 0);
        for (var i = 0; i < fields; i++)
        {
            if (slots.Contains(i)) continue;
            var index = i;
            var days = rows.Count(r => index < r.Length && IsDay(r[index]));
            if (days > most) (best, most) = (i, days);
        }
        return best;
    }

    /// <summary>Whether a field is a day in any order; a number is one only where it is written as 20240301.</summary>
    private static bool IsDay(string field) =>
        (StampText.TryRead(field, DateOrder.DayMonthYear, out var stamp) || StampText.TryRead(field, DateOrder.MonthDayYear, out stamp)) && stamp.Fineness is StampFineness.Day or StampFineness.Time;
}
