using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Payback: by hand, against a naive twin, by properties. Published rows are in PublishedMoneyTests.</summary>
public sealed class PaybackTests
{
    [Fact]
    public void A_flow_that_never_comes_back_has_no_payback_and_says_what_is_short()
    {
        var payback = TimeValue.Payback([-100, 30, 30]);
        Assert.Null(payback.First);
        Assert.Null(payback.Lasting);
        Assert.Equal(-40, payback.AtEnd);
    }

    [Fact]
    public void A_late_cost_takes_the_lasting_payback_away_and_leaves_the_first()
    {
        var payback = TimeValue.Payback([-100, 100, -50, 20]);
        Assert.Equal(1, payback.First);
        Assert.Null(payback.Lasting);
    }

    [Fact]
    public void A_cost_of_nothing_is_paid_back_at_once() => Assert.Equal(0, TimeValue.Payback([0, 10]).Lasting);

    [Fact]
    public void Half_a_year_in_is_half_a_year() => Assert.Equal(1.5, TimeValue.Payback([-100, 50, 100]).Lasting);

    [Fact]
    public void Discounted_payback_ends_at_the_net_present_value() =>
        Gen.Double[-1e4, 1e4].Array[1, 40].Sample(flow =>
            Math.Abs(TimeValue.DiscountedPayback(flow, 0.07).AtEnd - TimeValue.Npv(flow, 0.07)) < 1e-7);

    [Fact]
    public void At_the_lasting_payback_the_sum_is_0_and_never_below_it_again() =>
        Gen.Select(Gen.Double[1, 1e4], Gen.Double[-2e3, 4e3].Array[1, 40]).Sample((cost, later) =>
        {
            double[] flow = [-cost, .. later];
            var payback = TimeValue.Payback(flow);
            if (payback.Lasting is not { } years) return payback.AtEnd < 0;
            var after = (int)Math.Ceiling(years - 1e-9);
            return Math.Abs(SumAt(flow, years)) < 1e-6 && payback.RunningSums.Skip(after).All(s => s >= -1e-9) && payback.First <= years;
        });

    [Fact]
    public void A_higher_price_never_shortens_the_payback() =>
        Gen.Select(Gen.Double[100, 1e4], Gen.Double[1, 1e3], Gen.Double[-500, 2e3].Array[1, 40]).Sample((cost, more, later) =>
        {
            var cheap = TimeValue.Payback([-cost, .. later]);
            var dear = TimeValue.Payback([-cost - more, .. later]);
            return (dear.Lasting ?? double.PositiveInfinity) >= (cheap.Lasting ?? double.PositiveInfinity)
                && (dear.First ?? double.PositiveInfinity) >= (cheap.First ?? double.PositiveInfinity);
        });

    [Fact]
    public void A_saving_of_nothing_never_pays() => Assert.Null(TimeValue.SimplePayback(1000, 0));

    [Fact]
    public void A_cost_with_a_sign_is_refused() =>
        Assert.StartsWith("Found a cost of -1000, expected an amount above 0: what is paid is written without a sign here.",
            Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.SimplePayback(-1000, 200)).Message);

    [Fact]
    public void A_dated_payback_is_the_day_from_which_the_sum_stays_up()
    {
        DatedAmount[] amounts =
        [
            new(new(2021, 1, 1), -100), new(new(2021, 6, 1), 120), new(new(2021, 7, 1), -90),
            new(new(2022, 1, 1), 70), new(new(2022, 2, 1), -10), new(new(2022, 2, 1), 10),
        ];
        var payback = TimeValue.Payback(DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, amounts));
        Assert.Equal(new LocalDate(2021, 6, 1), payback.First);
        Assert.Equal(new LocalDate(2022, 1, 1), payback.Lasting);
        Assert.Equal(0m, payback.AtEnd.Amount);
        Assert.Null(TimeValue.Payback(DatedMoneyFlow.InOrder(Currency.Of("EUR"), PriceBasis.Nominal, amounts[..3])).Lasting);
    }

    /// <summary>Naive: walks the running sum, each year's amount arriving evenly.</summary>
    private static double SumAt(double[] flow, double years)
    {
        var sum = flow[0];
        for (var year = 1; year < flow.Length; year++) sum += flow[year] * Math.Clamp(years - (year - 1), 0, 1);
        return sum;
    }
}
