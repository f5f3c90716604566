using NodaTime;

namespace SolarEconomics;

/// <summary>A made-up year that keeps a place's monthly means.</summary>
public sealed partial class Weather
{
    // Likeness of a day to the one before, and of an hour to the one before; how far apart days and hours scatter. Assumptions, said in Origin.
    private const double DayLikeness = 0.3;
    private const double HourLikeness = 0.7;
    private const double DayScatter = 0.55;
    private const double HourScatter = 0.25;
    private const double DailySwingK = 4;

    /// <summary>A year of hours with clear and dull days drawn from a seed, whose months have exactly the global energy given.</summary>
    /// <param name="site">The site.</param>
    /// <param name="year">Calendar year on the site's clock. Range: 1900 to 2100.</param>
    /// <param name="globalKwhM2PerDay">Mean daily global energy on level ground of January to December, in kWh/m². Twelve values above 0, none above a clear sky's.</param>
    /// <param name="meanAirC">Mean air of January to December, in °C. Twelve values. Range: −60 to 50.</param>
    /// <param name="seed">Same seed, same year.</param>
    /// <param name="linkeTurbidity">Haze of the clear sky above the clouds, see <see cref="ClearSky.At"/>. Default: 3.</param>
    /// <param name="heightM">Height above the sea, in metres. Default: 0.</param>
    /// <param name="meanWindMs">Wind all along, in m/s. Default: 2.</param>
    /// <remarks>Each hour is the clear sky's global times a share of 0 to 1; shares vary by day and hour with some memory and are scaled together until the month
    /// fits. Good for losses, clipping and tilt; its runs of dull days are not a record's, so it sizes no off-grid battery.</remarks>
    /// <exception cref="ArgumentException">A mean is missing, not above 0, or above a clear sky's.</exception>
    public static Weather FromMonthlyMeans(
        Site site, int year, IReadOnlyList<double> globalKwhM2PerDay, IReadOnlyList<double> meanAirC, int seed,
        double linkeTurbidity = 3, double heightM = 0, double meanWindMs = 2)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(globalKwhM2PerDay);
        ArgumentNullException.ThrowIfNull(meanAirC);
        Require.Within(year, 1900, 2100, "calendar year");
        if (globalKwhM2PerDay.Count != 12 || meanAirC.Count != 12) throw Throw.NotTwelveMonths(globalKwhM2PerDay.Count, meanAirC.Count);
        var start = new LocalDate(year, 1, 1).AtStartOfDayInZone(site.Zone).ToInstant();
        var end = new LocalDate(year + 1, 1, 1).AtStartOfDayInZone(site.Zone).ToInstant();
        var grid = new IntervalGrid(start, Duration.FromHours(1), (int)Math.Round((end - start).TotalHours));
        var clear = Clear(site, grid, linkeTurbidity, heightM);
        var shares = DrawShares(site, grid, seed);
        var global = new double[grid.Count];
        var air = new double[grid.Count];
        for (var from = 0; from < grid.Count;)
        {
            var month = grid.StartOf(from).InZone(site.Zone).Month;
            var to = from;
            while (to < grid.Count && grid.StartOf(to).InZone(site.Zone).Month == month) to++;
            FitMonth(clear._globalWm2.AsSpan(from, to - from), shares.AsSpan(from, to - from), global.AsSpan(from, to - from),
                globalKwhM2PerDay[month - 1], CalendarSystem.Iso.GetDaysInMonth(year, month), month);
            from = to;
        }
        for (var i = 0; i < grid.Count; i++) air[i] = AirAt(grid.StartOf(i).InZone(site.Zone).LocalDateTime, meanAirC);
        return OfGlobal(grid, global, air, Filled(meanWindMs, grid.Count),
            $"made-up year {year} (seed {seed}) with the monthly means given; clear-sky shape, days and hours scattered by assumption");
    }

    private static double[] DrawShares(Site site, IntervalGrid grid, int seed)
    {
        var random = new Random(seed);
        double Normal() => NormalDistribution.Standard.Quantile((random.NextDouble() * (1 - 2e-12)) + 1e-12);
        static double Step(double before, double likeness, double draw) => (likeness * before) + (Math.Sqrt(1 - (likeness * likeness)) * draw);
        var shares = new double[grid.Count];
        var (day, hour) = (Normal(), Normal());
        var today = default(LocalDate);
        for (var i = 0; i < grid.Count; i++)
        {
            var date = grid.StartOf(i).InZone(site.Zone).Date;
            if (date != today) (today, day) = (date, Step(day, DayLikeness, Normal()));
            hour = Step(hour, HourLikeness, Normal());
            shares[i] = Math.Exp((DayScatter * day) + (HourScatter * hour));
        }
        return shares;
    }

    /// <summary>Scales the shares of a month, each held to at most clear, until the month's energy is the one given.</summary>
    private static void FitMonth(ReadOnlySpan<double> clear, ReadOnlySpan<double> shares, Span<double> global, double wantedKwhM2PerDay, int days, int month)
    {
        var most = 0.0;
        foreach (var wm2 in clear) most += wm2 / 1000;
        if (!(wantedKwhM2PerDay > 0 && wantedKwhM2PerDay * days < most)) throw Throw.MonthAboveClearSky(month, wantedKwhM2PerDay, most / days);
        var (low, high) = (0.0, 1.0);
        while (Fill(high, clear, shares, global) < wantedKwhM2PerDay * days) high *= 2;
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            if (Fill(middle, clear, shares, global) < wantedKwhM2PerDay * days) low = middle;
            else high = middle;
        }
    }

    private static double Fill(double scale, ReadOnlySpan<double> clear, ReadOnlySpan<double> shares, Span<double> global)
    {
        var kwhM2 = 0.0;
        for (var i = 0; i < clear.Length; i++)
        {
            global[i] = clear[i] * Math.Min(1, scale * shares[i]);
            kwhM2 += global[i] / 1000;
        }
        return kwhM2;
    }

    /// <summary>Straight between the middles of months, with a swing that is warmest at 15:00.</summary>
    private static double AirAt(LocalDateTime at, IReadOnlyList<double> meanAirC)
    {
        var place = at.Month - 1 + ((at.Day - 0.5) / CalendarSystem.Iso.GetDaysInMonth(at.Year, at.Month)) - 0.5;
        var before = (int)Math.Floor(place);
        var mean = meanAirC[(before + 12) % 12] + ((place - before) * (meanAirC[(before + 1) % 12] - meanAirC[(before + 12) % 12]));
        return mean + (DailySwingK * Math.Cos((at.Hour - 15) * Math.PI / 12));
    }
}
