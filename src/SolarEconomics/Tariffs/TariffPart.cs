namespace SolarEconomics;

/// <summary>One part of a tariff: what it charges or pays for, and by which tax rule.</summary>
/// <param name="Name">Name on the bill.</param>
public abstract record TariffPart(string Name)
{
    /// <summary>Tax on this part as a fraction; <see langword="null"/> takes the part's usual rule:
    /// charges bear the tariff's tax, credits for energy sent to the grid bear none.</summary>
    public decimal? TaxFraction { get; init; }
}
