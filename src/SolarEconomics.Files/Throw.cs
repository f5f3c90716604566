using System.Globalization;
using Parquet.Schema;

namespace SolarEconomics.Files;

/// <summary>The messages of this layer.</summary>
internal static class Throw
{
    /// <summary>Whether an exception says that bytes of a file are not what its format asks for. What the machine or the caller did is not damage.</summary>
    internal static bool IsDamage(Exception e) =>
        e is not (RecordException or UnknownNameException or OperationCanceledException or OutOfMemoryException or UnauthorizedAccessException or FileNotFoundException or DirectoryNotFoundException);

    internal static RecordException Damaged(string file, string format, Exception why) =>
        Refused(file, $"a damaged {format} file ({why.Message.ReplaceLineEndings(" ").TrimEnd('.', ' ')})", "one that can be opened. Save or export it again");

    internal static RecordException EmptyArchive(string file) =>
        Refused(file, "a zip archive with nothing in it", "a workbook. Save it again");

    internal static RecordException NoWorkbook(string file, string first) =>
        Refused(file, $"a zip archive of other files (the first is \"{first}\")", "a workbook (XLSX). Unpack it, and give the files inside");

    internal static RecordException OldWorkbook(string file) =>
        Refused(file, "a workbook of the form before 2007 (.xls)", "XLSX. Open it and save it as XLSX or CSV");

    internal static RecordException LockedWorkbook(string file) =>
        Refused(file, "a workbook locked by a password", "one without. Open it with its password, and save it as XLSX or CSV without one");

    internal static RecordException OldFile(string file) =>
        Refused(file, "an office file of the form before 2007 in which no workbook is found", "a workbook (XLSX) or CSV. Open it and save it as one of them");

    internal static RecordException OtherWorkbook(string file, string form) =>
        Refused(file, $"{form}", "XLSX. Open it and save it as XLSX or CSV");

    internal static RecordException OnlyFormulas(string file, int formulas) =>
        Refused(file, string.Create(CultureInfo.InvariantCulture, $"{formulas} formulas whose values were not saved with them and no table without them"), "saved values. Open the workbook in the program that works them out, save it there, and read it again");

    internal static Problem SheetsLeftOut(string file, int sheets, int most) => new(file, 0, 0, "",
        string.Create(CultureInfo.InvariantCulture, $"{sheets} sheets"), string.Create(CultureInfo.InvariantCulture, $"at most {most}; what stands in the others was not counted. Save them as a workbook of their own"), Severity.Lost);

    internal static RecordException UnpacksTooLarge(string file) =>
        Refused(file, "an archive that unpacks to far more than a workbook of readings", "at most 1 GiB and a hundred times its size. Export the readings as CSV");

    internal static RecordException NoTable(string file, string what, string where) =>
        Refused(file, $"{what} without any row of a time and a number (looked in {where})", "a table of readings. Check which file was saved");

    internal static RecordException TooMuch(string sheet) =>
        Refused(sheet, "a sheet of more cells than a table of readings has", "at most 1,048,576 rows and 20 million cells. Export the readings as CSV");

    internal static RecordException TooManyRows(string file, long rows) =>
        Refused(file, string.Create(CultureInfo.InvariantCulture, $"a row group of {rows} rows"), "at most 20 million cells in one. Write it in smaller groups");

    internal static RecordException NoFlatColumns(string file, IEnumerable<Field> fields) =>
        Refused(file, $"a Parquet file without plain columns ({string.Join(", ", fields.Take(8).Select(f => $"\"{f.Name}\" of {ParquetFindings.KindOf(f)}"))})", "one column of times and columns of numbers. Write what is nested as columns of their own");

    internal static InvalidOperationException TooLongForSheet(int most) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found more than {most} intervals, expected as many as a sheet has rows. Write them as Parquet or CSV, or bring them to longer intervals by InStepsOf."));

    private static RecordException Refused(string file, string found, string expected) => new(new Problem(file, 0, 0, "", found, expected, Severity.Lost));
}
