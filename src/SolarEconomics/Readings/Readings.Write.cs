using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>Writes the interval channels as one plain table that any program reads: start and end in UTC, one column per channel in kWh, missing values empty.</summary>
    /// <param name="path">File to write; it is replaced whole, or not at all.</param>
    /// <exception cref="InvalidOperationException">Channels overlap with different intervals; bring them to one length by <see cref="Channel.InStepsOf"/>.</exception>
    /// <remarks>Numbers are written so that reading them back gives the same value. Channels that are no energy in a known unit are left out.</remarks>
    public void WriteCsv(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var channels = Channels.Where(c => c.IsEnergy).ToList();
        var rows = new SortedDictionary<Instant, (Instant End, double?[] Kwh)>();
        for (var c = 0; c < channels.Count; c++)
            for (var i = 0; i < channels[c].Count; i++)
            {
                var (start, end) = (channels[c].Starts[i], channels[c].Ends[i]);
                if (!rows.TryGetValue(start, out var row)) rows.Add(start, row = (end, new double?[channels.Count]));
                if (row.End != end) throw Throw.DifferentIntervals(channels[c].Name, start);
                if (!channels[c].Quality[i].HasFlag(SolarEconomics.Quality.Missing)) row.Kwh[c] = channels[c].Kwh[i];
            }
        var text = new StringBuilder("start,end");
        foreach (var channel in channels) text.Append(',').Append(Quoted(HeaderOf(channel)));
        text.Append('\n');
        foreach (var (start, (end, kwh)) in rows)
        {
            text.Append(InstantPattern.ExtendedIso.Format(start)).Append(',').Append(InstantPattern.ExtendedIso.Format(end));
            foreach (var value in kwh) text.Append(',').Append(value?.ToString("R", CultureInfo.InvariantCulture));
            text.Append('\n');
        }
        var beside = path + ".writing";
        File.WriteAllText(beside, text.ToString());
        File.Move(beside, path, overwrite: true);
    }

    /// <summary>The flow's own word stands first, so that the column is understood without this library's guess at a meter's name.</summary>
    private static string HeaderOf(Channel channel)
    {
        var flow = HeaderWords.Name(channel.Flow);
        return channel.Flow == FlowKind.Unknown || channel.Name.Contains(flow, StringComparison.OrdinalIgnoreCase) ? $"{channel.Name} (kWh)" : $"{flow} {channel.Name} (kWh)";
    }

    private static string Quoted(string text) => text.AsSpan().IndexOfAny("\",\n\r") < 0 ? text : '"' + text.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';
}
