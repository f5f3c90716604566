using System.Globalization;
using Deedle;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

public sealed partial class Readings
{
    private static readonly string[] CounterColumns = ["date", "device", "kwh", "days uncertain", "photo", "note"];

    /// <summary>The typed readings of counters as a Deedle frame: one row per reading, with the columns of a counter file.</summary>
    /// <remarks>Rows are numbered from 0. Dates are <see cref="LocalDate"/>, readings are in kWh; a reading without a photo or note has none there.</remarks>
    public Frame<int, string> CountersToFrame()
    {
        var rows = Counters.SelectMany(counter => counter.Readings.Select(reading => (counter.Device, Reading: reading))).ToArray();
        var numbers = Enumerable.Range(0, rows.Length).ToArray();
        var frame = Frame.FromColumns([KeyValuePair.Create("date", new Series<int, LocalDate>(numbers, rows.Select(r => r.Reading.Date)))]);
        frame.AddColumn("device", new Series<int, string>(numbers, rows.Select(r => r.Device)));
        frame.AddColumn("kwh", new Series<int, double>(numbers, rows.Select(r => r.Reading.Kwh)));
        frame.AddColumn("days uncertain", new Series<int, int>(numbers, rows.Select(r => r.Reading.DaysUncertain)));
        frame.AddColumn("photo", new Series<int, string?>(numbers, rows.Select(r => r.Reading.Photo)));
        frame.AddColumn("note", new Series<int, string?>(numbers, rows.Select(r => r.Reading.Note)));
        return frame;
    }

    /// <summary>Typed readings of counters from a Deedle frame with the columns date, device and kwh, and days uncertain, photo and note as wanted.</summary>
    /// <param name="frame">The frame. Dates are <see cref="LocalDate"/>, <see cref="DateTime"/> or text such as 2024-03-31; readings are in kWh.</param>
    /// <param name="options">The plant whose devices are named. Default: none.</param>
    /// <exception cref="ArgumentException">A column of date, device or kwh is not there.</exception>
    /// <remarks>Rows that cannot be read are listed with their place, counted from 1.</remarks>
    public static Readings FromCounterFrame(Frame<int, string> frame, ReadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        options ??= new ReadOptions();
        var header = CounterColumns.Where(c => frame.ColumnKeys.Contains(c, StringComparer.Ordinal)).ToArray();
        if (CounterColumns.Take(3).FirstOrDefault(c => !header.Contains(c, StringComparer.Ordinal)) is { } lacking)
            throw new ArgumentException($"Found the columns {string.Join(", ", frame.ColumnKeys)}, expected one named \"{lacking}\" beside {string.Join(", ", CounterColumns.Where(c => c != lacking))}.", nameof(frame));
        var problems = new ProblemList("frame");
        var rows = new CounterRows(header, DateOrder.YearMonthDay, NumberText.Plain, problems);
        var columns = Array.ConvertAll(header, c => frame.GetColumn<object>(c));
        var line = 0;
        foreach (var key in frame.RowKeys) rows.Take(Array.ConvertAll(columns, c => c.TryGet(key) is { HasValue: true } value ? TextOf(value.Value) : ""), ++line);
        return new Readings([], rows.Counters(options.Plant), problems.ToList()) { Zone = options.Zone ?? DateTimeZone.Utc };
    }

    private static string TextOf(object value) => value switch
    {
        LocalDate date => LocalDatePattern.Iso.Format(date),
        DateTime time => LocalDatePattern.Iso.Format(LocalDate.FromDateTime(time)),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "",
    };
}
