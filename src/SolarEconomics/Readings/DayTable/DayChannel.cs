using NodaTime;

namespace SolarEconomics;

/// <summary>One channel of a table of days, gathered day by day.</summary>
internal sealed class DayChannel(ColumnMeaning meaning, SlotGroup group, NumberText numbers, DateTimeZone zone, ReadOptions options, ProblemList problems)
{
    private readonly IntervalTable _table = new(1, 1024);
    private readonly ValueColumn _column = new(meaning.Number - 1, meaning);

    internal ColumnMeaning Meaning => meaning;

    internal string Name => _column.Name;

    internal int Rows => _table.Rows;

    /// <summary>Takes the cells of one row.</summary>
    internal void TakeDay(ReadOnlySpan<string> fields, LocalDate day, int line)
    {
        var length = LocalDays.LengthOf(day, zone);
        if (length == Duration.Zero)
        {
            problems.Lost(line, 0, Iso(day), $"a day that {zone.Id} skipped", "a day that happened there; the row was not counted", Sum(fields));
            return;
        }
        var clock = DayClock.Of(day, length, group, Last(fields, zeroToo: true), Last(fields, zeroToo: false), zone);
        foreach (var slot in group.Slots) TakeCell(fields, slot, clock, day, line);
        if (clock.Doubt is { } doubt) problems.Doubtful(line, 0, Iso(day), doubt.Found, doubt.Expected);
    }

    /// <summary>The energy of all cells of a row, as far as it is energy in a known unit.</summary>
    internal double Sum(ReadOnlySpan<string> fields)
    {
        var sum = default(CompensatedSum);
        foreach (var slot in group.Slots)
            if (slot.Column < fields.Length && TryValue(fields[slot.Column], out var value)) sum.Add(value);
        return IsCounted ? sum.Total : 0;
    }

    internal IEnumerable<Channel> ToChannels(string file)
    {
        var extra = _table.PutInOrder([Name], problems);
        var stamps = _table.Stamps;
        var times = TimeAxis.OfStamps(stamps, group.StepMs, 0) ?? TimeAxis.OfMilliseconds(stamps.Each, IntervalEnds.OfStarts(stamps.Each, group.StepMs));
        var energy = meaning.Kind == ColumnKind.Power ? PowerColumn.ToEnergy(_table, 0, times, options.LongestBridge, _column, problems) : _table.Take(0, times);
        return [.. Directions.Split(energy, _column, options.Plant, extra[0], file, problems)];
    }

    /// <summary>Whether what is not counted can be told in kWh.</summary>
    private bool IsCounted => _column.IsEnergy && meaning.Kind is ColumnKind.Energy or ColumnKind.Net;

    private void TakeCell(ReadOnlySpan<string> fields, Slot slot, DayClock clock, LocalDate day, int line)
    {
        var field = slot.Column < fields.Length ? fields[slot.Column] : "";
        var empty = CsvRows.IsEmptyWord(field);
        var value = 0.0;
        var known = !empty && TryValue(field, out value);
        if (!empty && !known)
            problems.Lost(line, slot.Column + 1, field, $"\"{ProblemList.Shorten(field)}\" where a value stands", "a number or nothing; the cell counts as missing");
        if (clock.StartOf(slot) is not { } startMs)
        {
            // A zero where there was no time says nothing; anything else is energy without a time.
            if (known && value != 0)
                problems.Lost(line, slot.Column + 1, field, $"a value in an interval that {Iso(day)} did not have in {zone.Id}", "nothing there; if the device keeps standard time all year, give that fixed zone. It was not counted", IsCounted ? value : 0);
            return;
        }
        var row = _table.Add(startMs, line);
        if (known) _table.Set(row, 0, value, Quality.Good);
    }

    private bool TryValue(string field, out double value)
    {
        if (!numbers.TryRead(field, out value)) return false;
        value = _column.Scale(value);
        return Math.Abs(value) <= CsvRows.TooLargeKwh;
    }

    /// <summary>Place of the last column of the group that holds a number, counted from 1.</summary>
    private int Last(ReadOnlySpan<string> fields, bool zeroToo)
    {
        for (var k = group.Slots.Count - 1; k >= 0; k--)
            if (group.Slots[k].Column < fields.Length && numbers.TryRead(fields[group.Slots[k].Column], out var value) && (zeroToo || value != 0)) return k + 1;
        return 0;
    }

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
