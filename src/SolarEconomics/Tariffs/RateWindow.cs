namespace SolarEconomics;

/// <summary>When a rate applies: season × kinds of day × hours, on the tariff's clock.</summary>
/// <param name="Season">Name of a season of the tariff; <see langword="null"/> for all year.</param>
/// <param name="Days">Kinds of day.</param>
/// <param name="Hours">Hours of those days; at least one span.</param>
public sealed record RateWindow(string? Season, TariffDays Days, IReadOnlyList<HourSpan> Hours)
{
    /// <summary>All hours of all days.</summary>
    public static RateWindow Always { get; } = new(null, TariffDays.EveryDay, [HourSpan.WholeDay]);

    /// <summary>Prints <c>weekdays in winter, 17:00–19:00</c>.</summary>
    public override string ToString() => DayWords.When(Season, Days, Hours);
}
