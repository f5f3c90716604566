using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Takes the rows of a counter file and makes a counter of each device.</summary>
/// <param name="header">Names of the columns.</param>
/// <param name="order">Order of day and month in its dates.</param>
/// <param name="numbers">How its numbers are written.</param>
/// <param name="problems">Where what cannot be read is listed.</param>
internal sealed class CounterRows(string[] header, DateOrder order, NumberText numbers, ProblemList problems)
{
    private readonly int _date = Array.IndexOf(header, "date");
    private readonly int _device = Array.IndexOf(header, "device");
    private readonly int _kwh = Array.IndexOf(header, "kwh");
    private readonly int _days = Array.IndexOf(header, "days uncertain");
    private readonly int _photo = Array.IndexOf(header, "photo");
    private readonly int _note = Array.IndexOf(header, "note");
    private readonly Dictionary<string, List<CounterReading>> _devices = new(StringComparer.Ordinal);

    internal void Take(string[] fields, int line)
    {
        if (Array.TrueForAll(fields, string.IsNullOrWhiteSpace) || (fields.Length > 0 && fields[0].StartsWith('#'))) return;
        var raw = string.Join(',', fields);
        if (fields.Length <= Math.Max(_date, Math.Max(_device, _kwh)))
        {
            problems.Lost(line, 0, raw, string.Create(CultureInfo.InvariantCulture, $"{fields.Length} fields"), $"{string.Join(',', header)}; the row was not counted");
            return;
        }
        if (!StampText.TryRead(fields[_date], order, out var stamp) || stamp.Fineness != StampFineness.Day)
        {
            problems.Lost(line, _date + 1, raw, $"\"{ProblemList.Shorten(fields[_date])}\" as date", "a date such as 2024-03-31; the row was not counted");
            return;
        }
        var device = fields[_device].Trim();
        if (device.Length == 0)
        {
            problems.Lost(line, _device + 1, raw, "no device", "the name of the device whose counter was read; the row was not counted");
            return;
        }
        if (!TryKwh(fields[_kwh], out var kwh) || kwh < 0 || kwh > CsvRows.TooLargeKwh)
        {
            problems.Lost(line, _kwh + 1, raw, $"\"{ProblemList.Shorten(fields[_kwh])}\" as counter reading", "a number of kWh from 0 on, or one with another unit of energy behind it, such as 11.2 MWh; the row was not counted");
            return;
        }
        var reading = new CounterReading(StampClock.LocalOf(stamp.LocalMs).Date, kwh, DaysUncertain(fields, line), Optional(fields, _photo), Optional(fields, _note), line);
        if (!_devices.TryGetValue(device, out var list)) _devices.Add(device, list = []);
        list.Add(reading);
    }

    private bool TryKwh(string field, out double kwh)
    {
        if (numbers.TryRead(field, out kwh)) return true;
        if (!CellUnit.TrySplit(field, out var number, out var unit) || unit is not { IsActiveEnergy: true, IsPower: false } || !numbers.TryRead(number, out var value)) return false;
        kwh = unit.Scale(value);
        return true;
    }

    internal IReadOnlyList<Counter> Counters(Plant plant)
    {
        var counters = new List<Counter>();
        foreach (var (name, readings) in _devices)
        {
            var device = plant.Devices.FirstOrDefault(d => string.Equals(d.Name, name, StringComparison.OrdinalIgnoreCase));
            if (device is null && plant.Devices.Count > 0)
                problems.Doubtful(readings[0].Line, _device + 1, name, $"the device \"{name}\", which the plant's description does not name",
                    $"one of its devices, such as {Nearest.List(name, plant.Devices.Select(d => d.Name))}; its measurement point is unknown and its opening value is taken as 0");
            var ordered = CounterUnits.Mended(name, InOrder(name, readings), _kwh + 1, problems);
            ReportStepsBack(name, ordered, device);
            counters.Add(new Counter(device?.Name ?? name, device?.Point ?? MeasurementPoint.Unknown, ordered) { OpeningKwh = device?.OpeningKwh ?? 0 });
        }
        return counters;
    }

    private List<CounterReading> InOrder(string name, List<CounterReading> readings)
    {
        var ordered = new List<CounterReading>();
        foreach (var reading in readings.OrderBy(r => r.Date).ThenBy(r => r.Line))
        {
            if (ordered.Count > 0 && ordered[^1].Date == reading.Date && ordered[^1].Kwh == reading.Kwh)
            {
                problems.Note(reading.Line, 0, Iso(reading.Date), $"the reading of {name} on {Iso(reading.Date)} a second time, with the same value", "each reading once; it was counted once");
                continue;
            }
            ordered.Add(reading);
        }
        return ordered;
    }

    private void ReportStepsBack(string name, List<CounterReading> readings, Device? device)
    {
        var from = device?.OpeningKwh ?? 0;
        foreach (var (reading, step) in readings.Zip(CounterStep.Along(from, readings)))
        {
            if (step.WentBack)
                problems.Doubtful(reading.Line, _kwh + 1, reading.Kwh.ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"the counter of {name} going back from {from:R} to {reading.Kwh:R} kWh by {Iso(reading.Date)}"), step.Words);
            from = reading.Kwh;
        }
    }

    private int DaysUncertain(string[] fields, int line)
    {
        var text = Optional(fields, _days);
        if (text is null) return 0;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var days) && days <= 3660) return days;
        problems.Doubtful(line, _days + 1, text, $"\"{ProblemList.Shorten(text)}\" as days uncertain", "a whole number of days; it is read as 0");
        return 0;
    }

    private static string? Optional(string[] fields, int index) =>
        index >= 0 && index < fields.Length && !string.IsNullOrWhiteSpace(fields[index]) ? fields[index].Trim() : null;

    private static string Iso(LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);
}
