using System.Globalization;

namespace SolarEconomics.Tests;

/// <summary>Life-cycle measures: what they refuse and how they say themselves. Published rows are in PublishedLifeCycleTests.</summary>
public sealed class LifeCycleTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Fact]
    public void A_cost_per_kwh_needs_some_kwh() =>
        Assert.StartsWith("Found no energy in any year, expected some kWh",
            Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Lcoe([100], [0, 0], 0.05)).Message);

    [Fact]
    public void Lcoe_without_discounting_is_cost_over_energy() => Assert.Equal(0.2, TimeValue.Lcoe([100, 20], [0, 600], 0), 12);

    [Fact]
    public void A_levelised_cost_says_what_it_counts()
    {
        var cost = TimeValue.Lcoe(MoneyFlow.Nominal(Eur, -9000, -90), [0, 6000], Rate.Nominal(0.06), EnergyCounted.Delivered);
        var finding = cost.Say(CultureInfo.InvariantCulture);
        Assert.Equal("€1.605 a kWh", finding.Figure); // by hand: (9000 + 90/1.06) / (6000/1.06)
        Assert.Equal("is the nominal levelised cost per delivered kWh over 1 year: €9,085 of costs over 5,660 kWh, both discounted.", finding.Words);
        Assert.Contains(finding.Notes, n => n.Contains("6.00 % a year, nominal", StringComparison.Ordinal));
    }

    [Fact]
    public void Parts_after_the_end_of_the_study_are_refused() =>
        Assert.Equal("Found upkeep up to year 3 in a study of 2 years, expected no amount after its end. Lengthen the study, or end the part with a residual value.",
            Assert.Throws<ArgumentException>(() => TimeValue.LifeCycleCost(Rate.Nominal(0.05), 2, ("upkeep", MoneyFlow.Nominal(Eur, 0, -1, -1, -1)))).Message);

    [Fact]
    public void Parts_of_two_currencies_are_refused() =>
        Assert.Throws<MixedMoneyException>(() => TimeValue.LifeCycleCost(Rate.Nominal(0.05), 2,
            ("a", MoneyFlow.Nominal(Eur, -1)), ("b", MoneyFlow.Nominal(Currency.Of("USD"), -1))));

    [Fact]
    public void An_investment_of_nothing_has_no_ratio() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Sir([0, 100], [0], 0.05));

    [Fact]
    public void A_ratio_of_flows_of_money_is_that_of_the_plain_numbers()
    {
        var (savings, investment) = (MoneyFlow.Nominal(Eur, 0, 580, 580), MoneyFlow.Nominal(Eur, -900, -100, 50));
        Assert.Equal(TimeValue.Sir([0, 580, 580], [900, 100, -50], 0.03), TimeValue.Sir(savings, investment, Rate.Nominal(0.03)), 12);
        Assert.Throws<BasisMismatchException>(() => TimeValue.Sir(savings, investment, Rate.Real(0.03)));
        // Net savings and the adjusted rate of flows are those of the plain numbers.
        Assert.Equal(TimeValue.NetSavings([0, 580, 580], [900, 100, -50], 0.03), (double)TimeValue.NetSavings(savings, investment, Rate.Nominal(0.03)).Amount, 9);
        Assert.Equal(TimeValue.Airr(TimeValue.Sir([0, 580, 580], [900, 100, -50], 0.03), 0.03, 2), TimeValue.Airr(savings, investment, Rate.Nominal(0.03), 2).PerYear, 12);
        Assert.Throws<BasisMismatchException>(() => TimeValue.Airr(savings, investment, Rate.Real(0.03), 2));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.05)]
    public void A_level_amount_worth_as_much_as_the_flow_has_its_net_present_value(double rate)
    {
        var flow = MoneyFlow.Nominal(Eur, -1000, 400, 500, 600);
        var level = (double)TimeValue.EquivalentAnnualWorth(flow, Rate.Nominal(rate)).Amount;
        Assert.Equal((double)TimeValue.Npv(flow, Rate.Nominal(rate)).Amount, TimeValue.Npv([0, level, level, level], rate), 9);
    }

    [Fact]
    public void Mirr_needs_a_payment_and_a_return() =>
        Assert.Equal("No modified rate of return: 0 is paid and 110 received over 1 year, expected both above 0 and at least one year. Check the signs.",
            Assert.Throws<ArgumentException>(() => TimeValue.Mirr([10, 100], 0, 0)).Message);

    [Fact]
    public void Mirr_of_a_payment_and_a_return_is_their_irr() =>
        Assert.Equal(0.2, TimeValue.Mirr(MoneyFlow.Nominal(Eur, -100, 0, 144), Rate.Nominal(0.3), Rate.Nominal(0.01)).PerYear, 12);
}
