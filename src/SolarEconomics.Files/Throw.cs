using System.Globalization;

namespace SolarEconomics.Files;

/// <summary>The messages of this layer.</summary>
internal static class Throw
{
    /// <summary>Whether an exception says that bytes of a file are not what its format asks for. What the machine or the caller did is not damage.</summary>
    internal static bool IsDamage(Exception e) =>
        e is not (RecordException or UnknownNameException or OperationCanceledException or OutOfMemoryException or UnauthorizedAccessException or FileNotFoundException or DirectoryNotFoundException);

    internal static RecordException Damaged(string file, string format, Exception why) =>
        new($"{file}: found a damaged {format} file ({why.Message.ReplaceLineEndings(" ").TrimEnd('.', ' ')}), expected one that can be opened. Save or export it again.");

    internal static RecordException EmptyArchive(string file) =>
        new($"{file}: found a zip archive with nothing in it, expected a workbook. Save it again.");

    internal static RecordException NoWorkbook(string file, string first) =>
        new($"{file}: found a zip archive of other files (the first is \"{first}\"), expected a workbook (XLSX). Unpack it, and give the files inside.");

    internal static RecordException UnpacksTooLarge(string file) =>
        new($"{file}: found an archive that unpacks to far more than a workbook of readings, expected at most 1 GiB and a hundred times its size. Export the readings as CSV.");

    internal static RecordException NoTable(string file, string what, string where) =>
        new($"{file}: found {what} without any row of a time and a number (looked in {where}), expected a table of readings. Check which file was saved.");

    internal static RecordException TooMuch(string sheet) =>
        new($"{sheet}: found a sheet of more cells than a table of readings has, expected at most 1,048,576 rows and 20 million cells. Export the readings as CSV.");

    internal static RecordException TooManyRows(string file, long rows) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}: found a row group of {rows} rows, expected at most 20 million cells in one. Write it in smaller groups."));

    internal static RecordException NoFlatColumns(string file) =>
        new($"{file}: found a Parquet file without plain columns, expected one column of times and columns of numbers. Nested columns are not read.");

    internal static InvalidOperationException TooLongForSheet(int most) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found more than {most} intervals, expected as many as a sheet has rows. Write them as Parquet or CSV, or bring them to longer intervals by InStepsOf."));

    internal static InvalidOperationException NothingToWrite() =>
        new("Found no channel of energy in a known unit, expected one at least. Counters and unknown units are not written.");
}
