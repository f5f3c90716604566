using NodaTime;

namespace SolarEconomics;

/// <summary>Half-open intervals of real time one after another, of any length, also mixed, with the local clock at the start of each.</summary>
/// <remarks>Immutable, so safe to share between threads.</remarks>
public sealed partial class Timeline
{
    private readonly Instant[] _starts;
    private readonly double[] _hours;

    private Timeline(Instant[] starts, double[] hours, Instant end, DateTimeZone zone)
    {
        (_starts, _hours, End, Zone) = (starts, hours, end, zone);
        Clock = new LocalClock(starts, zone);
    }

    /// <summary>Number of intervals.</summary>
    public int Count => _starts.Length;

    /// <summary>End of the last interval, excluded.</summary>
    public Instant End { get; }

    /// <summary>The clock of the place.</summary>
    public DateTimeZone Zone { get; }

    /// <summary>Length of each interval. Unit: h.</summary>
    public ReadOnlySpan<double> Hours => _hours;

    /// <summary>The local clock, worked out once.</summary>
    internal LocalClock Clock { get; }

    internal double[] HoursArray => _hours;

    /// <summary>Start of an interval.</summary>
    /// <param name="interval">0 to <see cref="Count"/> less 1.</param>
    public Instant StartOf(int interval) => _starts[interval];

    /// <summary>Local time at the start of an interval.</summary>
    /// <param name="interval">0 to <see cref="Count"/> less 1.</param>
    public LocalDateTime LocalStartOf(int interval) => _starts[interval].InZone(Zone).LocalDateTime;

    /// <summary>Intervals of one length.</summary>
    /// <param name="grid">The intervals; at least one.</param>
    /// <param name="zone">The clock of the place.</param>
    /// <exception cref="ArgumentException">The grid is empty or its step is not above zero.</exception>
    public static Timeline Of(IntervalGrid grid, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        if (grid.Count <= 0 || grid.Step <= Duration.Zero) throw Throw.NoIntervals();
        var starts = new Instant[grid.Count];
        for (var i = 0; i < starts.Length; i++) starts[i] = grid.StartOf(i);
        var hours = new double[grid.Count];
        Array.Fill(hours, grid.StepHours);
        return new Timeline(starts, hours, grid.End, zone);
    }

    /// <summary>The hours, or shorter intervals, of one calendar year of the place: 8,760 hours, or 8,784.</summary>
    /// <param name="year">Calendar year.</param>
    /// <param name="step">Length of each interval; it must divide the year.</param>
    /// <param name="zone">The clock of the place.</param>
    /// <exception cref="ArgumentException">The step does not divide the year.</exception>
    public static Timeline Year(int year, Duration step, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var start = zone.AtStartOfDay(new LocalDate(year, 1, 1)).ToInstant();
        var end = zone.AtStartOfDay(new LocalDate(year + 1, 1, 1)).ToInstant();
        var count = step > Duration.Zero ? (int)Math.Round((end - start) / step) : 0;
        if (start + (step * (long)count) != end) throw Throw.StepDoesNotDivide(year, step);
        return Of(new IntervalGrid(start, step, count), zone);
    }

    /// <summary>The intervals of a record, as long as each is.</summary>
    /// <param name="channel">A channel whose intervals follow each other without a gap.</param>
    /// <param name="zone">The clock of the place.</param>
    /// <exception cref="ArgumentException">There is no interval, or one does not start where the last ended.</exception>
    public static Timeline Of(Channel channel, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(channel);
        ArgumentNullException.ThrowIfNull(zone);
        if (channel.Count == 0) throw Throw.NoIntervals();
        var starts = channel.Starts.ToArray();
        var ends = channel.Ends;
        var hours = new double[starts.Length];
        for (var i = 0; i < starts.Length; i++)
        {
            hours[i] = (ends[i] - starts[i]).TotalHours;
            if (hours[i] <= 0 || (i > 0 && starts[i] != ends[i - 1])) throw Throw.IntervalsApart(channel.Name, i, starts[i].InZone(zone).LocalDateTime);
        }
        return new Timeline(starts, hours, ends[^1], zone);
    }
}
