using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>One bill over several months: what is stated for a month starts anew with each. By hand; real sheets state it so (common practice, no source).</summary>
public sealed class LongBillTests
{
    [Fact]
    public void Blocks_for_a_month_start_anew_with_each_month()
    {
        // March takes 100 kWh and April 300: 200 a month at 0.10, above at 0.30. Pooled, all 400 would fall into the first block.
        var blocks = new RateBlocks([new RateBlock(200, 0.10m), new RateBlock(null, 0.30m)], BlockPeriod.Month);
        var bill = TwoMonths(OneBill.Empty().With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])));
        Assert.Equal([30m, 30m], bill.Lines.Select(l => Math.Round(l.Amount.Amount, 2)));
    }

    [Fact]
    public void Blocks_for_a_quarter_run_through_both_months()
    {
        // March and April are 31 of 91 days of the first quarter and 30 of 91 of the second: two stretches of blocks, as the bill is short of a quarter one.
        var blocks = new RateBlocks([new RateBlock(366, 0.10m), new RateBlock(null, 0.30m)], BlockPeriod.Quarter);
        var bill = TwoMonths(OneBill.Empty().With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])));
        var first = Math.Round(366m * ((31m / 91) + (30m / 91)), 9);
        Assert.Equal(first, Math.Round(bill.Lines[0].Quantity, 9));
        Assert.Equal(400 - first, Math.Round(bill.Lines[1].Quantity, 9));
    }

    [Fact]
    public void Demand_for_a_month_is_measured_in_each_month()
    {
        // Even use: 100 kWh in 744 h and 300 kWh in 720 h, at 12 a kW.
        var bill = TwoMonths(OneBill.Empty().Import("energy", 0).With(new DemandCharge("demand", 12, RateWindow.Always)));
        Assert.Equal([Math.Round(12 * 100m / 744, 2), Math.Round(12 * 300m / 720, 2)], bill.Lines.Where(l => l.Part == "demand").Select(l => l.Amount.Amount));
    }

    [Fact]
    public void A_price_for_a_day_on_each_month_s_demand_counts_the_days_of_its_season()
    {
        // March to April; the season ends with 10 April. 100 kWh in 744 h for 31 days, then 300 kWh in 720 h for 10.
        var tariff = OneBill.Empty().Season("dear", (12, 1), (4, 11)).Import("energy", 0)
            .With(new DemandCharge("demand", 6, RateWindow.Always with { Season = "dear" }, ChargePeriod.Day) { EachMonth = true });
        Assert.Equal([Math.Round(6 * 31 * 100m / 744, 2), Math.Round(6 * 10 * 300m / 720, 2)], TwoMonths(tariff).Lines.Where(l => l.Part == "demand").Select(l => l.Amount.Amount));
    }

    [Fact]
    public void A_least_demand_of_each_day_is_charged_on_the_days_that_count_only()
    {
        // 21 weekdays in March 2024 and 22 in April.
        var tariff = OneBill.Empty().Import("energy", 0)
            .With(new DemandCharge("demand", 1, new RateWindow(null, TariffDays.Weekdays, [HourSpan.WholeDay]), ChargePeriod.Day) { EachDay = true, MinimumKw = 5 });
        Assert.Equal(5m * 43, TwoMonths(tariff).Lines.Single(l => l.Part == "demand").Amount.Amount);
    }

    [Fact]
    public void Blocks_that_run_on_begin_where_the_bill_before_left_off()
    {
        // A quarter's first 120 kWh cost 0.10: March takes 100 of them; April opens another quarter, of which 120 of 300 kWh.
        // A year's first 120 run on: 100 in March, 20 in April.
        decimal[] Of(BlockPeriod per)
        {
            var blocks = new RateBlocks([new RateBlock(120, 0.10m), new RateBlock(null, 0.30m)], per) { RunsOn = true };
            return [.. MonthByMonth(OneBill.Empty().With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)]))).Select(b => b.Total.Amount)];
        }
        Assert.Equal([10m, 12m + 54m], Of(BlockPeriod.Quarter));
        Assert.Equal([10m, 2m + 84m], Of(BlockPeriod.Year));
        Assert.Contains("to be stated for a month, a quarter or a year", Assert.Throws<TariffException>(() => Of(BlockPeriod.Day)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_for_a_season_count_by_the_season_s_days()
    {
        // Winter from November to April has 152 days in 2023/24: March is 31 of them, and April lies in no season: 30 of 366.
        var blocks = new RateBlocks([new RateBlock(152, 0.10m), new RateBlock(null, 0.30m)], BlockPeriod.Season);
        var bills = MonthByMonth(OneBill.Empty().Season("winter", (11, 1), (4, 1)).With(new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("energy", blocks)])));
        Assert.Equal(31m, Math.Round(bills[0].Lines[0].Quantity, 6));
        Assert.Equal(Math.Round(152m * 30 / 366, 6), Math.Round(bills[1].Lines[0].Quantity, 6));
    }

    private static IReadOnlyList<Bill> MonthByMonth(Tariff tariff)
    {
        var grid = new IntervalGrid(new LocalDate(2024, 3, 1).AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), 61 * 48);
        var kwh = Enumerable.Range(0, grid.Count).Select(i => i < 31 * 48 ? 100.0 / (31 * 48) : 300.0 / (30 * 48)).ToArray();
        return TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc).Bills(kwh, new double[grid.Count]);
    }

    private static Bill TwoMonths(Tariff tariff)
    {
        var start = new LocalDate(2024, 3, 1);
        var grid = new IntervalGrid(start.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant(), Duration.FromMinutes(30), 61 * 48);
        var kwh = Enumerable.Range(0, grid.Count).Select(i => i < 31 * 48 ? 100.0 / (31 * 48) : 300.0 / (30 * 48)).ToArray();
        var options = new BillingOptions { Periods = [new DateSpan(start, start.PlusDays(61))] };
        return Assert.Single(TariffHistory.Of(tariff).On(grid, DateTimeZone.Utc, options).Bills(kwh, new double[grid.Count]));
    }
}
