using System.Globalization;
using NodaTime;

namespace SolarEconomics;

/// <summary>Bills one household's energy under several tariffs.</summary>
internal static class TariffRanking
{
    internal static CompareAnswer Of(IReadOnlyList<TariffChoice> choices, BilledReadings readings, DateTimeZone zone, RankingTerms terms, CancellationToken cancel)
    {
        var today = terms.Today;
        if (choices.Count == 0) throw Throw.NoTariff();
        foreach (var choice in choices)
            if (choice.Tariffs.Currency != choices[0].Tariffs.Currency) throw new TariffException(Throw.TwoCurrenciesCompared(choices[0], choice));
        if (today is not null && choices.All(c => !string.Equals(c.Name, today, StringComparison.Ordinal))) throw Throw.UnknownChoice(today, choices);
        BillingOptions.CheckConditions(terms.ConditionsMet, choices.SelectMany(c => c.Tariffs.Versions));
        var years = Years(readings.Days);
        var costs = new List<TariffCost>();
        foreach (var choice in choices)
        {
            cancel.ThrowIfCancellationRequested();
            var tariffs = choice.Tariffs.OnlyLatest();
            costs.Add(new TariffCost(choice.Name, Totals(tariffs, readings, zone, [readings.Days], terms).Single(),
                years.Count == 0 ? [] : Totals(tariffs, readings, zone, years, terms)) { Remark = RemarkOn(tariffs.Latest, choice.Tariffs.UnpricedBeside(terms.ConditionsMet).Count) });
        }
        var answer = CompareAnswer.Of(readings, choices[0].Tariffs.Currency, costs);
        if (today is null) return answer;
        var (now, best) = (choices.First(c => c.Name == today), choices.First(c => c.Name == answer.Ranks[0].Name));
        return answer with { Today = today, Change = TariffChange.Between(now, best, readings, zone, terms.ConditionsMet) };
    }

    private static decimal[] Totals(TariffHistory tariffs, BilledReadings readings, DateTimeZone zone, IReadOnlyList<DateSpan> periods, RankingTerms terms)
    {
        var plan = tariffs.On(readings.Grid, zone, new BillingOptions { BillingZone = readings.BillingZone, Periods = periods, ConditionsMet = terms.ConditionsMet });
        return [.. plan.Bills(readings.Energy).Select(b => b.TotalReclaiming(terms.TaxReclaimedShare).Amount)];
    }

    /// <summary>The whole years of the readings, counted from the first day.</summary>
    private static List<DateSpan> Years(DateSpan days)
    {
        var years = new List<DateSpan>();
        for (var i = 0; days.Start.PlusYears(i + 1) <= days.End; i++)
            years.Add(new DateSpan(days.Start.PlusYears(i), days.Start.PlusYears(i + 1)));
        return years;
    }

    private static string RemarkOn(Tariff tariff, int unpriced)
    {
        (TariffNeeds Need, string Words)[] words =
        [
            (TariffNeeds.Solar, "a solar plant"), (TariffNeeds.Battery, "a battery"), (TariffNeeds.SmartMeter, "a meter that counts intervals"),
            (TariffNeeds.ElectricCar, "an electric car"), (TariffNeeds.HeatPump, "a heat pump"), (TariffNeeds.SocialSupport, "a right to social support"),
        ];
        var needs = DayWords.And([.. words.Where(w => tariff.Needs.HasFlag(w.Need)).Select(w => w.Words)]);
        return string.Join("; ", new[] { needs.Length > 0 ? "needs " + needs : "", tariff.IsClosedToNew ? "closed to new homes" : "", unpriced == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{unpriced} of its prices not counted") }.Where(t => t.Length > 0));
    }
}
