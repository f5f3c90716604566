using CsCheck;

namespace SolarEconomics.Tests;

// Oracles: closed forms (annuity, variance of a weighted sum, lognormal percentiles), a naive loop over years with powers, properties. No published simulation has its draws with it.
public sealed class YearlyPlanTests
{
    private static readonly Currency Eur = Currency.Of("EUR");

    private static readonly YearlyPlan Plan = new()
    {
        Currency = Eur, Investment = new NormalDistribution(9_000, 500), YearlyValue = new NormalDistribution(900, 60),
        Growth = new NormalDistribution(0.02, 0.01), Ageing = new NormalDistribution(0.006, 0.001), WeatherSd = 0.06, DiscountRate = 0.05,
    };

    [Fact]
    public void Numbers_known_for_sure_give_the_plain_present_value() // by hand: -1000 + 200 · (1 - 1.04^-10)/0.04
    {
        var sure = new YearlyPlan { Currency = Eur, Investment = Certain.Of(1_000), YearlyValue = Certain.Of(200), Years = 10 };
        var npv = sure.HowSure(new DrawOptions { MostDraws = 100 }).Values;
        Assert.Equal(-1_000 + (200 * (1 - Math.Pow(1.04, -10)) / 0.04), npv.Mean, 9);
        Assert.Equal(0, npv.Sd);
    }

    [Fact]
    public void Each_draw_agrees_with_a_naive_loop_over_years_with_powers() =>
        Gen.Select(Gen.Int[1, 40], Gen.Double[0, 0.2], Gen.Double[-0.3, 0.5]).Sample((years, weather, rate) =>
        {
            var plan = Plan with { Years = years, WeatherSd = weather, DiscountRate = rate };
            var npv = plan.HowSure(new DrawOptions { MostDraws = 100, Seed = 5 }).Values;
            for (var draw = 0; draw < 100; draw++)
            {
                var common = NormalScores.Four<Words1, Lanes1>((ulong)draw, 0, 0, 5);
                var (growth, ageing) = (0.02 + (0.01 * common.C.Value), 0.006 + (0.001 * common.D.Value));
                var naive = -(9_000 + (500 * common.A.Value));
                for (var t = 1; t <= years; t++)
                {
                    var four = NormalScores.Four<Words1, Lanes1>((ulong)draw, (uint)((t - 1) / 4), 1, 5);
                    var z = ((t - 1) % 4) switch { 0 => four.A.Value, 1 => four.B.Value, 2 => four.C.Value, _ => four.D.Value };
                    naive += (900 + (60 * common.B.Value)) * (1 + (weather * z)) * Math.Pow((1 + growth) * (1 - ageing), t - 1) / Math.Pow(1 + rate, t);
                }
                Assert.Equal(naive, npv.Values[draw], 1e-9 * (1 + Math.Abs(naive)));
            }
        }, iter: 50);

    [Fact]
    public void Threads_and_vector_widths_change_no_bit()
    {
        var options = new DrawOptions { MostDraws = 10_007, Seed = 42 };
        var one = Plan.HowSure(options with { Threads = 1 }).Values.Values.ToArray();
        foreach (var threads in new[] { 2, 3, 8 }) Assert.Equal(one, Plan.HowSure(options with { Threads = threads }).Values.Values.ToArray());
        var (alone, four, eight) = (new double[10_007], new double[10_007], new double[10_007]);
        PlanDraws.Fill<Words1, Lanes1>(Plan, null, 42, 0, alone);
        PlanDraws.Fill<Words4, Lanes4>(Plan, null, 42, 0, four);
        PlanDraws.Fill<Words8, Lanes8>(Plan, null, 42, 0, eight);
        Assert.Equal(one, alone);
        Assert.Equal(one, four);
        Assert.Equal(one, eight);
    }

    [Fact]
    public void A_longer_run_begins_with_the_draws_of_a_shorter_one() =>
        Assert.Equal(Plan.HowSure(new DrawOptions { MostDraws = 100 }).Values.Values.ToArray(), Plan.HowSure(new DrawOptions { MostDraws = 3_000 }).Values.Values[..100].ToArray());

    [Fact]
    public void Weather_and_common_spread_give_the_closed_variance()
    {
        // Var = sd(I)² + (Σ d)² sd(V)² + Σ d² w² (V² + sd(V)²), d the discount factors.
        var plan = Plan with { Growth = Certain.Of(0), Ageing = Certain.Of(0) };
        var factors = Enumerable.Range(1, 25).Select(t => Math.Pow(1.05, -t)).ToArray();
        var variance = (500.0 * 500) + (Math.Pow(factors.Sum(), 2) * 60 * 60) + (factors.Sum(d => d * d) * 0.06 * 0.06 * ((900.0 * 900) + (60 * 60)));
        var npv = plan.HowSure(new DrawOptions { MostDraws = 200_000 }).Values;
        Assert.Equal(-9_000 + (900 * factors.Sum()), npv.Mean, 4 * npv.StandardError);
        Assert.Equal(Math.Sqrt(variance), npv.Sd, 4 * npv.Sd / Math.Sqrt(2.0 * npv.Count));
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void A_lognormal_value_gives_the_closed_percentiles(double share)
    {
        var value = new LognormalDistribution(Math.Log(900), 0.3);
        var plan = new YearlyPlan { Currency = Eur, Investment = Certain.Of(0), YearlyValue = value, Years = 1, DiscountRate = 0 };
        var npv = plan.HowSure(new DrawOptions { MostDraws = 100_000 }).Values;
        Assert.Equal(value.Quantile(share), npv.Percentile(share), 4 * npv.StandardErrorOfPercentile(share));
    }

    [Theory]
    [InlineData(-0.8)]
    [InlineData(0.6)]
    [InlineData(1)]
    public void Correlated_inputs_have_the_stated_correlation(double correlation) // Var(V·d − I) of two bell curves with Cov = ρ σ σ
    {
        var plan = new YearlyPlan
        {
            Currency = Eur, Investment = new NormalDistribution(1_000, 100), YearlyValue = new NormalDistribution(1_000, 100), Years = 1, DiscountRate = 0,
            Pairs = [new CorrelatedPair("Investment", "YearlyValue", correlation)],
        };
        var npv = plan.HowSure(new DrawOptions { MostDraws = 100_000 }).Values;
        var sd = 100 * Math.Sqrt(2 - (2 * correlation));
        Assert.Equal(sd, npv.Sd, (4 * sd / Math.Sqrt(2.0 * npv.Count)) + 1e-9);
    }

    [Fact]
    public void Correlations_that_cannot_hold_together_are_refused_by_name()
    {
        var e = Assert.Throws<ArgumentException>(() => (Plan with
        {
            Pairs = [new("Investment", "YearlyValue", 0.9), new("YearlyValue", "Growth", 0.9), new("Investment", "Growth", -0.9)],
        }).HowSure());
        Assert.Equal("Found correlations that cannot hold together, the contradiction shows at \"Growth\", expected that what moves with a thing moves with what that moves with. " +
            "Bring the correlations of that input nearer to 0.", e.Message);
    }

    [Fact]
    public void A_pair_with_a_misspelt_name_lists_the_nearest() =>
        Assert.StartsWith("Found input \"Grwoth\", expected one that has a distribution: Growth",
            Assert.Throws<UnknownNameException>(() => (Plan with { Pairs = [new("Grwoth", "Ageing", 0.5)] }).HowSure()).Message, StringComparison.Ordinal);

    [Fact]
    public void The_stop_rule_ends_where_the_mean_is_sure_enough_and_says_so()
    {
        var chances = Plan.HowSure(new DrawOptions { MostDraws = 1_000_000, StopAtStandardError = 10 });
        Assert.True(chances.IsPreciseEnough);
        Assert.True(chances.Values.Count < 100_000);
        Assert.True(chances.Values.StandardError <= 10);
        Assert.Contains("They ended once the mean was sure to €10.00.", chances.Say(System.Globalization.CultureInfo.InvariantCulture).Notes[^1], StringComparison.Ordinal);
        Assert.Equal(chances.Values.Count, Plan.HowSure(new DrawOptions { MostDraws = 1_000_000, StopAtStandardError = 10, Threads = 1 }).Values.Count);
    }

    [Fact]
    public void A_run_that_is_stopped_ends_without_a_result()
    {
        using var stop = new CancellationTokenSource();
        var seen = new Watch(share => { if (share > 0.01) stop.Cancel(); });
        Assert.Throws<OperationCanceledException>(() => Plan.HowSure(new DrawOptions { MostDraws = 50_000_000, Threads = 1 }, seen, stop.Token));
    }

    [Fact]
    public void Paired_draws_know_a_difference_better_than_either()
    {
        var cheaper = Plan with { Investment = new NormalDistribution(8_900, 500) };
        var options = new DrawOptions();
        var pair = cheaper.HowSure(options).Against(Plan.HowSure(options));
        Assert.Equal(100, pair.Difference.Mean, 9);
        Assert.Equal(1, pair.ChanceThatFirstWins);
        Assert.Equal(0.5, Plan.HowSure(options).Against(Plan.HowSure(options)).ChanceThatFirstWins);
    }

    [Fact]
    public void Draws_of_two_seeds_are_not_paired() => Assert.StartsWith("Found 10000 draws from seed 1 beside 10000 from seed 2",
        Assert.Throws<ArgumentException>(() => Plan.HowSure().Against(Plan.HowSure(new DrawOptions { Seed = 2 }))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_rate_of_5_is_asked_back() => Assert.StartsWith("Found a rate of 5, expected a fraction a year from -0.5 to 1. If you mean 5 %, write 0.05.",
        Assert.Throws<ArgumentOutOfRangeException>(() => (Plan with { DiscountRate = 5 }).HowSure()).Message, StringComparison.Ordinal);

    [Fact]
    public void It_says_itself_with_percentiles_and_what_chance_leaves_open()
    {
        var finding = Plan.HowSure().Say(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Matches("^−?€[0-9,]+$", finding.Figure);
        Assert.Contains("one case in ten is below", finding.Words, StringComparison.Ordinal);
        Assert.Contains("10,000 draws from seed 1; one standard error of the mean is €", finding.Notes[^1], StringComparison.Ordinal);
        Assert.Single(finding.Cautions);
    }

    private sealed class Watch(Action<double> see) : IProgress<double>
    {
        public void Report(double value) => see(value);
    }
}
