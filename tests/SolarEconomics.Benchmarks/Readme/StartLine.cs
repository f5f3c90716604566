namespace SolarEconomics.Benchmarks;

/// <summary>A wait that a person feels. Reported beside its limit, never a failure.</summary>
/// <param name="What">What is waited for.</param>
/// <param name="Seconds">Median of the runs.</param>
/// <param name="LimitSeconds">What we mean to stay below on two cores; null where the wait is only for scale.</param>
internal sealed record StartLine(string What, double Seconds, double? LimitSeconds);
