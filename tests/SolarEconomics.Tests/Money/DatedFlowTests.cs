using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand, naive twins (days over 365 and powers, term by term), the yearly measures on exact anniversaries, properties.
// Published: none for dated flows but XNPV and XIRR, on which these rest (PublishedMoneyTests).
public sealed class DatedFlowTests
{
    private static readonly Currency Eur = Currency.Of("EUR");
    private static readonly Rate TenPercent = Rate.Nominal(0.1);
    private static readonly LocalDate Start = new(2021, 1, 1); // neither 2021 nor 2022 has a 29 February: whole years of 365 days

    /// <summary>Cents on random days of some twenty years, the first of them a cost.</summary>
    private static readonly Gen<DatedMoneyFlow> Payments =
        from cost in Gen.Int[100_000, 2_000_000]
        from later in Gen.Select(Gen.Int[1, 7_000], Gen.Int[-50_000, 400_000]).Array[1, 30]
        from back in Gen.Int[1, 500_000]
        select DatedMoneyFlow.Sorted(Eur, PriceBasis.Nominal,
            [new(Start, -cost / 100m), .. later.Select(p => new DatedAmount(Start.PlusDays(p.Item1), p.Item2 / 100m)), new(Start.PlusDays(7_001), back / 100m)]);

    /// <summary>Cents by year, as numbers and on anniversaries of a day that every year has.</summary>
    private static readonly Gen<(double[] Yearly, DatedMoneyFlow Dated)> Anniversaries =
        from cost in Gen.Int[100_000, 2_000_000]
        from later in Gen.Int[-50_000, 400_000].Array[1, 30]
        from back in Gen.Int[1, 500_000]
        from day in Gen.Select(Gen.Int[2000, 2030], Gen.Int[1, 12], Gen.Int[1, 28])
        let cents = (int[])[-cost, .. later, back]
        let first = new LocalDate(day.Item1, day.Item2, day.Item3)
        select (cents.Select(c => c / 100.0).ToArray(), DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, cents.Select((c, y) => new DatedAmount(first.PlusYears(y), c / 100m))));

    private static DatedMoneyFlow Flow(params (int Year, decimal Amount)[] amounts) =>
        DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, amounts.Select(a => new DatedAmount(Start.PlusYears(a.Year), a.Amount)));

    [Fact]
    public void Mirr_of_100_then_60_and_60_put_to_work_at_10_percent() => // by hand: (66 + 60) / 100 over two years
        Assert.Equal(Math.Sqrt(1.26) - 1, TimeValue.Mirr(Flow((0, -100), (1, 60), (2, 60)), TenPercent, TenPercent).PerYear, 1e-12);

    [Fact]
    public void Savings_of_100_in_present_value_on_90_invested() // by hand: 55/1.1 + 60.5/1.21 = 100; 100 − 12.1/1.21 = 90
    {
        var (savings, investment) = (Flow((1, 55), (2, 60.5m)), Flow((0, -100), (2, 12.1m)));
        Assert.Equal(100 / 90.0, TimeValue.Sir(savings, investment, TenPercent), 1e-12);
        Assert.Equal(10, (double)TimeValue.NetSavings(savings, investment, TenPercent).Amount, 1e-9);
        Assert.Equal((1.1 * Math.Sqrt(10 / 9.0)) - 1, TimeValue.Airr(savings, investment, TenPercent, Start.PlusYears(2)).PerYear, 1e-12);
    }

    [Fact]
    public void A_cost_per_kwh_of_dated_money_and_dated_kwh() // by hand: (9000 + 106/1.06) / (6360/1.06)
    {
        var cost = TimeValue.Lcoe(Flow((0, -9000), (1, -106)), [(Start.PlusYears(1), 6360)], Rate.Nominal(0.06), EnergyCounted.Delivered);
        Assert.Equal(9100 / 6000.0, (double)cost.PerKwh.Amount, 1e-12);
        Assert.Equal(1, cost.Years);
        var finding = cost.Say(CultureInfo.InvariantCulture);
        Assert.Equal("is the nominal levelised cost per delivered kWh from 1 Jan 2021 to 1 Jan 2022: €9,100 of costs over 6,000 kWh, both discounted.", finding.Words);
        Assert.Equal("Discount rate: 6.00 % a year, nominal. Years are actual days over 365.", finding.Notes[0]);
    }

    [Fact]
    public void A_level_amount_of_two_years_worth_200() => // by hand: −100 − 121/1.21 = −200, over (1 − 1.1⁻²) / 0.1
        Assert.Equal(-200 / ((1 - (1 / 1.21)) / 0.1), (double)TimeValue.EquivalentAnnualWorth(Flow((0, -100), (2, -121)), TenPercent).Amount, 1e-9);

    [Fact]
    public void A_discounted_payback_needs_the_return_of_the_second_year() // by hand: −100 + 121/1.21 at 2 years, then −11/1.1³
    {
        var payback = TimeValue.DiscountedPayback(Flow((0, -100), (1, 40), (2, 121)), TenPercent);
        Assert.Equal(Start.PlusYears(2), payback.First);
        Assert.Equal(Start.PlusYears(2), payback.Lasting);
        Assert.Equal(40 / 1.1, (double)payback.AtEnd.Amount, 1e-9);
        Assert.Equal(["Payments count by their value on the first day at 10.00 % a year, nominal; years are actual days over 365."], payback.Say(CultureInfo.InvariantCulture).Notes);
        Assert.Null(TimeValue.DiscountedPayback(Flow((0, -100), (1, 60), (2, 60), (2, -20)), TenPercent).Lasting);
    }

    [Fact]
    public void A_life_cycle_cost_of_dated_parts() // by hand: 100 + 11/1.1 + 12.1/1.21 − 24.2/1.21
    {
        var study = new DateSpan(Start, Start.PlusYears(2));
        var cost = TimeValue.LifeCycleCost(TenPercent, study, DayCount.Actual365, ("array", Flow((0, -100), (2, 24.2m))), ("upkeep", Flow((1, -11), (2, -12.1m))));
        Assert.Equal([80, 20], cost.Parts.Select(p => Math.Round((double)p.PresentCost.Amount, 9)));
        Assert.Equal(100 / ((1 - (1 / 1.21)) / 0.1), (double)cost.PerYear.Amount, 1e-9);
        var finding = cost.Say(CultureInfo.InvariantCulture);
        Assert.Equal("is the life-cycle cost from 1 Jan 2021 to 31 Dec 2022 in value on the first day, €57.62 a year.", finding.Words);
        Assert.Equal(["Discount rate: 10.00 % a year, nominal. Prices: nominal. Years are actual days over 365."], finding.Notes);
        Assert.Equal("Found array from 2021-01-01 to 2023-01-01 in a study from 2021-01-01 to 2022-12-31, expected a study of a day or more and no payment before or after it. " +
            "Lengthen the study, or end the part with a residual value.",
            Assert.Throws<ArgumentException>(() => TimeValue.LifeCycleCost(TenPercent, study with { End = new(2022, 12, 31) }, DayCount.Actual365, ("array", Flow((0, -100), (2, 24.2m))))).Message);
    }

    [Fact]
    public void On_exact_anniversaries_the_measures_are_those_of_the_yearly_flow() =>
        Gen.Select(Anniversaries, Gen.Double[-0.05, 0.3], Gen.Double[-0.05, 0.3]).Sample((flow, rate, other) =>
        {
            var (yearly, dated) = flow;
            var money = MoneyFlow.Nominal(Eur, yearly);
            var (r, o) = (Rate.Nominal(rate), Rate.Nominal(other));
            const DayCount Count = DayCount.Thirty360European;
            Near(TimeValue.Mirr(money, r, o).PerYear, TimeValue.Mirr(dated, r, o, Count).PerYear);
            Near(TimeValue.EquivalentAnnualWorth(money, r), TimeValue.EquivalentAnnualWorth(dated, r, Count));
            var (investment, datedInvestment) = (MoneyFlow.Nominal(Eur, -5_000), DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new(dated.FirstDate, -5_000)]));
            Near(TimeValue.Sir(money, investment, r), TimeValue.Sir(dated, datedInvestment, r, Count));
            Near(TimeValue.NetSavings(money, investment, r), TimeValue.NetSavings(dated, datedInvestment, r, Count));
            if (TimeValue.Sir(money, investment, r) > 0)
                Near(TimeValue.Airr(money, investment, r, money.LastYear).PerYear, TimeValue.Airr(dated, datedInvestment, r, dated.LastDate, Count).PerYear);
            double[] kwh = [.. yearly.Select(Math.Abs)];
            var (cost, datedCost) = (TimeValue.Lcoe(money, kwh, r, EnergyCounted.GeneratedAc),
                TimeValue.Lcoe(dated, [.. kwh.Select((k, y) => (dated.FirstDate.PlusYears(y), k))], r, EnergyCounted.GeneratedAc, Count));
            Near(cost.PerKwh, datedCost.PerKwh);
            Near(cost.DiscountedKwh, datedCost.DiscountedKwh);
            Assert.Equal(cost.Years, datedCost.Years);
            var (all, datedAll) = (TimeValue.LifeCycleCost(r, money.LastYear, ("all", money)),
                TimeValue.LifeCycleCost(r, new DateSpan(dated.FirstDate, dated.LastDate), Count, ("all", dated)));
            Near(all.PerYear, datedAll.PerYear);
            Assert.Equal(all.Years, datedAll.Years);
            // The yearly payback interpolates inside the year at whose end the dated payment comes.
            var (payback, datedPayback) = (TimeValue.DiscountedPayback(money, r), TimeValue.DiscountedPayback(dated, r, Count));
            Near(payback.AtEnd, (double)datedPayback.AtEnd.Amount);
            LocalDate? EndOfYear(double? years) => years is { } y ? dated.FirstDate.PlusYears((int)Math.Ceiling(y - 1e-9)) : null;
            Assert.Equal(EndOfYear(payback.First), datedPayback.First);
            Assert.Equal(EndOfYear(payback.Lasting), datedPayback.Lasting);
        }, iter: 2_000);

    [Fact]
    public void Random_days_agree_with_the_naive_sums() =>
        Gen.Select(Payments, Payments, Gen.Double[-0.05, 0.3], Gen.Double[-0.05, 0.3]).Sample((flow, second, rate, other) =>
        {
            double Worth(DatedMoneyFlow f, double r, Func<double, double> part) =>
                f.Amounts.Sum(a => part((double)a.Amount) * Math.Pow(1 + r, -Period.DaysBetween(Start, a.Date) / 365.0));
            var (r, o) = (Rate.Nominal(rate), Rate.Nominal(other));
            var years = Period.DaysBetween(Start, flow.LastDate) / 365.0;
            var mirr = Math.Pow(Worth(flow, other, a => Math.Max(a, 0)) * Math.Pow(1 + other, years) / Worth(flow, rate, a => Math.Max(-a, 0)), 1 / years) - 1;
            Near(mirr, TimeValue.Mirr(flow, r, o).PerYear);
            // The twin's own level factor loses its digits near a rate of 0.
            if (Math.Abs(rate) > 1e-3) Near(Worth(flow, rate, a => a) * rate / (1 - Math.Pow(1 + rate, -years)), (double)TimeValue.EquivalentAnnualWorth(flow, r).Amount);
            var investment = DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, [new(Start, -4_000), new(Start.PlusDays(1_234), 800)]);
            Near(Worth(second, rate, a => a) / -Worth(investment, rate, a => a), TimeValue.Sir(second, investment, r));
            (LocalDate, double)[] kwh = [.. second.Amounts.Select(a => (a.Date, Math.Abs((double)a.Amount)))];
            Near(-Worth(flow, rate, a => a) / Worth(second, rate, Math.Abs), (double)TimeValue.Lcoe(flow, kwh, r, EnergyCounted.Delivered).PerKwh.Amount);
        }, iter: 2_000);

    [Fact]
    public void Without_discounting_the_discounted_payback_is_the_plain_one() => Payments.Sample(flow =>
    {
        var (plain, discounted) = (TimeValue.Payback(flow), TimeValue.DiscountedPayback(flow, Rate.Nominal(0)));
        Assert.Equal((plain.First, plain.Lasting, plain.AtEnd), (discounted.First, discounted.Lasting, discounted.AtEnd));
    });

    [Fact]
    public void A_discounted_payback_ends_at_the_net_present_value() => Gen.Select(Payments, Gen.Double[-0.05, 0.3]).Sample((flow, rate) =>
        Near(TimeValue.Xnpv(flow, Rate.Nominal(rate)), TimeValue.DiscountedPayback(flow, Rate.Nominal(rate)).AtEnd));

    [Fact]
    public void Where_money_is_financed_and_put_to_work_at_the_rate_of_return_the_modified_rate_is_that_rate() => Payments.Sample(flow =>
    {
        if (!TimeValue.TryXirr(flow, out var found)) return;
        Near(found.Roots[0].PerYear, TimeValue.Mirr(flow, found.Roots[0], found.Roots[0]).PerYear, 1e-7);
    });

    [Fact]
    public void Kwh_given_in_any_order_cost_the_same()
    {
        (LocalDate, double)[] kwh = [(Start.PlusDays(40), 10), (Start.PlusDays(-3), 20), (Start.PlusDays(900), 30)];
        var cost = TimeValue.Lcoe(Flow((0, -9)), kwh, TenPercent, EnergyCounted.Delivered);
        Assert.Equal(cost.PerKwh, TimeValue.Lcoe(Flow((0, -9)), [kwh[1], kwh[0], kwh[2]], TenPercent, EnergyCounted.Delivered).PerKwh);
        Assert.Equal((Start.PlusDays(-3), Start.PlusDays(900)), (cost.FirstDay, cost.LastDay));
    }

    private static void Near(Money expected, Money found)
    {
        Assert.Equal((expected.Currency, expected.Basis), (found.Currency, found.Basis));
        Near((double)expected.Amount, (double)found.Amount);
    }

    private static void Near(double expected, double found, double tolerance = 1e-9) =>
        Assert.Equal(expected, found, tolerance * Math.Max(1, Math.Abs(expected)));
}
