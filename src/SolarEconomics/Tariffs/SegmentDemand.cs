using NodaTime;

namespace SolarEconomics;

/// <summary>A demand charge over the days of a segment: averages of the import inside the window, the highest charged.</summary>
internal sealed class SegmentDemand : SegmentPart
{
    private readonly DemandCharge _charge;
    private readonly SegmentContext _context;
    // First interval, number of intervals and billing day of each average that counts.
    private readonly List<(int First, int Count, int Day)> _averages = [];

    internal SegmentDemand(DemandCharge charge, SegmentContext context)
    {
        _charge = charge;
        _context = context;
        var ticks = context.Ticks;
        var length = Math.Max(charge.AveragingMinutes * 60L, ticks.Step);
        var end = ticks.FirstFrom(context.Until);
        var day = context.Days.Start;
        var dayEnd = context.Second(day.PlusDays(1));
        for (var i = ticks.FirstFrom(context.From); i < end;)
        {
            var start = ticks.StartOf(i);
            while (start >= dayEnd)
            {
                day = day.PlusDays(1);
                dayEnd = context.Second(day.PlusDays(1));
            }
            // Averages start at the full hour and its parts, as the meter's do.
            var slotEnd = start - Math.DivRem(start, length).Remainder + length;
            var count = Math.Max(1, Math.Min(ticks.FirstFrom(slotEnd), end) - i);
            context.Clock.MoveTo(start);
            if (context.Calendar.Applies(charge.Window, context.Clock.DayClass) && charge.Window.Hours.Any(h => h.Contains(context.Clock.SecondOfDay / 60)))
                _averages.Add((i, count, Period.DaysBetween(context.Days.Start, day)));
            i += count;
        }
    }

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        if (_charge.EachDay || _charge.Per != ChargePeriod.Month) AddLine(_context.Days, run, lines);
        else foreach (var month in BlockScale.Stretches(BlockPeriod.Month, _context.Days, _context.WholePeriod)) AddLine(month, run, lines);
    }

    private void AddLine(DateSpan days, BillRun run, List<BillLine> lines)
    {
        var highest = new double[_charge.EachDay ? _context.Days.Days : 1];
        var counted = false;
        foreach (var (first, count, day) in _averages)
        {
            if (!days.Contains(_context.Days.Start.PlusDays(day))) continue;
            counted = true;
            var kwh = 0.0;
            for (var i = first; i < first + count; i++) kwh += run.ImportKwh[i];
            var kw = kwh * 3600.0 / (count * _context.Ticks.Step);
            ref var top = ref highest[_charge.EachDay ? day : 0];
            top = Math.Max(top, kw);
        }
        if (!counted) return;
        var earlier = run.Carry.DemandsKw(_charge.Name);
        var remembered = earlier.Skip(Math.Max(0, earlier.Count - _charge.RatchetBills)).DefaultIfEmpty(0).Max();
        var floor = Math.Max(_charge.MinimumKw, (decimal)remembered * _charge.RatchetShare);
        earlier.Add(highest.Max());
        var kwCharged = highest.Sum(kw => Math.Max((decimal)kw, floor));
        var periods = _charge.EachDay ? 1m : _charge.Per switch
        {
            ChargePeriod.Day => days.Days,
            ChargePeriod.Month => BlockScale.Of(BlockPeriod.Month, days, _context.WholePeriod),
            ChargePeriod.Year => BlockScale.Of(BlockPeriod.Year, _context.Days, _context.WholePeriod),
            _ => BlockScale.Of(BlockPeriod.Bill, _context.Days, _context.WholePeriod),
        };
        var unit = "kW " + RuleWords.Unit(_charge.EachDay ? ChargePeriod.Day : _charge.Per);
        lines.Add(BillWriter.Line(_context, _charge, _charge.Name, kwCharged * periods, unit, _charge.PerKw, 1,
            RuleWords.Demand(_charge, highest.Max(), floor, _context.Tariff)));
    }
}
