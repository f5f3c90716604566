namespace SolarEconomics;

/// <summary>Finds what contradicts itself in a tariff, all mistakes at once.</summary>
internal static class TariffCheck
{
    internal const int MostRates = 250;
    internal const int MostSeasons = 20;

    internal static IEnumerable<TariffMistake> Mistakes(Tariff tariff)
    {
        if (tariff.Seasons.Count > MostSeasons) return [Throw.TooManySeasons(tariff)];
        var calendar = new DayCalendar(tariff);
        return DoubledSeasons(tariff).Concat(tariff.Parts.SelectMany(part => part is EnergyPart energy ? OfEnergy(tariff, energy, calendar) : []));
    }

    private static IEnumerable<TariffMistake> DoubledSeasons(Tariff tariff) =>
        tariff.Seasons.GroupBy(s => s.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => Throw.SeasonTwice(tariff, g.Key));

    private static IEnumerable<TariffMistake> OfEnergy(Tariff tariff, EnergyPart part, DayCalendar calendar)
    {
        if (part.Rates.Count is 0 or > MostRates)
        {
            yield return Throw.RateCount(tariff, part);
            yield break;
        }
        var seasons = tariff.Seasons.Select(s => s.Name).ToList();
        var unknown = part.Rates.SelectMany(r => r.Windows).Select(w => w.Season).OfType<string>()
            .Where(s => !seasons.Contains(s, StringComparer.Ordinal)).Distinct(StringComparer.Ordinal).ToList();
        foreach (var season in unknown) yield return Throw.UnknownSeason(tariff, part, season, seasons);
        if (part.Rates.Count(r => r.IsOtherwise) > 1) yield return Throw.TwoRests(tariff, part);
        // Hours of a season that does not exist would be reported as uncovered: one mistake, not two.
        if (unknown.Count > 0) yield break;
        foreach (var sentence in new BandTable(part, calendar).Mistakes) yield return Throw.Coverage(tariff, part, sentence);
    }
}
