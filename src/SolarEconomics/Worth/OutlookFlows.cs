using NodaTime;

namespace SolarEconomics;

/// <summary>Makes an outlook's cash: the past from records, the future month by month from what the records say of each calendar month.</summary>
internal sealed class OutlookFlows
{
    private readonly OutlookRecord _record;
    private readonly Assumptions _assumptions;
    private readonly PricePath _path;

    internal OutlookFlows(OutlookRecord record, Assumptions assumptions)
    {
        _record = record;
        _assumptions = assumptions;
        _path = new PricePath(assumptions);
        Horizon = record.FirstPurchase.PlusYears(assumptions.Years);
        RunningPerYear = (double?)assumptions.RunningCostsPerYear ?? record.MeanRunningPerYear;
    }

    internal OutlookRecord Record => _record;

    internal LocalDate FirstPurchase => _record.FirstPurchase;

    internal LocalDate Horizon { get; }

    /// <summary>Running costs of a year at today's prices.</summary>
    internal double RunningPerYear { get; }

    /// <summary>All cash from the first purchase to the horizon with a subset of the outlook's corrections on.</summary>
    /// <param name="ageing">Modules age.</param>
    /// <param name="replacement">Parts are replaced.</param>
    /// <param name="pricePath">Prices are the latest and grow; otherwise they stay as they were on average in the records.</param>
    internal List<CashEvent> Events(bool ageing, bool replacement, bool pricePath)
    {
        var events = new List<CashEvent>(_record.Recorded);
        var prices = pricePath ? _record.AtLatestPrices : _record.AtPricesThen;
        var battery = ageing ? Battery(prices, replacement) : null;
        foreach (var month in _record.MonthsUntil(Horizon))
        {
            var (avoided, feedIn, standby, exportedKwh) = prices.Month(month.Start.Month, month.Hours);
            var yield = (ageing ? _record.YieldAt(_assumptions.Ageing, month.Middle) : 1) * _assumptions.YieldFactor;
            var lost = battery?.Next(month.Middle, month.Hours, yield) ?? default;
            (avoided, feedIn, exportedKwh) = (avoided - lost.Avoided, feedIn + lost.FeedIn, exportedKwh + lost.ExportedKwh);
            var years = YearsAhead(month.Middle);
            var import = pricePath ? _path.Import(years, month.Middle) : 1;
            var export = pricePath ? _path.FeedIn(feedIn, exportedKwh, years, month.Middle) : feedIn;
            var cost = pricePath ? _path.Cost(years) : 1;
            var supply = (double)_assumptions.AvoidedSupplyChargePerYear * month.Hours / 8766;
            events.Add(new CashEvent(month.Start, month.End, ((avoided * yield) - standby + supply) * import, MoneyPurpose.Savings));
            events.Add(new CashEvent(month.Start, month.End, yield * export, MoneyPurpose.FeedIn));
            events.Add(new CashEvent(month.Start, month.End, -RunningPerYear * cost * month.Hours / 8766, MoneyPurpose.Running));
        }
        if (replacement)
        {
            events.AddRange(Replacements(pricePath));
            events.AddRange(ExpectedFailures(pricePath));
        }
        if (_assumptions.ResidualValue != 0)
            events.Add(new CashEvent(Horizon, Horizon, (double)_assumptions.ResidualValue, MoneyPurpose.Income));
        return events;
    }

    /// <summary>The fading battery month by month, as the outlook has it.</summary>
    internal IEnumerable<BatteryAhead> BatteryMonths()
    {
        if (Battery(_record.AtLatestPrices, isReplaced: true) is not { } battery) yield break;
        foreach (var month in _record.MonthsUntil(Horizon))
        {
            var yield = _record.YieldAt(_assumptions.Ageing, month.Middle) * _assumptions.YieldFactor;
            var lost = battery.Next(month.Middle, month.Hours, yield);
            yield return new BatteryAhead(month.Start, battery.ShareOfNew, yield * lost.DischargeKwh);
        }
    }

    private BatteryWalk? Battery(OutlookBase prices, bool isReplaced) => _assumptions.BatteryFade is { } fade
        ? new BatteryWalk(_record, prices.Battery, fade, isReplaced ? _assumptions.Replacements : []) : null;

    private IEnumerable<CashEvent> Replacements(bool pricePath)
    {
        foreach (var part in _assumptions.Replacements)
        {
            var date = FirstPurchase.PlusDays((int)Math.Round(part.YearsAfterFirstPurchase * 365.25));
            if (date >= Horizon || date < _record.RecordEnd) continue;
            var growth = pricePath ? _path.Cost(YearsAhead(date)) : 1;
            yield return new CashEvent(date, date, -(double)part.Cost * growth, MoneyPurpose.Replacement);
        }
    }

    /// <summary>What parts that fail by odds are expected to cost, month by month.</summary>
    private IEnumerable<CashEvent> ExpectedFailures(bool pricePath)
    {
        foreach (var part in _assumptions.WearingParts)
        {
            var months = _record.MonthsUntil(Horizon).ToList();
            var age = Math.Max(0, Period.DaysBetween(part.InService, _record.RecordEnd) / 365.25);
            var expected = part.ExpectedFailures(age, 1 / 12.0, months.Count);
            foreach (var (month, failures) in months.Zip(expected))
            {
                var growth = pricePath ? _path.Cost(YearsAhead(month.Middle)) : 1;
                yield return new CashEvent(month.Start, month.End, -(double)part.Cost * failures * growth, MoneyPurpose.Replacement);
            }
        }
    }

    /// <summary>Years since the last record, when the latest prices were in force.</summary>
    private double YearsAhead(LocalDate day) => Period.DaysBetween(_record.RecordEnd, day) / 365.25;
}
