using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Takes the rows of a table of days: each goes to the channel that its texts and its group of columns name.</summary>
internal sealed class DayTableRows : IRowTaker
{
    private const int MostChannels = 1000;

    private readonly DayTableHead _head;
    private readonly CsvLayout _layout;
    private readonly DateTimeZone _zone;
    private readonly ReadOptions _options;
    private readonly ProblemList _problems;
    private readonly int[] _names;
    private readonly int _unit;
    private readonly Dictionary<(string Name, string Unit, int Group), DayChannel> _channels = [];
    private readonly HashSet<ColumnMeaning> _used = new(ReferenceEqualityComparer.Instance);

    internal DayTableRows(DayTableHead head, CsvLayout layout, DateTimeZone zone, ReadOptions options, ProblemList problems)
    {
        (_head, _layout, _zone, _options, _problems) = (head, layout, zone, options, problems);
        var rows = head.Table.Rows;
        _unit = head.OtherColumns.FirstOrDefault(i => rows.All(r => i < r.Length && EnergyUnit.Find(r[i].Trim()) is not null), -1);
        // What tells rows of one day apart is a text, or a number whose header says that it names something.
        _names = [.. head.OtherColumns.Where(i => i != _unit && rows.Any(r => i < r.Length && r[i].Trim().Length > 0)
            && (LongForm.NamesChannels(head.Headers[i]) || !rows.Any(r => i < r.Length && layout.Numbers.TryRead(r[i], out _))) && !head.Headers[i].Contains("quality", StringComparison.OrdinalIgnoreCase))];
    }

    internal IReadOnlyList<DayChannel> Channels => [.. _channels.Values];

    /// <summary>A correction of the user that meets no channel; <see langword="null"/> where each does.</summary>
    internal ColumnMeaning? Unused => _options.Columns.FirstOrDefault(c => !_used.Contains(c));

    public void Take(ReadOnlySpan<string> fields, int line)
    {
        if (IsBlank(fields)) return;
        var index = _head.Table.StampIndex;
        if (index >= fields.Length || !StampText.TryRead(fields[index], _layout.Stamp.Order, out var stamp) || stamp.Fineness is not (StampFineness.Day or StampFineness.Time))
        {
            if (TotalRow.BeginsWithWord(fields)) _problems.Note(line, 0, Raw(fields), "a row of totals", "days; it repeats what stands above and was not counted again");
            else _problems.Lost(line, index + 1, Raw(fields), $"\"{ProblemList.Shorten(index < fields.Length ? fields[index] : "")}\" where the day stands", "a day as in the rows before; the row was not counted", Sum(fields));
            return;
        }
        var day = StampClock.LocalOf(stamp.LocalMs).Date;
        for (var g = 0; g < _head.Groups.Count; g++)
            if (ChannelOf(fields, g, line) is { } channel) channel.TakeDay(fields, day, line);
        for (var i = _head.Headers.Length; i < fields.Length; i++)
        {
            if (string.IsNullOrWhiteSpace(fields[i])) continue;
            _problems.Lost(line, i + 1, Raw(fields), string.Create(CultureInfo.InvariantCulture, $"{fields.Length} fields"), string.Create(CultureInfo.InvariantCulture, $"{_head.Headers.Length}, as in the header; what stands behind the last was not counted"));
            break;
        }
    }

    private DayChannel? ChannelOf(ReadOnlySpan<string> fields, int group, int line)
    {
        var name = string.Join(' ', Texts(fields));
        var unit = _unit >= 0 && _unit < fields.Length ? fields[_unit].Trim() : "";
        if (_channels.TryGetValue((name, unit, group), out var channel)) return channel;
        if (_channels.Count >= MostChannels)
        {
            _problems.Lost(line, 0, name, string.Create(CultureInfo.InvariantCulture, $"more than {MostChannels} names of channels"), "few names, each in many rows; the row was not counted");
            return null;
        }
        if (DayMeaning.CorrectionOf(_head, _head.Groups[group], name, _options) is { } correction) _used.Add(correction);
        channel = new DayChannel(DayMeaning.Of(_head, _head.Groups[group], name, unit, _options), _head.Groups[group], _layout.Numbers, _zone, _options, _problems);
        _channels.Add((name, unit, group), channel);
        return channel;
    }

    private List<string> Texts(ReadOnlySpan<string> fields)
    {
        var texts = new List<string>();
        foreach (var i in _names)
            if (i < fields.Length && fields[i].Trim() is { Length: > 0 } text) texts.Add(text);
        return texts;
    }

    /// <summary>The energy of a row without a day, by its first channel's unit.</summary>
    private double Sum(ReadOnlySpan<string> fields)
    {
        var sum = 0.0;
        for (var g = 0; g < _head.Groups.Count; g++)
            if (ChannelOf(fields, g, 0) is { } channel) sum += channel.Sum(fields);
        return sum;
    }

    private string Raw(ReadOnlySpan<string> fields) => string.Join(_layout.Delimiter, fields.ToArray());

    private static bool IsBlank(ReadOnlySpan<string> fields)
    {
        foreach (var field in fields)
            if (!string.IsNullOrWhiteSpace(field)) return false;
        return true;
    }
}
