using System.Globalization;
using System.Text;

namespace SolarEconomics;

/// <summary>Decides how the times of a table are written.</summary>
internal static class StampSniff
{
    private const long FirstUnixSecond = 315_532_800;      // 1980
    private const long LastUnixSecond = 7_258_118_400;     // 2200

    /// <summary>Whether a field is a time in any of the forms that are read.</summary>
    internal static bool IsStamp(string field) =>
        StampText.TryRead(field, DateOrder.DayMonthYear, out _) || StampText.TryRead(field, DateOrder.MonthDayYear, out _)
        || UnixForm(field) is not null;

    /// <summary>Form of a whole number that may be a Unix time; ten digits are seconds, thirteen are milliseconds.</summary>
    private static StampForm? UnixForm(string field)
    {
        if (!UnixText.TryRead(field, out var number, out _)) return null;
        if (number is >= FirstUnixSecond and < LastUnixSecond) return StampForm.UnixSeconds;
        return number is >= FirstUnixSecond * 1000 and < LastUnixSecond * 1000 ? StampForm.UnixMilliseconds : null;
    }

    internal static StampColumns Find(RecordFile file, Encoding encoding, CsvTable table, string[] headers, ReadOptions options)
    {
        var stamps = table.Rows.Select(r => r[table.StampIndex]).ToList();
        var header = table.StampIndex < headers.Length ? headers[table.StampIndex] : "";
        var edge = options.StampEdge != StampEdge.FromRecord ? options.StampEdge
            : HeaderWords.NamesEnd(header) ? StampEdge.End : StampEdge.Start;
        if (table.Parts is { } parts) return new StampColumns(table.StampIndex, StampForm.Text) { Edge = edge, Parts = parts, Fineness = parts.Fineness };
        if (options.SerialDates != SerialDays.NotToldYet && Nearly(table, r => SerialDates.IsSerial(r[table.StampIndex])))
            return SerialDates.Columns(table, options.SerialDates) with { Edge = edge };
        if (Nearly(table, r => UnixForm(r[table.StampIndex]) is not null && !IsTextStamp(r[table.StampIndex])))
            return new StampColumns(table.StampIndex, UnixForm(stamps.First(s => UnixForm(s) is not null))!.Value) { Edge = edge, EndIndex = EndIndex(table) };
        var order = options.DateOrder != DateOrder.FromRecord ? options.DateOrder : OrderOf(file, encoding, table, stamps);
        // The most common form decides: some programs leave the time out at midnight, and a broken row decides nothing.
        var fineness = stamps.Select(s => StampText.TryRead(s, order, out var stamp) ? stamp : (Stamp?)null).OfType<Stamp>()
            .GroupBy(s => s.Fineness).OrderByDescending(g => g.Count()).Select(g => g.Key).FirstOrDefault();
        var timeIndex = fineness == StampFineness.Day ? TimeIndex(table) : -1;
        if (options.StampEdge == StampEdge.FromRecord && timeIndex >= 0 && timeIndex < headers.Length && HeaderWords.NamesEnd(headers[timeIndex])) edge = StampEdge.End;
        // A day's last time written as 24:00 is an end: nothing starts there that would not be written as 00:00 of the next day.
        var saysTwentyFour = options.StampEdge == StampEdge.FromRecord && edge != StampEdge.End && (timeIndex >= 0 || EndIndex(table) < 0) && EndsAtTwentyFour(table, timeIndex >= 0 ? timeIndex : table.StampIndex);
        if (saysTwentyFour) edge = StampEdge.End;
        if (timeIndex < 0 && fineness == StampFineness.Day && TimePartsSniff.BesideDate(table, headers) is { } beside)
            return new StampColumns(table.StampIndex, StampForm.Text) { Order = order, Edge = edge, Parts = beside, Fineness = StampFineness.Time };
        return new StampColumns(table.StampIndex, StampForm.Text)
        {
            Order = order,
            Edge = edge,
            SaysTwentyFour = saysTwentyFour,
            TimeIndex = timeIndex,
            Fineness = timeIndex >= 0 ? StampFineness.Time : fineness,
            EndIndex = timeIndex >= 0 ? -1 : EndIndex(table),
        };
    }

    private static bool EndsAtTwentyFour(CsvTable table, int index)
    {
        var times = table.Rows.Where(r => index < r.Length).Select(r => r[index].AsSpan().Trim() is var t && t.LastIndexOfAny(' ', 'T') is var at ? t[(at + 1)..].ToString() : "").ToList();
        return times.Exists(t => t.StartsWith("24:00", StringComparison.Ordinal)) && !times.Exists(t => t.StartsWith("00:00", StringComparison.Ordinal) || t is "0:00");
    }

    private static bool IsTextStamp(string field) => StampText.TryRead(field, DateOrder.YearMonthDay, out _);

    private static int TimeIndex(CsvTable table)
    {
        var next = table.StampIndex + 1;
        return Nearly(table, r => next < r.Length && StampText.TryTime(r[next], out _) && r[next].Contains(':', StringComparison.Ordinal)) ? next : -1;
    }

    private static int EndIndex(CsvTable table)
    {
        var next = table.StampIndex + 1;
        return Nearly(table, r => next < r.Length && IsStamp(r[next])) ? next : -1;
    }

    /// <summary>Whether nine rows of ten are so: a broken row must not change how the others are read.</summary>
    private static bool Nearly(CsvTable table, Func<string[], bool> test) => table.Rows.Count(test) * 10 >= table.Rows.Count * 9;

    /// <summary>The order of day and month: by a year in front, a month's name, dots, or a number above 12 anywhere in the file.</summary>
    private static DateOrder OrderOf(RecordFile file, Encoding encoding, CsvTable table, List<string> stamps)
    {
        if (stamps.TrueForAll(s => !DependsOnOrder(s))) return DateOrder.YearMonthDay;
        // A date with dots is written day first wherever it is written with dots.
        if (stamps.Exists(s => DependsOnOrder(s) && HasDotAfterDay(s))) return DateOrder.DayMonthYear;
        var shown = Shown(stamps);
        // The lines looked at first may end before the first day above 12.
        if (shown == DateOrder.FromRecord) shown = Shown(AllStamps(file, encoding, table));
        return shown != DateOrder.FromRecord && !MayBeginWithShortYear(stamps) ? shown : throw Throw.AmbiguousDates(file.Name, stamps, table.LineOf, table.StampIndex + 1);
    }

    private static bool HasDotAfterDay(string stamp)
    {
        var day = stamp.AsSpan(Math.Max(0, stamp.AsSpan().IndexOfAnyInRange('0', '9')));
        return day.IndexOf('.') is 1 or 2;
    }

    /// <summary>The order that numbers above 12 show; <see cref="DateOrder.FromRecord"/> where none does, or nearly as many show the other.</summary>
    internal static DateOrder Shown(IEnumerable<string> stamps)
    {
        var (days, months) = (0, 0);
        foreach (var stamp in stamps)
        {
            var dayFirst = StampText.TryRead(stamp, DateOrder.DayMonthYear, out _);
            var monthFirst = StampText.TryRead(stamp, DateOrder.MonthDayYear, out _);
            if (dayFirst && !monthFirst) days++;
            if (monthFirst && !dayFirst) months++;
        }
        // A few broken dates may show the other order; as many as one in twenty leave it open.
        if (Math.Min(days, months) * 20 > Math.Max(days, months) || days == months) return DateOrder.FromRecord;
        return days > months ? DateOrder.DayMonthYear : DateOrder.MonthDayYear;
    }

    /// <summary>Whether the last of three short numbers changes more often than the first: of 24/05/01 and 24/05/02 the first is the year.</summary>
    private static bool MayBeginWithShortYear(List<string> stamps)
    {
        var parts = stamps.Select(s => s.Trim().Split(' ', 'T')[0].Split('/', '-', '.')).Where(p => p.Length == 3 && Array.TrueForAll(p, n => n.Length <= 2)).ToList();
        return parts.Count > 0 && parts.DistinctBy(p => p[2], StringComparer.Ordinal).Count() > parts.DistinctBy(p => p[0], StringComparer.Ordinal).Count();
    }

    private static IEnumerable<string> AllStamps(RecordFile file, Encoding encoding, CsvTable table)
    {
        using var reader = new StreamReader(file.Open(), encoding);
        var rows = new WholeRows(new TextLines(reader).Next, [table.Delimiter], l => CsvSniff.MayBeRow(l, table.Delimiter, table.StampIndex)) { FirstLine = table.FirstLine };
        while (rows.Next() is { } line)
        {
            var fields = CsvText.Fields(line, table.Delimiter);
            if (table.StampIndex < fields.Length) yield return fields[table.StampIndex];
        }
    }

    /// <summary>Whether a text needs the order of day and month to be told before it is a date.</summary>
    private static bool DependsOnOrder(string stamp) =>
        !StampText.TryRead(stamp, DateOrder.YearMonthDay, out _)
        && (StampText.TryRead(stamp, DateOrder.DayMonthYear, out _) || StampText.TryRead(stamp, DateOrder.MonthDayYear, out _));
}
