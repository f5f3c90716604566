using NodaTime;

namespace SolarEconomics;

/// <summary>A stretch of time in which a channel has no value, half-open.</summary>
/// <param name="Start">First instant without a value.</param>
/// <param name="End">First instant with one again.</param>
/// <param name="Intervals">How many of the channel's usual intervals fit, 1 or more.</param>
public readonly record struct Gap(Instant Start, Instant End, int Intervals)
{
    /// <summary>How long it lasts.</summary>
    public Duration Length => End - Start;
}
