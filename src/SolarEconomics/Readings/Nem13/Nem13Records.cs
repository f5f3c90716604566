using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Takes the lines of a NEM13 file one by one.</summary>
internal sealed class Nem13Records(ProblemList problems)
{
    private const string Kinds = "100 (header), 250 (register and period), 550 (B2B details), 900 (end)";
    private readonly List<Nem13Stream> _streams = [];
    private bool _ended;

    internal void Take(string line, int number)
    {
        if (string.IsNullOrWhiteSpace(line)) return;
        var fields = Array.ConvertAll(CsvText.Fields(line, ','), f => f.Trim());
        switch (fields[0])
        {
            case "250": TakePeriod(fields, line, number); break;
            case "100": _ended = false; break;
            case "550": break;
            case "900": _ended = true; break;
            default: problems.Lost(number, 1, line, "a line that is no NEM13 record", $"a line that begins with {Kinds}; nothing of it was counted"); break;
        }
    }

    internal void End(int lines)
    {
        if (!_ended) problems.Doubtful(lines, 0, "", "the end of the file without a 900 record", "a 900 record last; the file may be cut off");
    }

    internal IReadOnlyList<Channel> Channels(string file)
    {
        var oneMeter = _streams.DistinctBy(s => s.Nmi, StringComparer.Ordinal).Count() <= 1;
        return [.. _streams.Select(s => s.ToChannel(NameOf(s, oneMeter), file, problems))];
    }

    private string NameOf(Nem13Stream stream, bool oneMeter)
    {
        var name = oneMeter ? stream.Suffix : $"{stream.Nmi} {stream.Suffix}";
        var twins = _streams.Count(s => string.Equals(s.Nmi, stream.Nmi, StringComparison.Ordinal) && string.Equals(s.Suffix, stream.Suffix, StringComparison.Ordinal));
        return twins == 1 ? name : $"{name} (register {stream.Register}, {stream.UnitText})";
    }

    private void TakePeriod(string[] fields, string line, int number)
    {
        if (fields.Length < Nem13Fields.Least || fields[Nem13Fields.Nmi].Length == 0)
        {
            problems.Lost(number, 0, line, string.Create(CultureInfo.InvariantCulture, $"a 250 record of {fields.Length} fields"), "a meter, two readings with their times, a quantity and its unit; it was not counted");
            return;
        }
        var stream = StreamOf(fields, number);
        var quantity = NumberText.Plain.TryRead(fields[Nem13Fields.Quantity], out var value) ? stream.ToKwh(value) : (double?)null;
        if (!TryTime(fields[Nem13Fields.PreviousTime], out var start) || !TryTime(fields[Nem13Fields.CurrentTime], out var end) || end <= start)
        {
            problems.Lost(number, Nem13Fields.CurrentTime + 1, line, $"a period from \"{ProblemList.Shorten(fields[Nem13Fields.PreviousTime])}\" to \"{ProblemList.Shorten(fields[Nem13Fields.CurrentTime])}\"",
                "two times such as 20240301000000, the second later; the period was not counted", stream.IsEnergy ? quantity ?? 0 : 0);
            return;
        }
        if (quantity is { } large && Math.Abs(large) > CsvRows.TooLargeKwh) quantity = null;
        var quality = QualityOf(fields, number);
        if (quantity is null)
            problems.Lost(number, Nem13Fields.Quantity + 1, fields[Nem13Fields.Quantity], $"\"{ProblemList.Shorten(fields[Nem13Fields.Quantity])}\" as quantity", "a number; the period counts as missing");
        else if (quality.HasFlag(Quality.Missing) && quantity != 0)
            problems.Note(number, Nem13Fields.Quantity + 1, fields[Nem13Fields.Quantity], "a quantity under the quality N (null)", "none; the period counts as missing", stream.IsEnergy ? quantity.Value : 0);
        if (quantity < 0) quality |= Quality.Negative;
        stream.Add(new Nem13Period(start, end, quality.HasFlag(Quality.Missing) ? 0 : quantity ?? 0, quantity is null ? Quality.Missing : quality, WentBack(fields, number),
            fields.Length > Nem13Fields.Updated ? fields[Nem13Fields.Updated] : "", number));
    }

    private Nem13Stream StreamOf(string[] fields, int number)
    {
        var found = _streams.Find(s => s.Holds(fields));
        if (found is not null) return found;
        var stream = new Nem13Stream(fields);
        _streams.Add(stream);
        if (stream.Unit is null)
            problems.Lost(number, Nem13Fields.Unit + 1, stream.UnitText, $"the unit \"{ProblemList.Shorten(stream.UnitText)}\"", "kWh, Wh, MWh or a reactive unit; the register is kept and counted nowhere");
        else if (stream.IsEnergy && stream.Flow == FlowKind.Unknown)
            problems.Doubtful(number, Nem13Fields.Direction + 1, fields[Nem13Fields.Direction], $"the direction \"{ProblemList.Shorten(fields[Nem13Fields.Direction])}\"", "E (from the grid to the home) or I (to the grid); the register belongs to no flow");
        return stream;
    }

    /// <summary>The quality of a period is that of both its readings; N of the later one leaves it without a value.</summary>
    private Quality QualityOf(string[] fields, int number)
    {
        var quality = Quality.Good;
        foreach (var place in new[] { Nem13Fields.PreviousQuality, Nem13Fields.CurrentQuality })
        {
            var letter = fields[place].Length > 0 ? char.ToUpperInvariant(fields[place][0]) : ' ';
            if (letter is 'E' or 'F' or 'S') quality |= Quality.Estimated;
            else if (letter == 'N' && place == Nem13Fields.CurrentQuality) return Quality.Missing;
            else if (letter is not ('A' or 'N'))
                problems.Doubtful(number, place + 1, fields[place], $"\"{ProblemList.Shorten(fields[place])}\" where a quality stands", "A, E, F, N or S; the period is counted as it stands");
        }
        return quality;
    }

    private bool WentBack(string[] fields, int number)
    {
        if (!NumberText.Plain.TryRead(fields[Nem13Fields.PreviousRead], out var from) || !NumberText.Plain.TryRead(fields[Nem13Fields.CurrentRead], out var to) || to >= from) return false;
        problems.Doubtful(number, Nem13Fields.CurrentRead + 1, fields[Nem13Fields.CurrentRead], $"a register going back from {fields[Nem13Fields.PreviousRead]} to {fields[Nem13Fields.CurrentRead]}",
            "one that rises; its quantity is counted as the record states it. The register may have run over, or the meter was replaced");
        return true;
    }

    /// <summary>A time on the clock of the market. Unit: ticks since 1970.</summary>
    private static bool TryTime(string text, out long ticks)
    {
        ticks = 0;
        if (text.Length is not (8 or 12 or 14) || !StampText.TryRead(text, DateOrder.YearMonthDay, out var stamp) || stamp.LocalMs < 0) return false;
        ticks = (stamp.LocalMs * NodaConstants.TicksPerMillisecond) - (10 * NodaConstants.TicksPerHour);
        return true;
    }
}
