using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

internal static partial class Throw
{
    internal static ArgumentException BadIndexLevel(YearMonth month, double level) =>
        new(string.Create(CultureInfo.InvariantCulture, $"Found level {level} for {Month(month)}, expected each month once and a level above 0."));

    internal static ArgumentOutOfRangeException NoIndexMonth(PriceIndex index, YearMonth month) =>
        new(nameof(month), $"Found no price level for {Month(month)} in an index from {Month(index.First)} to {Month(index.Last)}, expected one for every month that is paid in " +
            "and for the whole year whose money is asked for. Add the months, or ask for the money of another year.");

    internal static RecordException IndexMissing(string path) =>
        new($"{path}: found no such file, expected a price index (CSV). Looked for it as {Path.GetFullPath(path)}.");

    internal static RecordException IndexEmpty(string name) =>
        new($"{name}: found no months, expected a heading line month,index and a line for each month.");

    internal static RecordException IndexColumns(string name, string[] header) =>
        new($"{name}: found the heading \"{string.Join(",", header)}\", expected month,index.");

    internal static RecordException UnreadableIndex(IReadOnlyList<Problem> problems) => new(problems.Count == 1
        ? problems[0] + "."
        : $"Found {problems.Count} lines of the price index that cannot be read, expected none:\n" + string.Join("\n", problems.Take(20)), problems);

    private static string Month(YearMonth month) => YearMonthPattern.Iso.Format(month);
}
