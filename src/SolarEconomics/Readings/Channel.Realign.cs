using NodaTime;

namespace SolarEconomics;

public sealed partial class Channel
{
    /// <summary>Puts the stretch of a device that lost its clock (it shows 1970 or 2000) where the sun says: on the day that you name, with its energy around solar noon.</summary>
    /// <param name="before">Everything before this belongs to the stretch.</param>
    /// <param name="firstDay">Local day of the site on which the stretch really began.</param>
    /// <param name="site">Where the array stands: its longitude gives solar noon.</param>
    /// <exception cref="InvalidOperationException">The stretch holds no day with energy, or would lie over other readings.</exception>
    /// <remarks>The middle of each day's energy is put on that day's solar noon, and the median of the days is the shift, to the minute.
    /// An array that does not face the equator is off by as much as it leans: turn the shift by hand where that matters.</remarks>
    public ClockRealignment RealignedOnSolarNoon(Instant before, LocalDate firstDay, Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        var count = 0;
        while (count < Count && _times.Start(count) < before) count++;
        var shining = Enumerable.Range(0, count).Where(i => !_quality[i].HasFlag(SolarEconomics.Quality.Missing) && _kwh[i] > 0).ToList();
        // The stretch is parted into days at the device's midnight, half a day from where its energy lies: the first is the day on which it began.
        var midnight = MidnightOf(shining);
        var shifts = shining.GroupBy(i => (int)Math.Floor((_times.StartTicks(i) - midnight) / (double)NodaConstants.TicksPerDay))
            .Select(g => ShiftOf(g, firstDay.PlusDays(g.Key), site)).Order().ToArray();
        if (shifts.Length == 0) throw Throw.NothingToRealign(Name, before);
        var shift = Duration.FromMinutes(Math.Round(shifts[shifts.Length / 2].TotalMinutes));
        var spread = (shifts[Math.Min(shifts.Length - 1, shifts.Length * 5 / 6)] - shifts[shifts.Length / 6]).TotalMinutes / 2;
        return new ClockRealignment(Moved(count, shift), shift, count, CompensatedSum.Of(Kwh[..count]), spread);
    }

    /// <summary>The middle of the night before the first interval, or at it, by the device's own clock: opposite to the mean time of day of the energy. Unit: ticks.</summary>
    private double MidnightOf(List<int> shining)
    {
        if (shining.Count == 0) return 0;
        var origin = _times.StartTicks(0);
        var (east, north) = (0.0, 0.0);
        foreach (var i in shining)
        {
            var angle = (((_times.StartTicks(i) + _times.EndTicks(i)) / 2.0) - origin) / NodaConstants.TicksPerDay * 2 * Math.PI;
            east += _kwh[i] * Math.Sin(angle);
            north += _kwh[i] * Math.Cos(angle);
        }
        return origin + ((Math.Atan2(east, north) / (2 * Math.PI)) - 0.5) * NodaConstants.TicksPerDay;
    }

    /// <summary>From the middle of a day's energy to solar noon of the day that it really was.</summary>
    private Duration ShiftOf(IEnumerable<int> intervals, LocalDate day, Site site)
    {
        var (kwh, ticks) = (0.0, 0.0);
        var first = default(long?);
        foreach (var i in intervals)
        {
            first ??= _times.StartTicks(i);
            kwh += _kwh[i];
            ticks += _kwh[i] * (((_times.StartTicks(i) + _times.EndTicks(i)) / 2.0) - first.Value);
        }
        return Sun.On(day, site).Noon - Instant.FromUnixTimeTicks(first!.Value + (long)(ticks / kwh));
    }

    private Channel Moved(int count, Duration shift)
    {
        var order = Enumerable.Range(0, Count).Select(i => (Start: i < count ? _times.Start(i) + shift : _times.Start(i), Index: i)).OrderBy(i => i.Start).ToArray();
        var (starts, ends, kwh, quality) = (new Instant[Count], new Instant[Count], new double[Count], new Quality[Count]);
        for (var i = 0; i < order.Length; i++)
        {
            var index = order[i].Index;
            starts[i] = order[i].Start;
            ends[i] = index < count ? _times.End(index) + shift : _times.End(index);
            if (i > 0 && starts[i] < ends[i - 1]) throw Throw.RealignedOverOthers(Name, starts[i]);
            (kwh[i], quality[i]) = (_kwh[index], index < count ? _quality[index] | SolarEconomics.Quality.Doubtful : _quality[index]);
        }
        return With(starts, ends, kwh, quality);
    }
}
