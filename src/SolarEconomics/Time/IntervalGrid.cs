using NodaTime;

namespace SolarEconomics;

/// <summary>A row of equal half-open intervals of real time, on which energy series are laid side by side.</summary>
/// <param name="Start">Start of interval 0.</param>
/// <param name="Step">Length of every interval, above zero.</param>
/// <param name="Count">Number of intervals, 0 or more.</param>
/// <remarks>Interval <c>i</c> is <c>[Start + i·Step, Start + (i+1)·Step)</c>. Real time knows no clock change:
/// a local day holds 46, 48 or 50 half hours. The <c>default</c> is empty.</remarks>
public readonly record struct IntervalGrid(Instant Start, Duration Step, int Count)
{
    /// <summary>End of the last interval, excluded.</summary>
    public Instant End => Start + (Step * (long)Count);

    /// <summary>Start of one interval.</summary>
    /// <param name="index">0 to <see cref="Count"/>; <see cref="Count"/> gives <see cref="End"/>.</param>
    public Instant StartOf(int index) => Start + (Step * (long)index);

    /// <summary>Length of one interval in hours.</summary>
    public double StepHours => Step.TotalHours;

    /// <summary>The local day on which each interval starts.</summary>
    /// <remarks>The zone is asked once for each stretch of one offset, not once for each interval.</remarks>
    internal LocalDate[] LocalDays(DateTimeZone zone)
    {
        var days = new LocalDate[Count];
        for (var i = 0; i < Count;)
        {
            var stretch = zone.GetZoneInterval(StartOf(i));
            var offsetTicks = stretch.WallOffset.Ticks;
            var until = stretch.HasEnd ? (int)Math.Min(Count, Math.Ceiling((stretch.End - Start) / Step)) : Count;
            var known = long.MinValue;
            var day = default(LocalDate);
            for (; i < until; i++)
            {
                var number = Math.DivRem(StartOf(i).ToUnixTimeTicks() + offsetTicks, NodaConstants.TicksPerDay, out var rest) - (rest < 0 ? 1 : 0);
                if (number != known)
                {
                    known = number;
                    day = new LocalDate(1970, 1, 1).PlusDays((int)number);
                }
                days[i] = day;
            }
        }
        return days;
    }
}
