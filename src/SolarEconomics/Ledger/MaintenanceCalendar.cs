using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>When what is due, with hours and money.</summary>
/// <param name="Span">The days looked at.</param>
/// <param name="Due">Each time a task is due, earliest first.</param>
/// <param name="Currency">Currency of the costs.</param>
public sealed record MaintenanceCalendar(DateSpan Span, IReadOnlyList<(LocalDate Day, MaintenanceTask Task)> Due, Currency Currency) : IFinding
{
    /// <summary>Own hours in all. Unit: h.</summary>
    public double Hours => Due.Sum(d => d.Task.Hours);

    /// <summary>Paid in all, at today's prices.</summary>
    public Money Cost => Money.Nominal(Due.Sum(d => d.Task.Cost), Currency);

    /// <summary>Paid in the mean of a year: what an outlook takes for <see cref="Assumptions.RunningCostsPerYear"/> beside insurance and the like.</summary>
    public Money CostPerYear => Money.Nominal(Math.Round(Cost.Amount * 365.25m / Span.Days, Currency.MinorDigits, MidpointRounding.AwayFromZero), Currency);

    /// <summary>The same with own hours at a stated rate: what an outlook takes where own hours count.</summary>
    /// <param name="ratePerHour">What an hour is worth, in <see cref="Currency"/>. Range: 0 to 1e9.</param>
    /// <exception cref="MixedMoneyException">The rate is in another currency, or real.</exception>
    public Money CostPerYearWithOwnHours(Money ratePerHour)
    {
        Require.Within((double)ratePerHour.Amount, 0, 1e9, "money an hour", nameof(ratePerHour));
        var all = Cost + (ratePerHour * (decimal)Hours);
        return all with { Amount = Math.Round(all.Amount * 365.25m / Span.Days, Currency.MinorDigits, MidpointRounding.AwayFromZero) };
    }

    /// <summary>The calendar of some tasks.</summary>
    /// <param name="tasks">What has to be done.</param>
    /// <param name="span">Days to look at; one or more.</param>
    /// <param name="currency">Currency of the costs.</param>
    /// <exception cref="ArgumentOutOfRangeException">Months, hours or money out of range, or an empty span.</exception>
    public static MaintenanceCalendar Of(IReadOnlyList<MaintenanceTask> tasks, DateSpan span, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        Require.Within(span.Days, 1, 36_525, "days to look at");
        var due = new List<(LocalDate Day, MaintenanceTask Task)>();
        foreach (var task in tasks)
        {
            Require.Within(task.EveryMonths, 1, 600, $"months between two times of \"{task.Task}\"");
            Require.Within(task.Hours, 0, 1000, $"hours for \"{task.Task}\"");
            Require.Within((double)task.Cost, 0, 1e9, $"money for \"{task.Task}\"");
            // Counted from the first day each time: the 31st stays the 31st after a short month.
            for (var time = 0; task.FirstDue.PlusMonths(time * task.EveryMonths) is var day && day < span.End; time++)
                if (day >= span.Start) due.Add((day, task));
        }
        return new MaintenanceCalendar(span, [.. due.OrderBy(d => d.Day)], currency);
    }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var next = Due.Count == 0 ? "Nothing is due." : $"Next: {Due[0].Task.Task}, {Wording.Day(Due[0].Day, culture)}.";
        return new Finding(Due.Count.ToString(culture),
            $"times something is due from {Wording.Days(Span, culture)}: {Hours.ToString("0.#", culture)} own hours and {Wording.Whole(Cost, culture)} at today's prices. {next}")
        {
            Tables =
            [
                new FindingTable($"Maintenance ({Currency} at today's prices)", ["Day", "Task", "Device", "Own hours", "Cost"],
                    [.. Due.Select(d => (IReadOnlyList<string>)
                    [
                        Wording.Day(d.Day, culture), d.Task.Task, d.Task.Device ?? "all devices", d.Task.Hours.ToString("0.#", culture),
                        Wording.Exact(Money.Nominal(d.Task.Cost, Currency), culture),
                    ])]),
            ],
            Cautions = [Cautions.Panels, Cautions.Money],
        };
    }
}
