using Deedle;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>The interval channels as a Deedle frame: one row per interval start, one column per channel, in kWh; a missing value is missing there too.</summary>
    /// <remarks>Channels of different lengths of interval stand in the rows of their own starts. Two channels of one name are told apart by flow and meter.</remarks>
    public Frame<Instant, string> ToFrame()
    {
        var columns = Channels.Select((c, i) => KeyValuePair.Create(NameInFrame(c, i), SeriesOf(c)));
        return Frame.FromColumns(columns);
    }

    private string NameInFrame(Channel channel, int index)
    {
        var twins = Channels.Count(c => string.Equals(c.Name, channel.Name, StringComparison.Ordinal));
        return twins == 1 ? channel.Name : FormattableString.Invariant($"{channel.Name} ({HeaderWords.Name(channel.Flow)}, {channel.Meter ?? channel.File ?? "?"}, {index + 1})");
    }

    private static Series<Instant, double> SeriesOf(Channel channel)
    {
        var (keys, values) = (new List<Instant>(channel.Count), new List<double>(channel.Count));
        for (var i = 0; i < channel.Count; i++)
        {
            if (channel.Quality[i].HasFlag(SolarEconomics.Quality.Missing)) continue;
            keys.Add(channel.Starts[i]);
            values.Add(channel.Kwh[i]);
        }
        return new Series<Instant, double>(keys, values);
    }
}
