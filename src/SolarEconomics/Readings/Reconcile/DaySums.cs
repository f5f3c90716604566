using NodaTime;

namespace SolarEconomics;

/// <summary>Energy of a channel by local day, added up so that any span of days is one subtraction.</summary>
internal sealed class DaySums
{
    private readonly LocalDate _first;
    private readonly double[] _kwhBefore;
    private readonly int[] _openBefore;

    internal DaySums(Channel channel, DateTimeZone zone)
    {
        if (channel.Count == 0)
        {
            (_first, _kwhBefore, _openBefore) = (default, [0], [0]);
            return;
        }
        _first = channel.Start!.Value.InZone(zone).Date;
        var days = Period.DaysBetween(_first, (channel.End!.Value - Duration.Epsilon).InZone(zone).Date) + 1;
        var (kwh, covered, times) = (new double[days], new long[days], channel.Times);
        var (day, dayEnd) = (-1, long.MinValue);
        for (var i = 0; i < channel.Count; i++)
        {
            if (channel.Quality[i].HasFlag(Quality.Missing)) continue;
            if (times.StartTicks(i) >= dayEnd)
            {
                var date = times.Start(i).InZone(zone).Date;
                (day, dayEnd) = (Period.DaysBetween(_first, date), LocalDays.StartOf(date.PlusDays(1), zone).ToUnixTimeTicks());
            }
            kwh[day] += channel.Kwh[i];
            covered[day] += times.EndTicks(i) - times.StartTicks(i);
        }
        (_kwhBefore, _openBefore) = (new double[days + 1], new int[days + 1]);
        for (var d = 0; d < days; d++)
        {
            _kwhBefore[d + 1] = _kwhBefore[d] + kwh[d];
            _openBefore[d + 1] = _openBefore[d] + (covered[d] < LocalDays.LengthOf(_first.PlusDays(d), zone).BclCompatibleTicks ? 1 : 0);
        }
    }

    /// <summary>Energy counted on the days of a span; days outside the record count nothing. Unit: kWh.</summary>
    internal double Kwh(DateSpan days) => _kwhBefore[Index(days.End)] - _kwhBefore[Index(days.Start)];

    /// <summary>Whether every day of a span is read whole.</summary>
    internal bool Cover(DateSpan days)
    {
        var (from, to) = (Period.DaysBetween(_first, days.Start), Period.DaysBetween(_first, days.End));
        return from >= 0 && to < _kwhBefore.Length && _openBefore[Math.Max(from, to)] == _openBefore[from];
    }

    private int Index(LocalDate day) => Math.Clamp(Period.DaysBetween(_first, day), 0, _kwhBefore.Length - 1);
}
