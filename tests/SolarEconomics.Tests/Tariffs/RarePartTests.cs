using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Parts that few tariffs have, each by hand: April 2024 or part of it in UTC, 1 kWh in every half hour unless said otherwise.
/// No published bill shows them with all its inputs; the slow twins stand in RareTwinTests.</summary>
public sealed class RarePartTests
{
    private static readonly LocalDate April = new(2024, 4, 1);
    private static readonly Tariff Free = OneBill.Empty("EUR").Import("energy", 0);

    [Fact]
    public void A_controlled_load_has_its_own_hours_and_price()
    {
        // 48 kWh on one day: 14 half hours from 0 to 7 at 0.10, 34 at 0.20.
        var tariff = Free.ControlledLoad("night", 0.10m, "00:00-07:00").ControlledLoad("day", 0.20m);
        Assert.Equal((14 * 0.10m) + (34 * 0.20m), Day(tariff, e => e with { ControlledLoadKwh = Ones(48) }).TotalBeforeTax.Amount);
    }

    [Fact]
    public void Curtailed_energy_is_paid_and_energy_above_the_export_limit_is_not()
    {
        // 48 kWh held back at 0.05. Export of 1 kWh in half an hour is 2 kW: at a limit of 1.5 kW, 0.75 kWh are paid 0.10.
        var tariff = Free.With(new EnergyPart("curtailed", EnergySide.Curtailed, [EnergyRate.Flat("held back", 0.05m)]))
            .With(new EnergyPart("export", EnergySide.Export, [EnergyRate.Flat("feed-in", 0.10m)]) { MostKw = 1.5m });
        var bill = Day(tariff, e => e with { CurtailedKwh = Ones(48) });
        Assert.Equal([-2.40m, -3.60m], bill.Lines.Where(l => l.Amount.Amount != 0).Select(l => l.Amount.Amount));
    }

    [Fact]
    public void Export_charges_bear_tax_and_a_capped_feed_in_stops_paying()
    {
        // 48 kWh sent: the first 20 a day are paid 0.10, the rest 0; each costs 0.02 with 10 % tax.
        var blocks = new RateBlocks([new RateBlock(20, 0.10m), new RateBlock(null, 0)], BlockPeriod.Day);
        var tariff = (Free.With(new EnergyPart("export", EnergySide.Export, [EnergyRate.InBlocks("feed-in", blocks)])) with { Tax = 0.10m })
            .With(new EnergyPart("export charge", EnergySide.Export, [EnergyRate.Flat("network", -0.02m)]) { TaxFraction = 0.10m });
        var bill = Day(tariff);
        Assert.Equal((-2m + 0.96m, 0.10m), (bill.TotalBeforeTax.Amount, bill.Tax.Amount));
    }

    [Fact]
    public void A_price_series_is_averaged_over_the_interval_then_marked_up_and_kept_within_floor_and_cap()
    {
        // Hourly prices per MWh on one day: -50 for 12 hours, then 100 for 11, then 900. Per kWh: 0.02 + price / 1000, at least 0 and at most 0.50.
        var start = At(April);
        var series = PriceSeries.Of("market", [.. Enumerable.Range(0, 24).Select(h => (start + Duration.FromHours(h), h < 12 ? -50.0 : h < 23 ? 100.0 : 900.0))]);
        var tariff = OneBill.Empty("EUR").With(new SeriesPrice("spot", EnergySide.Import, series) { Factor = 0.001m, AddPerKwh = 0.02m, CapPerKwh = 0.50m, FloorPerKwh = 0 });
        Assert.Equal((22 * 0.12m) + (2 * 0.50m), Day(tariff).TotalBeforeTax.Amount);
        var error = Assert.Throws<TariffException>(() => Bills(tariff, 2, e => e));
        Assert.StartsWith("market: found no price at 2024-04-02T00:30:00Z", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Export_at_market_prices_or_in_called_hours_is_paid_free_of_tax_unless_the_sheet_taxes_it()
    {
        var series = PriceSeries.Of("market", [(At(April), 0.10), (At(April) + Duration.FromDays(1), 0.10)]);
        var sold = new SeriesPrice("sold", EnergySide.Export, series);
        var called = new EventCharge("called", [April], [HourSpan.WholeDay], 0.05m, EnergySide.Export);
        Assert.Equal((-7.20m, 0m), Of(sold, called));
        Assert.Equal((-7.20m, -0.72m), Of(sold with { TaxFraction = 0.10m }, called with { TaxFraction = 0.10m }));
        var bought = new SeriesPrice("bought", EnergySide.Import, series);
        Assert.Equal((4.80m + 2.40m, 0.72m), Of(bought, called with { Side = EnergySide.Import }));
        // 48 kWh taken, 48 sent.
        (decimal, decimal) Of(TariffPart price, TariffPart onTop)
        {
            var bill = Day(Free.With(price).With(onTop).Taxed(0.10m));
            return (bill.TotalBeforeTax.Amount, bill.Tax.Amount);
        }
    }

    [Fact]
    public void Called_hours_cost_more_and_energy_left_off_is_rebated()
    {
        // The second and third of April, 17 to 19: 4 kWh a day at 0.80 on top. On the third the home takes 1 kWh of the usual 4.
        LocalDate[] called = [April.PlusDays(2)];
        HourSpan[] hours = [HourSpan.Parse("17:00-19:00")];
        var tariff = Free.With(new EventCharge("event", [April.PlusDays(1), April.PlusDays(1)], hours, 0.80m)).With(new EventRebate("rebate", called, hours, 1.50m));
        var import = Ones(48 * 4);
        for (var i = (48 * 2) + 34; i < (48 * 2) + 37; i++) import[i] = 0;
        var bill = Bills(tariff, 4, e => e with { ImportKwh = import })[0];
        Assert.Equal([3.20m, -4.50m], bill.Lines.Where(l => l.Amount.Amount != 0).Select(l => l.Amount.Amount));
    }

    [Fact]
    public void A_connection_is_charged_by_its_size() =>
        // 63 A at 1.20 a month, April whole.
        Assert.Equal(75.60m, Month(Free.With(new ConnectionCharge("connection", 1.20m, ConnectionUnit.Ampere, 63))).TotalBeforeTax.Amount);

    [Fact]
    public void Demand_is_measured_in_kVA_or_lifted_to_a_share_of_it_and_priced_in_steps()
    {
        // 2 kW and 1.5 kvar are 2.5 kVA. In kVA: 2 at 10, 0.5 at 4. With 0.9 of the kVA: 2.25 kW at 10.
        Bill Of(DemandCharge charge) => Month(Free.With(charge), e => e with { ReactiveKvarh = [.. Enumerable.Repeat(0.75, 30 * 48)] });
        var charge = new DemandCharge("demand", 10, RateWindow.Always);
        Assert.Equal([20m, 2m], Of(charge with { Unit = DemandUnit.KilovoltAmpere, Steps = [new DemandStep(2, 10), new DemandStep(null, 4)] }).Lines.Where(l => l.Amount.Amount != 0).Select(l => l.Amount.Amount));
        Assert.Equal(22.50m, Of(charge with { KvaShare = 0.9m }).TotalBeforeTax.Amount);
        // Last winter's 5 kW, of which 65 % count, from before the readings.
        Assert.Equal(32.50m, Month(Free.With(charge with { EarlierKw = 5, RatchetShare = 0.65m })).TotalBeforeTax.Amount);
    }

    [Fact]
    public void Only_the_season_s_demand_is_remembered()
    {
        // February takes 3 kW, March 6, April 1: with winter until March, April is charged half of February's 3, not of March's 6.
        var tariff = Free.Season("winter", (11, 1), (3, 1)).With(new DemandCharge("demand", 10, RateWindow.Always) { RatchetShare = 0.5m, RatchetSeason = "winter" });
        var start = new LocalDate(2024, 2, 1);
        var grid = new IntervalGrid(At(start), Duration.FromMinutes(30), 90 * 48);
        var import = Enumerable.Range(0, grid.Count).Select(i => (i / 48) < 29 ? 1.5 : (i / 48) < 60 ? 3 : 0.5).ToArray();
        var bills = TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc).Bills(import, new double[grid.Count]);
        Assert.Equal([30m, 60m, 15m], bills.Select(b => b.TotalBeforeTax.Amount));
    }

    [Fact]
    public void Reactive_energy_beyond_its_free_share_and_a_low_power_factor_cost()
    {
        // A month: 1,440 kWh and 1,080 kvarh; half of the kWh is free, 360 kvarh at 0.01. The factor is 0.8: ten hundredths below 0.90 at 0.5 % of 144.
        var tariff = OneBill.Empty("EUR").Import("energy", 0.10m).With(new PowerFactorCharge("power factor", 0.90m, 0.005m, ["import"])).With(new ReactiveCharge("reactive", 0.01m));
        var bill = Month(tariff, e => e with { ReactiveKvarh = [.. Enumerable.Repeat(0.75, 30 * 48)] });
        Assert.Equal([144m, 7.20m, 3.60m], bill.Lines.Select(l => l.Amount.Amount));
        Assert.Equal([144m], Month(tariff).Lines.Select(l => l.Amount.Amount));
    }

    [Fact]
    public void Credit_is_limited_kept_for_later_bills_and_lost_in_its_month()
    {
        // Three days, each a bill: 4.80 taken and 9.60 sent on the first, nothing sent later. Limit 8.00: 3.20 below zero, carried to the next two bills.
        var tariff = OneBill.Empty("EUR").Import("energy", 0.10m).Export("feed-in", 0.20m).With(new CreditLimit("limit", 8, ChargePeriod.Bill, ["export"])).With(new CreditKept("credit"));
        Bill[] Three(Tariff t) => Bills(t, 3, e => e with { ExportKwh = [.. Ones(48), .. new double[96]] }, eachDay: true);
        Assert.Equal([0m, 1.60m, 4.80m], Three(tariff).Select(b => b.Total.Amount));
        Assert.Equal([0m, 4.80m, 4.80m], Three(tariff with { Parts = [.. tariff.Parts.SkipLast(1), new CreditKept("credit", IsCarried: false)] }).Select(b => b.Total.Amount));
        Assert.Equal([0m, 4.80m, 4.80m], Three(tariff with { Parts = [.. tariff.Parts.SkipLast(1), new CreditKept("credit", ExpiresInMonth: 4)] }).Select(b => b.Total.Amount));
        Assert.Contains("as the last part", Assert.Throws<TariffException>(() => TariffHistory.Of(tariff.SupplyPerDay(1))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Banked_energy_expires_after_its_months()
    {
        // 48 kWh banked in January's only day; February takes 48. Kept one month it is lost on 1 February, kept two it pays for it.
        Bill[] Of(int months)
        {
            var tariff = OneBill.Empty("EUR").With(new NetMetering("import", [EnergyRate.Flat("energy", 0.10m)]) { ExpiresAfterMonths = months });
            var grid = new IntervalGrid(At(new LocalDate(2024, 1, 1)), Duration.FromMinutes(30), 32 * 48);
            var (import, export) = (new double[grid.Count], new double[grid.Count]);
            Array.Fill(export, 1.0, 0, 48);
            Array.Fill(import, 1.0, 31 * 48, 48);
            return [.. TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc).Bills(import, export)];
        }
        Assert.Equal([0m, 4.80m], Of(1).Select(b => b.Total.Amount));
        Assert.Equal([0m, 0m], Of(2).Select(b => b.Total.Amount));
    }

    [Fact]
    public void Flows_are_netted_within_the_hour_or_all_is_bought_and_sold()
    {
        // Half hours of 1 kWh taken, every second one of 3 kWh sent: each hour nets to 1 kWh sent.
        var tariff = OneBill.Empty("EUR").Import("energy", 0.10m).Export("feed-in", 0.05m);
        double[] export = [.. Enumerable.Range(0, 48).Select(i => i % 2 == 0 ? 3.0 : 0.0)];
        Assert.Equal(-24 * 0.05m, Day(tariff with { NetsWithinMinutes = 60 }, e => e with { ExportKwh = export }).Total.Amount);
        var all = tariff with { IsBuyAllSellAll = true };
        Assert.Equal((96 * 0.10m) - (48 * 0.05m), Day(all, e => e with { UseKwh = [.. Ones(48).Select(k => 2 * k)], GenerationKwh = Ones(48) }).Total.Amount);
        Assert.Throws<TariffException>(() => Day(all));
    }

    [Fact]
    public void Prepayments_membership_and_conditional_discounts_are_lines_of_their_own()
    {
        var tariff = (Free with { Tax = 0.20m }).With(new SupplyCharge("membership", 24, ChargePeriod.Year) { PaysFor = "membership" })
            .With(new SupplyCharge("pay on time", -1, ChargePeriod.Month) { Condition = "pay on time" })
            .With(new SupplyCharge("in advance", -50, ChargePeriod.Month) { TaxFraction = 0 });
        var bill = Month(tariff);
        Assert.Equal([Math.Round(24 * 30m / 366, 2), -50m], bill.Lines.Skip(1).Select(l => l.Amount.Amount));
        Assert.Contains("Not counted: \"pay on time\", as nothing says that its condition is met: pay on time.", bill.Notes);
        Assert.Contains("of membership at 24", bill.Lines[1].Why, StringComparison.Ordinal);
        Assert.Equal(4, Month(tariff, conditions: ["Pay on time"]).Lines.Count);
    }

    [Theory]
    [InlineData(Proration.ByDays, 10.0 / 30)]
    [InlineData(Proration.ByThirtieths, 10.0 / 30)]
    [InlineData(Proration.Whole, 1)]
    public void Part_of_a_month_counts_as_stated(Proration proration, double months)
    {
        var tariff = Free.With(new SupplyCharge("connected", 30, ChargePeriod.Month) { Proration = proration });
        Assert.Equal((decimal)Math.Round(30 * months, 2), Bills(tariff, 10, e => e)[0].TotalBeforeTax.Amount);
    }

    [Theory]
    [InlineData(Proration.ByDays, 366.0 * (92.0 / 365 + 31.0 / 366))]
    [InlineData(Proration.ByThirtieths, 366.0 * 4 / 12)]
    [InlineData(Proration.Whole, 366.0 * 2)]
    public void Part_of_a_year_counts_as_stated_across_the_year_s_end(Proration proration, double expected)
    {
        // October 2023 to January 2024: four months, of which two years are begun.
        var tariff = OneBill.Empty("EUR").With(new SupplyCharge("connected", 366, ChargePeriod.Year) { Proration = proration });
        Assert.Equal((decimal)Math.Round(expected, 2), Span(tariff, new LocalDate(2023, 10, 1), 123).TotalBeforeTax.Amount);
    }

    [Fact]
    public void A_price_for_a_bill_is_charged_once_where_it_is_not_divided_and_by_the_first_version()
    {
        Tariff Version(string name, LocalDate from) => Free with { Name = name, From = from, Parts = [new SupplyCharge("bill fee", 8, ChargePeriod.Bill) { Proration = Proration.Whole }] };
        var history = TariffHistory.Of(Version("A", new LocalDate(2024, 1, 1)), Version("B", April.PlusDays(10)));
        var grid = new IntervalGrid(At(April), Duration.FromMinutes(30), 30 * 48);
        var bill = Assert.Single(history.On(grid, DateTimeZone.Utc, new BillingOptions { Periods = [new DateSpan(April, April.PlusDays(30))] }).Bills(Ones(grid.Count), Ones(grid.Count)));
        Assert.Equal(8m, bill.TotalBeforeTax.Amount);
    }

    [Fact]
    public void Days_before_1970_are_billed_by_the_same_clock()
    {
        // A Sunday and a Monday: 48 half hours each.
        var tariff = OneBill.Empty("EUR") with { From = new LocalDate(1960, 1, 1) };
        tariff = tariff.Import("weekend", 0.10m, days: TariffDays.Weekends).Import("rest", 0.20m, "00:00-24:00", TariffDays.Weekdays | TariffDays.Holidays);
        Assert.Equal([("weekend", 48m), ("rest", 48m)], Span(tariff, new LocalDate(1965, 8, 1), 2).Lines.Select(l => (l.Part, l.Quantity)));
    }

    [Fact]
    public void A_thirty_first_day_is_free_by_thirtieths()
    {
        var charge = new SupplyCharge("connected", 30, ChargePeriod.Month) { Proration = Proration.ByThirtieths };
        // 31 March to 5 April: 1 day and 5 days of thirty; all of March is one month.
        var bill = OneBill.Empty("EUR").With(charge);
        Assert.Equal(6m, Span(bill, new LocalDate(2024, 3, 31), 6).TotalBeforeTax.Amount);
        Assert.Equal(30m, Span(bill, new LocalDate(2024, 3, 1), 31).TotalBeforeTax.Amount);
    }

    private static Bill Day(Tariff tariff, Func<MeteredEnergy, MeteredEnergy>? change = null) => Bills(tariff, 1, change ?? (e => e))[0];

    private static Bill Month(Tariff tariff, Func<MeteredEnergy, MeteredEnergy>? change = null, IReadOnlyList<string>? conditions = null) =>
        Bills(tariff, 30, change ?? (e => e), conditions: conditions)[0];

    private static Bill Span(Tariff tariff, LocalDate start, int days) =>
        Assert.Single(TariffHistory.Of(tariff).On(new IntervalGrid(At(start), Duration.FromMinutes(30), days * 48), DateTimeZone.Utc,
            new BillingOptions { Periods = [new DateSpan(start, start.PlusDays(days))] }).Bills(Ones(days * 48), new double[days * 48]));

    private static Bill[] Bills(Tariff tariff, int days, Func<MeteredEnergy, MeteredEnergy> change, bool eachDay = false, IReadOnlyList<string>? conditions = null)
    {
        var grid = new IntervalGrid(At(April), Duration.FromMinutes(30), days * 48);
        var periods = eachDay ? Enumerable.Range(0, days).Select(d => new DateSpan(April.PlusDays(d), April.PlusDays(d + 1))).ToList() : [new DateSpan(April, April.PlusDays(days))];
        var options = new BillingOptions { Periods = periods, ConditionsMet = conditions ?? [] };
        return [.. TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc, options).Bills(change(new MeteredEnergy(Ones(days * 48), Ones(days * 48))))];
    }

    private static double[] Ones(int count) => [.. Enumerable.Repeat(1.0, count)];

    private static Instant At(LocalDate day) => day.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();
}
