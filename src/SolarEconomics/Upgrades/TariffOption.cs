using NodaTime;

namespace SolarEconomics;

/// <summary>Another tariff for the plant as it is: the difference of two bills for the energy on record as the modules age, supply charges and all.</summary>
/// <param name="Name">A few words.</param>
/// <param name="Tariff">The tariff to change to.</param>
/// <param name="On">Day of the change, not before the end of the records.</param>
/// <param name="Cost">What changing costs once: a meter, a leaving fee. Unit: the site's currency. 0 or more.</param>
/// <remarks>Both tariffs are taken to grow as import prices do. As the modules age, use out of the plant and export fall in proportion and import makes up for it, so that both bills
/// move. A tariff chosen on one year and billed on the next differs by the weather: small differences are a tie.</remarks>
public sealed record TariffOption(string Name, Tariff Tariff, LocalDate On, decimal Cost = 0) : UpgradeOption(Name)
{
    /// <inheritdoc/>
    public override LocalDate From => On;

    /// <inheritdoc/>
    public override decimal Price => Cost;

    internal override IEnumerable<CashEvent> OwnEvents(OutlookRecord record, Assumptions assumptions)
    {
        var horizon = record.FirstPurchase.PlusYears(assumptions.Years);
        if (On < record.RecordEnd || On >= horizon) throw Throw.ChangeOutsideOutlook(On, record.RecordEnd, horizon);
        if (Tariff.Currency != record.Worth.Site.Currency) throw Throw.CurrencyOfSite(record.Worth.Site.Currency, Tariff.Currency, "tariff of an option");
        Require.Within((double)Cost, 0, 1e9, "the site's currency");
        yield return new CashEvent(On, On, -(double)Cost, MoneyPurpose.Investment);
        var saving = record.SavingOf(Tariff);
        var path = new PricePath(assumptions);
        var rise = (double)assumptions.SupplyChargeRisePerYear / 365.25;
        foreach (var (start, end, middle, hours) in record.MonthsUntil(horizon).Where(m => m.End > On))
        {
            var from = LocalDate.Max(start, On);
            var days = Period.DaysBetween(from, end);
            var growth = path.Import(Period.DaysBetween(record.RecordEnd, middle) / 365.25, middle);
            var yield = record.YieldAt(assumptions.Ageing, middle) * assumptions.YieldFactor;
            yield return new CashEvent(from, end, (saving.PerDay(start.Month, yield) + rise) * days * growth, MoneyPurpose.Savings);
        }
    }

    private protected override UpgradeOption Later(int years, double priceFactor, double resaleFactor) =>
        this with { On = On.PlusYears(years), Cost = Cost * (decimal)priceFactor };
}
