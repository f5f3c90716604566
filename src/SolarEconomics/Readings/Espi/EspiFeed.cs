using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Takes the elements of an ESPI feed in document order and puts them together by their links at the end, as types may stand after the readings.</summary>
internal sealed class EspiFeed(ProblemList problems)
{
    private const long LargestExact = 1L << 53;

    private readonly List<EspiEntry> _meterReadings = [];
    private readonly List<EspiEntry> _usagePoints = [];
    private readonly List<EspiEntry> _types = [];
    private readonly Dictionary<string, EspiSeries> _series = new(StringComparer.Ordinal);
    private readonly List<EspiReading> _readings = [];
    private EspiEntry _entry = new();
    private EspiReading? _reading;
    private bool _inQuality;
    private long? _blockStart;
    private int _placeInBlock;
    private string _leaf = "";
    private DateTimeZone? _zone;
    private bool _saidClock;

    /// <summary>The clock that the feed states; <see langword="null"/> where it states none.</summary>
    internal DateTimeZone? Zone => _zone;

    /// <summary>Says that days are counted in UTC, where the feed states no clock and the user none.</summary>
    internal void SayClock(bool isGiven)
    {
        if (_zone is null && !isGiven && !_saidClock)
            problems.Note(0, 0, "", "no local time parameters", "tzOffset and the rules of daylight saving, or a zone of yours; days are counted in UTC, the energy is the same");
    }

    internal void Open(string name, int line)
    {
        _leaf = name;
        switch (name)
        {
            case "entry": EndEntry(); break;
            case "IntervalReading": _reading = new EspiReading { Line = line, Block = (_blockStart, _placeInBlock++) }; break;
            case "ReadingQuality": _inQuality = true; break;
            case "IntervalBlock": (_entry.Kind, _blockStart, _placeInBlock) = (name, null, 0); break;
            case "ReadingType" or "MeterReading" or "UsagePoint" or "LocalTimeParameters": _entry.Kind = name; break;
        }
    }

    internal void Link(string rel, string href)
    {
        href = href.TrimEnd('/');
        if (string.Equals(rel, "self", StringComparison.OrdinalIgnoreCase)) _entry.Self = href;
        else if (string.Equals(rel, "up", StringComparison.OrdinalIgnoreCase)) _entry.Up = href;
        else _entry.Related.Add(href);
    }

    internal void Text(string text, int line)
    {
        if (_reading is { } reading)
        {
            switch (_leaf)
            {
                case "start": reading.Start = Whole(text, reading); break;
                case "duration": reading.Duration = Whole(text, reading); break;
                case "value": (reading.Value, reading.RawValue) = (Number(text, reading), text); break;
                case "cost": reading.Cost = Cost(text, line); break;
                case "quality" when _inQuality: reading.AddQuality(text); break;
            }
            return;
        }
        if (string.Equals(_leaf, "title", StringComparison.Ordinal) && _entry.Kind is null) _entry.Title = text;
        else if (_entry.Kind is "ReadingType" or "LocalTimeParameters" or "UsagePoint") _entry.Take(_leaf, text, line);
        // The block's own interval stands before its readings.
        else if (_entry.Kind is "IntervalBlock" && _leaf is "start" && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var start)) _blockStart = start;
    }

    internal void Close(string name)
    {
        _leaf = "";
        switch (name)
        {
            case "IntervalReading" when _reading is { } reading: _readings.Add(reading); _reading = null; break;
            case "ReadingQuality": _inQuality = false; break;
            case "entry": EndEntry(); break;
        }
    }

    internal void EndEntry()
    {
        switch (_entry.Kind)
        {
            case "MeterReading": _meterReadings.Add(_entry); break;
            case "UsagePoint": _usagePoints.Add(_entry); break;
            case "ReadingType": _types.Add(_entry); break;
            case "LocalTimeParameters":
                // What cannot be read says so itself.
                _saidClock = true;
                _zone ??= EspiZone.Of(_entry, problems);
                break;
        }
        if (_readings.Count > 0)
        {
            var key = _entry.Up ?? _entry.Self ?? "";
            if (!_series.TryGetValue(key, out var series)) _series.Add(key, series = new EspiSeries(_entry));
            foreach (var reading in _readings) series.Take(reading, problems);
            _readings.Clear();
        }
        _reading = null;
        _entry = new EspiEntry();
    }

    internal IReadOnlyList<Channel> Channels(string file)
    {
        var channels = new List<Channel>();
        foreach (var series in _series.Values)
        {
            var meter = _meterReadings.Find(m => m.Holds(series.Entry)) ?? (_meterReadings.Count == 1 ? _meterReadings[0] : null);
            var type = (meter is null ? null : _types.Find(t => t.Self is { } self && meter.Related.Exists(r => SameResource(r, self))))
                ?? (_types.Count == 1 ? _types[0] : null);
            if (type is null)
                problems.Lost(0, 0, "", $"readings of \"{meter?.Title ?? series.Entry.Up ?? "no meter reading"}\" without a ReadingType", "a ReadingType that says unit and direction; they are kept and counted nowhere");
            var point = _usagePoints.Find(u => u.Self is { } self && (series.Entry.Up ?? series.Entry.Self ?? "").StartsWith(self + "/", StringComparison.Ordinal));
            if (series.ToChannel(meter, type, point, _series.Count, file, problems) is { Count: > 0 } channel) channels.Add(channel);
        }
        return channels;
    }

    /// <summary>Whether two links name one resource: equal, or one the tail of the other where only one is a full address.</summary>
    internal static bool SameResource(string a, string b) =>
        string.Equals(a, b, StringComparison.Ordinal)
        || a.EndsWith("/" + b.TrimStart('/'), StringComparison.Ordinal) || b.EndsWith("/" + a.TrimStart('/'), StringComparison.Ordinal);

    private long? Whole(string text, EspiReading reading)
    {
        if (long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < LargestExact) return number;
        reading.Fault ??= $"\"{ProblemList.Shorten(text)}\" as {_leaf} of a reading";
        return null;
    }

    /// <summary>A value: whole by the schema, but some feeds write decimals.</summary>
    private double? Number(string text, EspiReading reading)
    {
        if (NumberText.Plain.TryRead(text, out var number) && Math.Abs(number) < LargestExact) return number;
        reading.Fault ??= $"\"{ProblemList.Shorten(text)}\" as {_leaf} of a reading";
        return null;
    }

    private long? Cost(string text, int line)
    {
        if (long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < LargestExact) return number;
        problems.Doubtful(line, 0, text, $"\"{ProblemList.Shorten(text)}\" as cost of a reading", "a whole number; the reading is counted, its cost is not");
        return null;
    }
}
