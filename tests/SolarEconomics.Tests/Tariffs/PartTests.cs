using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>Parts by hand: demand, banked energy, minimum, daily blocks, holidays.</summary>
public sealed class PartTests
{
    private static readonly DateTimeZone Utc = DateTimeZone.Utc;

    [Fact]
    public void Demand_is_the_highest_average_inside_the_window_and_is_remembered()
    {
        var tariff = OneBill.Empty().Import("import", 0m).With(
            new DemandCharge("demand", 10, new RateWindow(null, TariffDays.EveryDay, [HourSpan.Parse("16:00-20:00")]), ChargePeriod.Bill, 60) { RatchetShare = 0.8m });
        var grid = Grid(new LocalDate(2024, 4, 1), 61);
        var kwh = new double[grid.Count];
        kwh[36] = 3; // 18:00 to 18:30
        kwh[37] = 2; // 18:30 to 19:00: together 5 kWh in the hour
        kwh[10] = 9; // 05:00, outside the window
        kwh[(30 * 48) + 36] = 1; // May: 1 kWh in the hour, less than 80 % of April's 5 kW
        var bills = TariffHistory.Of(tariff).On(grid, Utc).Bills(kwh, new double[grid.Count]);
        Assert.Equal([50m, 40m], bills.Select(b => b.Total.Amount));
        Assert.Equal("The highest average over 60 minutes was 1 kW (every day, 16:00–20:00), charged as at least 4 kW, free of tax.", bills[1].Lines[^1].Why);
    }

    [Fact]
    public void Banked_energy_lowers_the_next_bill_and_is_cashed_out_in_its_month()
    {
        var tariff = OneBill.Empty().With(new NetMetering("import", [EnergyRate.Flat("import", 0.30m)], SettlesInMonth: 6, CashOutPerKwh: 0.05m));
        var grid = Grid(new LocalDate(2024, 4, 1), 91);
        var (import, export) = (new double[grid.Count], new double[grid.Count]);
        export[0] = 100; // April: 100 sent, 40 taken: 60 banked
        import[1] = 40;
        import[30 * 48] = 50; // May: 50 taken, 10 left in the bank
        import[61 * 48] = 7; // June: the bank is cashed out first
        var bills = TariffHistory.Of(tariff).On(grid, Utc).Bills(import, export);
        Assert.Equal([0m, 0m, (7 * 0.30m) - (10 * 0.05m)], bills.Select(b => b.Total.Amount));
    }

    [Fact]
    public void Blocks_of_a_day_start_anew_every_day()
    {
        var blocks = new RateBlocks([new RateBlock(10, 0.20m), new RateBlock(null, 0.30m)], BlockPeriod.Day);
        var tariff = OneBill.Empty() with { Parts = [new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("import", blocks)])] };
        var grid = Grid(new LocalDate(2024, 4, 1), 30);
        var kwh = new double[grid.Count];
        kwh[0] = 14;
        kwh[48] = 4;
        var bill = Assert.Single(TariffHistory.Of(tariff).On(grid, Utc).Bills(kwh, new double[grid.Count]));
        Assert.Equal([("import, first 10 kWh a day", 14m), ("import, above 10 kWh a day", 4m)], bill.Lines.Select(l => (l.Part, l.Quantity)));
        var through = blocks with { Per = BlockPeriod.DaysOfBill };
        tariff = tariff with { Parts = [new EnergyPart("import", EnergySide.Import, [EnergyRate.InBlocks("import", through)])] };
        Assert.Equal(18m, Assert.Single(Assert.Single(TariffHistory.Of(tariff).On(grid, Utc).Bills(kwh, new double[grid.Count])).Lines).Quantity);
    }

    [Fact]
    public void A_minimum_bill_tops_up_the_charges_and_leaves_credits_alone()
    {
        var tariff = OneBill.Empty().Import("import", 0.30m).With(new MinimumBill("minimum", 20)).Export("export", 0.10m).Taxed(0.10m);
        var bill = OneBill.Of(tariff, kwh: 10, exportKwh: 50);
        Assert.Equal([3.00m, 17.00m, -5.00m], bill.Lines.Select(l => l.Amount.Amount));
        Assert.Equal(17.00m, bill.Total.Amount);
    }

    [Fact]
    public void A_holiday_is_billed_as_a_holiday_and_not_as_its_weekday()
    {
        var tariff = OneBill.Empty().Import("working days", 0.30m, days: TariffDays.Weekdays).Import("free days", 0.10m).HolidaysOn(new LocalDate(2024, 4, 1));
        var bill = OneBill.Of(tariff, kwh: 30);
        // April 2024: 22 weekdays, one of them the holiday.
        Assert.Equal([21m, 9m], bill.Lines.Select(l => l.Quantity));
    }

    [Fact]
    public void A_season_across_the_year_end_holds_both_its_ends()
    {
        var winter = new TariffSeason("winter", new AnnualDate(11, 1), new AnnualDate(3, 1));
        Assert.Equal([true, true, true, false, false],
            new[] { new LocalDate(2023, 11, 1), new LocalDate(2024, 1, 1), new LocalDate(2024, 2, 29), new LocalDate(2024, 3, 1), new LocalDate(2024, 10, 31) }.Select(winter.Contains));
    }

    [Theory]
    [InlineData(RoundingMode.HalfUp, "26.13")]
    [InlineData(RoundingMode.HalfEven, "26.12")]
    [InlineData(RoundingMode.TowardsZero, "26.12")]
    public void Half_a_cent_goes_where_the_tariff_says(RoundingMode mode, string expected)
    {
        var bill = OneBill.Of(OneBill.Empty().Import("import", 0.0475m).Rounded(mode), kwh: 550);
        Assert.Equal(expected, bill.Total.Amount.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    private static IntervalGrid Grid(LocalDate day, int days) => new(day.AtStartOfDayInZone(Utc).ToInstant(), Duration.FromMinutes(30), days * 48);
}
