using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace SolarEconomics;

public sealed partial class Readings
{
    private const int RowsBetweenLooks = 4096;

    /// <summary>Writes the interval channels as one plain table that any program reads: start and end in UTC, one column per channel in kWh, missing values empty;
    /// where something is known of values (estimated, filled, doubtful …), a column of words after it, which this library reads back.</summary>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <param name="cancel">Stops the writing; the file is then as it was.</param>
    /// <exception cref="InvalidOperationException">Channels overlap with different intervals; bring them to one length by <see cref="Channel.InStepsOf"/>.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    /// <remarks>Numbers are written so that reading them back gives the same value. Channels that are no energy in a known unit are left out. Rows are written as they come, not held.</remarks>
    public void WriteCsv(string path, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(path);
        var beside = path + ".writing";
        try
        {
            using (var text = new StreamWriter(beside, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), bufferSize: 1 << 16)) WriteTable(text, cancel);
            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private void WriteTable(StreamWriter text, CancellationToken cancel)
    {
        var table = new ChannelTable(this);
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
