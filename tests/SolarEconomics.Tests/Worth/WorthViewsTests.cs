using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand on a year of equal days; properties. The same on the demo stands in AlderWeirWorthTests. The paths of prices are checked against plain powers.
public sealed class WorthViewsTests
{
    [Fact]
    public void In_the_money_of_a_later_year_the_value_grows_month_by_month() // by hand: 146.00 at prices 20 % higher
    {
        var index = PriceIndex.Of(Enumerable.Range(0, 36).Select(m => (new YearMonth(2023, 1).PlusMonths(m), m < 24 ? 100.0 : 120.0)));
        var value = YearSite.Worth().ValueInMoneyOf(index, 2025);
        Assert.Equal(175.20m, value.Amount);
        Assert.Equal(PriceBasis.RealOf(2025), value.Basis);
        Assert.Equal(-1_000m * 1.2m + 175.20m, YearSite.Worth().CashSoFarInMoneyOf(index, 2025)!.Total.Amount);
    }

    [Fact]
    public void A_failure_with_stated_energy_is_worth_it_at_the_months_mean_price() // a year of equal days: 2 kWh made, 1 used at 0.30, 1 sold at 0.10, so 0.20 a kWh
    {
        var cost = YearSite.Worth().CostOfFailure("roof", new DateSpan(new LocalDate(2023, 6, 5), new LocalDate(2023, 6, 8)), lostKwh: 50);
        Assert.Equal(10.00m, cost.LostEnergy.Amount);
        Assert.Equal(6, YearSite.Worth().CostOfFailure("roof", new DateSpan(new LocalDate(2023, 6, 5), new LocalDate(2023, 6, 8))).LostKwh, 6);
        Assert.Throws<RecordException>(() => YearSite.Worth().CostOfFailure("roof", new DateSpan(new LocalDate(2022, 6, 5), new LocalDate(2022, 6, 8))));
    }

    [Fact]
    public void Twelve_months_of_an_outlook_are_its_year()
    {
        var outlook = YearSite.Worth().Outlook(YearSite.Plain with { PriceGrowth = 0.03, RunningCostsPerYear = 20, Replacements = [new Replacement("inverter", 8.5, 400)] });
        var months = outlook.MonthsAhead;
        for (var year = 0; year < 20; year++)
        {
            var ofYear = months.Where(m => m.Month.Year == 2023 + year).ToList();
            Assert.Equal((double)outlook.YearsAhead[year].Net.Amount, (double)ofYear.Sum(m => m.Net.Amount), 0.2);
            Assert.Equal((double)outlook.YearsAhead[year].FeedIn.Amount, (double)ofYear.Sum(m => m.FeedIn.Amount), 0.07);
        }
        Assert.True(months[0].IsRecorded);
        Assert.Equal((double)outlook.PositionAtHorizon.Amount, (double)months[^1].Position.Amount, 1.0);
    }

    [Fact]
    public void A_step_of_prices_known_ahead_moves_only_what_comes_after_it() // by hand: savings of 0.30 a day
    {
        var step = new PriceStep(new LocalDate(2030, 1, 1), ImportFactor: 1.5);
        var flat = YearSite.Worth().Outlook(YearSite.Plain).YearsAhead;
        var stepped = YearSite.Worth().Outlook(YearSite.Plain with { PriceSteps = [step] }).YearsAhead;
        Assert.Equal(flat[6].Savings, stepped[6].Savings);
        Assert.Equal((double)flat[7].Savings.Amount * 1.5, (double)stepped[7].Savings.Amount, 0.02);
        Assert.Equal(flat[7].FeedIn, stepped[7].FeedIn);
    }

    [Fact]
    public void After_a_guarantee_export_is_paid_at_the_price_then_and_tax_is_taken_off() // by hand: 1 kWh a day at 0.10, then at 0.04; 25 % tax; 2032 has 366 days
    {
        var a = YearSite.Plain with { FeedInGuarantee = new FeedInGuarantee(new LocalDate(2033, 1, 1), 0.04m), FeedInTaxRate = 0.25 };
        var years = YearSite.Worth().Outlook(a).YearsAhead;
        Assert.Equal(0.10 * 366 * 0.75, (double)years[9].FeedIn.Amount, 0.05);
        Assert.Equal(0.04 * 365 * 0.75, (double)years[10].FeedIn.Amount, 0.05);
    }

    [Fact]
    public void A_connection_given_up_saves_its_supply_charge() => Assert.Equal(182.50 * 6940 / 365.25, // 6,940 days from 2024 to 2042
        (double)(YearSite.Worth().Outlook(YearSite.Plain with { AvoidedSupplyChargePerYear = 182.50m }).PositionAtHorizon - YearSite.Worth().Outlook(YearSite.Plain).PositionAtHorizon).Amount, 0.02);

    [Fact]
    public void Draws_follow_the_same_paths_of_prices()
    {
        var a = YearSite.Plain with
        {
            PriceGrowth = 0.02, DiscountRate = 0.04, PriceSteps = [new PriceStep(new LocalDate(2029, 7, 1), 1.2, 0.8)], AvoidedSupplyChargePerYear = 12,
            FeedInGuarantee = new FeedInGuarantee(new LocalDate(2034, 5, 1), 0.03m), FeedInTaxRate = 0.2,
        };
        var worth = YearSite.Worth();
        var sampler = new OutlookSampler(worth.ForOutlooks, a.Years);
        Assert.Equal(worth.Outlook(a).ExactNpv, sampler.At(a, Enumerable.Repeat(1.0, sampler.WeatherYears).ToArray(), []).Npv, 1e-8);
    }

    [Fact]
    public void A_factor_given_as_per_cent_is_refused() => Assert.Contains("8 % more is 1.08",
        Assert.Throws<ArgumentOutOfRangeException>(() => YearSite.Worth().Outlook(YearSite.Plain with { PriceSteps = [new PriceStep(YearSite.First, 108)] })).Message, StringComparison.Ordinal);
}
