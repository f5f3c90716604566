using NodaTime;

namespace SolarEconomics;

/// <summary>How many days, months, years or bills a fixed charge counts.</summary>
internal static class ChargeCount
{
    internal static decimal Of(SupplyCharge supply, IReadOnlyList<LocalDate> days, SegmentContext context) => (supply.Per, supply.Proration) switch
    {
        (ChargePeriod.Day, _) => days.Count,
        (ChargePeriod.Month, Proration.Whole) => days.Count(d => IsFirst(d, days[0], d.Day == 1)),
        (ChargePeriod.Month, Proration.ByThirtieths) => days.GroupBy(d => (d.Year, d.Month)).Sum(month => Thirtieths(month.Count(), month.First(), month.Last())),
        (ChargePeriod.Month, _) => days.Sum(d => 1m / CalendarSystem.Iso.GetDaysInMonth(d.Year, d.Month)),
        (ChargePeriod.Year, Proration.Whole) => days.Count(d => IsFirst(d, days[0], d.DayOfYear == 1)),
        (ChargePeriod.Year, Proration.ByThirtieths) => days.GroupBy(d => (d.Year, d.Month)).Sum(month => Thirtieths(month.Count(), month.First(), month.Last())) / 12,
        (ChargePeriod.Year, _) => days.Sum(d => 1m / CalendarSystem.Iso.GetDaysInYear(d.Year)),
        // A bill is begun once, whatever versions it holds: the first of them bears it.
        (_, Proration.Whole) => days.Count > 0 && context.StartsPeriod ? 1 : 0,
        _ => (decimal)days.Count / context.WholePeriod.Days,
    };

    // Whole periods that are begun: one for the first day, and one for each turn of the calendar after it.
    private static bool IsFirst(LocalDate day, LocalDate firstDay, bool turns) => day == firstDay || turns;

    private static decimal Thirtieths(int days, LocalDate first, LocalDate last)
    {
        var isWhole = first.Day == 1 && last.PlusDays(1).Day == 1;
        return isWhole ? 1 : Math.Min(days, 30) / 30m;
    }
}
