using NodaTime;

namespace SolarEconomics;

/// <content>Prices beyond the last version.</content>
public sealed partial class TariffHistory
{
    /// <summary>The history with the latest version growing by stated shares on each anniversary of its first day.</summary>
    /// <param name="importPerYear">Growth of import prices a year, as a fraction: 3 % is 0.03. Range: above -1.</param>
    /// <param name="exportPerYear">Growth of what export is paid.</param>
    /// <param name="supplyPerYear">Growth of supply charges.</param>
    /// <param name="until">First day for which no further version is needed.</param>
    /// <exception cref="ArgumentOutOfRangeException">A growth is -1 or less.</exception>
    /// <remarks>Equation: price in year k = price · (1 + growth)ᵏ, rounded to 8 digits. An assumption, not a promise of the retailer.</remarks>
    public TariffHistory GrowingBy(decimal importPerYear, decimal exportPerYear, decimal supplyPerYear, LocalDate until)
    {
        foreach (var growth in new[] { importPerYear, exportPerYear, supplyPerYear })
            if (growth <= -1) throw Throw.GrowthTooLow(growth);
        return Continued(until, years => (Power(1 + importPerYear, years), Power(1 + exportPerYear, years), Power(1 + supplyPerYear, years)));
    }

    /// <summary>The history with all prices of the latest version following a price index, on each anniversary of its first day.</summary>
    /// <param name="index">The index; it must hold the months of the anniversaries.</param>
    /// <param name="until">First day for which no further version is needed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index lacks a month.</exception>
    /// <remarks>Equation: price = price · index of the anniversary's month / index of the first day's month.</remarks>
    public TariffHistory FollowingIndex(PriceIndex index, LocalDate until)
    {
        ArgumentNullException.ThrowIfNull(index);
        return Continued(until, years =>
        {
            var factor = (decimal)(index.Level(Latest.From.PlusYears(years).ToYearMonth()) / index.Level(Latest.From.ToYearMonth()));
            return (factor, factor, factor);
        });
    }

    private TariffHistory Continued(LocalDate until, Func<int, (decimal Import, decimal Export, decimal Supply)> factors)
    {
        var versions = Versions.ToList();
        for (var years = 1; Latest.From.PlusYears(years) < until; years++)
        {
            var (import, export, supply) = factors(years);
            versions.Add(Latest.Scaled(Math.Round(import, 8), Math.Round(export, 8), Math.Round(supply, 8)) with { From = Latest.From.PlusYears(years) });
        }
        return new TariffHistory(versions) { Unpriced = Unpriced, PlaceZone = PlaceZone };
    }

    private static decimal Power(decimal factor, int years)
    {
        var power = 1m;
        for (var i = 0; i < years; i++) power *= factor;
        return power;
    }
}
