using System.Collections.Concurrent;
using NodaTime;

namespace SolarEconomics;

/// <summary>What the records say for any future, whatever is assumed: energy priced once by calendar month, the ledger, the age of the modules.</summary>
/// <remarks>Made once for a value to date; every outlook, draw and what-if of it shares this. Immutable, safe between threads.</remarks>
internal sealed class OutlookRecord
{
    private readonly List<Device> _aging;
    private readonly ConcurrentDictionary<Tariff, TariffSaving> _savings = new(ReferenceEqualityComparer.Instance);

    internal OutlookRecord(WorthToDate worth)
    {
        Worth = worth;
        FirstPurchase = worth.Ledger!.FirstPurchase.Date;
        AtPricesThen = At(worth.Prices);
        LatestPlan = worth.Tariffs.OnlyLatest().On(worth.Flows.Grid, worth.Site.Zone);
        LatestPrices = WorthToDate.PricesOf(LatestPlan, worth.Records, worth.Site);
        AtLatestPrices = At(LatestPrices);
        var ledgerYears = Math.Max(1, Period.DaysBetween(FirstPurchase, worth.Period.End) / 365.25);
        MeanRunningPerYear = (double)-worth.Ledger.Before(worth.Period.End).Of(LedgerClass.Running).Sum(e => e.CashFlow.Amount) / ledgerYears;
        _aging = [.. worth.Site.Plant.Devices.Where(d => d.RatedKwp > 0 && d.InService is not null && d.OutOfService is null)];
        Recorded = [.. RecordedEvents()];
    }

    internal WorthToDate Worth { get; }

    internal LocalDate FirstPurchase { get; }

    internal LocalDate RecordEnd => Worth.Period.End;

    /// <summary>The middle of the records: they hold the ageing up to here.</summary>
    internal LocalDate RecordMiddle => Worth.Period.Start.PlusDays(Worth.Period.Days / 2);

    internal OutlookBase AtPricesThen { get; }

    internal OutlookBase AtLatestPrices { get; }

    /// <summary>The latest tariff, on the days of the records.</summary>
    internal BillingPlan LatestPlan { get; }

    internal EvidencePrices LatestPrices { get; }

    /// <summary>Running costs of a year, the mean of the ledger so far.</summary>
    internal double MeanRunningPerYear { get; }

    /// <summary>Receipts, and what each recorded month was worth.</summary>
    internal IReadOnlyList<CashEvent> Recorded { get; }

    internal int DayOf(LocalDate date) => Period.DaysBetween(FirstPurchase, date);

    /// <summary>Age of the modules by rated power, in years; from the first purchase where the plant does not say.</summary>
    internal double AgeAt(LocalDate day)
    {
        var since = _aging.Count == 0
            ? Period.DaysBetween(FirstPurchase, day)
            : _aging.Sum(d => d.RatedKwp * Period.DaysBetween(d.InService!.Value, day)) / _aging.Sum(d => d.RatedKwp);
        return Math.Max(0, since / 365.25);
    }

    /// <summary>What is left of the records' mean yield: the records already hold the ageing up to their middle.</summary>
    internal double YieldAt(Ageing ageing, LocalDate day) => ageing.FactorAt(AgeAt(day)) / ageing.FactorAt(AgeAt(RecordMiddle));

    /// <summary>What another tariff would save, its bills worked out once.</summary>
    internal TariffSaving SavingOf(Tariff tariff) => _savings.GetOrAdd(tariff, t => new TariffSaving(this, t));

    /// <summary>The months from the records' end to a horizon.</summary>
    internal IEnumerable<(LocalDate Start, LocalDate End, LocalDate Middle, double Hours)> MonthsUntil(LocalDate horizon)
    {
        for (var start = RecordEnd; start < horizon;)
        {
            var end = LocalDate.Min(new LocalDate(start.Year, start.Month, 1).PlusMonths(1), horizon);
            var days = Period.DaysBetween(start, end);
            yield return (start, end, start.PlusDays(days / 2), days * 24.0);
            start = end;
        }
    }

    private OutlookBase At(EvidencePrices prices) => OutlookBase.Of(Worth.Flows, prices, Worth.Period.Start.Month, Worth.Site.Zone);

    private IEnumerable<CashEvent> RecordedEvents()
    {
        foreach (var entry in Worth.Ledger!.Entries.Where(e => e.Class is not (LedgerClass.NoMoney or LedgerClass.Finance)))
        {
            var purpose = entry.Class switch
            {
                LedgerClass.Investment => MoneyPurpose.Investment,
                LedgerClass.Running => MoneyPurpose.Running,
                _ => MoneyPurpose.Income,
            };
            yield return new CashEvent(entry.Date, entry.Date, (double)entry.CashFlow.Amount, purpose);
        }
        foreach (var (month, feedIn) in Worth.MonthlyFeedIn())
        {
            var start = LocalDate.Max(month.Month.OnDayOfMonth(1), Worth.Period.Start);
            var end = LocalDate.Min(month.Month.OnDayOfMonth(1).PlusMonths(1), RecordEnd);
            yield return new CashEvent(start, end, (double)month.Value.Amount - feedIn, MoneyPurpose.Savings);
            yield return new CashEvent(start, end, feedIn, MoneyPurpose.FeedIn);
        }
    }
}
