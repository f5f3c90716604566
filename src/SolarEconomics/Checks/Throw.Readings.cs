using System.Globalization;
using NodaTime;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static RecordException NoFile(string path) => Missing(path, "a file of readings");

    internal static RecordException NoPriceFile(string path) => Missing(path, "a table of starts and prices");

    private static RecordException Missing(string path, string expected) =>
        Refused(path.Length == 0 ? "no name" : path, $"no file (looked in {Directory.GetCurrentDirectory()})", $"{expected}. Check the name and the folder");

    internal static RecordException FolderInsteadOfFile(string path) =>
        Refused(path, "a folder", "a file of readings. Name the file inside it");

    internal static RecordException EmptyFile(string path) =>
        Refused(path, "an empty file", "readings. Export it again, or leave it out");

    internal static RecordException FileNotReadable(string path, Exception why) =>
        Refused(path, $"a file that could not be read ({why.Message.TrimEnd('.')})", "one that may be opened. Close the program that holds it, or copy it");

    internal static RecordException UnknownFormat(RecordFile file, IReadOnlyList<IRecordReader> readers) =>
        Refused(file.Name, "a file of no known format", $"one of: {string.Join(", ", readers.Select(r => r.Format))}. Export the readings as a table with a header, or as NEM12 or ESPI", raw: BeginOf(file));

    internal static UnknownNameException UnknownUnit(string unit) =>
        new($"Found unit \"{unit}\", expected one of {string.Join(", ", EnergyUnit.Names)}.");

    internal static RecordException NeedsZone(string file, int line, int column, string raw) =>
        Refused(file, $"the time \"{ProblemList.Shorten(raw)}\" without an offset", "to be told its clock. Give the time zone (on the command line: --zone Europe/Dublin)", line, column, raw);

    internal static RecordException NothingToRead(string file, string found, string expected, IReadOnlyList<Problem> problems) =>
        Refused(file, found, expected, problems: problems);

    internal static RecordException NoTable(string file, IReadOnlyList<string> lines) =>
        Refused(file, $"no line with a time and a number (it begins \"{ProblemList.Shorten(lines.Count > 0 ? lines[0] : "")}\")",
            "a table such as: start,import (kWh),export (kWh). Export the readings with one time in each row", 1, 0, lines.Count > 0 ? lines[0] : "");

    internal static UnknownNameException NoSuchColumn(string file, string header, string[] headers) =>
        new($"{file}: found no column \"{header}\", expected one of its headers, such as {Nearest.List(header, headers)}.");

    internal static RecordException MixedDecimalMarks(string file, Cell comma, Cell point) =>
        Refused(file, $"\"{comma.Raw}\" with a decimal comma beside \"{point.Raw}\" with a decimal point", "one decimal mark in a file. Export it with one", comma.Line, comma.Column, comma.Raw);

    internal static RecordException AmbiguousNumber(string file, Cell cell, char mark)
    {
        var whole = cell.Raw.Replace(mark.ToString(), "", StringComparison.Ordinal);
        return Refused(file, $"\"{cell.Raw}\", which is {whole} if \"{mark}\" parts thousands and {cell.Raw.Replace(',', '.')} if it is the decimal mark, and no number of the file tells",
            "one that does. Export it with another number of decimals", cell.Line, cell.Column, cell.Raw);
    }

    internal static RecordException AmbiguousDates(string file, IReadOnlyList<string> stamps, Func<int, int> lineOf, int column)
    {
        var row = 0;
        while (row < stamps.Count - 1 && !DiffersByOrder(stamps[row])) row++;
        StampText.TryRead(stamps[row], DateOrder.DayMonthYear, out var dayFirst);
        StampText.TryRead(stamps[row], DateOrder.MonthDayYear, out var monthFirst);
        return Refused(file, $"dates in which day and month could change places: \"{stamps[row]}\" is {Day(dayFirst)} with the day first and {Day(monthFirst)} with the month first",
            "a number above 12 somewhere to tell. Say DateOrder.DayMonthYear or DateOrder.MonthDayYear in the options", lineOf(row), column, stamps[row]);
    }

    private static bool DiffersByOrder(string stamp) =>
        StampText.TryRead(stamp, DateOrder.DayMonthYear, out var day) && StampText.TryRead(stamp, DateOrder.MonthDayYear, out var month) && day.LocalMs != month.LocalMs;

    internal static RecordException SerialDates(string file, int line, int column, string raw, Stamp since1900, Stamp since1904) =>
        Refused(file, $"\"{raw}\" where the time stands, a bare number: it is {Minute(since1900)} if it counts days as most workbooks do, from 1900, and {Minute(since1904)} if it counts from 1904",
            "dates. Say SerialDates = SerialDays.From1900 (or From1904) in the options, or give the column a date format and save the file again", line, column, raw);

    private static RecordException Refused(string file, string found, string expected, int line = 0, int column = 0, string raw = "", IReadOnlyList<Problem>? problems = null) =>
        new(new Problem(file, line, column, ProblemList.Shorten(raw), found, expected, Severity.Lost), problems);

    /// <summary>The first printable letters of a file, which often say what it is.</summary>
    private static string BeginOf(RecordFile file) =>
        string.Concat(System.Text.Encoding.Latin1.GetString(file.Head[..Math.Min(file.Head.Length, 24)]).Select(c => c is >= ' ' and <= '~' ? c : '.'));

    private static string Minute(Stamp stamp) => StampClock.LocalOf(stamp.LocalMs).ToString("d MMMM uuuu HH:mm", CultureInfo.InvariantCulture);

    private static string Day(Stamp stamp) => StampClock.LocalOf(stamp.LocalMs).ToString("d MMMM uuuu", CultureInfo.InvariantCulture);

    internal static InvalidOperationException NothingInCommon(string first, string second) =>
        new($"Found no time at which both \"{first}\" and \"{second}\" were read, expected intervals with the same starts in both. Bring them to one length by InStepsOf, and check their zones.");

    internal static InvalidOperationException NothingToRealign(string channel, Instant before) =>
        new($"Found no energy of \"{channel}\" before {before}, expected the stretch of a device without its clock. Name a time after its last interval.");

    internal static InvalidOperationException RealignedOverOthers(string channel, Instant at) =>
        new($"Found other readings of \"{channel}\" at {at}, where the realigned stretch would lie, expected a gap. Name another first day.");

    internal static InvalidOperationException TooManyGaps(string channel, int most) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"Found gaps in \"{channel}\" of more than {most} intervals, expected a record of one stretch of time. A device that lost its clock writes 1970 or 2000: leave those rows out."));

    internal static InvalidOperationException NothingToWrite(int counters) => new(counters == 0
        ? "Found no channel of readings, expected one at least to write."
        : $"Found {counters} counters and no channel of intervals, expected intervals for this table. Write typed readings of counters by WriteCountersCsv.");

    internal static InvalidOperationException DifferentIntervals(string channel, Instant start) =>
        new($"Found an interval of \"{channel}\" at {NodaTime.Text.InstantPattern.General.Format(start)} with another end than that of the channel before, expected one length for a table. Bring them to one by InStepsOf, or write them apart.");
}
