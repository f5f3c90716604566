using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>The sentence that stands beside each line of a bill, for every kind of part: 300 kWh taken and 100 sent in April 2024 unless said otherwise.</summary>
public sealed class LineWordsTests
{
    private static readonly Tariff Taxed = OneBill.Empty("EUR").Taxed(0.10m);
    private static readonly PriceSeries Market = PriceSeries.Of("market", [(OneBill.Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), 0.10), (OneBill.Start.PlusDays(30).AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), 0.10)]);

    [Theory]
    [InlineData(ChargePeriod.Day, "30 days of being connected at 2 EUR a day, before 10 % tax.")]
    [InlineData(ChargePeriod.Month, "1 month of being connected at 2 EUR a month, before 10 % tax.")]
    [InlineData(ChargePeriod.Year, "0.082 years of being connected at 2 EUR a year, before 10 % tax.")]
    [InlineData(ChargePeriod.Bill, "1 bill of being connected at 2 EUR a bill, before 10 % tax.")]
    public void A_fixed_charge(ChargePeriod per, string words) => Assert.Equal(words, Why(Taxed.With(new SupplyCharge("supply", 2, per))));

    [Fact]
    public void Energy_by_its_hours_days_and_season()
    {
        var tariff = Taxed.Season("spring", (3, 1), (6, 1)).Season("rest of year", (6, 1), (3, 1))
            .Import("peak", 0.40m, "17:00-19:00", TariffDays.Weekdays, "spring").Import("rest", 0.20m).ControlledLoad("tank", 0.15m).Export("export", 0.05m);
        Assert.Equal(
        [
            "18.333 kWh taken from the grid (weekdays in spring, 17:00–19:00) at 0.40 EUR a kWh, before 10 % tax.",
            "281.667 kWh taken from the grid (at all other hours) at 0.20 EUR a kWh, before 10 % tax.",
            "100 kWh sent to the grid (at any hour) at 0.05 EUR a kWh, free of tax.",
        ], OneBill.Of(tariff, 300, exportKwh: 100).Lines.Select(l => l.Why));
        var held = Taxed.With(new EnergyPart("curtailed", EnergySide.Curtailed, [EnergyRate.Flat("held back", 0.05m)])).ControlledLoad("tank", 0.15m);
        Assert.Equal(
        [
            "720 kWh held back (at any hour) at 0.05 EUR a kWh, free of tax.", "720 kWh taken from the grid by the controlled load (at any hour) at 0.15 EUR a kWh, before 10 % tax.",
        ], Metered(held, e => e with { CurtailedKwh = Halves(), ControlledLoadKwh = Halves() }).Lines.Select(l => l.Why));
    }

    [Theory]
    [InlineData(BlockPeriod.Bill, "")]
    [InlineData(BlockPeriod.Day, " a day")]
    [InlineData(BlockPeriod.DaysOfBill, " a day")]
    [InlineData(BlockPeriod.Month, " a month")]
    [InlineData(BlockPeriod.Quarter, " a quarter")]
    [InlineData(BlockPeriod.ThirtyDays, " in 30 days")]
    [InlineData(BlockPeriod.Year, " a year")]
    [InlineData(BlockPeriod.Season, " a season")]
    public void Blocks_are_named_by_their_sizes_and_the_time_they_are_for(BlockPeriod per, string time)
    {
        var blocks = new RateBlocks([new RateBlock(2, 0.1m), new RateBlock(3.5m, 0.2m), new RateBlock(null, 0.3m)], per);
        var tariff = OneBill.Empty() with { Parts = [new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])] };
        Assert.Equal([$"energy, first 2 kWh{time}", $"energy, 2 kWh to 3.5 kWh{time}", $"energy, above 3.5 kWh{time}"], OneBill.Of(tariff, 30_000).Lines.Select(l => l.Part));
    }

    [Theory]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Line, null, "Every line, the tax and the total are rounded half up to 2 digits.")]
    [InlineData(RoundingMode.HalfEven, RoundingPlace.Bill, 1, "Only the total is rounded, half to even to 1 digits.")]
    [InlineData(RoundingMode.TowardsZero, RoundingPlace.Line, 0, "Every line, the tax and the total are rounded towards zero to 0 digits.")]
    [InlineData(RoundingMode.HalfUp, RoundingPlace.Nowhere, null, "Nothing is rounded.")]
    public void The_rule_of_rounding_stands_first_among_the_notes(RoundingMode mode, RoundingPlace place, int? digits, string words) =>
        Assert.Equal(words, OneBill.Of(Taxed.Import("import", 0.1m) with { Rounding = new BillRounding(mode, place, digits) }, 10).Notes[0]);

    [Fact]
    public void Demand_with_a_least_one_and_in_steps()
    {
        Assert.Equal("The highest average over 30 minutes was 0.417 kW (every day), before 10 % tax.", Why(Taxed.With(new DemandCharge("demand", 4, RateWindow.Always))));
        Assert.Equal("The highest average over 60 minutes was 0.417 kW (weekends), charged as at least 3 kW, before 10 % tax.",
            Why(Taxed.With(new DemandCharge("demand", 4, RateWindow.Always with { Days = TariffDays.Weekends }, AveragingMinutes: 60) { MinimumKw = 3 })));
        var steps = new DemandCharge("demand", 0, RateWindow.Always) { MinimumKw = 5, Unit = DemandUnit.KilovoltAmpere, Steps = [new DemandStep(1, 1), new DemandStep(4.5m, 2), new DemandStep(null, 3)] };
        Assert.Equal([("demand, 0 to 1 kVA", "kVA month"), ("demand, 1 to 4.5 kVA", "kVA month"), ("demand, above 4.5 kVA", "kVA month")], OneBill.Of(Taxed.With(steps), 300).Lines.Select(l => (l.Part, l.Unit)));
    }

    [Fact]
    public void Levies_discounts_and_the_least_bill()
    {
        var tariff = Taxed.Import("import", 0.20m).ImportOnTop("grid", 0.05m);
        Assert.Equal("5 % of the charges, which come to 75.00 EUR, before 10 % tax.", Why(tariff.With(new PercentCharge("levy", 0.05m, []))));
        Assert.Equal("-12.5 % of grid, which come to 15.00 EUR, before 10 % tax.", Why(tariff.With(new PercentCharge("loyalty", -0.125m, ["grid"]))));
        Assert.Equal("1 % of import and grid, which come to 75.00 EUR, before 10 % tax.", Why(tariff.With(new PercentCharge("levy", 0.01m, ["import", "grid"]))));
        Assert.Equal("The charges come to 75.00 EUR; the bill is at least 90.00 EUR before tax.", Why(tariff.With(new MinimumBill("minimum", 3, ChargePeriod.Day))));
        Assert.Equal("The credits come to 10.00 EUR; at most 4.00 EUR are given.", Why(tariff.Export("export", 0.10m).With(new CreditLimit("limit", 4, ChargePeriod.Bill, []))));
    }

    [Fact]
    public void Tiers_name_the_one_that_the_whole_bill_falls_into()
    {
        var tiers = Taxed.With(new TieredCharge("tiers", [new BillTier(200, [new RateBlock(null, 0.10m)]), new BillTier(null, [new RateBlock(null, 0.20m)], Fixed: 7)]));
        Assert.Equal([("tiers, all", "The whole bill of 200 kWh falls into the tier up to 200 kWh: 200 at 0.10 EUR.")], OneBill.Of(tiers, 200).Lines.Select(l => (l.Part, l.Why)));
        Assert.Equal(
        [
            ("tiers, all", 60m, "The whole bill of 300 kWh falls into the tier above all others: 300 at 0.20 EUR."), ("tiers, fixed", 7m, "The whole bill of 300 kWh falls into the tier above all others: 1 at 7 EUR."),
        ], OneBill.Of(tiers, 300).Lines.Select(l => (l.Part, l.Amount.Amount, l.Why)));
    }

    [Fact]
    public void Net_metering_tells_what_was_taken_sent_and_left()
    {
        var net = Taxed.With(new NetMetering("net", [EnergyRate.Flat("energy", 0.30m)], SettlesInMonth: 5, CashOutPerKwh: 0.04m));
        Assert.Equal(("energy, net", "300 kWh taken, 100 kWh sent and the bank of earlier bills leave 200 kWh at 0.30 EUR a kWh."), Last(OneBill.Of(net, 300, exportKwh: 100)));
        // April sends 50 kWh more than it takes; May begins with them paid out.
        var grid = new IntervalGrid(OneBill.Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromHours(1), 61 * 24);
        var export = new double[grid.Count];
        export[0] = 50;
        var bills = TariffHistory.Of(net).On(grid, DateTimeZone.Utc).Bills(new double[grid.Count], export);
        Assert.Equal(("net, cashed out", "50 kWh banked until now are paid out at 0.04 EUR a kWh, free of tax."), Last(bills[1]));
        Assert.Equal((-2.00m, 0m), (bills[1].TotalBeforeTax.Amount, bills[1].Tax.Amount));
        static (string, string) Last(Bill bill) => (bill.Lines[^1].Part, bill.Lines[^1].Why);
    }

    [Theory]
    [InlineData(null, null, "")]
    [InlineData(0.02, null, ", never below 0.02")]
    [InlineData(null, 0.5, ", never above 0.5")]
    [InlineData(0.02, 0.5, ", never below 0.02 nor above 0.5")]
    public void Market_prices_tell_their_mean_and_limits(double? floor, double? cap, string limits) => Assert.Equal(
        $"300 kWh taken from the grid at the prices of market, 0.1 EUR a kWh in the mean{limits}, before 10 % tax.",
        Why(Taxed.With(new SeriesPrice("spot", EnergySide.Import, Market) { FloorPerKwh = (decimal?)floor, CapPerKwh = (decimal?)cap })));

    [Theory]
    [InlineData(ConnectionUnit.Ampere, "A")]
    [InlineData(ConnectionUnit.KilovoltAmpere, "kVA")]
    [InlineData(ConnectionUnit.Kilowatt, "kW")]
    public void The_size_of_the_connection_in_its_unit(ConnectionUnit unit, string word) =>
        Assert.Equal($"A connection of 25 {word} at 0.2 EUR for each {word} a month, before 10 % tax.", Why(Taxed.With(new ConnectionCharge("fuse", 0.2m, unit, 25))));

    [Fact]
    public void Called_hours_and_what_was_left_off_in_them()
    {
        HourSpan[] hours = [HourSpan.Parse("07:00-08:00"), HourSpan.Parse("17:00-19:00")];
        // 300 kWh in 1,440 half hours: 1.25 kWh in the six half hours of a day.
        Assert.Equal("1.25 kWh taken from the grid in the called hours (07:00–08:00 and 17:00–19:00) at 1.5 EUR a kWh on top, before 10 % tax.",
            Why(Taxed.With(new EventCharge("called", [OneBill.Start.PlusDays(3)], hours, 1.5m))));
        var kwh = Halves();
        for (var i = 48 * 8; i < 48 * 9; i++) kwh[i] = 0;
        var rebate = Taxed.With(new EventRebate("rebate", [OneBill.Start.PlusDays(8)], hours, 2m, 4) { TaxFraction = 0 });
        Assert.Equal("3 kWh less than the mean of up to 4 earlier days in the called hours of 1 day, at 2 EUR a kWh, free of tax.", Metered(rebate, e => e with { ImportKwh = kwh }).Lines[^1].Why);
        var two = Taxed.With(new EventRebate("rebate", [OneBill.Start.PlusDays(8), OneBill.Start.PlusDays(9)], hours, 2m, 4));
        Assert.Contains("in the called hours of 2 days, at 2 EUR a kWh, before 10 % tax.", Metered(two, e => e with { ImportKwh = kwh }).Lines[^1].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Reactive_energy_and_the_power_factor()
    {
        var tariff = Taxed.Import("import", 0.10m);
        Assert.Equal("720 kvarh of reactive energy; 50 % of the 720 kWh taken is free, the rest costs 0.02 EUR a kvarh, before 10 % tax.",
            Metered(tariff.With(new ReactiveCharge("reactive", 0.02m)), e => e with { ReactiveKvarh = Halves() }).Lines[^1].Why);
        Assert.Equal("The mean power factor was 0.7071; for each hundredth below 0.90, 1 % of lines of 72.00 EUR, before 10 % tax.",
            Metered(tariff.With(new PowerFactorCharge("factor", 0.90m, 0.01m, [])), e => e with { ReactiveKvarh = Halves() }).Lines[^1].Why);
    }

    [Fact]
    public void Credit_that_is_kept_used_or_lost()
    {
        var tariff = Taxed.Import("import", 0.10m).Export("export", 0.20m);
        Assert.Equal("The bill would be 10.00 EUR below zero, which is not paid out.", Why(tariff.With(new CreditKept("credit", IsCarried: false)), kwh: 0, export: 50));
        Assert.Equal("The bill would be 10.00 EUR below zero, which is kept for later bills: 10.00 EUR by now.", Why(tariff.With(new CreditKept("credit")), kwh: 0, export: 50));
        var grid = new IntervalGrid(OneBill.Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromHours(1), 61 * 24);
        var (import, export) = (new double[grid.Count], new double[grid.Count]);
        (export[0], import[^1]) = (50, 40);
        // May owes 4.00 and 0.40 tax.
        Assert.Equal("4.40 EUR of credit from earlier bills; 5.60 EUR remain.", TariffHistory.Of(tariff.With(new CreditKept("credit"))).On(grid, DateTimeZone.Utc).Bills(import, export)[1].Lines[^1].Why);
    }

    [Theory]
    [InlineData(TariffDays.EveryDay, "every day")]
    [InlineData(TariffDays.Weekdays | TariffDays.Weekends, "every day but holidays")]
    [InlineData(TariffDays.Weekends | TariffDays.Holidays, "weekends and holidays")]
    [InlineData(TariffDays.Weekdays, "weekdays")]
    [InlineData(TariffDays.Monday | TariffDays.Tuesday | TariffDays.Wednesday, "Mondays, Tuesdays and Wednesdays")]
    [InlineData(TariffDays.Thursday | TariffDays.Friday | TariffDays.Weekends, "weekends, Thursdays and Fridays")]
    [InlineData(TariffDays.Weekdays | TariffDays.Saturday, "weekdays and Saturdays")]
    [InlineData(TariffDays.Sunday, "Sundays")]
    [InlineData(TariffDays.None, "no day")]
    public void Kinds_of_day(TariffDays days, string words) => Assert.Equal(words, DayWords.Days(days));

    [Fact]
    public void A_window_names_season_days_and_hours() =>
        Assert.Equal(["every day", "weekdays in winter, 17:00–19:00", "Sundays, 06:30–07:05 and 22:00–02:00"], new RateWindow[]
        {
            RateWindow.Always, new("winter", TariffDays.Weekdays, [HourSpan.Parse("17:00-19:00")]), new(null, TariffDays.Sunday, [HourSpan.Parse("06:30-07:05"), HourSpan.Parse("22:00-02:00")]),
        }.Select(w => w.ToString()));

    private static string Why(Tariff tariff, double kwh = 300, double export = 100) => OneBill.Of(tariff, kwh, exportKwh: export).Lines[^1].Why;

    private static double[] Halves() => [.. Enumerable.Repeat(0.5, 30 * 48)];

    private static Bill Metered(Tariff tariff, Func<MeteredEnergy, MeteredEnergy> change)
    {
        var grid = new IntervalGrid(OneBill.Start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), 30 * 48);
        return Assert.Single(TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc).Bills(change(new MeteredEnergy(Halves(), new double[grid.Count]))));
    }
}
