using NodaTime;

namespace SolarEconomics.Benchmarks;

/// <summary>A time-of-use tariff as a list of bands, the last of which takes all hours that no other names.</summary>
internal sealed record TariffShape(params IReadOnlyList<TariffShape.Band> Bands)
{
    /// <summary>Hours of the day [From, Until), across midnight where Until is lower; of some days; of the winter (November to March) or of the rest.</summary>
    internal sealed record Band(decimal PerKwh, int From = 0, int Until = 24, TariffDays Days = TariffDays.EveryDay, bool? Winter = null);

    private const TariffDays Working = TariffDays.Weekdays | TariffDays.Holidays;

    /// <summary>Ten different structures.</summary>
    internal static IReadOnlyList<TariffShape> Ten { get; } =
    [
        new(new Band(0.31m)),
        new(new Band(0.16m, 23, 8), new Band(0.34m)),
        new(new Band(0.15m, 23, 8), new Band(0.42m, 17, 19), new Band(0.33m)),
        new(new Band(0.45m, 16, 20, Working), new Band(0.27m)),
        new(new Band(0.19m, 0, 24, TariffDays.Weekends), new Band(0.35m)),
        new(new Band(0.48m, 17, 21, Winter: true), new Band(0.26m)),
        new(new Band(0.12m, 0, 6), new Band(0.18m, 11, 15), new Band(0.44m, 17, 20), new Band(0.30m)),
        new(new Band(0.14m, 0, 7, Working), new Band(0.11m, 0, 9, TariffDays.Weekends), new Band(0.32m)),
        new(new Band(0.41m, 14, 18, Working, Winter: false), new Band(0.46m, 6, 9, Working, Winter: true), new Band(0.25m)),
        new(new Band(0.00m, 9, 17, TariffDays.Saturday), new Band(0.17m, 2, 5), new Band(0.36m)),
    ];

    internal TariffShape Dearer(decimal factor) => new([.. Bands.Select(b => b with { PerKwh = Math.Round(b.PerKwh * factor, 4) })]);

    internal Tariff ToTariff(string name)
    {
        var tariff = Tariff.Named(name, "EUR", new LocalDate(2020, 1, 1)).Rounded(RoundingMode.HalfEven, RoundingPlace.Nowhere)
            .Season("winter", (11, 1), (4, 1)).Season("summer", (4, 1), (11, 1));
        for (var i = 0; i < Bands.Count; i++)
        {
            var band = Bands[i];
            var last = i == Bands.Count - 1;
            tariff = tariff.Import($"band {i}", band.PerKwh, last ? null : $"{band.From:00}:00-{band.Until:00}:00", band.Days,
                band.Winter is { } winter ? winter ? "winter" : "summer" : null);
        }
        return tariff;
    }

    /// <summary>The band of an hour, by the plainest reading of the words: what the peers are given.</summary>
    internal byte BandAt(int month, IsoDayOfWeek day, int hour)
    {
        var flag = (TariffDays)(1 << ((int)day - 1));
        for (var i = 0; i < Bands.Count - 1; i++)
        {
            var band = Bands[i];
            var inHours = band.From < band.Until ? hour >= band.From && hour < band.Until : hour >= band.From || hour < band.Until;
            if (inHours && band.Days.HasFlag(flag) && (band.Winter is null || band.Winter == month is < 4 or >= 11)) return (byte)i;
        }
        return (byte)(Bands.Count - 1);
    }
}
