using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>All that the results of this room say of one invented home, word for word.</summary>
public sealed class TariffWholeWordsTests
{
    private static readonly LocalDate s_start = new(2024, 4, 1);
    private static readonly Instant s_from = s_start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();

    private static readonly Tariff s_timed = Tariff.Named("Timed", "EUR", new LocalDate(2024, 1, 1)).SupplyPerDay(0.60m).Import("peak", 0.42m, "17:00-19:00").Import("night", 0.16m, "23:00-08:00")
        .Import("day", 0.29m).Export("export", 0.21m).Taxed(0.09m);

    private static readonly Tariff s_flat = Tariff.Flat("Plain", "EUR", 0.30m, supplyPerDay: 0.50m, exportPerKwh: 0.10m, tax: 0.09m, from: new LocalDate(2024, 1, 1));

    [Fact]
    public void A_home_its_bills_and_its_choices()
    {
        var (month, year) = (Of(30), Of(365));
        var site = Site.At("Invented", 53, -9, "Etc/UTC", "EUR");
        var history = TariffHistory.Of(s_timed, s_flat with { Name = "Plain from 15 April", From = new LocalDate(2024, 4, 15) });
        var home = HomeEnergy.Of(site, month, TariffHistory.Of(s_timed));
        var ask = new BillRequest(history, month, DateTimeZone.Utc);
        TariffChoice[] choices = [new("timed", TariffHistory.Of(s_timed)), new("plain", TariffHistory.Of(s_flat))];
        var bills = (ask with { PeriodsBy = BillingPeriods.Months }).Answer();
        WholeWords.Check("tariffs",
            ("the home", home), ("with another battery", home.With(Battery.Of(6, 0.9))), ("without the plant", home.WithoutPlant()),
            ("one bill", ask.Answer().Bills[0]), ("the answer for April, two versions", ask.Answer()), ("the answer by months", bills),
            ("days without readings", (ask with { To = s_start.PlusDays(60) }).Answer()),
            ("days without readings, as an estimate", (ask with { To = s_start.PlusDays(60), EstimateWhereMissing = true }).Answer()),
            ("estimated reads put right", BillCorrection.Of(ask.Answer().Bills, new BillRequest(TariffHistory.Of(s_flat), month, DateTimeZone.Utc).Answer().Bills)),
            ("estimated reads that were too high", BillCorrection.Of(new BillRequest(TariffHistory.Of(s_flat), month, DateTimeZone.Utc).Answer().Bills, new BillRequest(TariffHistory.Of(s_timed), month, DateTimeZone.Utc).Answer().Bills)),
            ("with and without", BillWithAndWithout.Of(home)), ("with and without, another battery too", BillWithAndWithout.Of(home, Battery.Of(6, 0.9))),
            ("what one kWh more costs", MarginalTable.Of(home)),
            ("a month's choice", new CompareRequest(choices, month, DateTimeZone.Utc).Answer()), ("a year's choice", new CompareRequest(choices, year, DateTimeZone.Utc).Answer()));
    }

    /// <summary>A year of hours that differ from day to day, as one bill, by months and by quarters, under each kind of tariff file there is.</summary>
    [Theory]
    [InlineData("evening-peak")]
    [InlineData("every-part")]
    [InlineData("rare-parts")]
    [InlineData("plan-every-part")]
    [InlineData("energy-plan-two-rate-time-of-use")]
    public void A_year_of_bills_under_a_tariff_file(string file)
    {
        var history = TariffHistory.Load(TestFiles.Data(file + ".json"));
        var zone = history.PlaceZone ?? history.HomeZone ?? DateTimeZone.Utc;
        // The market prices beside the rare parts are of two months.
        var (from, to) = file == "rare-parts" ? (new LocalDate(2024, 4, 1), new LocalDate(2024, 5, 31)) : (new LocalDate(2024, 1, 1), new LocalDate(2025, 1, 1));
        var start = from.AtStartOfDayInZone(zone).ToInstant();
        var hours = (int)(to.AtStartOfDayInZone(zone).ToInstant() - start).TotalHours;
        var readings = new Readings(
        [
            Channel("import", FlowKind.Import, start, hours, (d, h) => (h is >= 17 and < 22 ? 0.9 : 0.3) + (0.01 * (d % 7)) + (d % 31 == 5 && h == 18 ? 4 : 0)),
            Channel("export", FlowKind.Export, start, hours, (d, h) => h is >= 10 and < 15 ? 0.4 + (0.02 * (d % 11)) : 0),
            Channel("roof", FlowKind.Generation, start, hours, (d, h) => h is >= 10 and < 15 ? 0.9 + (0.02 * (d % 11)) : 0),
        ], [], []);
        var ask = new BillRequest(history, readings, zone) { From = from, To = to };
        WholeWords.Check("tariff-" + file, ("the year as one bill", ask.Answer()), ("by months", (ask with { PeriodsBy = BillingPeriods.Months }).Answer()),
            ("by quarters", (ask with { PeriodsBy = BillingPeriods.Quarters }).Answer()), ("the last month's bill", (ask with { PeriodsBy = BillingPeriods.Months }).Answer().Bills[^1]));
    }

    /// <summary>Hours of a home: it takes 1 kWh in the evening and 0.3 else, sends 0.8 at noon, and its roof makes 1.2 there.</summary>
    private static Readings Of(int days) => new(
    [
        Channel("import", FlowKind.Import, s_from, 24 * days, (_, h) => h is >= 17 and < 22 ? 1 : h is >= 10 and < 15 ? 0 : 0.3),
        Channel("export", FlowKind.Export, s_from, 24 * days, (_, h) => h is >= 10 and < 15 ? 0.8 : 0),
        Channel("roof", FlowKind.Generation, s_from, 24 * days, (_, h) => h is >= 10 and < 15 ? 1.2 : 0),
    ], [], []);

    /// <summary>Hours from a first one on, by number of the day and hour in it, each from 0.</summary>
    private static Channel Channel(string name, FlowKind flow, Instant start, int hours, Func<int, int, double> kwhAt)
    {
        Instant[] starts = [.. Enumerable.Range(0, hours).Select(h => start + Duration.FromHours(h))];
        return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Range(0, hours).Select(h => kwhAt(h / 24, h % 24))], new Quality[hours]);
    }
}
