using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The parts that few tariffs have, read from a file and billed for April 2024 by hand.</summary>
public sealed class RareFileTests
{
    [Fact]
    public void Every_rare_part_reads_from_a_file_and_writes_its_line()
    {
        // April: 1,440 half hours of 0.25 kWh taken and 0.25 kvarh, and none sent; the controlled load takes 10 kWh in all.
        var history = TariffHistory.Load(TestFiles.Data("rare-parts.json"));
        var count = 30 * 48;
        var energy = new MeteredEnergy([.. Enumerable.Repeat(0.25, count)], new double[count])
        {
            ReactiveKvarh = [.. Enumerable.Repeat(0.25, count)], ControlledLoadKwh = [.. Enumerable.Repeat(10.0 / count, count)],
        };
        var start = new LocalDate(2024, 4, 1);
        var grid = new IntervalGrid(start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), count);
        var bill = Assert.Single(history.On(grid, DateTimeZone.Utc).Bills(energy));
        // 360 kWh at 0.12. Apparent power 0.7071 kVA: 0.5 at 2 and 0.2071 at 1. Factor 0.7071: 24.29 hundredths at 1 % of 43.20. Called: 1 kWh.
        Assert.Equal(
        [
            "membership 3.00", "tank 1.50", "fuse 6.30", "spot 43.20", "tank 0.80", "called 0.50", "demand, 0 to 0.5 kVA 1.00", "demand, above 0.5 kVA 0.21",
            "reactive 3.60", "power factor 10.49", "social support -1.00", "in advance -10.00",
        ], bill.Lines.Select(l => FormattableString.Invariant($"{l.Part} {l.Amount.Amount:0.00}")));
        Assert.Equal((TariffNeeds.Solar | TariffNeeds.SmartMeter, true, 60), (history.Versions[0].Needs, history.Versions[0].IsClosedToNew, history.Versions[0].NetsWithinMinutes));
        Assert.True(history.Versions[0].Holidays.Contains(new LocalDate(2024, 4, 15)) && history.Versions[0].Holidays.Contains(new LocalDate(2024, 4, 1)));
        Assert.Contains(bill.Notes, n => n.Contains("pay on time", StringComparison.Ordinal));
    }

    [Fact]
    public void Stated_growth_continues_the_last_version_year_by_year()
    {
        var history = TariffHistory.Load(TestFiles.Data("rare-parts.json"));
        Assert.Equal([new LocalDate(2024, 1, 1), new LocalDate(2025, 1, 1)], history.Versions.Select(v => v.From));
        Assert.Equal(0.088m, history.Latest.EnergyParts(EnergySide.ControlledLoad).Single().Rates[0].PerKwh);
        Assert.Equal(3.06m, history.Latest.Parts.OfType<SupplyCharge>().First().Amount);
    }

    [Fact]
    public void An_index_continues_the_last_version_by_its_months()
    {
        var index = PriceIndex.Of([(new YearMonth(2024, 3), 100), (new YearMonth(2025, 3), 104), (new YearMonth(2026, 3), 110)]);
        var history = TariffHistory.Of(Tariff.Flat("Flat", "EUR", 0.25m, supplyPerDay: 1, from: new LocalDate(2024, 3, 1))).FollowingIndex(index, new LocalDate(2027, 1, 1));
        Assert.Equal([0.25m, 0.26m, 0.275m], history.Versions.Select(v => v.EnergyParts(EnergySide.Import).Single().Rates[0].PerKwh));
        Assert.Throws<ArgumentOutOfRangeException>(() => history.FollowingIndex(index, new LocalDate(2028, 1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => history.GrowingBy(-1, 0, 0, new LocalDate(2028, 1, 1)));
    }

    [Fact]
    public void Corrected_reads_owe_the_difference_of_the_bills()
    {
        var flat = Tariff.Flat("Flat", "EUR", 0.25m, from: new LocalDate(2024, 1, 1));
        var (estimated, read) = (OneBill.Of(flat, 100), OneBill.Of(flat, 90));
        var correction = BillCorrection.Of([estimated], [read]);
        Assert.Equal(-2.50m, correction.Difference.Amount);
        Assert.StartsWith("to be paid back", correction.Say(System.Globalization.CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => BillCorrection.Of([], []));
    }

    [Theory]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": -0.1 } ]", "found a price below zero in \"x\", expected a price of 0 or more")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1, \"when\": [ { \"days\": [\"holidays\"] } ] } ]", "found a rate for holidays, expected the tariff to name them")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1 } ], \"holidaysOf\": { \"country\": \"XX\" }", "found country \"XX\", expected an ISO 3166 code")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1 } ], \"controledLoad\": [ { \"name\": \"y\", \"perKwh\": 0.1 } ]", "controlledLoad")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1 } ], \"exprotLimitKw\": 5", "exportLimitKw")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1 } ], \"demand\": [ { \"name\": \"d\" } ]", "found neither \"perKw\" nor \"steps\"")]
    [InlineData("\"import\": [ { \"name\": \"x\", \"perKwh\": 0.1 } ], \"curtailed\": [ { \"name\": \"c\", \"perKwh\": 0.1, \"when\": [ { \"hours\": [\"10:00-12:00\"] } ] } ]", "00:00–10:00 and 12:00–24:00, no rate")]
    [InlineData("\"importSeries\": { \"name\": \"s\", \"file\": \"none.csv\" }", "found market prices in a file without a clock")]
    public void A_mistake_in_a_rare_part_is_named(string part, string expected)
    {
        var path = TestFiles.Write($$"""{ "version": 1, "currency": "EUR", "tariffs": [ { "name": "A", "from": "2022-01-01", {{part}} } ] }""");
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(path));
        Assert.Contains(expected, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_of_a_price_file_that_are_no_price_are_all_listed()
    {
        var path = TestFiles.Write("start,price\n2024-03-01 00:00,0.1\n2024-03-01 00:00,0.2\n2024-03-01 01:00,cheap\n2024-03-01T02:00Z,0.3\n");
        var error = Assert.Throws<RecordException>(() => PriceSeries.Load(path, DateTimeZone.Utc));
        Assert.Equal([3, 4], error.Problems.Select(p => p.Line));
        // The repeated autumn hour stands twice in row order.
        var autumn = TestFiles.Write("start,price\n2024-10-27 01:00,1\n2024-10-27 01:30,2\n2024-10-27 01:00,3\n2024-10-27 01:30,4\n");
        Assert.Equal(Duration.FromHours(2), PriceSeries.Load(autumn, DateTimeZoneProviders.Tzdb["Europe/Dublin"]) is { } series ? series.End - series.Start : default);
    }

    [Theory]
    [InlineData("\"start\",\"price\"\n\"2024-03-01 00:00\",\"0.1\"\n\"2024-03-01 01:00\",\"0.2\"\n")]
    [InlineData("# Invented\nstart;price;note\n2024-03-01 00:00;0.1;\"a; b\"\n\n2024-03-01 01:00;0.2;c\n")]
    [InlineData("2024-03-01T00:00Z\t0.1\n2024-03-01T01:00Z\t0.2\n")]
    public void A_price_file_is_read_with_quotes_any_separator_and_no_heading(string text)
    {
        var series = PriceSeries.Load(TestFiles.Write(text), DateTimeZone.Utc);
        Assert.Equal((2, Instant.FromUtc(2024, 3, 1, 0, 0), Instant.FromUtc(2024, 3, 1, 2, 0)), (series.Count, series.Start, series.End));
        Assert.Contains("quotes", Assert.Throws<RecordException>(() => PriceSeries.Load(TestFiles.Write("start,price\n2024-03-01 00:00,\"0.1\n"), DateTimeZone.Utc)).Message, StringComparison.Ordinal);
    }
}
