using System.Globalization;
using System.Text;

namespace SolarEconomics;

/// <content>400 records: the quality of parts of a day.</content>
internal sealed partial class Nem12Records
{
    /// <summary>Marks an interval as covered by a 400 record, while the day is open; taken off when the day closes.</summary>
    private const Quality Seen = (Quality)128;

    private bool _dayOpen;
    private bool _dayVaries;
    private bool _dayHasEvents;
    private int _dayLine;

    private void TakeEvent(string[] fields, ReadOnlySpan<byte> line, int number)
    {
        if (!_dayOpen || _stream is not { } stream)
        {
            problems.Doubtful(number, 0, Text(line), "a 400 record without a 300 record that was counted above it", "a day that it belongs to; it was left out");
            return;
        }
        var from = 0;
        var to = 0;
        var readable = fields.Length >= 4
            && int.TryParse(fields[1], NumberStyles.None, CultureInfo.InvariantCulture, out from)
            && int.TryParse(fields[2], NumberStyles.None, CultureInfo.InvariantCulture, out to)
            && from >= 1 && to >= from && to <= stream.PerDay;
        if (!readable || !TryQuality(Encoding.UTF8.GetBytes(fields[3]), out var letter) || letter == 'V')
        {
            problems.Doubtful(number, 0, Text(line), "a 400 record that cannot be read", string.Create(CultureInfo.InvariantCulture, $"400,first,last,quality with intervals from 1 to {stream.PerDay}; the values of that day are counted as they stand"));
            return;
        }
        ReportOverlap(from, to, line, number);
        _dayHasEvents = true;
        Mark(letter, from - 1, to, number, Seen);
    }

    private void ReportOverlap(int from, int to, ReadOnlySpan<byte> line, int number)
    {
        var covered = 0;
        foreach (var quality in _stream!.QualityOfLastDay[(from - 1)..to])
            if (quality.HasFlag(Seen)) covered++;
        if (covered == 0) return;
        problems.Doubtful(number, 0, Text(line), string.Create(CultureInfo.InvariantCulture, $"a 400 record over intervals {from} to {to}, of which {covered} stand in one before it"),
            "each interval in one 400 record; it counts as estimated where any of them says so");
    }

    /// <summary>Marks intervals of the day last read. The quality of the day as a whole gives way to that of its parts.</summary>
    private void Mark(char letter, int from, int to, int number, Quality seen = Quality.Good)
    {
        var stream = _stream!;
        var quality = stream.QualityOfLastDay[from..to];
        var kwh = stream.KwhOfLastDay[from..to];
        var dropped = default(CompensatedSum);
        for (var i = 0; i < quality.Length; i++)
        {
            if (seen != Quality.Good && !quality[i].HasFlag(Seen)) quality[i] = (quality[i] & ~Quality.Estimated) | Seen;
            if (letter is 'E' or 'F' or 'S') quality[i] |= Quality.Estimated;
            if (letter != 'N') continue;
            dropped.Add(kwh[i]);
            kwh[i] = 0;
            quality[i] = Quality.Missing | seen;
        }
        if (dropped.Total != 0)
            problems.Note(number, 0, "", string.Create(CultureInfo.InvariantCulture, $"values of {dropped.Total:0.######} under the quality N ({Nem12Codes.QualityWord(letter)})"), "none; they count as missing", stream.Unit is { IsActiveEnergy: true } ? dropped.Total : 0);
    }

    private void CloseDay()
    {
        if (!_dayOpen) return;
        _dayOpen = false;
        if (!_dayVaries && !_dayHasEvents) return;
        var uncovered = 0;
        foreach (ref var quality in _stream!.QualityOfLastDay)
        {
            if (!quality.HasFlag(Seen)) uncovered++;
            quality &= ~Seen;
        }
        if (_dayVaries && uncovered > 0)
            problems.Doubtful(_dayLine, 0, "", string.Create(CultureInfo.InvariantCulture, $"a day of quality V with {uncovered} intervals in no 400 record"), "400 records over the whole day; those values are counted as they stand");
        _dayHasEvents = false;
    }
}
