namespace SolarEconomics.Tests;

public class WorthToDateTests
{
    private static readonly Channel Import = SmallSite.Hours("import", FlowKind.Import, (20, 1.0));
    private static readonly Channel Export = SmallSite.Hours("export", FlowKind.Export, (12, 1.0));

    [Fact]
    public void One_kWh_used_at_30_cents_and_one_exported_at_10_are_worth_40_cents() // by hand
    {
        var worth = Worth.ToDate(SmallSite.Site(), SmallSite.Of(Import, Export, SmallSite.Hours("roof", FlowKind.Generation, (12, 2.0))), SmallSite.Flat(0.30m, 0.10m));
        Assert.Equal(0.40m, worth.Value!.Value.Amount);
        Assert.Equal(MoneyRange.Exactly(worth.Value.Value), worth.Range);
        Assert.Equal((1.0, 1.0), (worth.Energy.UsedDirectlyKwh, worth.Energy.ExportedKwh));
    }

    [Fact]
    public void The_supply_charge_is_in_both_bills_and_drops_out() => Assert.Equal(
        Worth.ToDate(SmallSite.Site(), SmallSite.Of(Import, Export, SmallSite.Hours("roof", FlowKind.Generation, (12, 2.0))), SmallSite.Flat(0.30m, 0.10m)).Value,
        Worth.ToDate(SmallSite.Site(), SmallSite.Of(Import, Export, SmallSite.Hours("roof", FlowKind.Generation, (12, 2.0))),
            TariffHistory.Of(Tariff.Flat("dear supply", "EUR", 0.30m, supplyPerDay: 9m, exportPerKwh: 0.10m, from: new NodaTime.LocalDate(2020, 1, 1)))).Value);

    [Fact]
    public void Tax_that_is_reclaimed_was_never_saved()
    {
        var readings = SmallSite.Of(SmallSite.Hours("import", FlowKind.Import), SmallSite.Hours("export", FlowKind.Export), SmallSite.Hours("roof", FlowKind.Generation, (12, 10.0)));
        var tariff = SmallSite.Flat(0.30m, 0.10m, tax: 0.20m);
        // By hand: 10 kWh at 0.30 are 3.00, tax 0.60; half of the tax is reclaimed.
        Assert.Equal(3.60m, Worth.ToDate(SmallSite.Site(), readings, tariff).Value!.Value.Amount);
        Assert.Equal(3.30m, Worth.ToDate(SmallSite.Site() with { TaxReclaimedShare = 0.5 }, readings, tariff).Value!.Value.Amount);
    }

    [Fact]
    public void Standby_is_load_of_the_plant_and_no_saving()
    {
        var device = new Device("roof", MeasurementPoint.InverterAcOut) { StandbyW = 100 };
        var readings = SmallSite.Of(SmallSite.Hours("import", FlowKind.Import, [.. Enumerable.Range(0, 24).Select(h => (h, 1.0))]),
            SmallSite.Hours("export", FlowKind.Export), SmallSite.Hours("roof", FlowKind.Generation, (12, 10.0)));
        // By hand: 10 kWh less 24 h · 0.1 kW at 0.30.
        Assert.Equal((10m - 2.4m) * 0.30m, Worth.ToDate(SmallSite.Site(device), readings, SmallSite.Flat(0.30m, 0.10m)).Value!.Value.Amount);
    }

    [Fact]
    public void Without_anything_on_generation_the_answer_is_at_least_what_was_paid_for_export()
    {
        var worth = Worth.ToDate(SmallSite.Site(), SmallSite.Of(Import, Export), SmallSite.Flat(0.30m, 0.10m));
        Assert.Null(worth.Value);
        Assert.Null(worth.Range.High);
        Assert.Equal(0.10m, worth.Range.Low.Amount);
        Assert.Contains("generation by interval", worth.Narrowing[0].Record, StringComparison.Ordinal);
    }

    private static readonly Device Roof = new("roof", MeasurementPoint.InverterAcOut) { RatedKwp = 5, InService = SmallSite.Day };
    private static readonly Channel WithGap = SmallSite.Hours("roof", FlowKind.Generation, (11, 1.0), (12, double.NaN));

    [Fact]
    public void A_missing_hour_of_generation_lies_between_what_was_exported_in_it_and_the_clear_sky()
    {
        var worth = Worth.ToDate(SmallSite.Site(Roof), SmallSite.Of(Import, Export, WithGap), SmallSite.Flat(0.30m, 0.10m));
        // 1 kWh used in the hour before and 1 kWh exported in the missing hour are certain; at most about 5 kWp · 1.4 kW/kWp can have been made in it.
        Assert.Equal(0.30m + 0.10m, worth.Range.Low.Amount);
        Assert.InRange(worth.Range.High!.Value.Amount, 0.40m + (4 * 0.30m), 0.40m + (7 * 0.30m));
        Assert.Equal("interval readings of roof for the 1 day without", worth.Narrowing[0].Record);
    }

    [Fact]
    public void Counter_readings_around_a_gap_bound_it()
    {
        // The counter showed 0 at the start of the day and 3.5 on the next: 1.0 is on record, so 2.5 were made in the missing hour, 1.0 of them exported.
        var grid = new IntervalGrid(SmallSite.Day.AtMidnight().InUtc().ToInstant(), NodaTime.Duration.FromHours(1), 72);
        var series = GridSeries.Lay([WithGap], grid);
        for (var i = 24; i < 72; i++) series.Known[i] = true;
        var counter = new Counter("roof", MeasurementPoint.InverterAcOut, [new CounterReading(SmallSite.Day.PlusDays(1), 3.5)]);
        var record = new GenerationRecord(Roof, series, [.. Enumerable.Repeat(6.0, 72)], [CountedService.Of(Roof, counter, grid, SmallSite.Site(Roof))]);
        var doubtful = new List<string>();
        var gap = Assert.Single(GapGroups.Of(record, series.Known, onePair: false, grid, NodaTime.DateTimeZone.Utc, doubtful));
        Assert.Equal([12], gap.Intervals);
        Assert.Equal(2.5, gap.LowKwh, 9);
        Assert.Equal(2.5, gap.HighKwh, 9);
        Assert.Empty(doubtful);
    }

    [Fact]
    public void A_counter_that_contradicts_the_interval_readings_is_named_and_left_aside()
    {
        var grid = new IntervalGrid(SmallSite.Day.AtMidnight().InUtc().ToInstant(), NodaTime.Duration.FromHours(1), 72);
        var series = GridSeries.Lay([WithGap], grid);
        for (var i = 24; i < 72; i++) series.Known[i] = true;
        var counter = new Counter("roof", MeasurementPoint.InverterAcOut, [new CounterReading(SmallSite.Day.PlusDays(1), 90)]);
        var record = new GenerationRecord(Roof, series, [.. Enumerable.Repeat(6.0, 72)], [CountedService.Of(Roof, counter, grid, SmallSite.Site(Roof))]);
        var doubtful = new List<string>();
        var gap = Assert.Single(GapGroups.Of(record, series.Known, onePair: false, grid, NodaTime.DateTimeZone.Utc, doubtful));
        Assert.Equal((0, 6), (gap.LowKwh, gap.HighKwh));
        Assert.Contains("0 and 90 kWh do not agree", Assert.Single(doubtful), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_currency_than_the_sites_is_refused_in_words()
    {
        var tariff = TariffHistory.Of(Tariff.Flat("flat", "GBP", 0.30m, from: new NodaTime.LocalDate(2020, 1, 1)));
        var e = Assert.Throws<RecordException>(() => Worth.ToDate(SmallSite.Site(), SmallSite.Of(Import, Export), tariff));
        Assert.Equal("Found tariff prices in GBP, expected EUR, the currency of the site. Give the site the currency of its bills, or convert the tariff prices first.", e.Message);
    }

    [Fact]
    public void No_records_at_all_are_refused_in_words()
    {
        var e = Assert.Throws<RecordException>(() => Worth.ToDate(SmallSite.Site(), SmallSite.Of(), SmallSite.Flat(0.30m, 0.10m)));
        Assert.StartsWith("a small site: found neither interval readings nor counters, expected", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rate_written_as_per_cent_is_asked_back()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => new Assumptions { DiscountRate = 5 }.Checked());
        Assert.StartsWith("Found a rate of 5, expected a fraction a year from -0.5 to 1. If you mean 5 %, write 0.05.", e.Message, StringComparison.Ordinal);
    }
}
