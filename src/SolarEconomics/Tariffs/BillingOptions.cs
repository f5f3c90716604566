using NodaTime;

namespace SolarEconomics;

/// <summary>How a span of readings is cut into bills.</summary>
public sealed record BillingOptions
{
    /// <summary>Billing periods in order, none overlapping; each is cut to the days that the readings touch.
    /// Default: <see langword="null"/>, which takes calendar months.</summary>
    public IReadOnlyList<DateSpan>? Periods { get; init; }

    /// <summary>The clock by which a billing day starts and ends, where the meter keeps another than the home.
    /// Default: <see langword="null"/>, which takes the same clock as the rates.</summary>
    public DateTimeZone? BillingZone { get; init; }
}
