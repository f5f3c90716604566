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
        var doubled = tariff.Seasons.GroupBy(s => s.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => Throw.SeasonTwice(tariff, g.Key));
        return doubled.Concat(tariff.Parts.SelectMany(part => part.Mistakes(tariff, calendar)));
    }
}
