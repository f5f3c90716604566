using NodaTime;

namespace SolarEconomics;

public sealed partial class Outlook
{
    /// <summary>The calendar months from the first purchase to the horizon, by what each flow is for.</summary>
    /// <remarks>The same flows as <see cref="YearsAhead"/>; each amount is rounded to the smallest coin, so that twelve months may differ from their year by a few.</remarks>
    public IReadOnlyList<OutlookMonth> MonthsAhead
    {
        get
        {
            var first = _flows.FirstPurchase.ToYearMonth();
            var months = ((Horizon.Year - first.Year) * 12) + Horizon.Month - first.Month + 1;
            var sums = new double[months, Enum.GetValues<MoneyPurpose>().Length];
            foreach (var e in _events) Spread(e, first, sums);
            var found = new List<OutlookMonth>();
            var position = Money.Nominal(0, Currency);
            for (var m = 0; m < months; m++)
            {
                Money Sum(MoneyPurpose purpose) => Round(sums[m, (int)purpose]);
                var month = first.PlusMonths(m);
                var row = new OutlookMonth(month, Sum(MoneyPurpose.Investment), Sum(MoneyPurpose.Savings), Sum(MoneyPurpose.FeedIn), Sum(MoneyPurpose.Running),
                    Sum(MoneyPurpose.Replacement), Sum(MoneyPurpose.Income), position, month.OnDayOfMonth(1).PlusMonths(1) <= WorthToDate.Period.End);
                position += row.Net;
                found.Add(row with { Position = position });
            }
            return found;
        }
    }

    /// <summary>Adds a piece of cash to the months that it falls in, day by day.</summary>
    private void Spread(CashEvent e, YearMonth first, double[,] sums)
    {
        int At(LocalDate day) => ((day.Year - first.Year) * 12) + day.Month - first.Month;
        if (e.Start > Horizon) return;
        if (e.Start == e.End)
        {
            sums[At(e.Start), (int)e.Purpose] += e.Amount;
            return;
        }
        var days = Period.DaysBetween(e.Start, e.End);
        for (var start = e.Start; start < e.End && start < Horizon;)
        {
            var end = LocalDate.Min(e.End, new LocalDate(start.Year, start.Month, 1).PlusMonths(1));
            sums[At(start), (int)e.Purpose] += e.Amount * Period.DaysBetween(start, end) / days;
            start = end;
        }
    }
}
