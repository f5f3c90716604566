using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace SolarEconomics;

/// <summary>How whole each local day of a channel is: what a calendar of the record shows.</summary>
/// <param name="Channel">Name of the channel.</param>
/// <param name="Zone">Clock of the days.</param>
/// <param name="Days">Every day from the first to the last that the record touches, without a hole.</param>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed record CompletenessCalendar(string Channel, DateTimeZone Zone, IReadOnlyList<CompletenessDay> Days) : IFinding
{
    /// <summary>Share of the hours of all days that was read. Range: 0 to 1.</summary>
    public double Share => Days.Sum(d => d.Hours) is > 0 and var hours ? Days.Sum(d => d.ReadHours) / hours : 0;

    /// <summary>Lays a channel out by local day.</summary>
    /// <param name="channel">The channel.</param>
    /// <param name="zone">Clock of the days.</param>
    public static CompletenessCalendar Of(Channel channel, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(channel);
        ArgumentNullException.ThrowIfNull(zone);
        if (channel.Count == 0) return new CompletenessCalendar(channel.Name, zone, []);
        var days = new List<CompletenessDay>();
        var first = channel.Start!.Value.InZone(zone).Date;
        var last = (channel.End!.Value - Duration.Epsilon).InZone(zone).Date;
        var i = 0;
        for (var day = first; day <= last; day = day.PlusDays(1))
        {
            var (from, to) = (LocalDays.StartOf(day, zone).ToUnixTimeTicks(), LocalDays.StartOf(day.PlusDays(1), zone).ToUnixTimeTicks());
            // An interval that reaches into the next day stands in both, each with its part of the time and of the energy.
            while (i > 0 && channel.Times.EndTicks(i - 1) > from) i--;
            days.Add(DayOf(channel, day, from, to, ref i));
        }
        return new CompletenessCalendar(channel.Name, zone, days);
    }

    /// <summary>Days of which nothing was missing.</summary>
    public int WholeDays => Days.Count(d => d.IsWhole);

    /// <inheritdoc />
    public Finding Say(CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(culture);
        var months = Days.GroupBy(d => new LocalDate(d.Day.Year, d.Day.Month, 1)).ToList();
        return new Finding(Share.ToString("0.0 %", culture) + " of the time read",
            $"\"{Channel}\" touches {Days.Count.ToString("#,0", culture)} days; {WholeDays.ToString("#,0", culture)} of them are whole.")
        {
            Notes = ["Days are those of " + Zone.Id + "."],
            Tables =
            [
                new FindingTable("Months", ["month", "days", "whole days", "read", "estimated or filled", "kWh"],
                [.. months.Select(m => (IReadOnlyList<string>)[LocalDatePattern.Iso.Format(m.Key)[..7], m.Count().ToString(culture), m.Count(d => d.IsWhole).ToString(culture),
                    (m.Sum(d => d.ReadHours) / Math.Max(1e-9, m.Sum(d => d.Hours))).ToString("0.0 %", culture), (m.Sum(d => d.GuessedHours) / Math.Max(1e-9, m.Sum(d => d.Hours))).ToString("0.0 %", culture),
                    m.Sum(d => d.Kwh).ToString("#,0.0", culture)])]),
            ],
        };
    }

    private static CompletenessDay DayOf(Channel channel, LocalDate day, long from, long to, ref int i)
    {
        var (read, guessed, doubtful) = (0L, 0L, 0L);
        var kwh = default(CompensatedSum);
        for (; i < channel.Count && channel.Times.StartTicks(i) < to; i++)
        {
            var quality = channel.Quality[i];
            if (quality.HasFlag(Quality.Missing)) continue;
            var (start, end) = (channel.Times.StartTicks(i), channel.Times.EndTicks(i));
            var inside = Math.Min(end, to) - Math.Max(start, from);
            if (inside <= 0) continue;
            read += inside;
            if (quality.HasFlag(Quality.Estimated) || quality.HasFlag(Quality.Filled)) guessed += inside;
            if (quality.HasFlag(Quality.Doubtful)) doubtful += inside;
            kwh.Add(inside == end - start ? channel.Kwh[i] : channel.Kwh[i] * inside / (end - start));
        }
        return new CompletenessDay(day, Hours(to - from), Hours(read), Hours(guessed), Hours(doubtful), kwh.Total);
    }

    private static double Hours(long ticks) => ticks / (double)NodaConstants.TicksPerHour;
}
