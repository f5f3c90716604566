using NodaTime;

namespace SolarEconomics;

/// <summary>What the records know of one generating device, laid on a grid, at the device's own measurement point.</summary>
internal sealed class GenerationRecord
{
    internal GenerationRecord(Device device, GridSeries series, double[] ceilingKwh, Counter? counter)
    {
        Device = device;
        Series = series;
        CeilingKwh = ceilingKwh;
        Counter = counter;
    }

    internal Device Device { get; }

    /// <summary>Interval energy at the measurement point; known zero while out of service.</summary>
    internal GridSeries Series { get; }

    /// <summary>The most that the device could have made in each interval, at its measurement point.</summary>
    internal double[] CeilingKwh { get; }

    internal Counter? Counter { get; }

    internal double ToAcMiddle => (Device.ToAcLow + Device.ToAcHigh) / 2.0;

    /// <summary>The same device as if every interval had been read: half the ceiling stands in, as only the width of a range is asked.</summary>
    internal GenerationRecord AsIfRead()
    {
        var whole = new GridSeries(Series.Kwh.Length);
        Array.Fill(whole.Known, true);
        for (var i = 0; i < whole.Kwh.Length; i++) whole.Kwh[i] = Series.Known[i] ? Series.Kwh[i] : CeilingKwh[i] / 2;
        return new GenerationRecord(Device, whole, CeilingKwh, Counter);
    }

    /// <summary>The same device as if its energy had been counted behind the inverter.</summary>
    internal GenerationRecord AsIfCountedInAc() => new(Device with { ToAcLow = ToAcMiddle, ToAcHigh = ToAcMiddle }, Series, CeilingKwh, Counter);

    /// <summary>Lays one device's channels on the grid.</summary>
    internal static GenerationRecord Lay(Device device, IReadOnlyList<Channel> channels, Counter? counter, IntervalGrid grid, Site site, double[] skyCeiling)
    {
        var series = GridSeries.Lay(channels, grid);
        var from = device.InService is { } first ? site.Zone.AtStartOfDay(first).ToInstant() : FirstOf(channels, counter, site, grid);
        var until = device.OutOfService is { } last ? site.Zone.AtStartOfDay(last).ToInstant() : grid.End;
        var largest = 0.0;
        for (var i = 0; i < grid.Count; i++) largest = Math.Max(largest, series.Kwh[i]);
        var ceiling = new double[grid.Count];
        // Without a rating the largest interval on record stands in for the modules' power; without intervals, all that the counter counted.
        double DaylightCeiling(double sky) => device.RatedKwp > 0 ? device.RatedKwp * sky * grid.StepHours
            : largest > 0 ? largest * 1.1
            : counter?.CountedKwh ?? 0;
        for (var i = 0; i < grid.Count; i++)
        {
            if (grid.StartOf(i) < from || grid.StartOf(i) >= until)
            {
                series.Known[i] = true;
                ceiling[i] = series.Kwh[i];
                continue;
            }
            var potential = skyCeiling[i] > 0 ? DaylightCeiling(skyCeiling[i]) : 0;
            ceiling[i] = Math.Max(series.Kwh[i], potential);
        }
        return new GenerationRecord(device, series, ceiling, counter);
    }

    private static Instant FirstOf(IReadOnlyList<Channel> channels, Counter? counter, Site site, IntervalGrid grid)
    {
        var first = grid.Start;
        var seen = channels.Where(c => c.Start is not null).Select(c => c.Start!.Value).ToList();
        if (counter is not null) seen.Add(site.Zone.AtStartOfDay(counter.Readings[0].Date).ToInstant());
        return seen.Count == 0 ? first : Instant.Max(first, seen.Min());
    }
}
