using System.Globalization;
using NodaTime;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static RecordException NoFile(string path) =>
        new($"Found no file \"{path}\" (looked in {Directory.GetCurrentDirectory()}), expected a file of readings. Check the name and the folder.");

    internal static RecordException FolderInsteadOfFile(string path) =>
        new($"Found a folder at \"{path}\", expected a file of readings. Name the file inside it.");

    internal static RecordException EmptyFile(string path) =>
        new($"{path}: found an empty file, expected readings. Export it again, or leave it out.");

    internal static RecordException FileNotReadable(string path, Exception why) =>
        new($"{path}: found a file that could not be read ({why.Message.TrimEnd('.')}), expected one that may be opened. Close the program that holds it, or copy it.");

    internal static RecordException UnknownFormat(RecordFile file, IReadOnlyList<IRecordReader> readers) =>
        new($"{file.Name}: found a file of no known format, expected one of: {string.Join(", ", readers.Select(r => r.Format))}. " +
            "Export the readings as a table with a header, or as NEM12 or ESPI.");

    internal static UnknownNameException UnknownUnit(string unit) =>
        new($"Found unit \"{unit}\", expected one of {string.Join(", ", EnergyUnit.Names)}.");

    internal static RecordException NeedsZone(string file, int line, string raw) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{file}, line {line}: found the time \"{raw}\" without an offset, expected to be told its clock. Give the time zone (on the command line: --zone Europe/Dublin)."));

    internal static RecordException NothingToRead(string file, string found, string expected, IReadOnlyList<Problem> problems) =>
        new($"{file}: found {found}, expected {expected}", problems);

    internal static RecordException NoTable(string file, IReadOnlyList<string> lines) =>
        new($"{file}: found no line with a time and a number (it begins \"{ProblemList.Shorten(lines.Count > 0 ? lines[0] : "")}\"), " +
            "expected a table such as: start,import (kWh),export (kWh). Export the readings with one time in each row.");

    internal static UnknownNameException NoSuchColumn(string file, string header, string[] headers) =>
        new($"{file}: found no column \"{header}\", expected one of its headers, such as {Nearest.List(header, headers)}.");

    internal static RecordException MixedDecimalMarks(string file) =>
        new($"{file}: found numbers with a decimal comma beside numbers with a decimal point, expected one decimal mark in a file. Export it with one.");

    internal static RecordException AmbiguousNumber(string file, string raw, char mark)
    {
        var whole = raw.Replace(mark.ToString(), "", StringComparison.Ordinal);
        return new($"{file}: found \"{raw}\", which is {whole} if \"{mark}\" parts thousands and {raw.Replace(',', '.')} if it is the decimal mark, and no number of the file tells; " +
            "expected one that does. Export it with another number of decimals.");
    }

    internal static RecordException AmbiguousDates(string file, int firstLine, IReadOnlyList<string> stamps)
    {
        var differs = stamps.Select((s, i) => (Text: s, Row: i)).First(s =>
            StampText.TryRead(s.Text, DateOrder.DayMonthYear, out var d) && StampText.TryRead(s.Text, DateOrder.MonthDayYear, out var m) && d.LocalMs != m.LocalMs
            || s.Row == stamps.Count - 1).Text;
        StampText.TryRead(differs, DateOrder.DayMonthYear, out var dayFirst);
        StampText.TryRead(differs, DateOrder.MonthDayYear, out var monthFirst);
        return new(string.Create(CultureInfo.InvariantCulture,
            $"{file}, line {firstLine}: found dates in which day and month could change places: \"{differs}\" is {Day(dayFirst)} with the day first and {Day(monthFirst)} with the month first; ") +
            "expected a number above 12 somewhere to tell. Say DateOrder.DayMonthYear or DateOrder.MonthDayYear in the options.");
    }

    internal static RecordException SerialDates(string file, int line, string raw, Stamp since1900, Stamp since1904) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{file}, line {line}: found \"{raw}\" where the time stands, a bare number: it is {Minute(since1900)} if it counts days as most workbooks do, from 1900, and {Minute(since1904)} if it counts from 1904; ") +
            "expected dates. Say SerialDates = SerialDays.From1900 (or From1904) in the options, or give the column a date format and save the file again.");

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

    internal static InvalidOperationException DifferentIntervals(string channel, Instant start) =>
        new($"Found an interval of \"{channel}\" at {NodaTime.Text.InstantPattern.General.Format(start)} with another end than that of the channel before, expected one length for a table. Bring them to one by InStepsOf, or write them apart.");
}
