using NodaTime;

namespace SolarEconomics;

/// <summary>Reads NEM12, the interval format of the Australian market: one 200 record per stream, one 300 record per day, on UTC+10 all year.</summary>
/// <remarks>Source: readings-nem12.</remarks>
internal sealed class Nem12Reader : IRecordReader
{
    /// <summary>Market time: eastern standard time without daylight saving.</summary>
    internal static readonly DateTimeZone MarketTime = DateTimeZone.ForOffset(Offset.FromHours(10));

    private const int HeadBytes = 400;

    public string Format => "NEM12";

    public bool Recognises(RecordFile file)
    {
        var text = HeadOf(file);
        return text.StartsWith("100,NEM12", StringComparison.OrdinalIgnoreCase)
            || (text.StartsWith("200,", StringComparison.Ordinal) && text.Contains("\n300,", StringComparison.Ordinal));
    }

    /// <summary>How a market file begins, without the quotes and spaces that some programs put around its fields.</summary>
    internal static string HeadOf(RecordFile file) => CsvText.EncodingOf(file.Head).GetString(file.Head[..Math.Min(file.Head.Length, HeadBytes)])
        .Replace("\"", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).Replace('\r', '\n').TrimStart('\uFEFF', '\r', '\n', '\t');

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var problems = new ProblemList(file.Name);
        var records = new Nem12Records(problems, file.Length, Nem12Dates.OrderOf(file.Name, options, () => Utf8Stream(file)));
        using (var stream = Utf8Stream(file))
        {
            var lines = new Utf8Lines(stream);
            var nextReport = 0L;
            while (lines.TryNext(out var line))
            {
                if (lines.BytesRead >= nextReport)
                {
                    options.Cancel.ThrowIfCancellationRequested();
                    options.Progress?.Report(Math.Min(1, lines.BytesRead / (double)file.Length));
                    nextReport = lines.BytesRead + 1;
                }
                records.Take(line, lines.Line);
            }
            records.End(lines.Line);
        }
        options.Progress?.Report(1);
        var channels = records.Channels(file.Name);
        if (channels.Count == 0)
            throw Throw.NothingToRead(file.Name, "a NEM12 file without any readable day", "200 records followed by 300 records. See the problems listed", problems.ToList());
        return new RecordContent(file.Path, Format, options.Zone ?? MarketTime) { Channels = channels, Problems = problems.ToList() };
    }

    private static Stream Utf8Stream(RecordFile file)
    {
        var encoding = CsvText.EncodingOf(file.Head);
        var stream = file.Open();
        if (encoding.WebName is not ("utf-8" or "windows-1252")) return System.Text.Encoding.CreateTranscodingStream(stream, encoding, System.Text.Encoding.UTF8);
        return file.Head.Contains((byte)'\r') && !file.Head.Contains((byte)'\n') ? new LoneReturnStream(stream) : stream;
    }
}
