using NodaTime;

namespace SolarEconomics;

/// <summary>How large the blocks of a bill are, as a multiple of their stated sizes.</summary>
internal static class BlockScale
{
    internal static decimal Of(BlockPeriod per, DateSpan days, DateSpan wholePeriod) => per switch
    {
        BlockPeriod.Bill => (decimal)days.Days / wholePeriod.Days,
        BlockPeriod.DaysOfBill => days.Days,
        BlockPeriod.ThirtyDays => days.Days / 30m,
        BlockPeriod.Month => Share(days, d => 1m / CalendarSystem.Iso.GetDaysInMonth(d.Year, d.Month)),
        BlockPeriod.Year => Share(days, d => 1m / CalendarSystem.Iso.GetDaysInYear(d.Year)),
        _ => 1m,
    };

    private static decimal Share(DateSpan days, Func<LocalDate, decimal> ofDay)
    {
        var share = 0m;
        for (var day = days.Start; day < days.End; day = day.PlusDays(1)) share += ofDay(day);
        return Math.Round(share, 12);
    }
}
