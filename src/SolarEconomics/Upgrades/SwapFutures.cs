using NodaTime;

namespace SolarEconomics;

/// <summary>Computes a panel swap as the difference of two futures, from the records' own hours.</summary>
internal sealed class SwapFutures
{
    private readonly OutlookRecord _record;
    private readonly Assumptions _assumptions;
    private readonly LocalDate _horizon;
    private readonly PanelSwap _swap;
    private readonly Device _device;
    private readonly ExtraEnergy[] _months = new ExtraEnergy[12];
    private readonly ExtraEnergy _all;
    private readonly double _gainAtStart;

    internal SwapFutures(OutlookRecord record, Assumptions assumptions, PanelSwap swap)
    {
        _record = record;
        _assumptions = assumptions;
        _horizon = record.FirstPurchase.PlusYears(assumptions.Years);
        if (swap.On < record.RecordEnd || swap.On >= _horizon) throw Throw.ChangeOutsideOutlook(swap.On, record.RecordEnd, _horizon);
        Require.Within(swap.NewKwp, 0.001, 1e6, "kWp");
        Require.Within((double)swap.Cost, 0, 1e9, "the site's currency");
        _swap = swap;
        _device = Known(swap.Device);
        // The new modules start unaged; the record holds the old ones as they were in its middle.
        var ratio = swap.NewKwp / _device.RatedKwp / OldFactor(record.RecordMiddle);
        _gainAtStart = ratio - 1;
        AddMonths(record.Worth, ratio);
        _all = _months.Aggregate(default(ExtraEnergy), (a, b) => a.Plus(b));
    }

    internal double OldKwp => _device.RatedKwp;

    internal ExtraEnergy PerYear
    {
        get
        {
            var year = default(ExtraEnergy);
            for (var m = 1; m <= 12; m++) year = year.Plus(Month(m, 8766.0 / 12));
            return year;
        }
    }

    /// <summary>The cash of the difference: what the change costs, and what its energy is worth each month to the horizon.</summary>
    /// <param name="worthOf">Which worth of the extra energy, and the kWh exported: by its destination, all exported, or all used.</param>
    internal List<CashEvent> Events(Func<ExtraEnergy, (double Import, double Export, double ExportedKwh)> worthOf)
    {
        var path = new PricePath(_assumptions);
        var events = new List<CashEvent>
        {
            new(_swap.On, _swap.On, -(double)_swap.Cost, MoneyPurpose.Investment),
            new(_swap.On, _swap.On, (double)_swap.Displaced.Received, MoneyPurpose.Income),
        };
        for (var start = _swap.On; start < _horizon;)
        {
            var end = LocalDate.Min(new LocalDate(start.Year, start.Month, 1).PlusMonths(1), _horizon);
            var days = Period.DaysBetween(start, end);
            var middle = start.PlusDays(days / 2);
            var (import, export, exportedKwh) = worthOf(Month(start.Month, days * 24.0));
            var years = Period.DaysBetween(_record.RecordEnd, middle) / 365.25;
            var amount = _assumptions.YieldFactor * ((import * path.Import(years, middle)) + path.FeedIn(export, exportedKwh, years, middle));
            events.Add(new CashEvent(start, end, amount * GainShare(middle), MoneyPurpose.Savings));
            start = end;
        }
        return events;
    }

    /// <summary>How much of the first day's gain is left: the new modules age from the change, the old ones would have gone on ageing.</summary>
    private double GainShare(LocalDate day)
    {
        if (Math.Abs(_gainAtStart) < 1e-12) return 0;
        var age = Period.DaysBetween(_swap.On, day) / 365.25;
        var with = (1 + _gainAtStart) * _assumptions.Ageing.FactorAt(Math.Max(0, age));
        var without = OldFactor(day) / OldFactor(_record.RecordMiddle);
        return (with - without) / _gainAtStart;
    }

    private double OldFactor(LocalDate day)
    {
        var since = _device.InService ?? _record.FirstPurchase;
        return _assumptions.Ageing.FactorAt(Math.Max(0, Period.DaysBetween(since, day) / 365.25));
    }

    private ExtraEnergy Month(int calendarMonth, double hours)
    {
        var sums = _months[calendarMonth - 1].Hours > 0 ? _months[calendarMonth - 1] : _all;
        var scale = sums.Hours > 0 ? hours / sums.Hours : 0;
        return new ExtraEnergy(hours, sums.UsedKwh * scale, sums.ExportedKwh * scale, sums.Avoided * scale, sums.FeedIn * scale,
            sums.IfAllExported * scale, sums.IfAllUsed * scale);
    }

    private void AddMonths(WorthToDate worth, double ratio)
    {
        var grid = worth.Flows.Grid;
        var prices = _record.LatestPrices;
        var old = worth.GenerationOf(_device.Name);
        var (elsewhere, perKwp) = (Array.Empty<double>(), 0.0);
        if (_swap.Displaced.Device is { } name)
        {
            var other = Known(name);
            elsewhere = worth.GenerationOf(name);
            perKwp = _device.RatedKwp * _swap.Displaced.ConditionShare / other.RatedKwp;
        }
        var limit = _swap.InverterKw is { } kw ? kw * grid.StepHours : double.MaxValue;
        for (var i = 0; i < grid.Count; i++)
        {
            var delta = Math.Min(old[i] * ratio, Math.Max(limit, old[i])) - old[i];
            if (elsewhere.Length > 0) delta += elsewhere[i] * perKwp;
            var month = (worth.Period.Start.Month - 1 + prices.MonthOf[i]) % 12;
            _months[month] = _months[month].Plus(ExtraEnergy.Of(grid.StepHours, delta, worth.Flows.ImportKwh[i], worth.Flows.ExportKwh[i],
                prices.Import[i], prices.Export[i]));
        }
    }

    private Device Known(string name)
    {
        var device = _record.Worth.Site.Plant.Find(name)
            ?? throw Throw.UnknownDevice(name, _record.Worth.Site.Plant.Devices.Select(d => d.Name));
        return device.RatedKwp > 0 ? device : throw Throw.NoRating(name);
    }
}
