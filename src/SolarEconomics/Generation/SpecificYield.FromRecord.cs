using NodaTime;

namespace SolarEconomics;

/// <summary>How a specific yield is taken from a record.</summary>
public sealed partial class SpecificYield
{
    private const int FewestDaysOfAMonth = 15;

    /// <summary>Specific yield of one channel.</summary>
    /// <param name="generation">Interval generation of one device.</param>
    /// <param name="device">The device, for its kWp day by day.</param>
    /// <param name="site">The site, for its clock.</param>
    /// <remarks>A month is the mean of its whole days times its length, told from 15 whole days on. A day is whole when its intervals cover it and none is missing.</remarks>
    /// <exception cref="ArgumentException">The channel is not generation, or the device has no kWp on any day of the record.</exception>
    public static SpecificYield From(Channel generation, Device device, Site site)
    {
        ArgumentNullException.ThrowIfNull(generation);
        ArgumentNullException.ThrowIfNull(device);
        ArgumentNullException.ThrowIfNull(site);
        if (generation.Flow != FlowKind.Generation) throw Throw.NotGeneration(generation.Name, generation.Flow);
        var days = Days(generation, site.Zone);
        var (used, censored, incomplete, withoutKwp) = (0, 0, 0, 0);
        var sums = new Dictionary<YearMonth, (double Yield, int Days)>();
        foreach (var (date, day) in days)
        {
            var kwp = device.RatedKwpOn(date);
            if (day.IsMissing || day.Covered != LengthOf(date, site.Zone)) incomplete++;
            else if (day.IsCensored) censored++;
            else if (!(kwp > 0)) withoutKwp++;
            else
            {
                used++;
                var (yield, count) = sums.GetValueOrDefault(date.ToYearMonth());
                sums[date.ToYearMonth()] = (yield + (day.Kwh / kwp), count + 1);
            }
        }
        if (used == 0 && withoutKwp > 0) throw Throw.NoKwp(device.Name, withoutKwp);
        var months = sums.Where(m => m.Value.Days >= FewestDaysOfAMonth)
            .ToDictionary(m => m.Key, m => m.Value.Yield / m.Value.Days * CalendarSystem.Iso.GetDaysInMonth(m.Key.Year, m.Key.Month));
        MonthYield[] byMonth = [.. months.GroupBy(m => m.Key.Month).OrderBy(g => g.Key)
            .Select(g => new MonthYield(g.Key, g.Average(m => m.Value), g.Min(m => m.Value), g.Max(m => m.Value), g.Count()))];
        double[] years = [.. months.GroupBy(m => m.Key.Year).Where(g => g.Count() == 12).Select(g => g.Sum(m => m.Value))];
        double? spread = years.Length >= 2 ? Statistics.StandardDeviation(years) / Statistics.Mean(years) : null;
        return new SpecificYield($"{generation.Name}, device {device.Name}", byMonth, used, censored, incomplete, spread);
    }

    private sealed class Day
    {
        internal double Kwh { get; set; }

        internal Duration Covered { get; set; }

        internal bool IsMissing { get; set; }

        internal bool IsCensored { get; set; }
    }

    private static SortedDictionary<LocalDate, Day> Days(Channel channel, DateTimeZone zone)
    {
        var days = new SortedDictionary<LocalDate, Day>();
        var starts = channel.Starts;
        var ends = channel.Ends;
        var kwh = channel.Kwh;
        var quality = channel.Quality;
        for (var i = 0; i < channel.Count; i++)
        {
            var date = starts[i].InZone(zone).Date;
            if (!days.TryGetValue(date, out var day)) days[date] = day = new Day();
            day.Covered += ends[i] - starts[i];
            day.Kwh += kwh[i];
            day.IsMissing |= quality[i].HasFlag(Quality.Missing);
            day.IsCensored |= quality[i].HasFlag(Quality.Censored);
        }
        return days;
    }

    private static Duration LengthOf(LocalDate date, DateTimeZone zone) =>
        date.PlusDays(1).AtStartOfDayInZone(zone).ToInstant() - date.AtStartOfDayInZone(zone).ToInstant();
}
