using System.Globalization;
using System.Text;

namespace SolarEconomics;

/// <summary>Takes the lines of a NEM12 file one by one.</summary>
/// <param name="problems">Where what cannot be read is listed.</param>
/// <param name="fileBytes">Length of the file, from which the days to expect are guessed.</param>
/// <param name="order">Order of day and month where a spreadsheet wrote the days anew.</param>
internal sealed partial class Nem12Records(ProblemList problems, long fileBytes, DateOrder order)
{
    /// <summary>A value and its comma take about this many bytes. Common practice, no source.</summary>
    private const int BytesPerValue = 5;

    /// <summary>Room for no more days than this is made on a guess.</summary>
    private const int MostGuessedDays = 3000;

    private const byte Comma = (byte)',';
    private static readonly string[] Kinds = ["100", "200", "300", "400", "500", "900"];
    private readonly List<Nem12Stream> _streams = [];
    private Nem12Stream? _stream;
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
        // A meter's identifier has letters and digits only; a spreadsheet makes a power of ten of one with digits alone, and drops the last of them.
        if (fields[1].Contains("E+", StringComparison.OrdinalIgnoreCase))
            problems.Doubtful(number, 2, fields[1], $"the meter \"{ProblemList.Shorten(fields[1])}\", a number that a spreadsheet has shortened", "the whole identifier as the file had it before; meters with the same first digits were read as one");
        _stream = new Nem12Stream(fields[1], fields[4], fields[7], minutes, LikelyDays(minutes));
        _streams.Add(_stream);
    }

    /// <summary>As many days as the longest stream above has, or as the file can hold where this is the first: memory that is never grown is touched only once.</summary>
    private int LikelyDays(int minutes) => _streams.Count > 0
        ? _streams.Max(s => s.DayCount) + 1
        : (int)Math.Min(MostGuessedDays, fileBytes / BytesPerValue * minutes / 1440);
}
