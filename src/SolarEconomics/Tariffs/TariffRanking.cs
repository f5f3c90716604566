using NodaTime;

namespace SolarEconomics;

/// <summary>Bills one household's energy under several tariffs.</summary>
internal static class TariffRanking
{
    internal static CompareAnswer Of(IReadOnlyList<TariffChoice> choices, BilledReadings readings, DateTimeZone zone, string? today, decimal taxReclaimedShare, CancellationToken cancel)
    {
        if (choices.Count == 0) throw Throw.NoTariff();
        foreach (var choice in choices)
            if (choice.Tariffs.Currency != choices[0].Tariffs.Currency) throw new TariffException(Throw.TwoCurrencies(choices[0].Tariffs.Latest, choice.Tariffs.Latest));
        if (today is not null && choices.All(c => !string.Equals(c.Name, today, StringComparison.Ordinal))) throw Throw.UnknownChoice(today, choices);
        var years = Years(readings.Days);
        var costs = new List<TariffCost>();
        foreach (var choice in choices)
        {
            cancel.ThrowIfCancellationRequested();
            var tariffs = choice.Tariffs.OnlyLatest();
            costs.Add(new TariffCost(choice.Name, Totals(tariffs, readings, zone, [readings.Days], taxReclaimedShare).Single(),
                years.Count == 0 ? [] : Totals(tariffs, readings, zone, years, taxReclaimedShare)) { Remark = RemarkOn(tariffs.Latest) });
        }
        var answer = CompareAnswer.Of(readings, choices[0].Tariffs.Currency, costs);
        if (today is null) return answer;
        var (now, best) = (choices.First(c => c.Name == today), choices.First(c => c.Name == answer.Ranks[0].Name));
        return answer with { Today = today, Change = TariffChange.Between(now, best, readings, zone) };
    }

    private static decimal[] Totals(TariffHistory tariffs, BilledReadings readings, DateTimeZone zone, IReadOnlyList<DateSpan> periods, decimal taxReclaimedShare)
    {
        var plan = tariffs.On(readings.Grid, zone, new BillingOptions { BillingZone = readings.BillingZone, Periods = periods });
        return [.. plan.Bills(readings.Energy).Select(b => b.TotalReclaiming(taxReclaimedShare).Amount)];
    }

    /// <summary>The whole years of the readings, counted from the first day.</summary>
    private static List<DateSpan> Years(DateSpan days)
    {
        var years = new List<DateSpan>();
        for (var i = 0; days.Start.PlusYears(i + 1) <= days.End; i++)
            years.Add(new DateSpan(days.Start.PlusYears(i), days.Start.PlusYears(i + 1)));
        return years;
    }

    private static string RemarkOn(Tariff tariff)
    {
        (TariffNeeds Need, string Words)[] words =
        [
            (TariffNeeds.Solar, "a solar plant"), (TariffNeeds.Battery, "a battery"), (TariffNeeds.SmartMeter, "a meter that counts intervals"),
            (TariffNeeds.ElectricCar, "an electric car"), (TariffNeeds.HeatPump, "a heat pump"), (TariffNeeds.SocialSupport, "a right to social support"),
        ];
        var needs = DayWords.And([.. words.Where(w => tariff.Needs.HasFlag(w.Need)).Select(w => w.Words)]);
        return string.Join("; ", new[] { needs.Length > 0 ? "needs " + needs : "", tariff.IsClosedToNew ? "closed to new homes" : "" }.Where(t => t.Length > 0));
    }
}
