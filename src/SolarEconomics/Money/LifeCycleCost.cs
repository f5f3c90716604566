using System.Globalization;

namespace SolarEconomics;

/// <summary>A life-cycle cost as a sum of present costs.</summary>
/// <param name="Parts">Name and present cost of each part, in the order given.</param>
/// <param name="Total">Sum of the parts.</param>
/// <param name="PerYear">The level yearly cost that is worth as much.</param>
/// <param name="DiscountRate">Rate used.</param>
/// <param name="Years">Years of the study.</param>
public sealed record LifeCycleCost(
    IReadOnlyList<(string Name, Money PresentCost)> Parts, Money Total, Money PerYear, Rate DiscountRate, int Years) : IFinding
{
    /// <summary>The days of the study; <see langword="null"/> where it goes by years.</summary>
    public DateSpan? Study { get; init; }

    /// <summary>How days became years; <see langword="null"/> where the study goes by years.</summary>
    public DayCount? DaysCounted { get; init; }

    /// <inheritdoc/>
    public Finding Say(CultureInfo culture)
    {
        var span = Study is { } study ? $"from {Wording.Days(study, culture)}" : $"over {Wording.Count(Years, "year", culture)}";
        return new Finding(
            Wording.Exact(Total, culture),
            $"is the life-cycle cost {span} in {(Study is null ? "today's value" : "value on the first day")}, {Wording.Exact(PerYear, culture)} a year.")
        {
            Notes = [$"Discount rate: {DiscountRate}. Prices: {Total.Basis}." + (DaysCounted is { } count ? $" Years are {DayCountWords.Say(count)}." : "")],
            Tables =
            [
                new FindingTable($"Present cost ({Total.Currency})", ["Part", "Present cost"],
                    [.. Parts.Select(p => (IReadOnlyList<string>)[p.Name, Wording.Plain(p.PresentCost, culture)])]),
            ],
        };
    }
}
