using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

public sealed class BillingPlanTests
{
    private static readonly DateTimeZone Dublin = DateTimeZoneProviders.Tzdb["Europe/Dublin"];

    private static readonly Tariff Standard = Tariff.Flat("Standard", currency: "EUR", importPerKwh: 0.30m, supplyPerDay: 0.60m,
        exportPerKwh: 0.20m, tax: 0.09m, from: new LocalDate(2022, 1, 1));

    [Fact]
    public void A_flat_month_is_days_and_kwh_with_tax_less_untaxed_export()
    {
        // By hand: 31 × 0.60 = 18.60; 100 kWh × 0.30 = 30.00; tax 9 % of 48.60 = 4.374; export 50 × 0.20 = 10.00; 48.60 + 4.37 − 10.00 = 42.97.
        var grid = Grid(new LocalDate(2022, 1, 1), 31);
        var bill = Assert.Single(TariffHistory.Of(Standard).On(grid, Dublin).Bills(Even(grid, 100), Even(grid, 50)));
        Assert.Equal([18.60m, 30.00m, -10.00m], bill.Lines.Select(l => l.Amount.Amount));
        Assert.Equal(4.37m, bill.Tax.Amount);
        Assert.Equal(42.97m, bill.Total.Amount);
        Assert.Equal("31 days of being connected at 0.60 EUR a day, before 9 % tax.", bill.Lines[0].Why);
        Assert.Equal("100 kWh taken from the grid (at any hour) at 0.30 EUR a kWh, before 9 % tax.", bill.Lines[1].Why);
        Assert.Equal("50 kWh sent to the grid (at any hour) at 0.20 EUR a kWh, free of tax.", bill.Lines[2].Why);
    }

    [Theory]
    [InlineData(2024, 3, 31, 46)]
    [InlineData(2024, 10, 27, 50)]
    [InlineData(2024, 6, 1, 48)]
    public void A_day_of_a_clock_change_is_one_day_with_every_half_hour_at_its_own_rate(int year, int month, int day, int halfHours)
    {
        var tariff = Tariff.Named("Night", "EUR", from: new LocalDate(2022, 1, 1)).SupplyPerDay(1m)
            .Import("night", 0.10m, hours: "00:00-08:00").Import("day", 0.30m);
        var grid = Grid(new LocalDate(year, month, day), 1);
        Assert.Equal(halfHours, grid.Count);
        var kwh = Enumerable.Repeat(1.0, grid.Count).ToArray();
        var bill = Assert.Single(TariffHistory.Of(tariff).On(grid, Dublin).Bills(kwh, new double[grid.Count]));
        // The clocks change at night: 14, 16 or 18 half hours of night, always 32 of day.
        Assert.Equal([1m, halfHours - 32m, 32m], bill.Lines.Select(l => l.Quantity));
    }

    [Fact]
    public void An_interval_that_a_rate_cuts_through_is_shared_by_time()
    {
        var tariff = Tariff.Named("Cut", "EUR", from: new LocalDate(2022, 1, 1))
            .Import("night", 0.10m, hours: "23:30-08:15").Import("day", 0.30m);
        var start = new LocalDate(2022, 1, 1).AtStartOfDayInZone(Dublin).ToInstant();
        var grid = new IntervalGrid(start, Duration.FromHours(1), 24);
        var plan = TariffHistory.Of(tariff).On(grid, Dublin);
        var kwh = new double[24];
        kwh[8] = 4.0;
        kwh[23] = 2.0;
        var bill = Assert.Single(plan.Bills(kwh, new double[24]));
        Assert.Equal([2.0m, 4.0m], bill.Lines.Select(l => l.Quantity));
        Assert.Equal(0.25, plan.ImportPricePerKwhBeforeTax(8), 12);
        Assert.Equal(0.20, plan.ImportPricePerKwhBeforeTax(23), 12);
    }

    [Fact]
    public void A_first_and_last_month_are_billed_by_their_days()
    {
        var monthly = Tariff.Named("Monthly", "EUR", from: new LocalDate(2022, 1, 1)).SupplyPerMonth(31m).Import("import", 0m);
        var grid = Grid(new LocalDate(2022, 1, 22), 10 + 28 + 3);
        var bills = TariffHistory.Of(monthly).On(grid, Dublin).Bills(new double[grid.Count], new double[grid.Count]);
        Assert.Equal([10.00m, 31.00m, 3.00m], bills.Select(b => b.Total.Amount));
    }

    [Fact]
    public void A_version_that_starts_in_mid_month_splits_the_bill_by_its_day()
    {
        var dearer = Tariff.Flat("Dearer", "EUR", 0.40m, supplyPerDay: 0.70m, from: new LocalDate(2022, 1, 11));
        var grid = Grid(new LocalDate(2022, 1, 1), 31);
        var bill = Assert.Single(TariffHistory.Of(Standard, dearer).On(grid, Dublin).Bills(Even(grid, 31), new double[grid.Count]));
        Assert.Equal([10m, 10m, 21m, 21m], bill.Lines.Select(l => l.Quantity));
        Assert.Equal([6.00m, 3.00m, 14.70m, 8.40m], bill.Lines.Select(l => l.Amount.Amount));
    }

    [Fact]
    public void A_grid_before_the_first_version_is_refused_in_words()
    {
        var grid = Grid(new LocalDate(2021, 12, 31), 2);
        var error = Assert.Throws<TariffException>(() => TariffHistory.Of(Standard).On(grid, Dublin));
        Assert.Equal("Found no tariff in force on 2021-12-31, expected one: the first version, \"Standard\", starts on 2022-01-01. " +
            "Add the version that was in force before, or start the readings later.", error.Message);
    }

    [Fact]
    public void One_price_keeps_the_fixed_parts_and_the_export_of_the_latest_version()
    {
        var history = TariffHistory.Load(TestFiles.Data("evening-peak.json"));
        var grid = Grid(new LocalDate(2020, 6, 1), 30);
        var bill = Assert.Single(history.WithOnePrice(0.545m).On(grid, Dublin).Bills(Even(grid, 100), Even(grid, 10)));
        Assert.Equal([19.50m, -2.10m, 50.00m], bill.Lines.Select(l => l.Amount.Amount));
        Assert.Equal((0.33m + 0.01m) * 1.09m, history.Latest.StandardImportPerKwhWithTax);
        Assert.Equal("day", history.Latest.StandardImportRate.Name);
    }

    [Fact]
    public void A_value_that_is_no_number_is_refused_with_its_place()
    {
        var grid = Grid(new LocalDate(2022, 1, 1), 1);
        var kwh = new double[grid.Count];
        kwh[17] = double.NaN;
        var plan = TariffHistory.Of(Standard).On(grid, Dublin);
        var error = Assert.Throws<ArgumentException>(() => plan.Bills(kwh, new double[grid.Count]));
        Assert.StartsWith("Found no finite number in importKwh at interval 17", error.Message, StringComparison.Ordinal);
    }

    private static IntervalGrid Grid(LocalDate day, int days)
    {
        var start = Dublin.AtStartOfDay(day).ToInstant();
        var end = Dublin.AtStartOfDay(day.PlusDays(days)).ToInstant();
        return new IntervalGrid(start, Duration.FromMinutes(30), (int)((end - start) / Duration.FromMinutes(30)));
    }

    private static double[] Even(IntervalGrid grid, double totalKwh) => [.. Enumerable.Repeat(totalKwh / grid.Count, grid.Count)];
}
