using NodaTime;

namespace SolarEconomics;

/// <summary>Works out an outlook for one draw without dates and lists: the same sums as <see cref="Outlook"/>, over days and months laid out once.</summary>
internal sealed class OutlookSampler
{
    private readonly OutlookRecord _record;
    private readonly int _horizonDay;
    private readonly int _recordEndDay;
    private readonly FutureMonth[] _months;
    private readonly (double Day, double Amount)[] _past;
    private readonly (int Day, double Amount)[] _laterEntries;
    private readonly double _positionAtRecordEnd;
    private readonly double _lastCrossing;
    private readonly double _ageAtMiddle;

    internal OutlookSampler(OutlookRecord record, int years)
    {
        _record = record;
        var horizon = record.FirstPurchase.PlusYears(years);
        _horizonDay = record.DayOf(horizon);
        _recordEndDay = record.DayOf(record.RecordEnd);
        _ageAtMiddle = record.AgeAt(record.RecordMiddle);
        _months = [.. record.MonthsUntil(horizon).Select(m => new FutureMonth(
            record.DayOf(m.Start), record.DayOf(m.End), m.Middle, Period.DaysBetween(record.RecordEnd, m.Middle) / 365.25, record.AgeAt(m.Middle),
            m.Middle.Year - record.RecordEnd.Year, m.Hours, record.AtLatestPrices.Month(m.Start.Month, m.Hours)))];
        var inTime = record.Recorded.Where(e => record.DayOf(e.Start) <= _horizonDay).ToList();
        var before = inTime.Where(e => e.Start < record.RecordEnd).ToList();
        _past = [.. before.Select(e => ((record.DayOf(e.Start) + record.DayOf(e.End)) / 2.0, e.Amount))];
        _laterEntries = [.. inTime.Where(e => e.Start >= record.RecordEnd).Select(e => (record.DayOf(e.Start), e.Amount)).OrderBy(e => e.Item1)];
        var path = new CashPath(record.FirstPurchase, record.RecordEnd, before, 0);
        _positionAtRecordEnd = path.AtEnd;
        _lastCrossing = path.LastingCrossing() ?? double.PositiveInfinity;
    }

    /// <summary>Years of weather that a draw needs, the year of the records' end first.</summary>
    internal int WeatherYears => _months[^1].WeatherYear + 1;

    /// <summary>One draw.</summary>
    /// <param name="a">Its assumptions.</param>
    /// <param name="weather">Factor on each year's generation, the year of the records' end first.</param>
    /// <param name="jumps">What falls due at once, by day; the list is this draw's own and gets its other jumps added.</param>
    internal OutlookDraw At(Assumptions a, ReadOnlySpan<double> weather, List<(int Day, double Amount)> jumps)
    {
        AddJumps(a, jumps);
        var path = new PricePath(a);
        var discount = -Growth.LogOnePlus(a.DiscountRate) / 365.0;
        var running = ((double?)a.RunningCostsPerYear ?? _record.MeanRunningPerYear) / 8766;
        var supply = (double)a.AvoidedSupplyChargePerYear / 8766;
        var yieldNow = a.YieldFactor / a.Ageing.FactorAt(_ageAtMiddle);
        var npv = 0.0;
        foreach (var (day, amount) in _past) npv += amount * Math.Exp(discount * day);
        foreach (var (day, amount) in jumps) npv += amount * Math.Exp(discount * day);
        var walk = new PositionWalk(_recordEndDay, _positionAtRecordEnd, _lastCrossing);
        var battery = a.BatteryFade is { } fade ? new BatteryWalk(_record, _record.AtLatestPrices.Battery, fade, a.Replacements) : null;
        var next = 0;
        foreach (var m in _months)
        {
            var yield = yieldNow * a.Ageing.FactorAt(m.AgeYears) * weather[m.WeatherYear];
            var lost = battery?.Next(m.Middle, m.Hours, yield) ?? default;
            var amount = ((((m.Worth.Avoided - lost.Avoided) * yield) - m.Worth.Standby + (supply * m.Hours)) * path.Import(m.YearsAhead, m.Middle))
                + (yield * path.FeedIn(m.Worth.FeedIn + lost.FeedIn, m.Worth.ExportedKwh + lost.ExportedKwh, m.YearsAhead, m.Middle))
                - (running * m.Hours * path.Cost(m.YearsAhead));
            npv += amount * Math.Exp(discount * ((m.StartDay + m.EndDay) / 2.0));
            var slope = amount / (m.EndDay - m.StartDay);
            for (; next < jumps.Count && jumps[next].Day < m.EndDay; next++)
            {
                walk.GoTo(jumps[next].Day, slope);
                walk.Jump(jumps[next].Amount);
            }
            walk.GoTo(m.EndDay, slope);
        }
        for (; next < jumps.Count; next++) walk.Jump(jumps[next].Amount);
        return new OutlookDraw(npv, walk.Position < 0 ? double.PositiveInfinity : walk.LastCrossing / 365.25, walk.Position);
    }

    /// <summary>What a wearing part's drawn failures cost, from the records' end to the horizon.</summary>
    internal void AddFailures(WearingPart part, Assumptions a, Func<int, double> score, List<(int Day, double Amount)> jumps)
    {
        var age = Math.Max(0, Period.DaysBetween(part.InService, _record.RecordEnd) / 365.25);
        var years = part.YearsLeft(age, score(0));
        for (var failure = 1; ; failure++)
        {
            var day = _recordEndDay + (int)Math.Round(years * 365.25);
            if (day >= _horizonDay) return;
            jumps.Add((day, -(double)part.Cost * Math.Pow(1 + a.CostGrowth, years)));
            years += Math.Max(1 / 365.25, part.YearsLeft(0, score(failure)));
        }
    }

    private void AddJumps(Assumptions a, List<(int Day, double Amount)> jumps)
    {
        foreach (var part in a.Replacements)
        {
            var day = (int)Math.Round(part.YearsAfterFirstPurchase * 365.25);
            if (day < _recordEndDay || day >= _horizonDay) continue;
            jumps.Add((day, -(double)part.Cost * Math.Pow(1 + a.CostGrowth, (day - _recordEndDay) / 365.25)));
        }
        jumps.Sort((x, y) => x.Day.CompareTo(y.Day));
        var future = jumps.Count;
        jumps.AddRange(_laterEntries);
        if (_laterEntries.Length > 0 && future > 0) jumps.Sort((x, y) => x.Day.CompareTo(y.Day));
        if (a.ResidualValue != 0) jumps.Add((_horizonDay, (double)a.ResidualValue));
    }

    private readonly record struct FutureMonth(
        int StartDay, int EndDay, LocalDate Middle, double YearsAhead, double AgeYears, int WeatherYear, double Hours,
        (double Avoided, double FeedIn, double Standby, double ExportedKwh) Worth);
}
