using NodaTime;

namespace SolarEconomics;

/// <content>Loads from records, and loads made from less.</content>
public sealed partial class LoadSeries
{
    /// <summary>The load that a channel measured, on the channel's own intervals.</summary>
    /// <param name="channel">A channel of use, or of import where no plant stands yet.</param>
    /// <param name="zone">The clock of the place.</param>
    /// <exception cref="ArgumentException">The channel has a gap or a missing value; the message names the first with its local time.</exception>
    public static LoadSeries Of(Channel channel, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(channel);
        var time = Timeline.Of(channel, zone);
        for (var i = 0; i < channel.Count; i++)
            if (channel.Quality[i].HasFlag(Quality.Missing)) throw Throw.MissingLoad(channel.Name, i, time.LocalStartOf(i));
        return Of(time, channel.Kwh.ToArray(), channel.Name);
    }

    /// <summary>A load made from what each calendar month used and a profile of the day.</summary>
    /// <param name="time">The intervals.</param>
    /// <param name="monthKwh">Use of each calendar month, January first. Unit: kWh. Shape: 12 values.</param>
    /// <param name="profile">How a day's use is spread.</param>
    /// <param name="name">Name of the part. Default: <c>home</c>.</param>
    /// <exception cref="ArgumentException">Not twelve values, or one that is no energy.</exception>
    /// <remarks>Each month on the time line adds up to its figure, times the share of its days that the time line holds. Made, not measured: results
    /// that hang on single hours (self-consumption, peaks) are as good as the profile.</remarks>
    public static LoadSeries OfMonths(Timeline time, IReadOnlyList<double> monthKwh, LoadProfile profile, string name = "home")
    {
        ArgumentNullException.ThrowIfNull(time);
        ArgumentNullException.ThrowIfNull(monthKwh);
        ArgumentNullException.ThrowIfNull(profile);
        if (monthKwh.Count != 12) throw Throw.NotTwelve("monthly totals", monthKwh.Count);
        if (monthKwh.FirstOrDefault(m => !(m >= 0 && m < double.PositiveInfinity), 0) is var wrong && wrong != 0) throw Throw.MonthNotAnEnergy(wrong);
        var kwh = new double[time.Count];
        var months = time.Clock.MonthNumber;
        for (int from = 0, to; from < kwh.Length; from = to)
        {
            var (weights, hours) = (0.0, 0.0);
            for (to = from; to < kwh.Length && months[to] == months[from]; to++)
            {
                kwh[to] = profile.WeightAt(time, to) * time.Hours[to];
                weights += kwh[to];
                hours += time.Hours[to];
            }
            var scale = weights > 0 ? monthKwh[months[from] % 12] * ShareOfMonth(months[from], hours, time.Zone) / weights : 0;
            for (var i = from; i < to; i++) kwh[i] *= scale;
        }
        return Of(time, kwh, name);
    }

    private static double ShareOfMonth(int month, double hours, DateTimeZone zone)
    {
        var first = new LocalDate(month / 12, (month % 12) + 1, 1);
        return hours / (zone.AtStartOfDay(first.PlusMonths(1)).ToInstant() - zone.AtStartOfDay(first).ToInstant()).TotalHours;
    }
}
