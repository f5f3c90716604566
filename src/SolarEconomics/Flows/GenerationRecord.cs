using NodaTime;

namespace SolarEconomics;

/// <summary>What the records know of one place in the plant that generates, laid on a grid, at its devices' own measurement point.</summary>
/// <remarks>A device that took over another's place shares its channel; each keeps its own counter.</remarks>
internal sealed class GenerationRecord
{
    internal GenerationRecord(Device device, GridSeries series, double[] ceilingKwh, IReadOnlyList<CountedService> counters)
    {
        Device = device;
        Series = series;
        CeilingKwh = ceilingKwh;
        Counters = counters;
    }

    /// <summary>The device at work there last.</summary>
    internal Device Device { get; }

    /// <summary>Interval energy at the measurement point; known zero while nothing was in service.</summary>
    internal GridSeries Series { get; }

    /// <summary>The most that can have been made in each interval, at the measurement point.</summary>
    internal double[] CeilingKwh { get; }

    /// <summary>The counters of the devices that worked there, each with its days of service.</summary>
    internal IReadOnlyList<CountedService> Counters { get; }

    internal double ToAcMiddle => (Device.ToAcLow + Device.ToAcHigh) / 2.0;

    /// <summary>What the displays add up to; where there is none, what the channel adds up to.</summary>
    internal double DisplayedKwh => Counters.Count > 0 ? Counters.Sum(c => c.Counter.LastKwh) : Series.KnownTotalKwh;

    /// <summary>The same place as if every interval had been read: half the ceiling stands in, as only the width of a range is asked.</summary>
    internal GenerationRecord AsIfRead()
    {
        var whole = new GridSeries(Series.Kwh.Length);
        Array.Fill(whole.Known, true);
        for (var i = 0; i < whole.Kwh.Length; i++) whole.Kwh[i] = Series.Known[i] ? Series.Kwh[i] : CeilingKwh[i] / 2;
        return new GenerationRecord(Device, whole, CeilingKwh, Counters);
    }

    /// <summary>The same place as if its energy had been counted behind the inverter.</summary>
    internal GenerationRecord AsIfCountedInAc() => new(Device with { ToAcLow = ToAcMiddle, ToAcHigh = ToAcMiddle }, Series, CeilingKwh, Counters);

    /// <summary>Lays the channels of one place on the grid.</summary>
    /// <param name="line">The devices that worked there, the first of them first; at least one.</param>
    /// <param name="channels">Their channels.</param>
    /// <param name="counters">All counters of the site.</param>
    /// <param name="grid">The grid.</param>
    /// <param name="days">Local day of each interval.</param>
    /// <param name="site">The site.</param>
    /// <param name="skyCeiling">Kilowatts per kWp at most, per interval.</param>
    internal static GenerationRecord Lay(IReadOnlyList<Device> line, IReadOnlyList<Channel> channels, IReadOnlyList<Counter> counters,
        IntervalGrid grid, LocalDate[] days, Site site, double[] skyCeiling)
    {
        var series = GridSeries.Lay(channels, grid);
        var own = line.Select(device => (Device: device, Counter: counters.FirstOrDefault(c => string.Equals(c.Device, device.Name, StringComparison.Ordinal))))
            .Where(pair => pair.Counter is not null)
            .Select(pair => CountedService.Of(pair.Device, pair.Counter!, grid, site))
            .ToList();
        var first = FirstSign(channels, own, grid);
        // Without a rating the largest interval on record stands in for the modules' power; without intervals, all that the counters counted.
        var largest = series.Kwh.Length == 0 ? 0 : series.Kwh.Max() * 1.1;
        var unrated = largest > 0 ? largest : own.Sum(c => c.Counter.CountedKwh);
        var ceiling = new double[grid.Count];
        var isRated = line.Any(d => d.RatedKwp > 0);
        var (kwp, isAtWork) = (0.0, false);
        for (var i = 0; i < grid.Count; i++)
        {
            if (i == 0 || days[i] != days[i - 1])
            {
                kwp = line.Sum(d => d.RatedKwpOn(days[i]));
                isAtWork = line.Any(d => d.InServiceOn(days[i]) && (d.InService is not null || grid.StartOf(i) >= first));
            }
            if (!isAtWork)
            {
                series.Known[i] = true;
                ceiling[i] = series.Kwh[i];
                continue;
            }
            var potential = isRated ? kwp * skyCeiling[i] * grid.StepHours : skyCeiling[i] > 0 ? unrated : 0;
            ceiling[i] = Math.Max(series.Kwh[i], potential);
        }
        return new GenerationRecord(line[^1], series, ceiling, own);
    }

    /// <summary>The first sign of life, for a device whose first day is not stated.</summary>
    private static Instant FirstSign(IReadOnlyList<Channel> channels, List<CountedService> counters, IntervalGrid grid)
    {
        var seen = channels.Where(c => c.Start is not null).Select(c => c.Start!.Value)
            .Concat(counters.Select(c => grid.StartOf(c.From)))
            .ToList();
        return seen.Count == 0 ? grid.Start : Instant.Max(grid.Start, seen.Min());
    }
}
