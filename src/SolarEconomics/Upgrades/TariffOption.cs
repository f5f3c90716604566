using NodaTime;

namespace SolarEconomics;

/// <summary>Another tariff for the plant as it is: the difference of two bills for the energy on record, supply charges and all.</summary>
/// <param name="Name">A few words.</param>
/// <param name="Tariff">The tariff to change to.</param>
/// <param name="On">Day of the change, not before the end of the records.</param>
/// <param name="Cost">What changing costs once: a meter, a leaving fee. Unit: the site's currency. 0 or more.</param>
/// <remarks>Both tariffs are taken to grow as import prices do; use and export stay as recorded. A tariff chosen on one year and billed on the next differs by the weather: small differences are a tie.</remarks>
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
        yield return new CashEvent(On, On, -(double)Cost, MoneyPurpose.Investment, false);
        var perDay = SavedPerDay(record);
        foreach (var (start, end, middle, hours) in record.MonthsUntil(horizon).Where(m => m.End > On))
        {
            var from = LocalDate.Max(start, On);
            var days = Period.DaysBetween(from, end);
            var growth = Math.Pow(1 + assumptions.PriceGrowth, Period.DaysBetween(record.RecordEnd, middle) / 365.25);
            yield return new CashEvent(from, end, perDay[start.Month - 1] * days * growth, MoneyPurpose.Savings, false);
        }
    }

    private protected override UpgradeOption Later(int years, double priceFactor, double resaleFactor) =>
        this with { On = On.PlusYears(years), Cost = Cost * (decimal)priceFactor };

    /// <summary>What the recorded months' bills come down by, per day of each calendar month; a month without records takes the mean.</summary>
    private double[] SavedPerDay(OutlookRecord record)
    {
        var worth = record.Worth;
        var plan = TariffHistory.Of(Tariff).OnlyLatest().On(worth.Flows.Grid, worth.Site.Zone);
        var now = new BillDifference(record.LatestPlan, worth.Site.TaxReclaimedShare).Dues(worth.Flows.ImportKwh, worth.Flows.ExportKwh);
        var then = new BillDifference(plan, worth.Site.TaxReclaimedShare).Dues(worth.Flows.ImportKwh, worth.Flows.ExportKwh);
        var saved = new double[12];
        var days = new int[12];
        foreach (var ((period, due), (_, dueThen)) in now.Zip(then))
        {
            saved[period.Start.Month - 1] += (double)(due - dueThen);
            days[period.Start.Month - 1] += period.Days;
        }
        var mean = saved.Sum() / Math.Max(1, days.Sum());
        return [.. saved.Select((sum, month) => days[month] > 0 ? sum / days[month] : mean)];
    }
}
