namespace SolarEconomics;

/// <content>The least that demand can cost, for a linear program.</content>
internal sealed partial class SegmentDemand
{
    internal override bool AddFloor(BillFloor floor)
    {
        if (_charge.PerKw < 0 || _charge.Steps.Any(s => s.Price < 0)) return false;
        floor.AddLines(Math.Max(1, _charge.Steps.Count));
        foreach (var days in DaysCharged()) AddPeak(floor, days);
        return true;
    }

    private IReadOnlyList<DateSpan> DaysCharged() =>
        _charge.EachDay ? BlockScale.Stretches(BlockPeriod.Day, _context.Days, _context.WholePeriod) : StretchesCharged();

    private void AddPeak(BillFloor floor, DateSpan days)
    {
        var averages = _averages.Where(a => days.Contains(_context.Days.Start.PlusDays(a.Day))).Select(a => (a.First, a.Count, a.Count * _context.Ticks.Step / 3600.0)).ToList();
        // As on the bill: a stretch without any average of the window has no demand, and no least one either.
        if (averages.Count == 0) return;
        var factor = (double)(TimesCharged(days) * (1 + _context.Tariff.TaxOn(_charge)));
        var prices = _charge.Steps.Count == 0 ? [(double)_charge.PerKw] : _charge.Steps.Select(s => (double)s.Price).ToArray();
        var isExact = prices.Zip(prices.Skip(1)).All(p => p.Second >= p.First);
        var steps = isExact ? Enumerable.Range(1, prices.Length - 1).Select(k => ((double)_charge.Steps[k - 1].UpTo!.Value, (prices[k] - prices[k - 1]) * factor)).ToList() : [];
        var demands = floor.DemandsOf(_charge.Name);
        var peak = new BillPeak(averages, (isExact ? prices[0] : prices.Min()) * factor, (double)Math.Max(_charge.MinimumKw, _charge.EarlierKw * _charge.RatchetShare), steps)
        {
            Earlier = _charge is { EachDay: false, RatchetShare: > 0 } ? demands.TakeLast(_charge.RatchetBills).ToList() : [],
            EarlierShare = (double)_charge.RatchetShare,
        };
        floor.Peaks.Add(peak);
        var season = _context.Tariff.Seasons.FirstOrDefault(s => string.Equals(s.Name, _charge.RatchetSeason, StringComparison.Ordinal));
        if (season is null || season.Contains(days.Start)) demands.Add(peak);
    }
}
