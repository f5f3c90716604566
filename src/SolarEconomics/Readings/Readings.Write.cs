using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace SolarEconomics;

public sealed partial class Readings
{
    private const int RowsBetweenLooks = 4096;

    /// <summary>Writes the interval channels as one plain table that any program reads: start and end in UTC, one column per channel in kWh, missing values empty;
    /// where something is known of values (estimated, filled, doubtful …), a column of words after it, which this library reads back. Typed readings of counters are no intervals: where there are any, they go to a second file beside it.</summary>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <param name="cancel">Stops the writing; the file is then as it was.</param>
    /// <returns>The files written: the table, and, where there are typed counters, <c>NAME counters.csv</c> in the same folder as <see cref="WriteCountersCsv"/> writes it.</returns>
    /// <exception cref="InvalidOperationException">There is no channel, only typed counters (see <see cref="WriteCountersCsv"/>), or channels overlap with different intervals; bring them to one length by <see cref="Channel.InStepsOf"/>.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    /// <remarks>Numbers are written so that reading them back gives the same value. A channel that is no energy keeps its numbers under its own unit. Rows are written as they come, not held.</remarks>
    public IReadOnlyList<string> WriteCsv(string path, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(path);
        var table = new ChannelTable(this);
        Replace(path, text => WriteTable(table, text, cancel));
        return [path, .. WriteCountersBeside(path)];
    }

    /// <summary>Writes typed counters, which are no intervals, beside a table of intervals, so that none is left out.</summary>
    /// <returns>The file written; none where there are no counters.</returns>
    internal IReadOnlyList<string> WriteCountersBeside(string path)
    {
        if (Counters.Count == 0) return [];
        var beside = Path.Combine(Path.GetDirectoryName(path) ?? "", Path.GetFileNameWithoutExtension(path) + " counters.csv");
        WriteCountersCsv(beside);
        return [beside];
    }

    /// <summary>Writes the typed readings of counters as a counter file, which this library reads back: date, device, kWh, days uncertain, photo and note.</summary>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <exception cref="InvalidOperationException">There is no counter.</exception>
    public void WriteCountersCsv(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (Counters.Count == 0) throw new InvalidOperationException("Found no counter, expected one at least to write.");
        Replace(path, text =>
        {
            text.Write("date,device,kwh,days uncertain,photo,note\n");
            foreach (var (counter, reading) in Counters.SelectMany(counter => counter.Readings.Select(reading => (counter, reading))))
            {
                string[] fields =
                [
                    LocalDatePattern.Iso.Format(reading.Date), counter.Device, reading.Kwh.ToString("R", CultureInfo.InvariantCulture),
                    reading.DaysUncertain.ToString(CultureInfo.InvariantCulture), reading.Photo ?? "", reading.Note ?? "",
                ];
                text.Write(string.Join(',', fields.Select(Quoted)) + "\n");
            }
        });
    }

    private static void Replace(string path, Action<StreamWriter> write) => ReplacedFile.Write(path, beside =>
    {
        using var text = new StreamWriter(beside, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), bufferSize: 1 << 16);
        write(text);
    });

    private static void WriteTable(ChannelTable table, StreamWriter text, CancellationToken cancel)
    {
        text.Write("start,end");
        for (var c = 0; c < table.Headers.Count; c++)
        {
            text.Write(',');
            text.Write(Quoted(table.Headers[c]));
            if (table.HasQuality[c]) text.Write("," + Quoted(ChannelTable.QualityHeader(table.Headers[c])));
        }
        text.Write('\n');
        for (var row = 0; table.Next(); row++)
        {
            if (row % RowsBetweenLooks == 0) cancel.ThrowIfCancellationRequested();
            text.Write(InstantPattern.ExtendedIso.Format(table.Start));
            text.Write(',');
            text.Write(InstantPattern.ExtendedIso.Format(table.End));
            for (var c = 0; c < table.Kwh.Length; c++)
            {
                text.Write(',');
                if (table.Kwh[c] is { } kwh) text.Write(kwh.ToString("R", CultureInfo.InvariantCulture));
                if (!table.HasQuality[c]) continue;
                text.Write(',');
                text.Write(QualityWords.Of(table.Quality[c]));
            }
            text.Write('\n');
        }
    }

    private static string Quoted(string text) => text.AsSpan().IndexOfAny("\",\n\r") < 0 ? text : '"' + text.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';
}
