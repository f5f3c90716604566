using NodaTime;

namespace SolarEconomics;

/// <summary>What one channel of an inspected file holds.</summary>
/// <param name="Name">Name as the record gives it.</param>
/// <param name="Flow">Which way its energy goes.</param>
/// <param name="Unit">Unit in which the record states it; <c>unknown</c> where it does not.</param>
/// <param name="Readings">Intervals, or counter readings, with a value.</param>
/// <param name="Start">Start of the first interval.</param>
/// <param name="End">End of the last interval, excluded.</param>
/// <param name="TotalKwh">Energy of all readings; <see langword="null"/> where it is no active energy in a known unit. Of a counter: what it counted between its first and last reading.</param>
/// <param name="Missing">Intervals without a value, those that the record leaves out included.</param>
/// <param name="Estimated">Readings that the source says it estimated or substituted.</param>
/// <param name="Repeated">Further readings at a time that already had one.</param>
/// <param name="Negative">Readings below zero.</param>
/// <param name="Resets">How often a counter went back.</param>
public sealed record InspectedChannel(string Name, FlowKind Flow, string Unit, int Readings, Instant? Start, Instant? End, double? TotalKwh,
    int Missing, int Estimated, int Repeated, int Negative, int Resets)
{
    internal static InspectedChannel Of(Channel channel)
    {
        var quality = ChannelQuality.Of(channel);
        return new InspectedChannel(channel.Name, channel.Flow, channel.Unit, channel.CounterStates ?? quality.Readings, channel.Start, channel.End,
            channel.IsEnergy ? quality.TotalKwh : null, quality.Missing, quality.Estimated, quality.Repeated, quality.Negative, quality.Resets);
    }

    /// <summary>A counter seen by itself, without a plant that says at what it started: only what lies between its readings is known.</summary>
    internal static InspectedChannel Of(Counter counter, DateTimeZone clock)
    {
        var alone = counter with { OpeningKwh = counter.Readings[0].Kwh };
        return new InspectedChannel(counter.Device, FlowKind.Unknown, "kWh", counter.Readings.Count,
            LocalDays.StartOf(counter.Readings[0].Date, clock), LocalDays.StartOf(counter.Readings[^1].Date, clock),
            alone.CountedKwh, 0, 0, 0, 0, alone.Resets);
    }
}
