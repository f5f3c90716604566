using NodaTime;

namespace SolarEconomics;

/// <summary>How far one channel can be trusted, in counts.</summary>
/// <param name="Channel">The channel.</param>
public sealed record ChannelQuality(Channel Channel)
{
    /// <summary>Energy of all readings. Unit: kWh; the bare sum where the channel is no energy in a known unit.</summary>
    public double TotalKwh { get; private init; }

    /// <summary>Intervals with a value.</summary>
    public int Readings { get; private init; }

    /// <summary>Intervals without one: empty in the record, or not in it at all.</summary>
    public int Missing { get; private init; }

    /// <summary>Readings that the source says it estimated or substituted.</summary>
    public int Estimated { get; private init; }

    /// <summary>Readings that a named policy of ours filled, and their energy. Unit: kWh.</summary>
    public (int Count, double Kwh) Filled { get; private init; }

    /// <summary>Further readings at a time that already had one; put aside.</summary>
    public int Repeated => Channel.ExtraReadings;

    /// <summary>Readings below zero.</summary>
    public int Negative { get; private init; }

    /// <summary>How often a counter went back.</summary>
    public int Resets => Channel.Resets;

    /// <summary>Readings at which the plant could have made more than was counted.</summary>
    public int Censored { get; private init; }

    /// <summary>Where values are missing, in order of time.</summary>
    public IReadOnlyList<Gap> Gaps { get; private init; } = [];

    /// <summary>Every stretch with something to say of it: where, how long, how many kWh, and what was done. Worked out when asked for.</summary>
    public IReadOnlyList<QualityEvent> Events => QualityEvent.Of(this);

    /// <summary>How whole each local day is.</summary>
    /// <param name="zone">Clock of the days.</param>
    public CompletenessCalendar Calendar(DateTimeZone zone) => CompletenessCalendar.Of(Channel, zone);

    /// <summary>Looks through a channel.</summary>
    /// <param name="channel">The channel.</param>
    public static ChannelQuality Of(Channel channel)
    {
        ArgumentNullException.ThrowIfNull(channel);
        if (channel.Times.IsRegular && !channel.Quality.ContainsAnyExcept(Quality.Good)) return new ChannelQuality(channel) { TotalKwh = channel.Total.Kwh, Readings = channel.Count };
        var times = channel.Times;
        var quality = channel.Quality;
        var gaps = new GapList(channel);
        var (readings, estimated, filled, negative, censored) = (0, 0, 0, 0, 0);
        var filledKwh = default(CompensatedSum);
        for (var from = 0; from < channel.Count;)
        {
            var end = times.EndOfStretch(from);
            // What is good needs no look at each: the next that is not is found many at a time.
            for (var i = from; i < end; i++)
            {
                var good = quality[i..end].IndexOfAnyExcept(Quality.Good);
                readings += good < 0 ? end - i : good;
                if (good < 0) break;
                i += good;
                var flags = quality[i];
                if (flags.HasFlag(Quality.Missing))
                {
                    i = gaps.AddMissing(i, end);
                    continue;
                }
                readings++;
                if (flags.HasFlag(Quality.Estimated)) estimated++;
                if (flags.HasFlag(Quality.Negative)) negative++;
                if (flags.HasFlag(Quality.Censored)) censored++;
                if (!flags.HasFlag(Quality.Filled)) continue;
                filled++;
                filledKwh.Add(channel.Kwh[i]);
            }
            if (end < channel.Count) gaps.AddHole(end);
            from = end;
        }
        return new ChannelQuality(channel)
        {
            TotalKwh = channel.Total.Kwh, Readings = readings, Missing = gaps.Intervals, Estimated = estimated,
            Filled = (filled, filledKwh.Total), Negative = negative, Censored = censored, Gaps = gaps.All,
        };
    }
}
