using System.Globalization;

namespace SolarEconomics;

/// <content>300 records: a day of values and what quality they have.</content>
internal sealed partial class Nem12Records
{
    private void TakeDay(ReadOnlySpan<byte> line, int number)
    {
        if (_stream is not { } stream)
        {
            problems.Lost(number, 0, Text(line), "a 300 record without a 200 record above it that says its stream", "a 200 record first; the day was not counted", LooseSum(line));
            return;
        }
        var at = 4;
        var date = NextField(line, ref at);
        if (!TryDay(date, number, out var day))
        {
            problems.Lost(number, 2, Text(date), $"\"{Text(date)}\" where the date stands", "a date such as 20240301; the day was not counted", SumOf(line, at, stream));
            return;
        }
        var valuesAt = at;
        stream.Room(out var kwh, out var quality);
        var scaled = stream.Unit is { ToKilo: not 1, IsActiveEnergy: true } unit ? unit : null;
        quality.Clear();
        for (var i = 0; i < kwh.Length; i++)
        {
            i += PlainValues(line, ref at, kwh[i..], scaled);
            if (i == kwh.Length) break;
            if (at > line.Length)
            {
                problems.Lost(number, i + 3, Text(line), string.Create(CultureInfo.InvariantCulture, $"{i} values"), string.Create(CultureInfo.InvariantCulture, $"{stream.PerDay} of {stream.Minutes} minutes; the day was not counted"), SumOf(line, valuesAt, stream));
                return;
            }
            var fieldAt = at;
            if (Utf8Number.TryRead(line, ref at, Comma, out var value) && Math.Abs(value) <= CsvRows.TooLargeKwh)
            {
                at++;
                if (scaled is not null) value = scaled.Scale(value);
                (kwh[i], quality[i]) = (value, Quality.Good);
                continue;
            }
            at = fieldAt;
            var field = NextField(line, ref at);
            quality[i] = TakeOddValue(field, stream, out kwh[i]);
            if (quality[i] != Quality.Missing || field.IsEmpty) continue;
            if (IsQuality(field))
            {
                problems.Lost(number, i + 3, Text(line), string.Create(CultureInfo.InvariantCulture, $"{i} values before the quality \"{Text(field)}\""), string.Create(CultureInfo.InvariantCulture, $"{stream.PerDay} of {stream.Minutes} minutes; the day was not counted"), SumOf(line, valuesAt, stream));
                return;
            }
            problems.Lost(number, i + 3, Text(field), $"\"{Text(field)}\" where a value stands", "a number; the interval counts as missing");
        }
        var isCutOff = at > line.Length;
        var method = NextField(line, ref at);
        if (!TryQuality(method, out var letter))
        {
            // All values are there, each with its comma: only what they are worth is not said.
            if (!isCutOff && method.Trim((byte)' ').IsEmpty)
            {
                problems.Doubtful(number, stream.PerDay + 3, "", "no quality after the values", "A, E, F, N, S or V; the day was counted, and its values are doubtful");
                foreach (ref var one in quality)
                    if (one != Quality.Missing) one |= Quality.Doubtful;
                Open(stream, line, ref at, day, number, 'A');
                return;
            }
            problems.Lost(number, stream.PerDay + 3, Text(line), $"\"{Text(method)}\" where the quality stands", string.Create(CultureInfo.InvariantCulture, $"A, E, F, N, S or V after {stream.PerDay} values; the day was not counted"), SumOf(line, valuesAt, stream));
            return;
        }
        Open(stream, line, ref at, day, number, letter);
    }

    /// <summary>Keeps the day; the 400 records below it may still say more of its parts.</summary>
    private void Open(Nem12Stream stream, ReadOnlySpan<byte> line, ref int at, long day, int number, char letter)
    {
        _ = NextField(line, ref at);
        _ = NextField(line, ref at);
        stream.Keep(day, number, Text(NextField(line, ref at).Trim((byte)' ')));
        (_dayOpen, _dayVaries, _dayLine) = (true, letter == 'V', number);
        if (letter is not ('V' or 'A')) Mark(letter, 0, stream.PerDay, number);
        ReportHoles(stream, letter, number);
    }

    private static Quality TakeOddValue(ReadOnlySpan<byte> field, Nem12Stream stream, out double kwh)
    {
        kwh = 0;
        if (!NumberText.Plain.TryRead(Decode(field), out var value)) return Quality.Missing;
        if (stream.Unit is { IsActiveEnergy: true } unit) value = unit.Scale(value);
        if (Math.Abs(value) > CsvRows.TooLargeKwh) return Quality.Missing;
        kwh = value;
        return Quality.Good;
    }

    private void ReportHoles(Nem12Stream stream, char letter, int number)
    {
        if (letter == 'N' || !stream.QualityOfLastDay.ContainsAnyExcept(Quality.Good)) return;
        var missing = 0;
        foreach (var quality in stream.QualityOfLastDay)
            if (quality.HasFlag(Quality.Missing)) missing++;
        if (missing > 0) problems.Lost(number, 0, "", Wording.CountInMessage(missing, "interval") + " without a value", "a value in each, or the quality N; what lacks one counts as missing");
    }

    /// <summary>The energy that stands in a day which is not counted: numbers up to the quality.</summary>
    private static double SumOf(ReadOnlySpan<byte> line, int at, Nem12Stream stream)
    {
        if (stream.Unit is not { IsActiveEnergy: true } unit) return 0;
        var sum = default(CompensatedSum);
        for (var i = 0; i < stream.PerDay && at <= line.Length; i++)
        {
            var field = NextField(line, ref at);
            if (IsQuality(field)) break;
            if (NumberText.Plain.TryRead(Decode(field), out var value) && Math.Abs(value) <= CsvRows.TooLargeKwh) sum.Add(unit.Scale(value));
        }
        return sum.Total;
    }

    private static double LooseSum(ReadOnlySpan<byte> line)
    {
        var at = 4;
        _ = NextField(line, ref at);
        return SumOf(line, at, new Nem12Stream("", "E", "kWh", 5));
    }
}
