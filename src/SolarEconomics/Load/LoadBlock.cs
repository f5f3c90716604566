using NodaTime;

namespace SolarEconomics;

/// <summary>An addition to the use with its own hours: a car on a charger, a heat pump, a workshop's machines.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kw">Power while it runs. Unit: kW.</param>
/// <param name="Between">Hours of the day in which it runs; they may run across midnight.</param>
public sealed record LoadBlock(string Name, double Kw, HourSpan Between)
{
    /// <summary>Power while it runs. Unit: kW.</summary>
    public double Kw { get; init => field = Require.PowerKw(value); } = Require.PowerKw(Kw, 0, nameof(Kw));

    /// <summary>Hours of the day in which it runs.</summary>
    public HourSpan Between { get; init => field = Require.Hours(value); } = Require.Hours(Between, nameof(Between));

    /// <summary>Days of the week on which it runs. Default: empty, all of them.</summary>
    public IReadOnlyList<IsoDayOfWeek> Days { get; init; } = [];

    /// <summary>Share of its power in each month, January first: 1 in winter and 0 in summer for heating. Range of each: 0 to 1. Default: empty, 1 all year.</summary>
    public IReadOnlyList<double> MonthShares
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            if (value.Count is not (0 or 12)) throw Throw.NotTwelve("month shares", value.Count);
            foreach (var share in value) Require.Fraction(share, nameof(MonthShares));
            field = value;
        }
    } = [];

    /// <summary>The block on a time line. Of an interval counts the part that lies in the hours, by the local clock at its start.</summary>
    /// <param name="time">The intervals.</param>
    public LoadPart On(Timeline time)
    {
        ArgumentNullException.ThrowIfNull(time);
        var kwh = new double[time.Count];
        for (var i = 0; i < kwh.Length; i++)
        {
            var hours = HoursInside(time.Clock, i, time.Hours[i]);
            if (hours == 0) continue;
            var share = MonthShares.Count == 0 ? 1 : MonthShares[time.Clock.MonthNumber[i] % 12];
            kwh[i] = Kw * share * hours;
        }
        return new LoadPart(Name, kwh);
    }

    /// <summary>How much of an interval lies in the hours, on each of the days that it touches. Unit: h.</summary>
    private double HoursInside(LocalClock clock, int interval, double length)
    {
        var (from, until) = ((double)clock.MinuteOfDay[interval], clock.MinuteOfDay[interval] + (length * 60));
        var inside = 0.0;
        for (var day = 0; day * 1440 < until; day++)
        {
            if (Days.Count > 0 && !Days.Contains(LocalClock.WeekdayOfDay(clock.DayNumber[interval] + day))) continue;
            double Inside(int start, int end) => Math.Max(0, Math.Min(until, (day * 1440) + end) - Math.Max(from, (day * 1440) + start));
            inside += Between.FromMinute < Between.UntilMinute ? Inside(Between.FromMinute, Between.UntilMinute) : Inside(0, Between.UntilMinute) + Inside(Between.FromMinute, 1440);
        }
        return inside >= until - from ? length : inside / 60;
    }
}
