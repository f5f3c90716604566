using NodaTime;

namespace SolarEconomics;

/// <summary>Makes an outlook's cash: the past from records, the future month by month from what the records say of each calendar month.</summary>
internal sealed class OutlookFlows
{
    private readonly WorthToDate _worth;
    private readonly Assumptions _assumptions;
    private readonly OutlookBase _atPricesThen;
    private readonly OutlookBase _atLatestPrices;
    private readonly double _runningPerYear;

    internal OutlookFlows(WorthToDate worth, Assumptions assumptions)
    {
        _worth = worth;
        _assumptions = assumptions;
        FirstPurchase = worth.Ledger!.FirstPurchase.Date;
        Horizon = FirstPurchase.PlusYears(assumptions.Years);
        var then = worth.Tariffs.On(worth.Flows.Grid, worth.Site.Zone);
        var latest = worth.Tariffs.OnlyLatest().On(worth.Flows.Grid, worth.Site.Zone);
        var firstMonth = worth.Period.Start.Month;
        _atPricesThen = OutlookBase.Of(worth.Flows, WorthToDate.PricesOf(then, worth.Records, worth.Site), firstMonth);
        _atLatestPrices = OutlookBase.Of(worth.Flows, WorthToDate.PricesOf(latest, worth.Records, worth.Site), firstMonth);
        var ledgerYears = Math.Max(1, Period.DaysBetween(FirstPurchase, worth.Period.End) / 365.25);
        _runningPerYear = (double?)assumptions.RunningCostsPerYear
            ?? (double)-worth.Ledger.Before(worth.Period.End).Of(LedgerClass.Running).Sum(e => e.CashFlow.Amount) / ledgerYears;
    }

    internal LocalDate FirstPurchase { get; }

    internal LocalDate Horizon { get; }

    /// <summary>Running costs of a year at today's prices.</summary>
    internal double RunningPerYear => _runningPerYear;

    /// <summary>All cash from the first purchase to the horizon with a subset of the outlook's corrections on.</summary>
    /// <param name="ageing">Modules age.</param>
    /// <param name="replacement">Parts are replaced.</param>
    /// <param name="pricePath">Prices are the latest and grow; otherwise they stay as they were on average in the records.</param>
    internal List<CashEvent> Events(bool ageing, bool replacement, bool pricePath)
    {
        var events = new List<CashEvent>(Recorded());
        foreach (var month in FutureMonths())
        {
            var prices = pricePath ? _atLatestPrices : _atPricesThen;
            var (avoided, feedIn, standby) = prices.Month(month.Start.Month, month.Hours);
            var aged = ageing ? AgeingSinceRecords(month.Middle) : 1;
            var import = pricePath ? Growth(_assumptions.PriceGrowth, month.Middle) : 1;
            var export = pricePath ? Growth(_assumptions.FeedInGrowth, month.Middle) : 1;
            var cost = pricePath ? Growth(_assumptions.CostGrowth, month.Middle) : 1;
            events.Add(new CashEvent(month.Start, month.End, ((avoided * aged) - standby) * import, MoneyPurpose.Savings, false));
            events.Add(new CashEvent(month.Start, month.End, feedIn * aged * export, MoneyPurpose.FeedIn, false));
            events.Add(new CashEvent(month.Start, month.End, -_runningPerYear * cost * month.Hours / 8766, MoneyPurpose.Running, false));
        }
        if (replacement) events.AddRange(Replacements(pricePath));
        if (_assumptions.ResidualValue != 0)
            events.Add(new CashEvent(Horizon, Horizon, (double)_assumptions.ResidualValue, MoneyPurpose.Income, false));
        return events;
    }

    private IEnumerable<CashEvent> Recorded()
    {
        foreach (var entry in _worth.Ledger!.Entries.Where(e => e.Class is not (LedgerClass.NoMoney or LedgerClass.Finance)))
        {
            var purpose = entry.Class switch
            {
                LedgerClass.Investment => MoneyPurpose.Investment,
                LedgerClass.Running => MoneyPurpose.Running,
                _ => MoneyPurpose.Income,
            };
            yield return new CashEvent(entry.Date, entry.Date, (double)entry.CashFlow.Amount, purpose, entry.Date < _worth.Period.End);
        }
        foreach (var (month, feedIn) in _worth.MonthlyFeedIn())
        {
            var start = LocalDate.Max(month.Month.OnDayOfMonth(1), _worth.Period.Start);
            var end = LocalDate.Min(month.Month.OnDayOfMonth(1).PlusMonths(1), _worth.Period.End);
            yield return new CashEvent(start, end, (double)month.Value.Amount - feedIn, MoneyPurpose.Savings, true);
            yield return new CashEvent(start, end, feedIn, MoneyPurpose.FeedIn, true);
        }
    }

    private IEnumerable<CashEvent> Replacements(bool pricePath)
    {
        foreach (var part in _assumptions.Replacements)
        {
            var date = FirstPurchase.PlusDays((int)Math.Round(part.YearsAfterFirstPurchase * 365.25));
            if (date >= Horizon || date < _worth.Period.End) continue;
            var growth = pricePath ? Growth(_assumptions.CostGrowth, date) : 1;
            yield return new CashEvent(date, date, -(double)part.Cost * growth, MoneyPurpose.Replacement, false);
        }
    }

    private IEnumerable<(LocalDate Start, LocalDate End, LocalDate Middle, double Hours)> FutureMonths()
    {
        for (var start = _worth.Period.End; start < Horizon;)
        {
            var end = LocalDate.Min(new LocalDate(start.Year, start.Month, 1).PlusMonths(1), Horizon);
            var days = Period.DaysBetween(start, end);
            yield return (start, end, start.PlusDays(days / 2), days * 24.0);
            start = end;
        }
    }

    /// <summary>Growth since the last record, when the latest prices were in force.</summary>
    private double Growth(double rate, LocalDate day) =>
        Math.Pow(1 + rate, Period.DaysBetween(_worth.Period.End, day) / 365.25);

    /// <summary>What is left of the records' mean yield: the records already hold the ageing up to their middle.</summary>
    private double AgeingSinceRecords(LocalDate day)
    {
        var middle = _worth.Period.Start.PlusDays(_worth.Period.Days / 2);
        return _assumptions.Ageing.FactorAt(AgeAt(day)) / _assumptions.Ageing.FactorAt(AgeAt(middle));
    }

    /// <summary>Age of the modules by rated power; from the first purchase where the plant does not say.</summary>
    private double AgeAt(LocalDate day)
    {
        var devices = _worth.Site.Plant.Devices.Where(d => d.RatedKwp > 0 && d.InService is not null && d.OutOfService is null).ToList();
        var since = devices.Count == 0
            ? Period.DaysBetween(FirstPurchase, day)
            : devices.Sum(d => d.RatedKwp * Period.DaysBetween(d.InService!.Value, day)) / devices.Sum(d => d.RatedKwp);
        return Math.Max(0, since / 365.25);
    }
}
