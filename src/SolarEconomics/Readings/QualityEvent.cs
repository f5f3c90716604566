using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>A stretch of a channel with something to say of it: where, how long, how many kWh, and what was done.</summary>
/// <param name="What">What is known of its values; one flag.</param>
/// <param name="Start">First instant.</param>
/// <param name="End">End, excluded.</param>
/// <param name="Intervals">How many intervals.</param>
/// <param name="Kwh">Energy that is counted in them. Unit: kWh.</param>
public sealed record QualityEvent(Quality What, Instant Start, Instant End, int Intervals, double Kwh)
{
    private static readonly (Quality Flag, string Done)[] Kinds =
    [
        (Quality.Missing, "left open; counted as nothing, never as 0"),
        (Quality.Estimated, "counted as the source estimated them"),
        (Quality.Filled, "counted as filled by the rule that was asked for"),
        (Quality.Repeated, "counted once; further readings of the time were put aside"),
        (Quality.Negative, "counted as they stand"),
        (Quality.Censored, "counted, and left out of specific yield, ageing and fits"),
        (Quality.Doubtful, "counted as they stand"),
    ];

    /// <summary>How long it lasts.</summary>
    public Duration Length => End - Start;

    /// <summary>What was done about it, in words.</summary>
    public string Done => Array.Find(Kinds, k => k.Flag == What).Done ?? "";

    /// <summary>Prints <c>Estimated from 2024-03-01T00:00:00Z, 12 intervals, 3.4 kWh: counted as the source estimated them</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{What} from {Start}, {Intervals} intervals, {Kwh:0.###} kWh: {Done}");

    /// <summary>All stretches of a channel, by kind and then by time.</summary>
    internal static IReadOnlyList<QualityEvent> Of(ChannelQuality quality)
    {
        var channel = quality.Channel;
        var events = quality.Gaps.Select(g => new QualityEvent(Quality.Missing, g.Start, g.End, g.Intervals, 0)).ToList();
        foreach (var (flag, _) in Kinds.Skip(1))
        {
            var from = -1;
            for (var i = 0; i <= channel.Count; i++)
            {
                var here = i < channel.Count && channel.Quality[i].HasFlag(flag) && !channel.Quality[i].HasFlag(Quality.Missing);
                var joined = from >= 0 && here && channel.Times.StartTicks(i) == channel.Times.EndTicks(i - 1);
                if (from >= 0 && !joined)
                {
                    events.Add(new QualityEvent(flag, channel.Times.Start(from), channel.Times.End(i - 1), i - from, CompensatedSum.Of(channel.Kwh[from..i])));
                    from = -1;
                }
                if (here && from < 0) from = i;
            }
        }
        return events;
    }
}
