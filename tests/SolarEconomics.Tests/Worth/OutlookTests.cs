using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand (a year of equal days), a naive yearly sum, properties. Published: payback and present value rows check TimeValue and CashPath's twin there.
public class OutlookTests
{
    // A year of the site is worth 365 · (1 · 0.30 + 1 · 0.10) = 146.00.
    private const double Yearly = 146.0;

    [Fact]
    public void A_year_of_equal_days_is_worth_146() => Assert.Equal(146.00m, YearSite.Worth().Value!.Value.Amount);

    [Fact]
    public void Cost_1000_at_146_a_year_is_paid_back_after_6_84_years() // by hand: 1000 / 146 = 6.849 years of 365 days, 6.845 of 365.25
    {
        var payback = YearSite.Worth().Outlook(YearSite.Plain).Payback;
        Assert.Equal(1_000 / (Yearly * 365.25 / 365), payback.LastingYears!.Value, 2);
        Assert.Equal(payback.FirstYears, payback.LastingYears);
        Assert.Equal(payback.DiscountedYears, payback.LastingYears);
    }

    [Fact]
    public void After_20_years_the_position_is_20_years_of_value_less_the_cost() =>
        Assert.Equal((20 * Yearly * 365.25 / 365) - 1_000, (double)YearSite.Worth().Outlook(YearSite.Plain).PositionAtHorizon.Amount, 0.5);

    [Fact]
    public void The_present_value_agrees_with_a_naive_sum_of_years()
    {
        var outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.05 });
        // Naive: each year's value in its middle.
        var naive = -1_000 + Enumerable.Range(0, 20).Sum(y => Yearly * (365.25 / 365) * Math.Pow(1.05, -(y + 0.5)));
        Assert.Equal(naive, (double)outlook.Npv.Amount, 1.5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Payments_of_the_ledger_count_up_to_the_horizon_and_not_after(int daysAfter)
    {
        var day = YearSite.First.PlusYears(20).PlusDays(daysAfter);
        var repair = new LedgerEntry(day, LedgerKind.Repair, Money.Nominal(500, Currency.Of("EUR")));
        var outlook = YearSite.Worth(more: repair).Outlook(YearSite.Plain with { DiscountRate = 0.05 });
        var without = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.05 });
        Assert.Equal(daysAfter == 0, outlook.DatedFlow.Amounts[^1] == new DatedAmount(day, -500));
        Assert.Equal(daysAfter == 0, outlook.Npv != without.Npv);
        // Months dated at their middle, rounded to half a day at most.
        Assert.Equal((double)outlook.Npv.Amount, (double)TimeValue.Xnpv(outlook.DatedFlow, Rate.Nominal(0.05)).Amount, 0.5);
    }

    [Fact]
    public void Ageing_of_one_per_cent_a_year_takes_one_per_cent_from_the_year_after_the_records()
    {
        var flat = YearSite.Worth().Outlook(YearSite.Plain).YearsAhead;
        var aged = YearSite.Worth().Outlook(YearSite.Plain with { Ageing = Ageing.Compound(0.01) }).YearsAhead;
        Assert.Equal(0.99, (double)(aged[1].Net.Amount / flat[1].Net.Amount), 3);
        Assert.Equal(0.99 * 0.99, (double)(aged[2].Net.Amount / flat[2].Net.Amount), 3);
    }

    [Fact]
    public void A_replacement_falls_into_its_year_and_opens_the_account_again()
    {
        var outlook = YearSite.Worth().Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", 8, 400)] });
        Assert.Equal(-400m, outlook.YearsAhead[8].Replacement.Amount);
        Assert.True(outlook.Payback.FirstYears < 7);
        Assert.True(outlook.Payback.LastingYears > 9);
    }

    [Fact]
    public void What_is_never_paid_back_within_the_horizon_says_how_much_is_open()
    {
        var payback = YearSite.Worth(cost: 90_000m).Outlook(YearSite.Plain).Payback;
        Assert.Null(payback.LastingYears);
        Assert.Equal("Not within 20 years", payback.Finding.Figure);
        Assert.Contains("are still open", payback.Finding.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rate_of_return_of_the_plain_future_is_that_of_its_yearly_flows()
    {
        var outlook = YearSite.Worth().Outlook(YearSite.Plain);
        var naive = TimeValue.Xirr([.. new double[] { -1_000 }.Concat(Enumerable.Repeat(Yearly * 365.25 / 365, 20))],
            [YearSite.First, .. Enumerable.Range(0, 20).Select(y => YearSite.First.PlusYears(y).PlusDays(182))]);
        Assert.Equal(naive, outlook.Irr.Roots[0].PerYear, 2);
    }

    [Fact]
    public void The_value_is_additive_in_its_costs() => Gen.Int[100, 5_000].Sample(cost =>
    {
        var cheap = YearSite.Worth(cost: 1_000m).Outlook(YearSite.Plain with { DiscountRate = 0.04 }).Npv.Amount;
        var dear = YearSite.Worth(cost: 1_000m + cost).Outlook(YearSite.Plain with { DiscountRate = 0.04 }).Npv.Amount;
        Assert.Equal(cost, cheap - dear);
    }, iter: 5);

    [Fact]
    public void A_horizon_that_ends_before_the_records_is_refused_in_words()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => YearSite.Worth().Outlook(YearSite.Plain with { Years = 1 }));
        Assert.StartsWith("Found a horizon of 1 year from 2023-01-01, expected one after the records, which end on 2024-01-01. Take more years.", e.Message, StringComparison.Ordinal);
    }
}
