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
        ArgumentNullException.ThrowIfNull(device);
        return From(generation, device.Name, device.RatedKwpOn, site, (_, _) => true);
    }

    /// <summary>Specific yield of one channel where the site's export is metered and limited: a full battery then holds nothing back while the grid still takes what is left over.</summary>
    /// <param name="generation">Interval generation of one device.</param>
    /// <param name="device">The device, for its kWp day by day.</param>
    /// <param name="site">The site, for its clock.</param>
    /// <param name="readings">The site's readings, for its export.</param>
    /// <param name="exportLimitKw">Most that may go to the grid, in kW. Above 0.</param>
    /// <remarks>A censored interval counts as held back where its mean export came within a fifth of the limit (short peaks hide in a mean, so a little may be missed; leaving out every sunny day would miss more: an assumption), or where export is not on record.</remarks>
    /// <exception cref="ArgumentException">The channel is not generation, or the device has no kWp on any day of the record.</exception>
    public static SpecificYield From(Channel generation, Device device, Site site, Readings readings, double exportLimitKw)
    {
        ArgumentNullException.ThrowIfNull(generation);
        ArgumentNullException.ThrowIfNull(device);
        ArgumentNullException.ThrowIfNull(readings);
        Require.Within(exportLimitKw, 0.001, 1e6, "kW");
        var exported = new Dictionary<Instant, double>();
        var unknown = new HashSet<Instant>();
        foreach (var channel in readings.Of(FlowKind.Export))
        {
            for (var i = 0; i < channel.Count; i++)
            {
                exported[channel.Starts[i]] = exported.GetValueOrDefault(channel.Starts[i]) + channel.Kwh[i];
                if (channel.Quality[i].HasFlag(Quality.Missing)) unknown.Add(channel.Starts[i]);
            }
        }
        return From(generation, device.Name, device.RatedKwpOn, site, (start, hours) =>
            !exported.TryGetValue(start, out var kwh) || unknown.Contains(start) || kwh >= 0.8 * exportLimitKw * hours);
    }

    private static SpecificYield From(Channel generation, string device, Func<LocalDate, double> kwpOn, Site site, Func<Instant, double, bool> isHeldBack)
    {
        ArgumentNullException.ThrowIfNull(generation);
        ArgumentNullException.ThrowIfNull(site);
        if (generation.Flow != FlowKind.Generation) throw Throw.NotGeneration(generation.Name, generation.Flow);
        var days = Days(generation, site.Zone, isHeldBack);
        var (used, censored, incomplete, withoutKwp) = (0, 0, 0, 0);
        var sums = new Dictionary<YearMonth, (double Yield, int Days)>();
        foreach (var (date, day) in days)
        {
            var kwp = kwpOn(date);
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
        if (used == 0 && withoutKwp > 0) throw Throw.NoKwp(device, withoutKwp);
        var months = sums.Where(m => m.Value.Days >= FewestDaysOfAMonth)
            .ToDictionary(m => m.Key, m => m.Value.Yield / m.Value.Days * CalendarSystem.Iso.GetDaysInMonth(m.Key.Year, m.Key.Month));
        MonthYield[] byMonth = [.. months.GroupBy(m => m.Key.Month).OrderBy(g => g.Key)
            .Select(g => new MonthYield(g.Key, g.Average(m => m.Value), g.Min(m => m.Value), g.Max(m => m.Value), g.Count()))];
        double[] years = [.. months.GroupBy(m => m.Key.Year).Where(g => g.Count() == 12).Select(g => g.Sum(m => m.Value))];
        double? spread = years.Length >= 2 ? Statistics.StandardDeviation(years) / Statistics.Mean(years) : null;
        return new SpecificYield($"{generation.Name}, device {device}", byMonth, used, censored, incomplete, spread);
    }

    private sealed class Day
    {
        internal double Kwh { get; set; }

        internal Duration Covered { get; set; }

        internal bool IsMissing { get; set; }

        internal bool IsCensored { get; set; }
    }

    private static SortedDictionary<LocalDate, Day> Days(Channel channel, DateTimeZone zone, Func<Instant, double, bool> isHeldBack)
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
            day.IsCensored |= quality[i].HasFlag(Quality.Censored) && isHeldBack(starts[i], (ends[i] - starts[i]).TotalHours);
        }
        return days;
    }

    private static Duration LengthOf(LocalDate date, DateTimeZone zone) =>
        date.PlusDays(1).AtStartOfDayInZone(zone).ToInstant() - date.AtStartOfDayInZone(zone).ToInstant();
}
