using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Messages of the EPW reader.</summary>
internal static partial class Throw
{
    internal static RecordException NoWeatherFile(string path) =>
        new($"{path}: found no such file, expected a weather file ending in .epw. Paths start at the folder of the notebook or program.");

    internal static RecordException NotEpw(string file, string raw) =>
        new($"{file}, line 1: found \"{Short(raw)}\", expected LOCATION with ten fields, the heading of an EPW file.");

    internal static RecordException EpwHours(string file, int rows, string firstBreak) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}: found {rows} hours, expected 8,760, or 8,784 with a 29 February. Part of a year cannot be used.{firstBreak}"));

    internal static RecordException EpwStepsPerHour(string file, int line, string found) =>
        new($"{file}, line {line}, column 3: found \"{Short(found)}\" steps an hour in DATA PERIODS, expected 1.");

    internal static RecordException EpwLeapYear(string file, int rows, int year) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}: found {rows} hours for the year {year}, expected a year of that length. Leave the year out to have one chosen."));

    internal static RecordException EpwFields(string file, int line, int found) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}, line {line}: found {found} fields, expected at least 22."));

    internal static RecordException EpwHour(string file, int line, string[] fields, LocalDateTime expected) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{file}, line {line}: found month {fields[1]}, day {fields[2]}, hour {fields[3]}, expected month {expected.Month}, day {expected.Day}, hour {expected.Hour + 1}. Hours run from 1 to 24 and none may be missing or repeated.{(fields[3].Trim() is "0" ? " This file counts them from 0 to 23: add 1 to each." : "")}"));

    internal static RecordException EpwRadiation(string file, int line, int column, string name, string raw) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"{file}, line {line}, column {column}: found {name} radiation \"{Short(raw)}\", expected 0 to 2,000 Wh/m². 9999 marks a gap: radiation is not made up, so take another file."));

    internal static RecordException EpwNumber(string file, int line, int column, string raw) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}, line {line}, column {column}: found \"{Short(raw)}\", expected a number with a decimal point."));

    internal static RecordException EpwHeading(string file, int column, string raw, double low, double high, string unit) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{file}, line 1, column {column}: found \"{Short(raw)}\", expected {low} to {high} ({unit})."));

    private static string Short(string raw) => raw.Length <= 60 ? raw : raw[..60] + "…";
}
