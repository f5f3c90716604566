using System.Text;

namespace SolarEconomics;

/// <summary>Days that a spreadsheet wrote anew as it saved the file: 2024-03-01, 1/03/2024 or 3/1/2024 in place of 20240301.</summary>
internal static class Nem12Dates
{
    private const int MostLength = 10;

    /// <summary>Whether a field has the marks of such a day.</summary>
    internal static bool IsWrittenAnew(ReadOnlySpan<byte> field) => field.Length is >= 6 and <= MostLength && field.IndexOfAny((byte)'/', (byte)'-', (byte)'.') > 0;

    /// <summary>The order of their parts: as the options say, a year in front, or a number above 12 anywhere in the file shows.</summary>
    /// <exception cref="RecordException">Day and month could change places on every day of the file.</exception>
    internal static DateOrder OrderOf(string file, ReadOptions options, Func<Stream> open)
    {
        using var stream = open();
        // The first day of most files ends the search: a small block holds it.
        var lines = new Utf8Lines(stream, blockBytes: 1 << 12);
        var (stamps, numbers) = (new List<string>(), new List<int>());
        while (lines.TryNext(out var line))
        {
            if (DayOf(line) is not { } day) continue;
            // A file is written by one program: its first day tells whether any of them can be so.
            if (!IsWrittenAnew(Encoding.UTF8.GetBytes(day))) return DateOrder.YearMonthDay;
            stamps.Add(day);
            numbers.Add(lines.Line);
        }
        if (stamps.TrueForAll(s => StampText.TryRead(s, DateOrder.YearMonthDay, out _))) return DateOrder.YearMonthDay;
        if (options.DateOrder != DateOrder.FromRecord) return options.DateOrder;
        var shown = StampSniff.Shown(stamps);
        return shown != DateOrder.FromRecord ? shown : throw Throw.AmbiguousDates(file, stamps, row => numbers[row], 2);
    }

    internal static string Words(DateOrder order) => order switch
    {
        DateOrder.DayMonthYear => "with the day first",
        DateOrder.MonthDayYear => "with the month first",
        _ => "with the year first",
    };

    private static string? DayOf(ReadOnlySpan<byte> line)
    {
        var text = Encoding.UTF8.GetString(line[..Math.Min(line.Length, 40)]).Replace("\"", "", StringComparison.Ordinal);
        return text.StartsWith("300,", StringComparison.Ordinal) ? text.Split(',')[1].Trim() : null;
    }
}
