using System.Globalization;
using System.Text;

namespace SolarEconomics;

/// <summary>Takes the lines of a NEM12 file one by one.</summary>
/// <param name="problems">Where what cannot be read is listed.</param>
/// <param name="fileBytes">Length of the file, from which the days to expect are guessed.</param>
internal sealed partial class Nem12Records(ProblemList problems, long fileBytes)
{
    /// <summary>A value and its comma take about this many bytes. Common practice, no source.</summary>
    private const int BytesPerValue = 5;

    /// <summary>Room for no more days than this is made on a guess.</summary>
    private const int MostGuessedDays = 3000;

    private const byte Comma = (byte)',';
    private static readonly string[] Kinds = ["100", "200", "300", "400", "500", "900"];
    private readonly List<Nem12Stream> _streams = [];
    private Nem12Stream? _stream;
    private bool _dayOpen;
    private bool _dayVaries;
    private int _dayLine;
    private bool _ended;

    internal void Take(ReadOnlySpan<byte> line, int number)
    {
        if (line.IndexOf((byte)'"') >= 0) line = Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(line).Replace("\"", "", StringComparison.Ordinal));
        var kind = line.Length >= 3 && (line.Length == 3 || line[3] == Comma) ? Encoding.Latin1.GetString(line[..3]) : "";
        if (!string.Equals(kind, "400", StringComparison.Ordinal)) CloseDay();
        switch (kind)
        {
            case "300": TakeDay(line, number); break;
            case "400": TakeEvent(Fields(line), line, number); break;
            case "200": TakeStream(Fields(line), line, number); break;
            case "100": _ended = false; break;
            case "500": break;
            case "900": _ended = true; _stream = null; break;
            default:
                if (!line.Trim((byte)' ').IsEmpty)
                    problems.Lost(number, 1, Text(line), "a line that is no NEM12 record", "a line that begins with " + string.Join(", ", Kinds.Select(k => $"{k} ({Nem12Codes.RecordWord(k)})")) + "; nothing of it was counted");
                break;
        }
    }

    internal void End(int lines)
    {
        CloseDay();
        if (!_ended) problems.Doubtful(lines, 0, "", "the end of the file without a 900 record", "a 900 record last; the file may be cut off");
    }

    internal IReadOnlyList<Channel> Channels(string file)
    {
        var streams = _streams.Where(s => s.HasDays).ToList();
        var oneMeter = streams.DistinctBy(s => s.Nmi, StringComparer.Ordinal).Count() <= 1;
        return [.. streams.Select(s => s.ToChannel(NameOf(s, streams, oneMeter), file, problems))];
    }

    private static string NameOf(Nem12Stream stream, List<Nem12Stream> all, bool oneMeter)
    {
        var name = oneMeter ? stream.Suffix : $"{stream.Nmi} {stream.Suffix}";
        var twins = all.Count(s => string.Equals(s.Nmi, stream.Nmi, StringComparison.Ordinal) && string.Equals(s.Suffix, stream.Suffix, StringComparison.Ordinal));
        return twins == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name} ({stream.UnitText}, {stream.Minutes} min)");
    }

    private void TakeStream(string[] fields, ReadOnlySpan<byte> line, int number)
    {
        _stream = null;
        if (fields.Length < 9 || fields[1].Length == 0 || fields[4].Length == 0)
        {
            problems.Lost(number, 0, Text(line), "a 200 record without meter, suffix, unit and interval length", "200,NMI,configuration,register,suffix,stream,serial,unit,minutes,next date; the days below it have no stream");
            return;
        }
        if (!int.TryParse(fields[8], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) || minutes is < 1 or > 1440 || 1440 % minutes != 0)
        {
            problems.Lost(number, 9, fields[8], $"an interval length of \"{ProblemList.Shorten(fields[8])}\"", "5, 15 or 30 minutes; the days below it cannot be read");
            return;
        }
        if (minutes is not (5 or 15 or 30)) problems.Doubtful(number, 9, fields[8], $"an interval length of {fields[8]} minutes", "5, 15 or 30; it was read as it stands");
        if (EnergyUnit.Find(fields[7]) is null)
            problems.Lost(number, 8, fields[7], $"the unit \"{ProblemList.Shorten(fields[7])}\"", "kWh, Wh, MWh or a reactive unit; the stream is kept and counted nowhere");
        _stream = _streams.Find(s => string.Equals(s.Nmi, fields[1], StringComparison.Ordinal) && string.Equals(s.Suffix, fields[4], StringComparison.Ordinal)
            && string.Equals(s.UnitText, fields[7], StringComparison.OrdinalIgnoreCase) && s.Minutes == minutes);
        if (_stream is not null) return;
        _stream = new Nem12Stream(fields[1], fields[4], fields[7], minutes, LikelyDays(minutes));
        _streams.Add(_stream);
    }

    /// <summary>As many days as the longest stream above has, or as the file can hold where this is the first: memory that is never grown is touched only once.</summary>
    private int LikelyDays(int minutes) => _streams.Count > 0
        ? _streams.Max(s => s.DayCount) + 1
        : (int)Math.Min(MostGuessedDays, fileBytes / BytesPerValue * minutes / 1440);

    private void TakeDay(ReadOnlySpan<byte> line, int number)
    {
        if (_stream is not { } stream)
        {
            problems.Lost(number, 0, Text(line), "a 300 record without a 200 record above it that says its stream", "a 200 record first; the day was not counted", LooseSum(line));
            return;
        }
        var at = 4;
        var date = NextField(line, ref at);
        if (!TryDay(date, out var day))
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
                (kwh[i], quality[i]) = (value, value < 0 ? Quality.Negative : Quality.Good);
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
        var method = NextField(line, ref at);
        if (!TryQuality(method, out var letter))
        {
            problems.Lost(number, stream.PerDay + 3, Text(line), $"\"{Text(method)}\" where the quality stands", string.Create(CultureInfo.InvariantCulture, $"A, E, F, N, S or V after {stream.PerDay} values; the day was not counted"), SumOf(line, valuesAt, stream));
            return;
        }
        _ = NextField(line, ref at);
        _ = NextField(line, ref at);
        stream.Keep(day, number, Text(NextField(line, ref at)));
        (_dayOpen, _dayVaries, _dayLine) = (true, letter == 'V', number);
        if (letter != 'V') Mark(letter, 0, stream.PerDay, number);
        ReportHoles(stream, letter, number);
    }

    private static Quality TakeOddValue(ReadOnlySpan<byte> field, Nem12Stream stream, out double kwh)
    {
        kwh = 0;
        if (!NumberText.Plain.TryRead(Decode(field), out var value)) return Quality.Missing;
        if (stream.Unit is { IsActiveEnergy: true } unit) value = unit.Scale(value);
        if (Math.Abs(value) > CsvRows.TooLargeKwh) return Quality.Missing;
        kwh = value;
        return value < 0 ? Quality.Negative : Quality.Good;
    }

    private void ReportHoles(Nem12Stream stream, char letter, int number)
    {
        if (letter == 'N' || !stream.QualityOfLastDay.ContainsAnyExcept(Quality.Good)) return;
        var missing = 0;
        foreach (var quality in stream.QualityOfLastDay)
            if (quality.HasFlag(Quality.Missing)) missing++;
        if (missing > 0) problems.Lost(number, 0, "", string.Create(CultureInfo.InvariantCulture, $"{missing} intervals without a value"), "a value in each, or the quality N; they count as missing");
    }

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
        Mark(letter, from - 1, to, number);
    }

    /// <summary>Marks intervals of the day last read. Flags of the day as a whole give way to those of its parts.</summary>
    private void Mark(char letter, int from, int to, int number)
    {
        if (letter == 'A' && !_dayVaries) return;
        var stream = _stream!;
        var seen = _dayVaries ? Seen : Quality.Good;
        var quality = stream.QualityOfLastDay[from..to];
        var kwh = stream.KwhOfLastDay[from..to];
        var dropped = default(CompensatedSum);
        for (var i = 0; i < quality.Length; i++)
        {
            quality[i] |= seen;
            if (letter is 'E' or 'F' or 'S') quality[i] |= Quality.Estimated;
            if (letter != 'N') continue;
            dropped.Add(kwh[i]);
            kwh[i] = 0;
            quality[i] = Quality.Missing | seen;
        }
        if (dropped.Total != 0)
            problems.Note(number, 0, "", string.Create(CultureInfo.InvariantCulture, $"values of {dropped.Total:0.######} under the quality N ({Nem12Codes.QualityWord(letter)})"), "none; they count as missing", stream.Unit is { IsActiveEnergy: true } ? dropped.Total : 0);
    }

    /// <summary>Marks an interval of a day of quality V as covered by one of its own, while the day is open; taken off when the day closes.</summary>
    private const Quality Seen = (Quality)128;

    private void CloseDay()
    {
        if (!_dayOpen) return;
        _dayOpen = false;
        if (!_dayVaries) return;
        var uncovered = 0;
        foreach (ref var quality in _stream!.QualityOfLastDay)
        {
            if (!quality.HasFlag(Seen)) uncovered++;
            quality &= ~Seen;
        }
        if (uncovered > 0)
            problems.Doubtful(_dayLine, 0, "", string.Create(CultureInfo.InvariantCulture, $"a day of quality V with {uncovered} intervals in no 400 record"), "400 records over the whole day; those values are counted as they stand");
    }

    private static bool IsQuality(ReadOnlySpan<byte> field) => TryQuality(field, out _);

    /// <summary>The letter of a quality with or without its two digits of method, for example A or F51.</summary>
    private static bool TryQuality(ReadOnlySpan<byte> field, out char letter)
    {
        field = field.Trim((byte)' ');
        letter = field.IsEmpty ? '\0' : char.ToUpperInvariant((char)field[0]);
        return letter is 'A' or 'E' or 'F' or 'N' or 'S' or 'V' && field.Length is 1 or 3
            && (field.Length == 1 || (char.IsAsciiDigit((char)field[1]) && char.IsAsciiDigit((char)field[2])));
    }

    private static bool TryDay(ReadOnlySpan<byte> field, out long day)
    {
        day = 0;
        if (field.Length != 8 || !StampText.TryRead(Decode(field), DateOrder.YearMonthDay, out var stamp)) return false;
        day = stamp.LocalMs / 86_400_000;
        return stamp.LocalMs >= 0;
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

    private static ReadOnlySpan<byte> NextField(ReadOnlySpan<byte> line, ref int at)
    {
        if (at > line.Length) return default;
        var rest = line[at..];
        var comma = rest.IndexOf(Comma);
        var field = comma < 0 ? rest : rest[..comma];
        at += field.Length + 1;
        return field;
    }

    private static string[] Fields(ReadOnlySpan<byte> line) => Encoding.UTF8.GetString(line).Split(',', StringSplitOptions.TrimEntries);

    /// <summary>The bytes as they are, to be read; what is shown to people goes through <see cref="Text"/>, which takes odd letters out.</summary>
    private static string Decode(ReadOnlySpan<byte> bytes) => Encoding.UTF8.GetString(bytes[..Math.Min(bytes.Length, 400)]);

    private static string Text(ReadOnlySpan<byte> bytes) => ProblemList.Shorten(Encoding.UTF8.GetString(bytes[..Math.Min(bytes.Length, 400)]));
}
