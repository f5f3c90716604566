namespace SolarEconomics;

internal static partial class Throw
{
    internal static RecordException LogMissing(string path, string what) =>
        new($"{path}: found no such file, expected a {what} (CSV). Looked for it as {Path.GetFullPath(path)}.");

    internal static RecordException LogClosed(string path, string what, Exception error) =>
        new($"{path}: found a file that cannot be opened ({error.Message}), expected a {what} (CSV). Close it elsewhere, or check who may read it.");

    internal static RecordException LogEmpty(string name, string what, string[] needed) =>
        new($"{name}: found no rows, expected a {what} with a heading line such as {string.Join(',', needed)} and a line each time.");

    internal static RecordException LogColumns(string name, string[] missing, string[] header, string[] needed, string[] optional) =>
        new($"{name}: found no column {string.Join(", ", missing.Select(m => $"\"{m}\""))} in the heading \"{string.Join(",", header)}\", " +
            $"expected {string.Join(',', needed)} and, where wanted, {string.Join(',', optional)}. Rename the column or add it.");

    internal static RecordException LogQuotes(string name, long? line, Exception error) =>
        new($"{name}, line {line}: found quotes that do not pair ({error.Message}), expected a text in quotes to end with one. Double a quote inside a text.");

    internal static RecordException UnreadableLog(string what, IReadOnlyList<Problem> problems) => new(problems.Count == 1
        ? problems[0] + "."
        : $"Found {problems.Count} fields of the {what} that cannot be read, expected none. Put these right first:\n" +
          string.Join("\n", problems.Take(20)) + (problems.Count > 20 ? $"\n… and {problems.Count - 20} more." : ""), problems);

    internal static RecordException LogTooShort(string what, int count, int least) =>
        new(FormattableString.Invariant($"Found {count} rows that count in the {what}, expected at least {least}: what was used is told by the difference of two. Add the next one."));

    internal static RecordException NoCalendarFade(double byCalendar, double byWork, int tests) =>
        new(FormattableString.Invariant(
            $"Found {byCalendar * 100:0.##} % a year left for the calendar from {tests} capacity tests ({byWork * 100:0.##} % a year is laid on cycles), expected 0 to 20 %. ") +
            "Check units and temperatures of the tests and the fade per cycle; tests too few to show a loss are no ageing yet: state one.");

    internal static RecordException HourMeterBack(GeneratorEntry before, GeneratorEntry after) =>
        new(FormattableString.Invariant(
            $"{after.File}, line {after.Line}: found an hour meter of {after.HourMeter:0.##} h after {before.HourMeter:0.##} h, expected it to go on. ") +
            "If the meter was exchanged, put the rows of each meter into a log of its own.");

    internal static RecordException FuelAgainstHours(double litres, double hours, double leastLitres, double mostLitres) =>
        new(FormattableString.Invariant(
            $"Found {litres:0.#} litres burned in {hours:0.#} hours, expected {leastLitres:0.#} to {mostLitres:0.#} for a generator of this rating and fuel line. ") +
            "Check the rated power, the fuel line, and whether a filling or some hours are missing from the log.");
}
