using NodaTime;

namespace SolarEconomics;

/// <summary>What a device is rated on each day, from the arrays behind it.</summary>
internal static class DeviceRating
{
    /// <summary>The device with rated powers as its arrays give them; as it was where it has none.</summary>
    internal static Device Of(Device device, IReadOnlyList<Placement> placements)
    {
        var rated = device.RatedAcKw == 0 && device.Inverter is { } inverter ? device with { RatedAcKw = inverter.RatedAcW / 1000 } : device;
        var own = placements.Where(p => string.Equals(p.Device, device.Name, StringComparison.Ordinal)).ToList();
        if (own.Count == 0) return rated;
        var stages = Stages(own, device);
        // "Today, or when it left": a device whose last modules went is out of service from that day.
        var last = stages.FindLastIndex(s => s.RatedKwp > 0);
        if (last < 0) return rated;
        var left = last < stages.Count - 1 && device.OutOfService is null ? stages[last + 1].From : device.OutOfService;
        var kept = stages.Take(last + 1).ToList();
        var isOneForAllDays = kept.Count == 1 && (kept[0].From == device.InService || own.All(p => p.From is null));
        return rated with { RatedKwp = kept[^1].RatedKwp, Stages = isOneForAllDays ? [] : kept, OutOfService = left };
    }

    private static List<DeviceStage> Stages(List<Placement> own, Device device)
    {
        var earliest = device.InService ?? LocalDate.MinIsoValue;
        var days = own.Select(p => p.From is { } from && from > earliest ? from : earliest)
            .Concat(own.Select(p => p.Until).OfType<LocalDate>())
            .Where(day => !(day >= device.OutOfService))
            .Distinct().Order();
        var stages = new List<DeviceStage>();
        foreach (var day in days)
        {
            var kwp = own.Where(p => p.StandsOn(day)).Sum(p => p.Array.RatedKwp);
            // Binary sums of ratings: 14 × 0.27 must be the 3.78 that the owner writes.
            kwp = Math.Round(kwp, 9);
            if (stages.Count == 0 || !stages[^1].RatedKwp.Equals(kwp)) stages.Add(new DeviceStage(day, kwp));
        }
        return stages;
    }
}
