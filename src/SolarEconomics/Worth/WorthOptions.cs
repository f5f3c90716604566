namespace SolarEconomics;

/// <summary>Choices for the value to date. The defaults are what the records say.</summary>
public sealed record WorthOptions
{
    /// <summary>The one price of the straight line, tax included. Unit: currency per kWh. Default: <see langword="null"/>, the latest tariff's rate that covers most hours of a week.</summary>
    public decimal? OnePricePerKwh { get; init; }

    /// <summary>What an own hour is worth, in the site's currency. Range: 0 to 1e9. Default: <see langword="null"/>, own hours cost nothing. Needs a ledger.</summary>
    public Money? OwnHourRate { get; init; }

    /// <summary>What the plant would sell for today, removal paid. Default: <see langword="null"/>, not stated; the rate of return is then shown for a plant worth nothing.</summary>
    public Money? ResaleToday { get; init; }
}
