using NodaTime;

namespace SolarEconomics;

/// <summary>A rebate for import left off in the called hours of some days.</summary>
internal sealed class SegmentEventRebate(EventRebate part, SegmentContext context) : SegmentPart
{
    private readonly LocalDate[] _called = [.. part.Days.Distinct().Where(context.Days.Contains).Order()];

    internal override void AddLines(BillRun run, List<BillLine> lines)
    {
        var left = 0m;
        foreach (var day in _called)
        {
            var usual = new List<double>();
            // Two months back at most: an older habit says little of that day.
            for (var earlier = day.PlusDays(-1); usual.Count < part.BaselineDays && earlier >= day.PlusDays(-60); earlier = earlier.PlusDays(-1))
            {
                var isWhole = context.Second(earlier) >= context.Ticks.StartOf(0);
                if (isWhole && !part.Days.Contains(earlier) && IsWorking(earlier) == IsWorking(day)) usual.Add(Kwh(earlier, run));
            }
            if (usual.Count > 0) left += Math.Max(0, BillWriter.Kwh(usual.Average()) - BillWriter.Kwh(Kwh(day, run)));
        }
        if (left > 0)
            lines.Add(BillWriter.Line(context, part, part.Name, left, "kWh", part.PerKwh, -1, RuleWords.Rebate(part, left, _called.Length, context.Tariff)));
    }

    private double Kwh(LocalDate day, BillRun run) => EventHours.Sum(run.ImportKwh, EventHours.Of(day, part.Hours, context.RateZone, context.Ticks));

    private bool IsWorking(LocalDate day) => day.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday) && !context.Tariff.Holidays.Contains(day);
}
