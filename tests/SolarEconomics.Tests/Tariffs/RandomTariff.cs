using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Random tariffs that cover every hour once, and random readings in whole watt-hours.</summary>
internal static class RandomTariff
{
    internal static readonly Gen<decimal> Price = Gen.Int[0, 60_000].Select(i => i / 100_000m);

    /// <summary>A day cut at random half hours, each piece given to one of four rates.</summary>
    private static readonly Gen<(HourSpan Hours, int Rate)[]> Day =
        from cuts in Gen.Int[1, 47].Array[0, 4]
        from rates in Gen.Int[0, 3].Array[5]
        select Pieces(cuts, rates);

    internal static readonly Gen<Tariff> Timed =
        from workdays in Day
        from other in Day
        from winterToo in Gen.Bool
        from winter in Day
        from prices in Price.Array[4]
        from export in Price
        from supply in Price
        from tax in Gen.Int[0, 25]
        from mode in Gen.Enum<RoundingMode>()
        from place in Gen.Enum<RoundingPlace>()
        from holiday in Gen.Int[0, 59]
        select Build(workdays, other, winterToo ? winter : null, prices, export, supply, tax / 100m, mode, place, holiday);

    internal static Gen<double[]> Kwh(int count) => Gen.Int[0, 3000].Array[count].Select(wh => wh.Select(w => w / 1000.0).ToArray());

    private static (HourSpan Hours, int Rate)[] Pieces(int[] cuts, int[] rates)
    {
        int[] edges = [0, .. cuts.Distinct().Order(), 48];
        return [.. Enumerable.Range(0, edges.Length - 1).Select(i => (HourSpan.Parse(Clock(edges[i]) + "-" + Clock(edges[i + 1])), rates[i]))];
    }

    private static string Clock(int halfHour) => FormattableString.Invariant($"{halfHour / 2:00}:{halfHour % 2 * 30:00}");

    private static Tariff Build((HourSpan Hours, int Rate)[] workdays, (HourSpan Hours, int Rate)[] other, (HourSpan Hours, int Rate)[]? winter,
        decimal[] prices, decimal export, decimal supply, decimal tax, RoundingMode mode, RoundingPlace place, int holiday)
    {
        var tariff = Tariff.Named("Random", "EUR", new LocalDate(2020, 1, 1)).SupplyPerDay(supply + 0.01m).Taxed(tax).Rounded(mode, place)
            .HolidaysOn(new LocalDate(2024, 2, 20).PlusDays(holiday));
        if (winter is not null) tariff = tariff.Season("winter", (11, 15), (3, 5)).Season("summer", (3, 5), (11, 15));
        var windows = new List<(int Rate, RateWindow Window)>();
        void Add((HourSpan Hours, int Rate)[] day, TariffDays days, string? season) =>
            windows.AddRange(day.Select(p => (p.Rate, new RateWindow(season, days, [p.Hours]))));
        Add(workdays, TariffDays.Weekdays, winter is null ? null : "summer");
        Add(other, TariffDays.Weekends | TariffDays.Holidays, winter is null ? null : "summer");
        if (winter is not null) Add(winter, TariffDays.EveryDay, "winter");
        var rates = windows.GroupBy(w => w.Rate).OrderBy(g => g.Key)
            .Select(g => new EnergyRate(FormattableString.Invariant($"rate {g.Key}"), prices[g.Key], [.. g.Select(w => w.Window)])).ToList();
        return tariff.With(new EnergyPart("import", EnergySide.Import, rates)).Export("export", export);
    }
}
