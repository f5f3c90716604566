using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Rates of return: by hand, against a naive twin, by properties. Published rows are in PublishedMoneyTests, another program in SecondOpinionTests.</summary>
public sealed class IrrTests
{
    [Fact]
    public void Irr_of_minus_100_then_110_is_10_percent() => Assert.Equal(0.10, TimeValue.Irr([-100, 110]), 12);

    [Fact]
    public void Both_rates_of_a_flow_built_from_10_and_40_percent_are_found()
    {
        // By hand: -(v·1.1 - 1)(v·1.4 - 1)·100 with v = 1/(1+r) is -100 + 250 v - 154 v².
        Assert.False(TimeValue.TryIrr([-100, 250, -154], out var result));
        Assert.Equal(SolveEnd.SeveralRoots, result.End);
        Assert.Equal(0.10, result.Roots[0].PerYear, 10);
        Assert.Equal(0.40, result.Roots[1].PerYear, 10);
        Assert.Equal(2, result.SignChanges);
        Assert.True(result.Residual < 1e-9);
    }

    [Fact]
    public void A_rate_that_only_touches_zero_stands_once()
    {
        // By hand: -(12 v - 10)² is -100 + 240 v - 144 v²: the value is 0 at 20 % and negative on both sides.
        Assert.True(TimeValue.TryIrr([-100, 240, -144], out var result));
        Assert.Equal(0.20, Assert.Single(result.Roots).PerYear, 7);
    }

    [Fact]
    public void Two_rates_a_hundredth_of_a_per_cent_apart_are_both_found()
    {
        // A grid of whole per cents would see no sign change between 20.00 and 20.01 %.
        double[] flow = [-100, 100 * (1.2 + 1.2001), -100 * 1.2 * 1.2001];
        TimeValue.TryIrr(flow, out var result);
        Assert.Equal([0.2, 0.2001], result.Roots.Select(r => Math.Round(r.PerYear, 7)));
    }

    [Fact]
    public void Two_sign_changes_without_a_rate_are_told_apart_from_none()
    {
        Assert.False(TimeValue.TryIrr([-100, 100, -100], out var without));
        Assert.Equal(SolveEnd.NoRealRoot, without.End);
        Assert.False(TimeValue.TryIrr([10, 20, 0], out var none));
        Assert.Equal(SolveEnd.NoSignChange, none.End);
        Assert.Empty(none.Roots);
    }

    [Theory]
    [InlineData(-0.9999, 30)]
    [InlineData(-0.5, 100)]
    [InlineData(1e-12, 25)]
    [InlineData(50, 3)]
    [InlineData(1e6, 2)]
    public void Rates_near_minus_100_percent_near_0_and_far_above_100_percent_are_found(double rate, int year)
    {
        var flow = new double[year + 1];
        flow[0] = -1000;
        flow[year] = 1000 * Math.Pow(1 + rate, year);
        Assert.True(Math.Abs(TimeValue.Irr(flow) - rate) <= 1e-12 * (1 + Math.Abs(rate)));
        TimeValue.TryIrr(flow, out var result);
        Assert.True(Math.Abs(result.Roots[0].PerYear - rate) <= 1e-12 * (1 + Math.Abs(rate)));
    }

    [Fact]
    public void Every_root_that_a_flow_was_built_from_is_found() =>
        // Against the construction: p(v) = ∏ (1 - (1 + rᵢ) v) has exactly the rates rᵢ. Roots are 4 % apart or more.
        Gen.Int[-20, 40].Array[1, 6].Sample(steps =>
        {
            var rates = steps.Distinct().Order().Select(s => s * 0.04).ToArray();
            double[] flow = [-100];
            foreach (var rate in rates) flow = Times(flow, -(1 + rate));
            TimeValue.TryIrr(flow, out var result);
            Assert.Equal(rates.Length, result.Roots.Count);
            for (var i = 0; i < rates.Length; i++) Assert.Equal(rates[i], result.Roots[i].PerYear, 5e-7);
        });

    [Fact]
    public void The_rate_zeroes_the_net_present_value() =>
        Gen.Select(Gen.Double[100, 1e5], Gen.Double[0, 5e3].Array[1, 40]).Sample((cost, savings) =>
        {
            double[] flow = [-cost, .. savings];
            // Savings of almost nothing give a rate nearer to -100 % than a double can tell: said, not rounded.
            if (!TimeValue.TryIrr(flow, out var result)) return savings.Sum() < 1e-12 * cost;
            // A rate is a double: one step of it near -100 % moves the value by about n / (1 + r) steps of the cost.
            var resolution = flow.Length * 1e-15 / (1 + result.Roots[0].PerYear);
            return Math.Abs(TimeValue.Npv(flow, result.Roots[0])) < Math.Max(1e-6, resolution) * cost && Math.Abs(TimeValue.Irr(flow) - result.Roots[0].PerYear) < 1e-10;
        });

    [Fact]
    public void Every_sign_change_that_a_fine_grid_sees_is_among_the_roots() =>
        // Naive twin: the value on a grid of 0.1 % from -50 to 300 %. The grid may miss roots, the solver may not.
        Gen.Double[-100, 100].Array[2, 12].Sample(flow =>
        {
            TimeValue.TryIrr(flow, out var result);
            var rates = Enumerable.Range(0, 3501).Select(i => -0.5 + i * 0.001).ToArray();
            var values = Array.ConvertAll(rates, rate => Naive.Npv(flow, rate));
            for (var i = 1; i < rates.Length; i++)
            {
                if (values[i - 1] * values[i] >= 0) continue;
                var (low, high) = (rates[i - 1], rates[i]);
                Assert.Contains(result.Roots, root => root.PerYear >= low - 1e-9 && root.PerYear <= high + 1e-9);
            }
            Assert.True(result.Roots.Count <= result.SignChanges);
        });

    [Fact]
    public void A_century_of_changing_signs_is_solved_and_each_root_zeroes_the_value() =>
        // Amounts in coins: money knows no 1e-64.
        Gen.Int[-10_000, 10_000].Select(coins => coins / 100.0).Array[60, 101].Sample(flow =>
        {
            TimeValue.TryIrr(flow, out var result);
            Assert.NotEqual(SolveEnd.NotConverged, result.End);
            // Nearer to -100 % the later of a hundred years outgrow a double, so nothing can be summed there.
            foreach (var root in result.Roots.Where(root => root.PerYear > -0.999))
            {
                var size = flow.Select((amount, year) => Math.Abs(amount) * Math.Pow(1 + root.PerYear, -year)).Sum();
                Assert.True(Math.Abs(TimeValue.Npv(flow, root)) <= 1e-9 * size);
            }
        }, iter: 20);

    [Fact]
    public void A_daily_record_that_changes_sign_every_day_is_told_at_once()
    {
        var dates = Enumerable.Range(0, 3000).Select(day => new LocalDate(2020, 1, 1).PlusDays(day)).ToArray();
        var amounts = dates.Select((_, day) => day % 2 == 0 ? -1.0 : 1.01).ToArray();
        Assert.Equal("Found 3000 payments with 2999 sign changes, expected fewer: finding every rate of return would take too long. " +
            "Add payments up by month or year first.", Assert.Throws<NoSingleRateException>(() => TimeValue.Xirr(amounts, dates)).Message);
    }

    [Fact]
    public void A_failed_search_says_its_numbers()
    {
        var none = Assert.Throws<NoSingleRateException>(() => TimeValue.Irr([1600, 210]));
        Assert.Equal("No rate of return: 0 is paid and 1,810 received (sign changes: 0), expected both a payment and a return. " +
            "Check that year 0 holds the cost, as a negative amount.", none.Message);

        var several = Assert.Throws<NoSingleRateException>(() => TimeValue.Irr(MoneyFlow.Nominal(Currency.Of("EUR"), -100, 250, -154)));
        Assert.Equal("Found 2 rates of return (10 %, 40 % a year; sign changes: 2), expected one. " +
            "None of them ranks this flow: compare net present values at a rate of your own, or use Mirr.", several.Message);
        Assert.Equal(2, several.Result.Roots.Count);

        var without = Assert.Throws<NoSingleRateException>(() => TimeValue.Irr(MoneyFlow.Nominal(Currency.Of("EUR"), -100, 100, -100)));
        Assert.Equal("No rate of return above -100 % a year: 200 EUR is paid and 100 EUR received (sign changes: 2), and the net value is 0 at no rate. " +
            "Compare net present values at a rate of your own.", without.Message);
    }

    [Fact]
    public void A_number_that_is_none_is_refused_with_its_place()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => TimeValue.TryIrr([-100, double.NaN], out _));
        Assert.StartsWith("Found NaN at place 1 (counted from 0), expected finite numbers.", refused.Message);
    }

    private static double[] Times(double[] flow, double slope)
    {
        var product = new double[flow.Length + 1];
        for (var i = 0; i < flow.Length; i++)
        {
            product[i] += flow[i];
            product[i + 1] += flow[i] * slope;
        }
        return product;
    }
}
