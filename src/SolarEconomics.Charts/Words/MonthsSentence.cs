using System.Globalization;

namespace SolarEconomics.Charts;

/// <summary>Months of energy in a sentence: how much, where it went, and what the records leave open.</summary>
internal static class MonthsSentence
{
    internal static Finding Say(MonthsView view, CultureInfo culture)
    {
        var series = view.Series.Select(s => (s.Name, Kwh: s.Kwh.Sum())).ToList();
        var total = series.Sum(s => s.Kwh);
        var span = Span(view, culture);
        var words = total > 0
            ? $"of generation {span}: {List([.. series.Select(s => $"{PeopleNumber.Percent(s.Kwh / total, culture)} {s.Name}")])}."
            : $"of generation counted {span}.";
        var missing = view.MissingShare.Count(s => s > 0);
        if (missing > 0)
        {
            words += $" Readings are missing in {missing.ToString(culture)} of {view.Months.Count.ToString(culture)} months.";
        }

        var censored = view.Recorded.Sum(m => m.CensoredHours);
        if (censored > 0)
        {
            words += $" In {PeopleNumber.Number(censored, 0, culture)} hours the plant could have made more than was counted.";
        }

        return new Finding(PeopleNumber.Kwh(total, culture), words);
    }

    internal static string Span(MonthsView view, CultureInfo culture) => view.Months.Count == 1
        ? $"in {PeopleNumber.Month(view.Months[0], culture)}"
        : $"from {PeopleNumber.Month(view.Months[0], culture)} to {PeopleNumber.Month(view.Months[^1], culture)}";

    internal static string List(IReadOnlyList<string> parts) =>
        parts.Count == 1 ? parts[0] : string.Join(", ", parts.Take(parts.Count - 1)) + " and " + parts[^1];
}
