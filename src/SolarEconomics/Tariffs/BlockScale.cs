using NodaTime;

namespace SolarEconomics;

/// <summary>How large the blocks of a bill are, as a multiple of their stated sizes.</summary>
internal static class BlockScale
{
    private const int LongestMonth = 31;
    private const int LongestQuarter = 92;

    internal static decimal Of(BlockPeriod per, DateSpan days, DateSpan wholePeriod) => per switch
    {
        BlockPeriod.Bill => (decimal)days.Days / wholePeriod.Days,
        BlockPeriod.DaysOfBill => days.Days,
        BlockPeriod.ThirtyDays => days.Days / 30m,
        BlockPeriod.Month => Share(days, d => 1m / CalendarSystem.Iso.GetDaysInMonth(d.Year, d.Month)),
        BlockPeriod.Quarter => Share(days, d => 1m / QuarterOf(d).Days),
        BlockPeriod.Year => Share(days, d => 1m / CalendarSystem.Iso.GetDaysInYear(d.Year)),
        _ => 1m,
    };

    /// <summary>Sizes stated for a season: each day takes its share of the season that it lies in.</summary>
    internal static decimal Of(RateBlocks blocks, DateSpan days, SegmentContext context) => blocks.Per != BlockPeriod.Season
        ? Of(blocks.Per, days, context.WholePeriod)
        : Share(days, day => 1m / (context.Tariff.Seasons.FirstOrDefault(s => s.Contains(day))?.DaysAround(day) ?? CalendarSystem.Iso.GetDaysInYear(day.Year)));

    internal static decimal Of(ChargePeriod per, DateSpan days, DateSpan wholePeriod) => per switch
    {
        ChargePeriod.Day => days.Days,
        ChargePeriod.Month => Of(BlockPeriod.Month, days, wholePeriod),
        ChargePeriod.Year => Of(BlockPeriod.Year, days, wholePeriod),
        _ => Of(BlockPeriod.Bill, days, wholePeriod),
    };

    /// <summary>How many days, months or years a charge counts whose season takes some of the days only. A price for a bill is for all of its days.</summary>
    internal static decimal Of(ChargePeriod per, DateSpan days, DateSpan wholePeriod, Func<LocalDate, bool> counts) => per switch
    {
        ChargePeriod.Day => Share(days, d => counts(d) ? 1 : 0),
        ChargePeriod.Month => Share(days, d => counts(d) ? 1m / CalendarSystem.Iso.GetDaysInMonth(d.Year, d.Month) : 0),
        ChargePeriod.Year => Share(days, d => counts(d) ? 1m / CalendarSystem.Iso.GetDaysInYear(d.Year) : 0),
        _ => Of(per, days, wholePeriod),
    };

    /// <summary>The stretches of a bill in which blocks start anew.</summary>
    internal static IReadOnlyList<DateSpan> Stretches(BlockPeriod per, DateSpan days, DateSpan wholePeriod) => per switch
    {
        BlockPeriod.Day => Cut(days, d => new DateSpan(d, d.PlusDays(1))),
        BlockPeriod.Month when wholePeriod.Days > LongestMonth => Cut(days, MonthOf),
        BlockPeriod.Quarter when wholePeriod.Days > LongestQuarter => Cut(days, QuarterOf),
        _ => [days],
    };

    /// <summary>The calendar's stretches of a bill, whatever its length, for blocks that run on.</summary>
    internal static IReadOnlyList<DateSpan> Turns(BlockPeriod per, DateSpan days) => Cut(days, day => TurnOf(per, day));

    /// <summary>The month, quarter or year that a day lies in.</summary>
    internal static DateSpan TurnOf(BlockPeriod per, LocalDate day) => per switch
    {
        BlockPeriod.Month => MonthOf(day),
        BlockPeriod.Quarter => QuarterOf(day),
        _ => new DateSpan(new LocalDate(day.Year, 1, 1), new LocalDate(day.Year + 1, 1, 1)),
    };

    private static DateSpan MonthOf(LocalDate day) => new(new LocalDate(day.Year, day.Month, 1), new LocalDate(day.Year, day.Month, 1).PlusMonths(1));

    private static DateSpan QuarterOf(LocalDate day)
    {
        var start = new LocalDate(day.Year, (((day.Month - 1) / 3) * 3) + 1, 1);
        return new DateSpan(start, start.PlusMonths(3));
    }

    private static List<DateSpan> Cut(DateSpan days, Func<LocalDate, DateSpan> stretchOf)
    {
        var cuts = new List<DateSpan>();
        for (var day = days.Start; day < days.End; day = cuts[^1].End) cuts.Add(stretchOf(day).Overlap(days));
        return cuts;
    }

    private static decimal Share(DateSpan days, Func<LocalDate, decimal> ofDay)
    {
        var share = 0m;
        for (var day = days.Start; day < days.End; day = day.PlusDays(1)) share += ofDay(day);
        return Math.Round(share, 12);
    }
}
