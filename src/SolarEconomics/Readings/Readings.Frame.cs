using Deedle;
using NodaTime;

namespace SolarEconomics;

public sealed partial class Readings
{
    private const string NoEnergyBegin = " [no energy: ";

    /// <summary>The interval channels as a Deedle frame: one row per interval start, one column per channel, in kWh; a missing value is missing there too.</summary>
    /// <remarks>Channels of different lengths of interval stand in the rows of their own starts. Two channels of one name are told apart by flow and meter. A channel that is no active
    /// energy keeps its numbers, and its name says so with its unit. Typed readings of counters are no intervals: they stand in <see cref="Counters"/>.</remarks>
    public Frame<Instant, string> ToFrame()
    {
        var columns = Channels.Select((c, i) => KeyValuePair.Create(NameInFrame(c, i), SeriesOf(c)));
        return Frame.FromColumns(columns);
    }

    /// <summary>The unit of a column that is no energy, as its name in a frame says it; <see langword="null"/> for any other.</summary>
    private static string? UnitInFrame(string name) =>
        name.EndsWith(']') && name.LastIndexOf(NoEnergyBegin, StringComparison.Ordinal) is >= 0 and var at ? name[(at + NoEnergyBegin.Length)..^1] : null;

    private string NameInFrame(Channel channel, int index) => channel.IsEnergy ? OwnName(channel, index) : $"{OwnName(channel, index)}{NoEnergyBegin}{channel.Unit}]";

    private string OwnName(Channel channel, int index)
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
