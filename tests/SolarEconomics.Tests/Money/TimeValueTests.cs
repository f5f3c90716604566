using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Present values and payback: by hand, against a naive twin, by properties. Published rows are in PublishedMoneyTests.</summary>
public sealed class TimeValueTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    [Fact]
    public void Npv_of_minus_100_then_60_and_60_at_10_percent_is_4_13() => // by hand: -100 + 60/1.1 + 60/1.21
        Assert.Equal(4.132231, TimeValue.Npv([-100, 60, 60], 0.10), 6);

    [Fact]
    public void Npv_at_zero_rate_is_the_plain_sum() => Assert.Equal(20, TimeValue.Npv([-100, 60, 60], 0));

    [Fact]
    public void Npv_agrees_with_the_naive_sum() =>
        Gen.Select(Gen.Double[-1e4, 1e4].Array[1, 40], Gen.Double[-0.2, 0.9]).Sample((flow, rate) =>
            Math.Abs(Naive.Npv(flow, rate) - TimeValue.Npv(flow, rate)) <= 1e-12 * flow.Select((f, t) => Math.Abs(f) / Math.Pow(1 + rate, t)).Sum());

    [Fact]
    public void Npv_of_a_sum_of_flows_is_the_sum_of_their_npvs() =>
        Gen.Select(Gen.Double[-1e4, 1e4].Array[1, 30], Gen.Double[-1e4, 1e4].Array[1, 30]).Sample((a, b) =>
        {
            var (flowA, flowB, rate) = (MoneyFlow.Nominal(Eur, a), MoneyFlow.Nominal(Eur, b), Rate.Nominal(0.05));
            var together = TimeValue.Npv(flowA + flowB, rate) - TimeValue.Npv(flowA, rate) - TimeValue.Npv(flowB, rate);
            return Math.Abs(together.Amount) < 0.0000001m;
        });

    [Fact]
    public void Nominal_and_real_values_agree_through_fisher() =>
        Gen.Select(Gen.Double[-1e4, 1e4].Array[1, 40], Gen.Double[0, 0.2], Gen.Double[-0.02, 0.15]).Sample((amounts, rate, inflation) =>
        {
            var flow = MoneyFlow.Nominal(Eur, amounts);
            var nominal = TimeValue.Npv(flow, Rate.Nominal(rate));
            var real = TimeValue.Npv(flow.ToReal(2026, inflation), Rate.Nominal(rate).ToReal(inflation));
            return Math.Abs(nominal.Amount - real.Amount) < 0.000001m;
        });

    [Fact]
    public void Mid_years_lie_half_a_year_before_year_ends() // by hand: -100 + 110/1.21^0.5
        => Assert.Equal(0, TimeValue.NpvOfMidYears([-100, 110], 0.21), 10);

    [Fact]
    public void Xnpv_in_whole_years_of_365_days_is_npv() =>
        Assert.Equal(TimeValue.Npv([-100, 60, 60], 0.08),
            TimeValue.Xnpv([-100, 60, 60], [new(2021, 1, 1), new(2022, 1, 1), new(2023, 1, 1)], 0.08), 10);

    [Fact]
    public void A_rate_of_5_is_asked_back()
    {
        var asked = Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Npv([-100, 60], 5));
        Assert.StartsWith("Found a rate of 5, which is 500 % a year. Did you mean 0.05? Rates are fractions: 5 % is written 0.05. " +
            "If 500 % is meant, say so with Rate.NominalPercent(500).", asked.Message);
        Assert.Equal(-90, TimeValue.Npv([-100, 60], Rate.NominalPercent(500)));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-2)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_rate_that_loses_all_or_is_no_number_is_refused(double rate) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.Npv([-100, 60], rate));

    [Fact]
    public void A_value_without_end_near_minus_100_percent_is_reported()
    {
        var flow = new double[200];
        flow[^1] = 1;
        Assert.StartsWith("Found no finite value at -100 % a year", Assert.Throws<OverflowException>(() => TimeValue.Npv(flow, -0.999999)).Message);
        Assert.Throws<OverflowException>(() => TimeValue.Npv(MoneyFlow.Nominal(Eur, flow[..20]) + MoneyFlow.Nominal(Eur, 1e27, 1e28), Rate.Nominal(-0.9)));
    }

    [Fact]
    public void A_real_rate_does_not_discount_nominal_money()
    {
        var mixed = Assert.Throws<BasisMismatchException>(() => TimeValue.Npv(MoneyFlow.Nominal(Eur, -100, 60), Rate.Real(0.03)));
        Assert.Equal("Found a flow that is nominal and a rate of 3.00 % a year, real, expected both nominal or both real. " +
            "Convert the rate with ToReal or ToNominal and an inflation rate.", mixed.Message);
        Assert.Throws<BasisMismatchException>(() => TimeValue.Npv(MoneyFlow.Of(PriceBasis.RealOf(2026), Eur, -100, 60), Rate.Nominal(0.03)));
    }

    [Fact]
    public void Xirr_of_real_money_is_a_real_rate()
    {
        var flow = DatedMoneyFlow.InOrder(Eur, PriceBasis.RealOf(2026), [new(new(2021, 1, 1), -100), new(new(2022, 1, 1), 110)]);
        Assert.True(TimeValue.Xirr(flow).IsReal);
        Assert.Equal(0.1, TimeValue.Xirr(flow).PerYear, 10);
        Assert.Equal(0, TimeValue.Xnpv(flow, Rate.Real(0.1)).Amount, 10);
    }

    [Fact]
    public void Dates_out_of_order_are_named_with_their_file_and_line()
    {
        DatedAmount[] amounts = [new(new(2022, 5, 1), -100) { Origin = "ledger.csv, line 3" }, new(new(2021, 5, 1), 110) { Origin = "ledger.csv, line 4" }];
        var refused = Assert.Throws<ArgumentException>(() => DatedMoneyFlow.InOrder(Eur, PriceBasis.Nominal, amounts));
        Assert.Equal("Found 2021-05-01 (ledger.csv, line 4) after 2022-05-01 (ledger.csv, line 3), expected dates in order. " +
            "Sort the payments, or build the flow with DatedMoneyFlow.Sorted.", refused.Message);
        Assert.Equal(new LocalDate(2021, 5, 1), DatedMoneyFlow.Sorted(Eur, PriceBasis.Nominal, amounts).FirstDate);
    }
}
