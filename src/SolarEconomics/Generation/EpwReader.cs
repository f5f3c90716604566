using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Reads the lines of an EPW file: eight heading lines, then one line per hour with at least 22 fields.</summary>
internal sealed class EpwReader(string file)
{
    private const int HeadingLines = 8;
    private const int Air = 6, Global = 13, Beam = 14, Diffuse = 15, Wind = 21;
    private readonly List<Problem> _problems = [];

    internal EpwFile Read(string[] lines, int? year)
    {
        if (lines.Length < HeadingLines || !lines[0].StartsWith("LOCATION,", StringComparison.Ordinal))
            throw Throw.NotEpw(file, lines.Length == 0 ? "" : lines[0]);
        var place = lines[0].Split(',');
        if (place.Length < 10) throw Throw.NotEpw(file, lines[0]);
        var rows = lines.Skip(HeadingLines).Select((text, i) => (Text: text, Line: HeadingLines + i + 1)).Where(r => r.Text.Length > 0).ToArray();
        if (lines[HeadingLines - 1].Split(',') is [_, _, var perHour, ..] && perHour.Trim() is not "1") throw Throw.EpwStepsPerHour(file, HeadingLines, perHour);
        var isLeap = rows.Length == 8784;
        if (rows.Length is not (8760 or 8784)) throw Throw.EpwHours(file, rows.Length, FirstBreak(rows));
        var onYear = year ?? (isLeap ? 2024 : 2023);
        if (CalendarSystem.Iso.IsLeapYear(onYear) != isLeap) throw Throw.EpwLeapYear(file, rows.Length, onYear);
        var offset = Heading(place, 8, -12, 14, "hours ahead of UTC");
        var grid = new IntervalGrid(Instant.FromUtc(onYear, 1, 1, 0, 0) - Duration.FromHours(offset), Duration.FromHours(1), rows.Length);
        var columns = new double[5][];
        for (var c = 0; c < columns.Length; c++) columns[c] = new double[rows.Length];
        var expected = new LocalDateTime(onYear, 1, 1, 0, 0);
        for (var i = 0; i < rows.Length; i++, expected = expected.PlusHours(1)) ReadHour(rows[i].Text.Split(','), rows[i].Line, expected, columns, i);
        var weather = Weather.OfParts(grid, columns[0], columns[1], columns[2], columns[3], columns[4], $"{file}, {place[1]}, laid on {onYear}");
        var (latitude, longitude) = (Heading(place, 6, -90, 90, "degrees, north positive"), Heading(place, 7, -180, 180, "degrees, east positive"));
        _problems.AddRange(WeatherJudge.Judge(weather, Site.At(place[1], latitude, longitude, "UTC", "EUR"), file));
        return new EpwFile(place[1], latitude, longitude, offset, Heading(place, 9, -430, 9000, "metres above the sea"), weather, _problems);
    }

    /// <summary>Where the hours first do not follow one another, in words; empty where they all do.</summary>
    private string FirstBreak((string Text, int Line)[] rows)
    {
        for (var i = 1; i < rows.Length; i++)
        {
            var (before, here) = (rows[i - 1].Text.Split(','), rows[i].Text.Split(','));
            if (before.Length <= 3 || here.Length <= 3) return FormattableString.Invariant($" Line {rows[i].Line} has no hour.");
            var (day, month) = ((int)Number(before, 2, rows[i - 1].Line), (int)Number(before, 1, rows[i - 1].Line));
            var hour = Number(before, 3, rows[i - 1].Line);
            var follows = Number(here, 3, rows[i].Line) == (hour >= 24 ? 1 : hour + 1)
                && (hour < 24 ? Number(here, 2, rows[i].Line) == day && Number(here, 1, rows[i].Line) == month : Number(here, 2, rows[i].Line) == day + 1 || Number(here, 2, rows[i].Line) == 1);
            if (!follows) return FormattableString.Invariant($" Line {rows[i].Line} (month {here[1]}, day {here[2]}, hour {here[3]}) does not follow month {before[1]}, day {before[2]}, hour {before[3]}.");
        }
        return "";
    }

    private void ReadHour(string[] fields, int line, LocalDateTime expected, double[][] columns, int i)
    {
        if (fields.Length < Wind + 1) throw Throw.EpwFields(file, line, fields.Length);
        var (month, day, hour) = (Number(fields, 1, line), Number(fields, 2, line), Number(fields, 3, line));
        if (month != expected.Month || day != expected.Day || hour != expected.Hour + 1) throw Throw.EpwHour(file, line, fields, expected);
        columns[0][i] = Radiation(fields, Global, line, "global");
        columns[1][i] = Radiation(fields, Beam, line, "beam");
        columns[2][i] = Radiation(fields, Diffuse, line, "diffuse");
        if (columns[2][i] > columns[0][i] + 1)
        {
            _problems.Add(new Problem(file, line, Diffuse + 1, fields[Diffuse], $"diffuse {fields[Diffuse]} Wh/m² above global {fields[Global]}",
                "diffuse at or below global; held at global", Severity.Doubtful));
            columns[2][i] = columns[0][i];
        }
        columns[3][i] = HeldIfMissing(fields, Air, line, columns[3], i, low: -70, high: 70, missing: 99.9, "air °C");
        columns[4][i] = HeldIfMissing(fields, Wind, line, columns[4], i, low: 0, high: 60, missing: 999, "wind m/s");
    }

    private double Radiation(string[] fields, int field, int line, string name)
    {
        var value = Number(fields, field, line);
        return value is >= 0 and < 2000 ? value : throw Throw.EpwRadiation(file, line, field + 1, name, fields[field]);
    }

    private double HeldIfMissing(string[] fields, int field, int line, double[] column, int i, double low, double high, double missing, string name)
    {
        var value = Number(fields, field, line);
        if (value >= low && value <= high && value != missing) return value;
        _problems.Add(new Problem(file, line, field + 1, fields[field], $"no value of {name} ({fields[field]})", $"{low} to {high}; held from the hour before", Severity.Doubtful));
        return i > 0 ? column[i - 1] : 10;
    }

    private double Number(string[] fields, int field, int line) =>
        double.TryParse(fields[field], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw Throw.EpwNumber(file, line, field + 1, fields[field]);

    private double Heading(string[] place, int field, double low, double high, string unit)
    {
        var value = Number(place, field, 1);
        return value >= low && value <= high ? value : throw Throw.EpwHeading(file, field + 1, place[field], low, high, unit);
    }
}
