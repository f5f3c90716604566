using NodaTime;

namespace SolarEconomics;

/// <summary>How a span of readings is cut into bills.</summary>
public sealed record BillingOptions
{
    /// <summary>Billing periods in order, none overlapping; each is cut to the days that the readings touch.
    /// Default: <see langword="null"/>, which takes calendar months.</summary>
    public IReadOnlyList<DateSpan>? Periods { get; init; }

    /// <summary>Names of the conditions that the home meets, such as <c>pay on time</c>: parts with another condition are left out. Default: none.</summary>
    public IReadOnlyList<string> ConditionsMet { get; init; } = [];

    /// <exception cref="TariffException">A condition that no tariff names: it would be left out in silence.</exception>
    internal static void CheckConditions(IReadOnlyList<string> met, IEnumerable<Tariff> tariffs)
    {
        if (met.Count == 0) return;
        var named = tariffs.SelectMany(t => t.Parts).Select(p => p.Condition).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        if (met.FirstOrDefault(m => !named.Contains(m, StringComparer.OrdinalIgnoreCase)) is { } unknown) throw Throw.UnknownCondition(unknown, named);
    }

    internal bool Applies(TariffPart part) => part.Condition is null || ConditionsMet.Contains(part.Condition, StringComparer.OrdinalIgnoreCase);

    /// <summary>The clock by which a billing day starts and ends, where the meter keeps another than the home.
    /// Default: <see langword="null"/>, which takes the same clock as the rates.</summary>
    public DateTimeZone? BillingZone { get; init; }
}
