using Deedle;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    /// <summary>The interval channels as a Deedle frame: one row per interval start, one column per channel, in kWh; a missing value is missing there too.</summary>
    /// <remarks>Channels of different lengths of interval stand in the rows of their own starts; where an interval does not end as the rows alone would say, a column <c>NAME [end]</c>
    /// holds the ends. Two channels of one name are told apart by flow and meter. A channel that is no active energy keeps its numbers, and its name says so with its unit; a name
    /// that would be read as another unit says that it is energy. Typed readings of counters are no intervals: see <see cref="CountersToFrame"/>.</remarks>
    public Frame<Instant, string> ToFrame()
    {
        var starts = Channels.SelectMany(KnownStarts).Distinct().Order().ToArray();
        var told = FrameEnds.Told(starts);
        var withEnds = Channels.Select(c => !FrameEnds.AreTold(c, told)).ToArray();
        var frame = Frame.FromColumns(Channels.Select((c, i) => KeyValuePair.Create(NameInFrame(c, i), SeriesOf(c, missingToo: withEnds[i]))));
        for (var i = 0; i < Channels.Count; i++)
            if (withEnds[i]) frame.AddColumn(FrameNames.EndOf(NameInFrame(Channels[i], i)), new Series<Instant, Instant>(Channels[i].Starts.ToArray(), Channels[i].Ends.ToArray()));
        return frame;
    }

    private string NameInFrame(Channel channel, int index) => FrameNames.Of(OwnName(channel, index), channel);

    private string OwnName(Channel channel, int index)
    {
        var twins = Channels.Count(c => string.Equals(c.Name, channel.Name, StringComparison.Ordinal));
        return twins == 1 ? channel.Name : FormattableString.Invariant($"{channel.Name} ({HeaderWords.Name(channel.Flow)}, {channel.Meter ?? channel.File ?? "?"}, {index + 1})");
    }

    private static IEnumerable<Instant> KnownStarts(Channel channel) => Enumerable.Range(0, channel.Count).Where(i => !channel.Quality[i].HasFlag(SolarEconomics.Quality.Missing)).Select(i => channel.Starts[i]);

    private static Series<Instant, double> SeriesOf(Channel channel, bool missingToo)
    {
        var (keys, values) = (new List<Instant>(channel.Count), new List<double>(channel.Count));
        for (var i = 0; i < channel.Count; i++)
        {
            var missing = channel.Quality[i].HasFlag(SolarEconomics.Quality.Missing);
            if (missing && !missingToo) continue;
            keys.Add(channel.Starts[i]);
            // To Deedle a missing value.
            values.Add(missing ? double.NaN : channel.Kwh[i]);
        }
        return new Series<Instant, double>(keys, values);
    }
}
