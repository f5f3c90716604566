using NodaTime;

namespace AlderWeir;

/// <summary>Writes refuge-counters.csv: the lifetime counters of the charge controller and the battery monitor.</summary>
internal static class RefugeCounterFile
{
    internal static string Write(Clock clock, RefugeTruth truth)
    {
        var text = Text.Sheet();
        text.Append("# The refuge, off-grid sister of Alder Weir. The controller counts DC; the monitor counts into and out of the battery at its terminals. Nothing counts the generator.\n");
        text.Append("date,device,kwh,days uncertain,photo,note\n");
        LifetimeCounter[] counters =
        [
            new("array", 0, Timeline.Start, half => truth.ArrayWh[half] / 1000.0),
            new("battery in", 0, Timeline.Start, half => truth.ChargeWh[half] / 1000.0),
            new("battery out", 0, Timeline.Start, half => truth.DischargeWh[half] / 1000.0),
        ];
        LocalDate[] days = [new(2022, 9, 30), new(2023, 5, 31), new(2023, 9, 30), new(2024, 9, 29), new(2025, 2, 28)];
        foreach (var day in days)
            foreach (var counter in counters)
                text.Append(Text.Row(Text.Day(day), counter.Device, Text.Whole(counter.ShownOn(day, clock)), "0", "", "")).Append('\n');
        return text.ToString();
    }
}
