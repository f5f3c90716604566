using NodaTime;

namespace AlderWeir;

/// <summary>The counter on one device's display, which shows whole kWh.</summary>
/// <param name="Device">Name of the device in plant.json.</param>
/// <param name="Opening">What it showed when the device came here.</param>
/// <param name="From">First day on which it counts.</param>
/// <param name="KwhOf">What it counts in a half hour.</param>
internal sealed record LifetimeCounter(string Device, long Opening, LocalDate From, Func<int, double> KwhOf)
{
    /// <summary>What it shows in the evening of a day, when the sun has gone.</summary>
    internal long ShownOn(LocalDate day, Clock clock)
    {
        var sum = 0.0;
        var end = clock.FirstOf(day.PlusDays(1));
        for (var half = clock.FirstOf(From); half < end; half++) sum += KwhOf(half);
        return Opening + (long)Math.Floor(sum);
    }
}
