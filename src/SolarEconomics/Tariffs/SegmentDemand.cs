using NodaTime;

namespace SolarEconomics;

/// <summary>A demand charge over the days of a segment: averages of the import inside the window, the highest charged.</summary>
internal sealed partial class SegmentDemand : SegmentPart
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
        if (_charge.EachDay) AddLine(_context.Days, run, lines);
        else foreach (var days in StretchesCharged()) AddLine(days, run, lines);
    }

    /// <summary>The stretches of the bill whose highest demand is charged each, where it is not each day's.</summary>
    private IReadOnlyList<DateSpan> StretchesCharged() => _charge.EachMonth || _charge.Per == ChargePeriod.Month
        ? BlockScale.Stretches(BlockPeriod.Month, _context.Days, _context.WholePeriod)
        : [_context.Days];

    /// <summary>How many times the price is charged for a stretch: only days of the season in which demand counts are for it.</summary>
    private decimal TimesCharged(DateSpan days) => _charge.EachDay ? 1 : BlockScale.Of(_charge.Per, days, _context.WholePeriod, Counts);

    /// <summary>Whether a day belongs to the season in which demand counts.</summary>
    private bool Counts(LocalDate day) => _charge.Window.Season is not { } name
        || _context.Tariff.Seasons.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.Ordinal)) is not { } season || season.Contains(day);
}
