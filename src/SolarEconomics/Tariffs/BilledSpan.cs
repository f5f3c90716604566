using NodaTime;

namespace SolarEconomics;

/// <summary>Which readings are billed: days, clock, meter and channels.</summary>
internal sealed record BilledSpan
{
    internal LocalDate? From { get; init; }

    internal LocalDate? To { get; init; }

    internal DateTimeZone? BillingZone { get; init; }

    internal string? Meter { get; init; }

    internal string? ControlledLoad { get; init; }

    internal bool EstimateWhereMissing { get; init; }
}
