using NodaTime;

namespace SolarEconomics;

/// <summary>A counter with the intervals of the grid in which its device was in service: <c>[From, To)</c>.</summary>
/// <param name="Device">The device.</param>
/// <param name="Counter">Its counter.</param>
/// <param name="From">First interval of its service.</param>
/// <param name="To">First interval after it.</param>
internal sealed record CountedService(Device Device, Counter Counter, int From, int To)
{
    internal static CountedService Of(Device device, Counter counter, IntervalGrid grid, Site site)
    {
        var from = device.InService ?? counter.Readings[0].Date;
        return new CountedService(device, counter, IndexOf(from, grid, site.Zone),
            device.OutOfService is { } until ? IndexOf(until, grid, site.Zone) : grid.Count);
    }

    /// <summary>The first interval that starts on or after the start of a local day, cut to the grid.</summary>
    internal static int IndexOf(LocalDate day, IntervalGrid grid, DateTimeZone zone)
    {
        var steps = (zone.AtStartOfDay(day).ToInstant() - grid.Start) / grid.Step;
        return (int)Math.Clamp(Math.Ceiling(steps), 0, grid.Count);
    }
}
