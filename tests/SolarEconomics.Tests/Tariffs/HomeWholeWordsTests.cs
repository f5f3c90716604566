using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Bills of a home with a recorded battery and gaps, with and without its parts, and choices between tariffs: all that is said, word for word. Invented home.</summary>
public sealed class HomeWholeWordsTests
{
    [Fact]
    public void A_home_with_its_battery_without_it_and_with_another()
    {
        // The battery's own standby goes with it; the inverter's stays.
        var site = MixedSite.Place with { Plant = new Plant([.. MixedSite.Place.Plant.Devices, new Device("store", MeasurementPoint.InverterAcOut) { UsableKwh = 4, StandbyW = 12, InService = MixedSite.First.PlusDays(40) }]) };
        var home = HomeEnergy.Of(site, MixedSite.Records(), MixedSite.Tariffs);
        var holding = home.With(Battery.Of(3, 0.9), Control.Of("rests till noon", now => now.Local.Hour < 12 ? Order.Rest : now.Cover()));
        WholeWords.Check("home", ("as it is", home), ("without battery", home.WithoutBattery()), ("without plant", home.WithoutPlant()), ("with 8 kWh", home.With(Battery.Of(8, 0.85))), ("charged at night", holding),
            ("with more panels", home.Modelled(new EnergySystem(), "with twice the south", null, ArraySupply.Ac("more", home.Energy.GenerationKwh.ToArray()))),
            ("bills with and without", BillWithAndWithout.Of(home)), ("and with another battery", BillWithAndWithout.Of(home, Battery.Of(8, 0.85))), ("one kWh more", MarginalTable.Of(home)), ("one kWh more, with another battery", MarginalTable.Of(home.With(Battery.Of(8, 0.85)), 0.5)));
        Assert.Equal(home.Bills().Count, home.Bills(new BillingOptions { Periods = BillingPeriods.Months(new DateSpan(MixedSite.First, MixedSite.First.PlusDays(425))) }).Count);
    }

    [Fact]
    public void A_choice_between_tariffs_and_what_the_change_saves()
    {
        var start = new LocalDate(2021, 1, 1);
        var peak = Tariff.Named("peak", "EUR", start).SupplyPerDay(0.3m).Import("evening", 0.50m, "17:00-22:00").Import("rest", 0.20m).Export("export", 0.02m).Taxed(0.1m);
        var flat = Tariff.Flat("flat", "EUR", 0.26m, supplyPerDay: 0.55m, exportPerKwh: 0.04m, tax: 0.1m, from: start);
        var paid = Tariff.Flat("paid", "EUR", 0.28m, supplyPerDay: 0.3m, exportPerKwh: 0.15m, tax: 0.1m, from: start) with
        {
            Needs = TariffNeeds.SmartMeter | TariffNeeds.ElectricCar | TariffNeeds.HeatPump | TariffNeeds.SocialSupport, IsClosedToNew = true,
        };
        TariffChoice Choice(Tariff tariff) => new(tariff.Name, TariffHistory.Of(tariff));
        var readings = MixedSite.Records(gaps: false);
        CompareRequest Ask(params Tariff[] tariffs) => new([.. tariffs.Select(Choice)], readings, DateTimeZone.Utc);
        WholeWords.Check("choices", ("three, from the dear one", (Ask(peak, flat, paid) with { Today = "peak" }).Answer()), ("from the best", (Ask(peak, flat, paid) with { Today = "flat" }).Answer()),
            ("a change that pays for export", (Ask(paid, Tariff.Flat("unpaid", "EUR", 0.28m, supplyPerDay: 0.3m, tax: 0.1m, from: start)) with { Today = "unpaid" }).Answer()),
            ("a change of fixed charges", (Ask(flat, Tariff.Flat("dear line", "EUR", 0.26m, supplyPerDay: 0.9m, exportPerKwh: 0.04m, tax: 0.1m, from: start)) with { Today = "dear line" }).Answer()),
            ("with half the tax back", (Ask(peak, flat) with { TaxReclaimedShare = 0.5m }).Answer()), ("not all days covered", (Ask(peak, flat) with { To = new LocalDate(2024, 6, 1) }).Answer()),
            ("an estimate", (Ask(peak, flat) with { To = new LocalDate(2024, 11, 1), EstimateWhereMissing = true }).Answer()));
        Assert.Equal("""
            [
              {
                "tariff": "peak",
                "total": "1.50",
                "difference": "0.00",
                "tie": false
              },
              {
                "tariff": "flat",
                "total": "2.00",
                "difference": "0.50",
                "tie": false
              }
            ]
            """.ReplaceLineEndings("\n"), new CompareAnswer(new DateSpan(start, start.PlusDays(1)), [Rank("peak", 1.5m, 0), Rank("flat", 2m, 0.5m)], [], 1).ToJson().ReplaceLineEndings("\n"));
        static TariffRank Rank(string name, decimal total, decimal difference) => new(name, Money.Nominal(total, Currency.Of("EUR")), Money.Nominal(difference, Currency.Of("EUR")), false, []);
    }

    [Fact]
    public void Use_behind_a_meter_that_buys_and_sells_all_is_added_up_from_all_channels()
    {
        // A day: 1 kWh taken, 0.5 sent, 2 made, 0.4 into the battery and 0.3 out of it in each hour, and 0.1 by the controlled load: 2.5 used.
        var tariff = Tariff.Named("All", "EUR", new LocalDate(2024, 1, 1)).Import("use", 0.20m).Export("generation", 0.10m).ControlledLoad("tank", 0) with { IsBuyAllSellAll = true };
        Channel[] channels = [Of("import", FlowKind.Import, 1), Of("controlled", FlowKind.Import, 0.1), Of("export", FlowKind.Export, 0.5), Of("roof", FlowKind.Generation, 2), Of("charge", FlowKind.BatteryCharge, 0.4), Of("discharge", FlowKind.BatteryDischarge, 0.3)];
        var answer = new BillRequest(TariffHistory.Of(tariff), new Readings(channels, [], []), DateTimeZone.Utc).Answer();
        Assert.Equal((24 * 2.5m, 24 * 2m), (answer.Lines[0].Quantity, answer.Lines.Single(l => l.Part == "generation").Quantity));
        Assert.Contains("All use is billed and all generation paid; use is import, generation and what the battery gave, less export and what it took.", answer.ReadingNotes);
        var metered = new BillRequest(TariffHistory.Of(tariff), new Readings([.. channels, Of("use", FlowKind.Use, 3)], [], []), DateTimeZone.Utc).Answer();
        Assert.Equal(72m, metered.Lines[0].Quantity);
        Assert.Contains("All use is billed and all generation paid, as metered behind the meter of the grid.", metered.ReadingNotes);
        static Channel Of(string name, FlowKind flow, double kwh)
        {
            Instant[] starts = [.. Enumerable.Range(0, 24).Select(h => Instant.FromUtc(2024, 4, 1, h, 0))];
            return new Channel(name, flow, starts, [.. starts.Select(s => s + Duration.FromHours(1))], [.. Enumerable.Repeat(kwh, 24)], new Quality[24]);
        }
    }

    [Theory]
    [InlineData("17:00-19:00", 2)]
    [InlineData("22:00-06:30", 8.5)]
    [InlineData("00:00-24:00", 24)]
    [InlineData("18:00-00:00", 6)]
    public void Hours_of_a_day_have_a_length(string hours, double length) => Assert.Equal(length, HourSpan.Parse(hours).Hours);

    [Theory]
    [InlineData("17:00")]
    [InlineData("17-19:00")]
    [InlineData("17:0-19:00")]
    [InlineData("1x:00-19:00")]
    [InlineData("17:x0-19:00")]
    [InlineData("17:60-19:00")]
    [InlineData("24:01-19:00")]
    [InlineData("17:00-17:00")]
    [InlineData("24:00-00:00")]
    [InlineData("00:00-24:00-24:00")]
    public void What_are_no_hours_is_refused(string text)
    {
        Assert.False(HourSpan.TryParse(text, out var hours));
        Assert.Equal(default, hours);
        Assert.Throws<FormatException>(() => HourSpan.Parse(text));
    }

    [Fact]
    public void A_grid_must_have_whole_seconds_and_at_most_a_week()
    {
        var tariff = TariffHistory.Of(Tariff.Flat("flat", "EUR", 0.2m, from: new LocalDate(2020, 1, 1)));
        BillingPlan On(Duration step) => tariff.On(new IntervalGrid(Instant.FromUtc(2024, 1, 1, 0, 0), step, 2), DateTimeZone.Utc);
        foreach (var step in new[] { Duration.FromMilliseconds(1500), Duration.Zero, Duration.FromSeconds(-5), Duration.FromDays(7) + Duration.FromSeconds(1) })
            Assert.StartsWith($"Found intervals of {step}, expected whole seconds, at most a week.", Assert.ThrowsAny<ArgumentException>(() => On(step)).Message, StringComparison.Ordinal);
        Assert.Equal(2, On(Duration.FromDays(7)).Grid.Count);
    }
}
