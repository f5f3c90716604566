using NodaTime;

namespace SolarEconomics;

/// <summary>Reads NEM13, the format of the Australian market for registers that are read every few months: one 250 record per register and period.</summary>
/// <remarks>Source: readings-nem13.</remarks>
internal sealed class Nem13Reader : IRecordReader
{
    public string Format => "NEM13";

    public bool Recognises(RecordFile file)
    {
        var text = Nem12Reader.HeadOf(file);
        return text.StartsWith("100,NEM13", StringComparison.OrdinalIgnoreCase)
            || (text.StartsWith("250,", StringComparison.Ordinal) && text.Split('\n')[0].Count(c => c == ',') >= Nem13Fields.Least - 1);
    }

    public RecordContent Read(RecordFile file, ReadOptions options)
    {
        var problems = new ProblemList(file.Name);
        var records = new Nem13Records(problems);
        using (var text = new StreamReader(file.Open(), CsvText.EncodingOf(file.Head)))
        {
            var number = 0;
            while (text.ReadLine() is { } line)
            {
                options.Cancel.ThrowIfCancellationRequested();
                records.Take(line, ++number);
            }
            records.End(number);
        }
        options.Progress?.Report(1);
        var channels = records.Channels(file.Name);
        if (channels.Count == 0)
            throw Throw.NothingToRead(file.Name, "a NEM13 file without any readable period", "250 records with two dates and a quantity. See the problems listed", problems.ToList());
        return new RecordContent(file.Path, Format, options.Zone ?? Nem12Reader.MarketTime) { Channels = channels, Problems = problems.ToList() };
    }
}
