using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The sum that no bill lies below. By hand where it is exact, against whole bills of random readings, and part by part where a bill may only lie above.</summary>
public sealed class BillFloorTests
{
    private static readonly DateTimeZone Utc = DateTimeZone.Utc;
    private static readonly LocalDate Start = new(2024, 4, 1);

    [Fact]
    public void Flat_prices_and_fixed_charges_are_taken_with_their_tax()
    {
        var floor = FloorOf(OneBill.Empty().SupplyPerDay(2).Import("day", 0.40m, hours: "08:00-20:00").Import("night", 0.20m).Export("export", 0.05m).Taxed(0.10m), days: 30);
        Assert.Equal(30 * 2 * 1.10, floor.Constant, 9);
        Assert.Equal((0.22, 0.44, 0.44, 0.22), (Round(floor.ImportPerKwh[15]), Round(floor.ImportPerKwh[16]), Round(floor.ImportPerKwh[39]), Round(floor.ImportPerKwh[40])));
        Assert.All(floor.ExportPerKwh, price => Assert.Equal(0.05, price, 9));
        Assert.Equal(1440, floor.ImportPerKwh.Length);
        Assert.Empty(floor.Excesses);
        Assert.Empty(floor.Peaks);
    }

    [Fact]
    public void An_interval_that_a_rate_edge_cuts_takes_its_share_of_both_prices()
    {
        var tariff = Plain(OneBill.Empty().Import("evening", 0.60m, hours: "17:15-19:00").Import("rest", 0.20m));
        var floor = BillFloor.Of(On(tariff, days: 1, minutes: 60));
        Assert.Equal((0.20, 0.50, 0.60, 0.20), (Round(floor.ImportPerKwh[16]), Round(floor.ImportPerKwh[17]), Round(floor.ImportPerKwh[18]), Round(floor.ImportPerKwh[19])));
    }

    [Theory]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Line, null, 0.005 * ((3 * 1.1) + 2))]
    [InlineData(RoundingMode.HalfEven, RoundingPlace.Line, null, 0.005 * ((3 * 1.1) + 2))]
    [InlineData(RoundingMode.TowardsZero, RoundingPlace.Line, null, 0.01 * ((3 * 1.1) + 2))]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Line, 1, 0.05 * ((3 * 1.1) + 2))]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Bill, null, 0.005)]
    [InlineData(RoundingMode.TowardsZero, RoundingPlace.Bill, 0, 1.0)]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Nowhere, null, 0.0)]
    public void Every_line_the_tax_and_the_total_may_lose_what_rounding_takes(RoundingMode mode, RoundingPlace place, int? digits, double slack)
    {
        // Three lines: supply, import and export.
        var tariff = OneBill.Empty().SupplyPerDay(1).Import("import", 0.30m).Export("export", 0.05m).Taxed(0.10m) with { Rounding = new BillRounding(mode, place, digits) };
        Assert.Equal((10 * 1.10) - slack, BillFloor.Of(On(tariff, days: 10)).Constant, 9);
    }

    [Fact]
    public void Each_block_and_each_price_of_the_hour_may_be_a_line()
    {
        var tariff = OneBill.Empty() with { Parts = [new EnergyPart("import", EnergySide.Import, [InBlocks(BlockPeriod.Bill, 0.10m, 0.20m, 0.30m)])] };
        Assert.Equal(-0.005 * (3 + 2), BillFloor.Of(On(tariff, days: 10)).Constant, 9);
    }

    [Theory]
    [InlineData(BlockPeriod.Bill)]
    [InlineData(BlockPeriod.Day)]
    [InlineData(BlockPeriod.Month)]
    [InlineData(BlockPeriod.Quarter)]
    [InlineData(BlockPeriod.ThirtyDays)]
    public void Import_that_gets_dearer_and_export_that_is_paid_less_in_blocks_are_exact(BlockPeriod per)
    {
        // 100 days in one bill, so that blocks of a month and of a quarter start anew inside it.
        var tariff = (OneBill.Empty() with
        {
            Parts =
            [
                new EnergyPart("import", EnergySide.Import, [InBlocks(per, 0.10m, 0.20m, 0.35m)]) { QuantityFactor = 1.05m },
                new EnergyPart("export", EnergySide.Export, [InBlocks(per, 0.12m, 0.05m, 0.01m)]),
            ],
        }).Taxed(0.10m);
        IsExact(Plain(tariff), days: 100);
    }

    [Fact]
    public void Blocks_of_one_rate_hold_its_own_hours_only()
    {
        var tariff = OneBill.Empty() with
        {
            Parts =
            [
                new EnergyPart("import", EnergySide.Import,
                [
                    InBlocks(BlockPeriod.Day, 0.10m, 0.20m, 0.35m) with { Windows = [new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("07:10-21:00")])] },
                    EnergyRate.Flat("night", 0.08m),
                ]),
            ],
        };
        IsExact(Plain(tariff), days: 20);
        var excess = BillFloor.Of(On(Plain(tariff), days: 20)).Excesses[0];
        // From 07:10 on: the half hour from 07:00 counts for two thirds.
        Assert.Equal((EnergySide.Import, 14, 28, 0.667, 5.0, 0.10), (excess.Side, excess.Intervals[0], excess.Intervals.Count, Math.Round(excess.Factors[0], 3), excess.BeyondKwh, Round(excess.PerKwh)));
    }

    [Fact]
    public void Blocks_that_suit_the_home_better_later_count_at_the_best_price_throughout()
    {
        var cheaper = OneBill.Empty() with
        {
            Parts =
            [
                new EnergyPart("import", EnergySide.Import, [InBlocks(BlockPeriod.Bill, 0.30m, 0.10m, 0.20m)]),
                new EnergyPart("export", EnergySide.Export, [InBlocks(BlockPeriod.Bill, 0.05m, 0.12m, 0.02m)]),
            ],
        };
        var floor = FloorOf(cheaper, days: 10);
        Assert.Equal((0.10, 0.12, 0), (floor.ImportPerKwh[0], floor.ExportPerKwh[0], floor.Excesses.Count));
        var runsOn = OneBill.Empty() with { Parts = [new EnergyPart("import", EnergySide.Import, [InBlocks(BlockPeriod.Month, 0.10m, 0.20m, 0.30m, runsOn: true)])] };
        Assert.Equal((0.10, 0), (FloorOf(runsOn, days: 10).ImportPerKwh[0], FloorOf(runsOn, days: 10).Excesses.Count));
    }

    [Fact]
    public void Above_a_limit_of_power_a_kWh_may_cost_and_pay_nothing()
    {
        var tariff = OneBill.Empty() with
        {
            Parts =
            [
                new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("import", 0.30m)]) { MostKw = 5 },
                new EnergyPart("export", EnergySide.Export, [EnergyRate.Flat("export", -0.02m)]) { MostKw = 5 },
            ],
        };
        var floor = FloorOf(tariff, days: 1);
        Assert.Equal((0.0, 0.0), (floor.ImportPerKwh[0], floor.ExportPerKwh[0]));
    }

    [Fact]
    public void Rounded_kWh_may_lose_a_digit_in_every_stretch_of_the_blocks()
    {
        var flat = Taxed(new EnergyPart("import", EnergySide.Import, [EnergyRate.Flat("import", 0.30m)]) { QuantityDigits = 1 });
        Assert.Equal(-0.1 * 0.30 * 1.1, FloorOf(flat, days: 10).Constant, 9);
        var daily = Taxed(new EnergyPart("import", EnergySide.Import, [InBlocks(BlockPeriod.Day, 0.10m, 0.20m, 0.30m)]) { QuantityDigits = 0 });
        Assert.Equal(-1 * 0.30 * 1.1 * 10, FloorOf(daily, days: 10).Constant, 9);
        static Tariff Taxed(EnergyPart part) => (OneBill.Empty() with { Parts = [part] }).Taxed(0.10m);
    }

    [Theory]
    [InlineData(ChargePeriod.Bill, false)]
    [InlineData(ChargePeriod.Month, false)]
    [InlineData(ChargePeriod.Day, false)]
    [InlineData(ChargePeriod.Year, false)]
    [InlineData(ChargePeriod.Day, true)]
    public void Demand_is_exact_for_each_time_that_it_is_charged_for(ChargePeriod per, bool eachDay) =>
        IsExact(Plain(OneBill.Empty().Import("import", 0.10m).Taxed(0.20m).With(
            new DemandCharge("demand", 3, new RateWindow(null, TariffDays.Weekdays, [HourSpan.Parse("16:00-20:00")]), per, 60) { EachDay = eachDay, MinimumKw = 1.5m })), days: 75);

    [Fact]
    public void Demand_of_a_season_counts_the_season_s_days_and_each_month_its_own_highest()
    {
        var tariff = OneBill.Empty().Import("import", 0.10m).Season("spring", (3, 1), (6, 1));
        var inSpring = new DemandCharge("demand", 3, new RateWindow("spring", TariffDays.EveryDay, [HourSpan.WholeDay]), ChargePeriod.Day);
        IsExact(Plain(tariff.With(inSpring)), days: 75);
        IsExact(Plain(tariff.With(inSpring with { Per = ChargePeriod.Year })), days: 75);
        IsExact(Plain(tariff.With(new DemandCharge("demand", 3, RateWindow.Always, ChargePeriod.Day) { EachMonth = true })), days: 75);
    }

    [Fact]
    public void Demand_in_steps_that_get_dearer_is_exact_and_else_counts_at_the_lowest()
    {
        IsExact(Plain(OneBill.Empty().Import("import", 0.10m).With(Steps(1, 2, 4))), days: 30);
        var falling = FloorOf(OneBill.Empty().Import("import", 0.10m).With(Steps(3, 1, 2)), days: 30);
        Assert.Equal(1.0, Assert.Single(falling.Peaks).PerKw, 9);
        Assert.Empty(falling.Peaks[0].Steps);
        static DemandCharge Steps(params decimal[] prices) => new("demand", 0, RateWindow.Always, ChargePeriod.Bill)
        {
            Steps = [new DemandStep(2, prices[0]), new DemandStep(3, prices[1]), new DemandStep(null, prices[2])],
        };
    }

    [Fact]
    public void Demand_remembered_from_earlier_bills_is_exact()
    {
        var charge = new DemandCharge("demand", 4, new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("16:00-20:00")])) { RatchetShare = 0.8m, RatchetBills = 2, EarlierKw = 3 };
        IsExact(Plain(OneBill.Empty().Import("import", 0.10m).With(charge)), days: 200, monthly: true);
        var inSpring = charge with { RatchetSeason = "spring", EarlierKw = 0 };
        var floor = BillFloor.Of(On(Plain(OneBill.Empty().Import("import", 0.10m).Season("spring", (3, 1), (6, 1)).With(inSpring)), days: 200, monthly: true));
        // April to October: April and May are remembered, no later month is.
        Assert.Equal([0, 1, 2, 2, 2, 2, 2], floor.Peaks.Select(p => p.Earlier.Count));
        Assert.Same(floor.Peaks[0], floor.Peaks[6].Earlier[0]);
        Assert.Equal((0.8, 4.0, 0.0), (Round(floor.Peaks[1].EarlierShare), floor.Peaks[1].PerKw, floor.Peaks[1].LeastKw));
    }

    [Fact]
    public void A_charge_of_called_hours_is_on_top_of_them_alone()
    {
        var called = new EventCharge("called", [Start.PlusDays(1)], [HourSpan.Parse("17:00-19:00")], 1.00m);
        var floor = FloorOf(OneBill.Empty().Import("import", 0.30m).Taxed(0.10m).With(called), days: 3);
        Assert.Equal([0.33, 1.43, 1.43, 1.43, 1.43, 0.33], floor.ImportPerKwh[81..87].Select(Round));
        Assert.Equal((4, 0.0), (floor.ImportPerKwh.Count(p => p > 1), floor.ExportPerKwh.Max()));
        IsExact(Plain(OneBill.Empty().Import("import", 0.30m).Taxed(0.10m).With(called)), days: 3);
    }

    [Fact]
    public void Market_prices_and_the_size_of_the_connection_are_exact()
    {
        var prices = PriceSeries.Of("market", [.. Enumerable.Range(0, 24 * 10).Select(h => (Start.AtStartOfDayInZone(Utc).ToInstant() + Duration.FromHours(h), 0.01 * (h % 24)))]);
        var tariff = OneBill.Empty().Taxed(0.10m).With(new SeriesPrice("spot", EnergySide.Import, prices) { AddPerKwh = 0.05m }).With(new SeriesPrice("sold", EnergySide.Export, prices))
            .With(new ConnectionCharge("fuse", 0.20m, ConnectionUnit.Ampere, 25, ChargePeriod.Day));
        var floor = FloorOf(tariff, days: 10);
        Assert.Equal((0.24 * 1.10, 0.19), (Round(floor.ImportPerKwh[39]), Round(floor.ExportPerKwh[39])));
        Assert.Equal(10 * 0.20 * 25 * 1.10, floor.Constant, 9);
        IsExact(Plain(tariff), days: 10);
    }

    [Fact]
    public void A_least_bill_and_a_limit_of_credit_only_raise_the_bill()
    {
        var tariff = OneBill.Empty().Import("import", 0.30m).Export("export", 0.10m);
        var more = tariff.With(new MinimumBill("minimum", 50)).With(new CreditLimit("limit", 5, ChargePeriod.Bill, ["export"]));
        Assert.Equal(FloorOf(tariff, days: 10).Constant, FloorOf(more, days: 10).Constant);
        var (import, export) = (new double[480], Enumerable.Repeat(0.5, 480).ToArray());
        Assert.True(Sum(FloorOf(more, days: 10), import, export) <= (double)On(Plain(more), days: 10).Bills(import, export)[0].Total.Amount);
    }

    [Fact]
    public void Bills_begin_where_their_first_interval_does()
    {
        Assert.Equal([0, 30 * 48, 61 * 48], BillFloor.Of(On(Plain(OneBill.Empty().Import("import", 0.30m)), days: 91, monthly: true)).PeriodStarts);
    }

    [Fact]
    public void What_no_linear_program_can_say_is_refused_by_name()
    {
        var tariff = OneBill.Empty().Import("import", 0.30m).SupplyPerDay(1).Export("export", 0.10m);
        Refuses(tariff with { NetsWithinMinutes = 60 }, "\"Published\" nets import and export, which");
        Refuses(tariff with { IsBuyAllSellAll = true }, "\"Published\" buys all and sells all, which");
        Refuses(tariff.With(new PercentCharge("levy", 0.05m, [])), "\"Published\" has \"levy\" (PercentCharge), which");
        Refuses(tariff.With(new DemandCharge("paid", -1, RateWindow.Always)), "has \"paid\" (DemandCharge)");
        Refuses(tariff.With(new DemandCharge("paid", 0, RateWindow.Always) { Steps = [new DemandStep(1, 2), new DemandStep(null, -2)] }), "has \"paid\" (DemandCharge)");
        Refuses(OneBill.Empty().With(new NetMetering("net", [EnergyRate.Flat("net", 0.30m)])), "has \"net\" (NetMetering)");
        Refuses(OneBill.Empty().With(new TieredCharge("tiers", [new BillTier(null, [new RateBlock(null, 0.30m)])])), "has \"tiers\" (TieredCharge)");
        static void Refuses(Tariff tariff, string words) => Assert.Contains(words, Assert.Throws<ArgumentException>(() => FloorOf(tariff, days: 30)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_version_that_takes_its_share_of_the_whole_bill_s_energy_is_refused_and_one_as_metered_is_not()
    {
        var first = Plain(Tariff.Flat("First", "USD", 0.20m, from: new LocalDate(2024, 1, 1)));
        var second = Plain(Tariff.Flat("Second", "USD", 0.30m, from: new LocalDate(2024, 4, 11)));
        var options = new BillingOptions { Periods = [new DateSpan(Start, Start.PlusDays(30))] };
        var grid = new IntervalGrid(Start.AtStartOfDayInZone(Utc).ToInstant(), Duration.FromMinutes(30), 30 * 48);
        var floor = BillFloor.Of(TariffHistory.Of(first, second).On(grid, Utc, options));
        Assert.Equal((0.20, 0.30), (floor.ImportPerKwh[479], floor.ImportPerKwh[480]));
        var byDays = TariffHistory.Of(first, second with { EnergyAtChange = EnergySplit.ByDays }).On(grid, Utc, options);
        Assert.Contains("has \"import\" (EnergyPart)", Assert.Throws<ArgumentException>(() => BillFloor.Of(byDays)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_bill_of_random_readings_under_a_random_tariff_lies_below() => Gen.Select(RandomTariff.Timed, RandomTariff.Kwh(48 * 40), RandomTariff.Kwh(48 * 40)).Sample((tariff, import, export) =>
    {
        var plan = On(tariff, days: 40, monthly: true);
        var bills = plan.Bills(import, export).Sum(b => (double)b.Total.Amount);
        var floor = Sum(BillFloor.Of(plan), import, export);
        // Prices and fixed charges are exact, so that only rounding lies between: two bills of at most seven lines, each up to a cent with its tax.
        Assert.InRange(bills - floor, -1e-9, 2 * 2 * 0.01 * ((7 * 1.25) + 2));
    }, iter: 40);

    /// <summary>The floor's sum is the bills' for any readings, where nothing is rounded.</summary>
    private static void IsExact(Tariff tariff, int days, bool monthly = false) => Gen.Select(RandomTariff.Kwh(48 * days), RandomTariff.Kwh(48 * days)).Sample((import, export) =>
    {
        var plan = On(tariff, days, monthly: monthly);
        Assert.Equal(plan.Bills(import, export).Sum(b => (double)b.Total.Amount), Sum(BillFloor.Of(plan), import, export), tolerance: 1e-6);
    }, iter: 3);

    /// <summary>What the floor comes to for some readings: the equation in its remarks.</summary>
    private static double Sum(BillFloor floor, double[] import, double[] export)
    {
        var sum = floor.Constant;
        for (var i = 0; i < import.Length; i++) sum += (floor.ImportPerKwh[i] * import[i]) - (floor.ExportPerKwh[i] * export[i]);
        foreach (var excess in floor.Excesses)
        {
            var kwh = excess.Side == EnergySide.Import ? import : export;
            sum += excess.PerKwh * Math.Max(0, excess.Intervals.Zip(excess.Factors, (i, factor) => kwh[i] * factor).Sum() - excess.BeyondKwh);
        }
        foreach (var peak in floor.Peaks)
        {
            var charged = Math.Max(peak.LeastKw, Math.Max(Kw(peak), peak.EarlierShare * peak.Earlier.Select(Kw).DefaultIfEmpty().Max()));
            sum += (charged * peak.PerKw) + peak.Steps.Sum(s => Math.Max(0, charged - s.AboveKw) * s.PerKw);
        }
        return sum;
        double Kw(BillPeak peak) => peak.Averages.Select(a => import.Skip(a.First).Take(a.Count).Sum() / a.Hours).DefaultIfEmpty().Max();
    }

    private static EnergyRate InBlocks(BlockPeriod per, decimal first, decimal second, decimal third, bool runsOn = false) =>
        EnergyRate.InBlocks("import", new RateBlocks([new RateBlock(5, first), new RateBlock(20, second), new RateBlock(null, third)], per) { RunsOn = runsOn });

    private static Tariff Plain(Tariff tariff) => tariff.Rounded(RoundingMode.HalfUp, RoundingPlace.Nowhere);

    private static BillFloor FloorOf(Tariff tariff, int days) => BillFloor.Of(On(Plain(tariff), days));

    private static BillingPlan On(Tariff tariff, int days, int minutes = 30, bool monthly = false)
    {
        var grid = new IntervalGrid(Start.AtStartOfDayInZone(Utc).ToInstant(), Duration.FromMinutes(minutes), days * 24 * 60 / minutes);
        return TariffHistory.Of(tariff).On(grid, Utc, monthly ? new BillingOptions() : new BillingOptions { Periods = [new DateSpan(Start, Start.PlusDays(days))] });
    }

    private static double Round(double value) => Math.Round(value, 9);
}
