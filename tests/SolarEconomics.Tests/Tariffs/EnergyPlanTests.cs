using NodaTime;

namespace SolarEconomics.Tests.Tariffs;

/// <summary>An invented plan that uses every part of the regulator's form that can be priced, by hand.</summary>
public sealed class EnergyPlanTests
{
    private static readonly DateTimeZone Melbourne = DateTimeZoneProviders.Tzdb["Australia/Melbourne"];

    [Fact]
    public void A_summer_month_is_billed_by_the_fixed_clock_with_blocks_demand_timed_feed_in_and_discount()
    {
        // January 2024 has 23 weekdays. Every half hour takes 1 kWh and sends 1 kWh, so 12 kWh a weekday fall into the peak, 15:00 to 21:00:
        // 10 at 0.50 and 2 at 0.60. The other 744 × 2 − 276 = 1,212 kWh cost 0.20. Demand: 2 kW × 31 days × 0.25.
        // Feed-in: 8 kWh a day from 16:00 to 20:00, 31 × 8 = 248 at 0.10. The discount takes 10 % off the energy.
        var bill = Month(new LocalDate(2024, 1, 1));
        Assert.Equal(
        [
            "supply charge 31.00", "Demand 15.50", "peak, first 10 kWh a day 115.00", "peak, above 10 kWh a day 27.60", "off-peak 242.40",
            "feed-in, peak -24.80", "feed-in, other hours 0.00", "Always -38.50",
        ], Lines(bill));
        Assert.Equal(Math.Round((31 + 15.5m + 115 + 27.6m + 242.4m - 38.5m) * 1.1m - 24.8m, 2), bill.Total.Amount);
    }

    [Fact]
    public void The_rest_of_the_year_has_its_own_charge_and_blocks_stated_for_three_months()
    {
        // June: 1,440 kWh. 30 of the quarter's 91 days of 900 kWh, 296.703 kWh, cost 0.30, the rest 0.25.
        Assert.Equal(["supply charge 27.00", "any hour, first 900 kWh a quarter 89.01", "any hour, above 900 kWh a quarter 285.82", "feed-in, peak -24.00", "feed-in, other hours 0.00", "Always -37.48"],
            Lines(Month(new LocalDate(2024, 6, 1))));
    }

    [Fact]
    public void What_cannot_be_priced_from_a_home_s_two_flows_is_listed() => Assert.Equal(
        ["data.electricityContract.discounts[0].percentOfBill"], Plan().Unpriced);

    [Theory]
    [InlineData("{ \"data\": { \"planId\": \"G\", \"gasContract\": {} } }", "found a plan without an electricity contract")]
    [InlineData("{ \"data\": { \"planId\": \"E\", \"electricityContract\": { \"tariffPeriod\": [ { \"singleRate\": { \"rates\": [ { \"unitPrice\": \"cheap\" } ] } } ] } } }", "found \"cheap\", expected an amount such as \"0.31\"")]
    [InlineData("{ \"data\": { \"planId\": \"E\", \"electricityContract\": { \"tariffPeriod\": [] } } }", "no field \"tariffPeriod\" with anything in it")]
    public void A_plan_that_cannot_be_read_says_where(string text, string expected)
    {
        var error = Assert.Throws<RecordException>(() => TariffHistory.Load(TestFiles.Write(text)));
        Assert.Contains(expected, error.Message, StringComparison.Ordinal);
        Assert.Contains("line 1, column ", error.Message, StringComparison.Ordinal);
    }

    private static TariffHistory Plan() => TariffHistory.Load(TestFiles.Data("plan-every-part.json"));

    private static Bill Month(LocalDate start)
    {
        // The plan's clock is UTC+10 all year; the bill follows it too.
        var clock = DateTimeZone.ForOffset(Offset.FromHours(10));
        var days = CalendarSystem.Iso.GetDaysInMonth(start.Year, start.Month);
        var grid = new IntervalGrid(start.AtStartOfDayInZone(clock).ToInstant(), Duration.FromMinutes(30), days * 48);
        var kwh = Enumerable.Repeat(1.0, grid.Count).ToArray();
        return Assert.Single(Plan().On(grid, Melbourne, new BillingOptions { BillingZone = clock }).Bills(kwh, kwh));
    }

    private static IEnumerable<string> Lines(Bill bill) => bill.Lines.Select(l => FormattableString.Invariant($"{l.Part} {l.Amount.Amount:0.00}"));
}
