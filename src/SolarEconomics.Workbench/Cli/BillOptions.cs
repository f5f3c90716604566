using NodaTime;

namespace SolarEconomics.Workbench;

/// <summary>What <c>bill</c> was asked, as typed.</summary>
/// <param name="Tariff">Tariff file of ours or a regulator's energy plan.</param>
/// <param name="Span">Which readings are billed.</param>
/// <param name="Periods">How the days are cut into bills: <c>month</c>, <c>quarter</c> or days; null for one bill.</param>
/// <param name="Json">Whether to print for another program.</param>
internal sealed record BillOptions(string Tariff, BillSpanOptions Span, string? Periods, bool Json)
{
    /// <summary>First day, end and the rule that cuts the days between; own days are the ends where no others are given.</summary>
    /// <exception cref="UsageException">Neither a rule nor days in order.</exception>
    internal (LocalDate? From, LocalDate? To, Func<DateSpan, IReadOnlyList<DateSpan>>? PeriodsBy) Days()
    {
        var (from, to) = (Span.FirstDay, Span.EndDay);
        if (Periods is null) return (from, to, null);
        if (Periods == "month") return (from, to, BillingPeriods.Months);
        if (Periods == "quarter") return (from, to, BillingPeriods.Quarters);
        LocalDate[] days = [.. Periods.Split(',').Select(d => Day(d.Trim()))];
        if (days.Length < 2 || days.Zip(days.Skip(1)).Any(pair => pair.Second <= pair.First)) throw Wrong(Periods);
        var spans = BillingPeriods.Between(days);
        return (from ?? days[0], to ?? days[^1], _ => spans);
    }

    private LocalDate Day(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text) is { Success: true } parsed ? parsed.Value : throw Wrong(Periods!);

    private static UsageException Wrong(string text) =>
        new($"--periods {text}: expected \"month\", \"quarter\", or at least two days in order such as 2023-01-15,2023-02-14.");
}
