using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>What money and the measures made of it say of themselves, word by word.</summary>
public sealed class MoneyWordsTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Fact]
    public void An_amount_prints_its_currency_and_the_year_where_it_is_real()
    {
        Assert.Equal("-1,234.50 EUR", Money.Nominal(-1234.5m, Eur).ToString());
        Assert.Equal("10.00 EUR (real 2026)", new Money(10, Eur, PriceBasis.RealOf(2026)).ToString());
    }

    [Fact]
    public void A_currency_knows_its_smallest_coin()
    {
        Assert.Equal([2, 0, 3], new[] { " eur ", "JPY", "kwd" }.Select(code => Currency.Of(code).MinorDigits));
        Assert.Equal((2, "no currency"), (default(Currency).MinorDigits, default(Currency).ToString()));
        Assert.Equal("EUR", Eur.ToString());
        Assert.Contains("EUR", Assert.Throws<UnknownNameException>(() => Currency.Of("EUO")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Currency.Of(null!));
    }

    [Fact]
    public void A_price_basis_is_money_of_the_day_or_of_a_year_from_1900_to_2200()
    {
        Assert.Equal((true, null, "nominal"), (PriceBasis.Nominal.IsNominal, PriceBasis.Nominal.Year, PriceBasis.Nominal.ToString()));
        Assert.Equal([1900, 2026, 2200], new[] { 1900, 2026, 2200 }.Select(year => PriceBasis.RealOf(year).Year!.Value));
        foreach (var year in new[] { 1899, 2201 })
            Assert.StartsWith("Expected a calendar year from 1900 to 2200.", Assert.Throws<ArgumentOutOfRangeException>(() => PriceBasis.RealOf(year)).Message);
    }

    [Fact]
    public void A_life_cycle_cost_says_its_total_its_level_year_and_its_parts()
    {
        var cost = TimeValue.LifeCycleCost(Rate.Nominal(0.05), 2,
            ("panels", MoneyFlow.Nominal(Eur, -1000, 0, 0)), ("upkeep", MoneyFlow.Nominal(Eur, 0, -100, -100)));
        var finding = cost.Say(CultureInfo.InvariantCulture);
        // By hand: 1000 + 100/1.05 + 100/1.1025 = 1185.94; over 1/1.05 + 1/1.1025 = 1.85941 that is 637.80 a year.
        Assert.Equal("€1,185.94", finding.Figure);
        Assert.Equal("is the life-cycle cost over 2 years in today's value, €637.80 a year.", finding.Words);
        Assert.Equal(["Discount rate: 5.00 % a year, nominal. Prices: nominal."], finding.Notes);
        var table = Assert.Single(finding.Tables);
        Assert.Equal("Present cost (EUR)", table.Caption);
        Assert.Equal(["Part", "Present cost"], table.Columns);
        Assert.Equal(["panels: 1,000.00", "upkeep: 185.94"], table.Rows.Select(r => $"{r[0]}: {r[1]}"));
    }

    [Fact]
    public void A_levelised_cost_says_its_energy_its_prices_and_what_it_is_not()
    {
        var real = MoneyFlow.Of(PriceBasis.RealOf(2026), Eur, -9000, -90);
        var finding = TimeValue.Lcoe(real, [0, 6000], Rate.Real(0.06), EnergyCounted.GeneratedAc).Say(CultureInfo.InvariantCulture);
        Assert.Equal("is the real levelised cost per generated AC kWh over 1 year: €9,085 of costs over 5,660 kWh, both discounted.", finding.Words);
        Assert.Equal(
            [
                "Discount rate: 6.00 % a year, real.",
                "Costs are those in the flow, with its replacements and residual value; loan flows are not part of it unless they were put in.",
                "It is not a tariff: compare it only with a price path discounted the same way.",
            ],
            finding.Notes);
    }

    [Fact]
    public void A_loan_says_interest_fees_cost_and_every_payment()
    {
        var loan = new Loan(Money.Nominal(1200, Eur), 0.01, 3) { UpfrontFee = 30, FeePerPayment = 2, ExtraPayments = new Dictionary<int, decimal> { [1] = 100 } };
        var table = loan.TableInCoins();
        // By hand, in coins: payment 408.03; interest 12.00, 7.04, 3.03; after the first payment 703.97 are owed, as 100 more were paid.
        Assert.Equal([12.00m, 7.04m, 3.03m], table.Rows.Select(r => r.Interest));
        Assert.Equal([703.97m, 302.98m, 0m], table.Rows.Select(r => r.Balance));
        Assert.Equal([510.03m, 410.03m, 308.01m], table.Rows.Select(r => r.Paid));
        Assert.Equal((22.07m, 36m), (table.TotalInterest.Amount, table.TotalFees.Amount));
        var finding = table.Say(CultureInfo.InvariantCulture);
        Assert.Equal("€22.07", finding.Figure);
        Assert.Equal("of interest and €36.00 of fees are paid on €1,200.00 in 3 payments.", finding.Words);
        // 1,170 is got; 510.03, 410.03 and 308.01 are paid: the rate at which both are worth the same, found by halving.
        var (low, high) = (0.0, 1.0);
        while (high - low > 1e-14)
        {
            var middle = (low + high) / 2;
            if ((510.027 / (1 + middle)) + (410.027 / Math.Pow(1 + middle, 2)) + (308.0 / Math.Pow(1 + middle, 3)) > 1170) low = middle; else high = middle;
        }
        var effective = (Math.Pow(1 + low, 12) - 1) * 100;
        var said = double.Parse(finding.Notes[0].Split(' ')[5], CultureInfo.InvariantCulture);
        Assert.Equal(effective, said, 0.05);
        Assert.StartsWith("Interest and fees together cost ", finding.Notes[0]);
        Assert.Equal(["Not credit advice. A \"0 %\" offer has its price in the fees or in the price of the goods."], finding.Cautions);
        var payments = Assert.Single(finding.Tables);
        Assert.Equal("Payments (EUR)", payments.Caption);
        Assert.Equal(["Payment", "Paid", "Interest", "Principal", "Extra", "Fee", "Balance"], payments.Columns);
        Assert.Equal(["1", "510.03", "12.00", "396.03", "100.00", "2.00", "703.97"], payments.Rows[0]);
    }

    [Fact]
    public void A_mean_level_of_a_year_is_the_mean_of_its_months()
    {
        var index = PriceIndex.Of(Enumerable.Range(1, 12).Select(m => (new YearMonth(2025, m), 100.0 + m)));
        Assert.Equal(106.5, index.LevelOfYear(2025), 12);
    }

    [Fact]
    public void One_is_said_as_one()
    {
        var day = new NodaTime.LocalDate(2024, 1, 1);
        Assert.Equal("1 payment, EUR, nominal", DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, [new DatedAmount(day, -1)]).ToString());
        Assert.StartsWith("within 1 year: ", TimeValue.Payback([-10, 1]).Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        Assert.StartsWith("within 2 years: ", TimeValue.Payback([-10, 1, 1]).Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        _ = TimeValue.TryIrr([-10, 12], out var rate);
        Assert.StartsWith("The sign of the flow changes 1 time: ", rate.Say(CultureInfo.InvariantCulture).Notes[0], StringComparison.Ordinal);
        Assert.Equal("Found 1 amount and 2 dates, expected one date for each amount.",
            Assert.Throws<ArgumentException>(() => TimeValue.Xnpv([1], [day, day], 0.05)).Message);
    }
}
