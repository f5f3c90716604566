using NodaTime;

namespace SolarEconomics;

/// <summary>Lays a channel's gaps out as missing intervals, and hands each run of them to a rule.</summary>
internal static class GapFiller
{
    private const int MostLaidOut = 20_000_000;

    /// <param name="channel">The channel.</param>
    /// <param name="words">The rule in words.</param>
    /// <param name="rule">Values for the run [from, to) of the laid out channel, or <see langword="null"/> to leave it or one of them open.</param>
    internal static GapFilling Fill(Channel channel, string words, Func<Channel, int, int, double?[]?> rule)
    {
        var laid = LayOut(channel);
        var (kwh, quality) = (laid.Kwh.ToArray(), laid.Quality.ToArray());
        var (filled, left) = (0, 0);
        var sum = default(CompensatedSum);
        for (var from = 0; from < laid.Count; from++)
        {
            if (!quality[from].HasFlag(Quality.Missing)) continue;
            var to = from;
            while (to < laid.Count && quality[to].HasFlag(Quality.Missing)) to++;
            var values = rule(laid, from, to);
            for (var i = from; i < to; i++)
            {
                if (values?[i - from] is not { } value)
                {
                    left++;
                    continue;
                }
                kwh[i] = value;
                quality[i] = (quality[i] & ~Quality.Missing) | Quality.Filled;
                sum.Add(value);
                filled++;
            }
            from = to;
        }
        return new GapFilling(laid.With(laid.Starts.ToArray(), laid.Ends.ToArray(), kwh, quality), words, filled, sum.Total, left);
    }

    /// <summary>The channel with a missing interval for each one that its record left out.</summary>
    private static Channel LayOut(Channel channel)
    {
        var (starts, ends, kwh, quality) = (new List<Instant>(), new List<Instant>(), new List<double>(), new List<Quality>());
        var step = channel.UsualStep;
        for (var i = 0; i < channel.Count; i++)
        {
            for (var at = i == 0 ? channel.Starts[0] : channel.Ends[i - 1]; at < channel.Starts[i]; at += step)
            {
                if (starts.Count >= MostLaidOut) throw Throw.TooManyGaps(channel.Name, MostLaidOut);
                starts.Add(at);
                ends.Add(Instant.Min(at + step, channel.Starts[i]));
                kwh.Add(0);
                quality.Add(Quality.Missing);
            }
            starts.Add(channel.Starts[i]);
            ends.Add(channel.Ends[i]);
            kwh.Add(channel.Kwh[i]);
            quality.Add(channel.Quality[i]);
        }
        return channel.With([.. starts], [.. ends], [.. kwh], [.. quality]);
    }
}
