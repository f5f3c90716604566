using NodaTime;

namespace SolarEconomics;

/// <summary>One side's energy laid on a billing grid, with what the readings cover.</summary>
internal sealed class BillColumn
{
    private static readonly Duration OneDay = Duration.FromHours(25);
    private readonly IntervalGrid _grid;
    private readonly double[] _covered;
    private readonly DateTimeZone _billingZone;

    internal BillColumn(IntervalGrid grid, IReadOnlyList<Channel> channels, DateTimeZone billingZone)
    {
        (_grid, _billingZone) = (grid, billingZone);
        Kwh = new double[grid.Count];
        _covered = new double[grid.Count];
        Array.Fill(_covered, 1.0);
        foreach (var channel in channels)
        {
            var covered = new double[grid.Count];
            Lay(channel, covered);
            for (var i = 0; i < covered.Length; i++) _covered[i] = Math.Min(_covered[i], Math.Min(1.0, covered[i]));
        }
    }

    internal double[] Kwh { get; }

    /// <summary>Share of the grid's time for which every channel has a reading.</summary>
    /// <remarks>A share below one ten-millionth of an interval is rounding, not a gap.</remarks>
    internal double CoveredShare
    {
        get
        {
            if (_grid.Count == 0) return 0;
            var share = _covered.Sum() / _grid.Count;
            return 1 - share < 1e-12 ? 1.0 : share;
        }
    }

    /// <summary>Channels of active energy of one side that hold anything.</summary>
    internal static IReadOnlyList<Channel> Channels(Readings readings, FlowKind flow) =>
        [.. readings.Of(flow).Where(c => c.Count > 0 && c.IsEnergy)];

    /// <summary>The clock of the meter's days: the home's, unless the readings start and end at midnight of its standard time only.</summary>
    internal static DateTimeZone MeterClock(Instant start, Instant end, DateTimeZone zone)
    {
        if (Midnight(start, zone) && Midnight(end, zone)) return zone;
        var standard = DateTimeZone.ForOffset(zone.GetZoneInterval(start).StandardOffset);
        return Midnight(start, standard) && Midnight(end, standard) ? standard : zone;
    }

    /// <summary>A grid over whole billing days, as fine as the finest reading.</summary>
    internal static IntervalGrid Grid(IEnumerable<Channel> channels, LocalDate from, LocalDate to, DateTimeZone billingZone)
    {
        var step = Duration.FromHours(1);
        foreach (var channel in channels)
            for (var i = 0; i < channel.Count; i++)
                step = Duration.Min(step, channel.Ends[i] - channel.Starts[i]);
        // A finer step than a second, or one that does not divide the hour, is laid on minutes.
        if (step < Duration.FromSeconds(1) || Duration.FromHours(1).TotalSeconds % step.TotalSeconds != 0) step = Duration.FromMinutes(1);
        var start = billingZone.AtStartOfDay(from).ToInstant();
        var end = billingZone.AtStartOfDay(to).ToInstant();
        return new IntervalGrid(start, step, (int)Math.Ceiling((end - start) / step));
    }

    /// <summary>Counts as covered only what every column covers; a column without channels covers all.</summary>
    internal static void CoverTogether(IReadOnlyList<BillColumn> columns)
    {
        for (var i = 0; i < columns[0]._covered.Length; i++)
        {
            var least = columns.Min(c => c._covered[i]);
            foreach (var column in columns) column._covered[i] = least;
        }
    }

    /// <summary>Fills what is not covered with the mean of the covered intervals at the same time of day; of all where there is none.</summary>
    internal void FillByTimeOfDay(DateTimeZone zone)
    {
        var sums = new Dictionary<LocalTime, (double Kwh, double Covered)>();
        for (var i = 0; i < Kwh.Length; i++)
        {
            var time = _grid.StartOf(i).InZone(zone).TimeOfDay;
            var (kwh, covered) = sums.GetValueOrDefault(time);
            sums[time] = (kwh + Kwh[i], covered + _covered[i]);
        }
        var all = Kwh.Sum() / _covered.Sum();
        for (var i = 0; i < Kwh.Length; i++)
        {
            var (kwh, covered) = sums[_grid.StartOf(i).InZone(zone).TimeOfDay];
            Kwh[i] += (1 - _covered[i]) * (covered > 0 ? kwh / covered : all);
        }
    }

    private void Lay(Channel channel, double[] covered)
    {
        for (var i = 0; i < channel.Count; i++)
        {
            if (channel.Quality[i].HasFlag(Quality.Missing)) continue;
            var (start, end) = (channel.Starts[i], channel.Ends[i]);
            if (end - start > OneDay && Midnight(start, _billingZone) && Midnight(end, _billingZone)) LayDays(start, end, channel.Kwh[i], covered);
            else Lay(start, end, channel.Kwh[i], covered);
        }
    }

    /// <summary>A total of several billing days: each day has the same share, a day of 23 hours as well, so that a change of price splits it by days.</summary>
    private void LayDays(Instant start, Instant end, double kwh, double[] covered)
    {
        var days = new DateSpan(start.InZone(_billingZone).Date, end.InZone(_billingZone).Date);
        for (var day = days.Start; day < days.End; day = day.PlusDays(1))
            Lay(_billingZone.AtStartOfDay(day).ToInstant(), _billingZone.AtStartOfDay(day.PlusDays(1)).ToInstant(), kwh / days.Days, covered);
    }

    private void Lay(Instant start, Instant end, double kwh, double[] covered)
    {
        var step = _grid.Step.ToInt64Nanoseconds();
        var from = (start - _grid.Start).ToInt64Nanoseconds();
        var length = (end - start).ToInt64Nanoseconds();
        if (length <= 0 || from + length <= 0 || from >= step * _grid.Count) return;
        var last = Math.Min(_grid.Count - 1, (from + length - 1) / step);
        for (var cell = Math.Max(0, from / step); cell <= last; cell++)
        {
            var shared = Math.Min(from + length, (cell + 1) * step) - Math.Max(from, cell * step);
            Kwh[cell] += kwh * ((double)shared / length);
            covered[cell] += (double)shared / step;
        }
    }

    private static bool Midnight(Instant instant, DateTimeZone zone) => instant.InZone(zone).TimeOfDay == LocalTime.Midnight;
}
