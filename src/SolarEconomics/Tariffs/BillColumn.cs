using NodaTime;

namespace SolarEconomics;

/// <summary>One side's energy laid on a billing grid, with what the readings cover.</summary>
internal sealed class BillColumn
{
    private static readonly Duration OneDay = Duration.FromHours(25);
    private readonly IntervalGrid _grid;
    private readonly List<LaidChannel> _channels = [];
    private readonly DateTimeZone _billingZone;

    internal BillColumn(IntervalGrid grid, IReadOnlyList<Channel> channels, DateTimeZone billingZone)
    {
        (_grid, _billingZone) = (grid, billingZone);
        foreach (var channel in channels) _channels.Add(Laid(channel));
    }

    /// <summary>Energy of all channels in each interval.</summary>
    internal double[] Kwh()
    {
        var sum = new double[_grid.Count];
        foreach (var channel in _channels)
            for (var i = 0; i < sum.Length; i++) sum[i] += channel.Kwh[i];
        return sum;
    }

    /// <summary>Share of the grid's time for which every channel of every column has a reading; a column without channels covers all.</summary>
    /// <remarks>A share that lacks one millionth of a millionth is rounding, not a gap.</remarks>
    internal static double CoveredShare(params IReadOnlyList<BillColumn> columns)
    {
        var count = columns[0]._grid.Count;
        if (count == 0) return 0;
        var channels = columns.SelectMany(c => c._channels).ToList();
        var covered = 0.0;
        for (var i = 0; i < count; i++)
        {
            var least = 1.0;
            foreach (var channel in channels) least = Math.Min(least, channel.Covered[i]);
            covered += least;
        }
        var share = covered / count;
        return 1 - share < 1e-12 ? 1.0 : share;
    }

    /// <summary>Channels of active energy of one side that hold anything.</summary>
    internal static IReadOnlyList<Channel> Channels(Readings readings, FlowKind flow) =>
        [.. readings.Of(flow).Where(c => c.Count > 0 && c.IsEnergy)];

    /// <summary>The clock of the meter's days: the home's, unless the readings start and end at midnight of its winter time only.</summary>
    /// <remarks>Winter time is the smaller offset of the year that the readings start in: the zone data call Ireland's summer time its standard.</remarks>
    internal static DateTimeZone MeterClock(Instant start, Instant end, DateTimeZone zone)
    {
        if (Midnight(start, zone) && Midnight(end, zone)) return zone;
        var year = new Interval(start - Duration.FromDays(183), start + Duration.FromDays(183));
        var winter = DateTimeZone.ForOffset(zone.GetZoneIntervals(year).Min(i => i.WallOffset));
        return Midnight(start, winter) && Midnight(end, winter) ? winter : zone;
    }

    /// <summary>A grid over whole billing days, as fine as the finest reading.</summary>
    internal static IntervalGrid Grid(IEnumerable<Channel> channels, LocalDate from, LocalDate to, DateTimeZone billingZone)
    {
        var step = Duration.FromHours(1);
        foreach (var channel in channels)
            for (var i = 0; i < channel.Count; i++)
                step = Duration.Min(step, channel.Ends[i] - channel.Starts[i]);
        // A step that is no whole number of seconds, or does not divide the hour, is laid on minutes.
        if (step.TotalSeconds % 1 != 0 || Duration.FromHours(1).TotalSeconds % step.TotalSeconds != 0) step = Duration.FromMinutes(1);
        var start = billingZone.AtStartOfDay(from).ToInstant();
        var end = billingZone.AtStartOfDay(to).ToInstant();
        return new IntervalGrid(start, step, (int)Math.Ceiling((end - start) / step));
    }

    /// <summary>Fills what a channel does not cover with the mean of what it has at the same time of day; of all where there is none.</summary>
    internal void FillByTimeOfDay(DateTimeZone zone)
    {
        LocalTime[] times = [.. Enumerable.Range(0, _grid.Count).Select(i => _grid.StartOf(i).InZone(zone).TimeOfDay)];
        foreach (var channel in _channels) channel.FillByTimeOfDay(times);
    }

    private LaidChannel Laid(Channel channel)
    {
        var laid = new LaidChannel(new double[_grid.Count], new double[_grid.Count]);
        for (var i = 0; i < channel.Count; i++)
        {
            if (channel.Quality[i].HasFlag(Quality.Missing)) continue;
            var (start, end) = (channel.Starts[i], channel.Ends[i]);
            if (end - start > OneDay && Midnight(start, _billingZone) && Midnight(end, _billingZone)) LayDays(start, end, channel.Kwh[i], laid);
            else Lay(start, end, channel.Kwh[i], laid);
        }
        // Readings that overlap cover an interval once.
        for (var i = 0; i < laid.Covered.Length; i++) laid.Covered[i] = Math.Min(1.0, laid.Covered[i]);
        return laid;
    }

    /// <summary>A total of several billing days: each day has the same share, a day of 23 hours as well, so that a change of price splits it by days.</summary>
    private void LayDays(Instant start, Instant end, double kwh, LaidChannel laid)
    {
        var days = new DateSpan(start.InZone(_billingZone).Date, end.InZone(_billingZone).Date);
        for (var day = days.Start; day < days.End; day = day.PlusDays(1))
            Lay(_billingZone.AtStartOfDay(day).ToInstant(), _billingZone.AtStartOfDay(day.PlusDays(1)).ToInstant(), kwh / days.Days, laid);
    }

    private void Lay(Instant start, Instant end, double kwh, LaidChannel laid)
    {
        var step = _grid.Step.ToInt64Nanoseconds();
        var from = (start - _grid.Start).ToInt64Nanoseconds();
        var length = (end - start).ToInt64Nanoseconds();
        if (length <= 0 || from + length <= 0 || from >= step * _grid.Count) return;
        var last = Math.Min(_grid.Count - 1, (from + length - 1) / step);
        for (var cell = Math.Max(0, from / step); cell <= last; cell++)
        {
            var shared = Math.Min(from + length, (cell + 1) * step) - Math.Max(from, cell * step);
            laid.Kwh[cell] += kwh * ((double)shared / length);
            laid.Covered[cell] += (double)shared / step;
        }
    }

    private static bool Midnight(Instant instant, DateTimeZone zone) => instant.InZone(zone).TimeOfDay == LocalTime.Midnight;
}
