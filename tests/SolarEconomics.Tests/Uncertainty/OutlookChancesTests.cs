using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: the outlook itself, recomputed with each draw's numbers (the naive twin of the quick sums); closed forms; properties. There is no published simulation of a household with its draws.
public sealed class OutlookChancesTests
{
    private static readonly WorthToDate Worth = YearSite.Worth();
    private static readonly Outlook Outlook = Worth.Outlook(YearSite.Plain with { DiscountRate = 0.04, Ageing = Ageing.Compound(0.006), RunningCostsPerYear = 10 });

    private static readonly Uncertainties Usual = new()
    {
        Inputs =
        [
            OutlookInput.PriceGrowth.Is(new NormalDistribution(0.02, 0.01)),
            OutlookInput.FeedInGrowth.Is(new UniformDistribution(-0.02, 0.02)),
            OutlookInput.AgeingPerYear.Is(new TriangularDistribution(0.002, 0.005, 0.012)),
            OutlookInput.RunningCostsPerYear.Is(LognormalDistribution.OfMean(12, 4)),
        ],
        Pairs = [new CorrelatedPair("import price growth", "feed-in price growth", 0.7)],
    };

    [Fact]
    public void The_quick_sums_of_a_draw_agree_with_a_whole_outlook() =>
        Gen.Select(Gen.Double[-0.05, 0.1], Gen.Double[-0.05, 0.05], Gen.Double[0, 0.1], Gen.Double[0, 0.02], Gen.Double[0, 100], Gen.Double[0.5, 1.5], Gen.Double[1.5, 19.5], Gen.Int[-300, 300])
        .Sample((price, feedIn, rate, loss, running, yield, year, residual) =>
        {
            var a = YearSite.Plain with
            {
                PriceGrowth = price, FeedInGrowth = feedIn, CostGrowth = feedIn / 2, DiscountRate = rate, Ageing = Ageing.Compound(loss), YieldFactor = yield,
                RunningCostsPerYear = (decimal)running, Replacements = [new Replacement("inverter", year, 400)], ResidualValue = residual,
            };
            var whole = Worth.Outlook(a);
            var sampler = new OutlookSampler(Worth.ForOutlooks, a.Years);
            var quick = sampler.At(a, Enumerable.Repeat(1.0, sampler.WeatherYears).ToArray(), []);
            Assert.Equal(whole.ExactNpv, quick.Npv, 1e-7);
            Assert.Equal(whole.ExactPosition, quick.PositionAtHorizon, 1e-7);
            Assert.Equal(whole.Payback.LastingYears ?? double.PositiveInfinity, quick.PaybackYears, 1e-9);
        }, iter: 200);

    [Fact]
    public void Threads_change_no_bit_and_the_same_seed_gives_the_same_draws()
    {
        var options = new DrawOptions { MostDraws = 3_000, Seed = 9 };
        var one = Outlook.HowSure(Usual, options with { Threads = 1 });
        var many = Outlook.HowSure(Usual, options with { Threads = 4 });
        Assert.Equal(one.Npv.Values.Values.ToArray(), many.Npv.Values.Values.ToArray());
        Assert.Equal(one.Payback.Percentile(0.5), many.Payback.Percentile(0.5));
        Assert.NotEqual(one.Npv.Values.Mean, Outlook.HowSure(Usual, options with { Seed = 10 }).Npv.Values.Mean);
    }

    [Fact]
    public void An_input_keeps_its_draws_whatever_is_drawn_beside_it()
    {
        var options = new DrawOptions { MostDraws = 200 };
        var alone = new InputDraws(new Uncertainties { Inputs = [Usual.Inputs[0]] }, 1);
        var among = new InputDraws(Usual with { Pairs = [], Inputs = [.. Usual.Inputs.Reverse()] }, 1);
        var (a, b) = (new double[1], new double[4]);
        alone.Put(Outlook.Assumptions, 17, a);
        among.Put(Outlook.Assumptions, 17, b);
        Assert.Equal(a[0], b[3]);
        Assert.Equal(200, Outlook.HowSure(Usual, options).Payback.Count);
    }

    [Fact]
    public void A_growth_without_spread_gives_the_outlook_itself()
    {
        var sure = new Uncertainties { Inputs = [OutlookInput.PriceGrowth.Is(Certain.Of(0))], WeatherSd = 0 };
        var chances = Outlook.HowSure(sure, new DrawOptions { MostDraws = 100 });
        Assert.Equal(Outlook.Npv, chances.Npv.Middle);
        Assert.Equal(0, chances.Npv.Values.Sd, 9);
        Assert.Equal(Outlook.Payback.LastingYears!.Value, chances.Payback.Percentile(0.5)!.Value, 9);
    }

    [Fact]
    public void A_residual_value_moves_the_position_by_its_own_spread() // closed form: sd of the residual, undiscounted
    {
        var only = new Uncertainties { Inputs = [OutlookInput.ResidualValue.Is(new NormalDistribution(200, 50))], WeatherSd = 0 };
        var chances = Outlook.HowSure(only, new DrawOptions { MostDraws = 40_000 });
        Assert.Equal(50, chances.PositionAtHorizon.Values.Sd, 4 * 50 / Math.Sqrt(80_000.0));
        Assert.Equal(1, chances.Knowing[0].ShareOfVariance, 0.02);
    }

    [Fact]
    public void The_share_of_variance_that_each_of_two_independent_inputs_takes_away_is_the_closed_one() // 50² and 100² of 12,500
    {
        var two = OutlookInput.Of("a second sum", InputUnit.Money, -1e6, 1e6, a => 0, (a, v) => a with { ResidualValue = a.ResidualValue + (decimal)v });
        var both = new Uncertainties { Inputs = [OutlookInput.ResidualValue.Is(new NormalDistribution(0, 50)), two.Is(new NormalDistribution(0, 100))], WeatherSd = 0 };
        var knowing = Outlook.HowSure(both, new DrawOptions { MostDraws = 40_000 }).Knowing;
        Assert.Equal(["a second sum", "residual value"], knowing.Select(k => k.Input));
        Assert.Equal(0.8, knowing[0].ShareOfVariance, 0.02);
        Assert.Equal(0.2, knowing[1].ShareOfVariance, 0.02);
    }

    [Fact]
    public void Knowing_the_one_thing_that_decides_is_worth_the_mean_of_the_gain_it_lets_one_take() // E[max(Z,0)] = σ/√(2π)
    {
        var only = new Uncertainties { Inputs = [OutlookInput.YieldFactor.Is(new NormalDistribution(1, 0.1))], WeatherSd = 0 };
        var options = new DrawOptions { MostDraws = 40_000 };
        var gains = Outlook.HowSure(only, options);
        // The other outlook is worth the mean of this one, whatever the yield.
        var flat = new OutlookChances(
            gains.Npv with { Values = new DrawnValues([.. Enumerable.Repeat(gains.Npv.Values.Mean, 40_000)], 40_000) }, gains.PositionAtHorizon, gains.Payback, [], []);
        var worth = gains.KnowingBeforeChoosing(flat)[0].WorthForDecision!.Value;
        Assert.Equal(gains.Npv.Values.Sd / Math.Sqrt(2 * Math.PI), worth, 0.03 * worth);
    }

    [Fact]
    public void Failures_drawn_one_by_one_cost_in_the_mean_what_the_outlook_expects()
    {
        var wearing = YearSite.Plain with { CostGrowth = 0.02, WearingParts = [new WearingPart("inverter", 400, WeibullDistribution.OfMean(9, 3), YearSite.First)] };
        var outlook = Worth.Outlook(wearing);
        var drawn = outlook.HowSure(new Uncertainties { WeatherSd = 0 }, new DrawOptions { MostDraws = 20_000 });
        Assert.Equal(outlook.ExactPosition, drawn.PositionAtHorizon.Values.Mean, (4 * drawn.PositionAtHorizon.Values.StandardError) + 5);
        Assert.True(outlook.ExactPosition < Worth.Outlook(YearSite.Plain with { CostGrowth = 0.02 }).ExactPosition - 400);
    }

    [Fact]
    public void Expected_failures_of_a_part_without_ageing_come_evenly() // by hand: exponential life of 10 years fails 0.1 a year for ever
    {
        var part = new WearingPart("fan", 20, new WeibullDistribution(1, 10), YearSite.First);
        foreach (var failures in part.ExpectedFailures(7, 1 / 12.0, 240)) Assert.Equal(0.1 / 12, failures, 1e-4);
    }

    [Fact]
    public void Payback_counts_what_is_not_within_the_horizon_and_gives_no_mean()
    {
        var odds = new PaybackOdds([5, 7.5, 10, double.PositiveInfinity], 4, 20);
        Assert.Equal(0.75, odds.ChanceWithinHorizon);
        Assert.Equal(0.25, odds.ChanceWithin(5));
        Assert.Equal(0.5, odds.ChanceWithin(9.9));
        Assert.Equal(8.75, odds.Percentile(0.5));
        Assert.Null(odds.Percentile(0.9));
        Assert.Equal("75 %", odds.Say(CultureInfo.InvariantCulture).Figure);
        Assert.Throws<ArgumentOutOfRangeException>(() => odds.ChanceWithin(21));
    }

    [Fact]
    public void The_result_says_itself_and_which_input_to_learn_more_about()
    {
        var finding = Outlook.HowSure(Usual, new DrawOptions { MostDraws = 2_000 }).Say(CultureInfo.InvariantCulture);
        Assert.Contains("of all cases are paid back for good within 20 years", finding.Words, StringComparison.Ordinal);
        Assert.Contains("What would narrow it most: to know the import price growth", finding.Words, StringComparison.Ordinal);
        Assert.Contains(finding.Notes, n => n == "import price growth and feed-in price growth move together (correlation 0.7).");
        Assert.Equal(3, finding.Tables.Count);
    }

    [Fact]
    public void Draws_beyond_what_an_outlook_takes_are_held_counted_and_said()
    {
        var wide = new Uncertainties { Inputs = [OutlookInput.AgeingPerYear.Is(new NormalDistribution(0.002, 0.002))] };
        var notes = Outlook.HowSure(wide, new DrawOptions { MostDraws = 1_000 }).Npv.Notes;
        Assert.Contains(notes, n => System.Text.RegularExpressions.Regex.IsMatch(n, "^panel ageing: 1[0-9]{2} of 1000 draws lay beyond what an outlook takes and were held at its end.$"));
    }

    [Fact]
    public void A_growth_of_3_for_3_per_cent_is_asked_back() => Assert.StartsWith("Found a rate of 3, expected a fraction a year from -0.5 to 1. If you mean 3 %, write 0.03.",
        Assert.Throws<ArgumentOutOfRangeException>(() => Outlook.HowSure(new Uncertainties { Inputs = [OutlookInput.PriceGrowth.Is(new NormalDistribution(3, 1))] })).Message, StringComparison.Ordinal);

    [Fact]
    public void With_nothing_to_draw_there_is_nothing_to_simulate() => Assert.StartsWith("Found no input with a distribution and no weather spread",
        Assert.Throws<ArgumentException>(() => Outlook.HowSure(new Uncertainties { WeatherSd = 0 })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_part_that_is_not_assumed_is_named_with_those_that_are()
    {
        var with = Worth.Outlook(YearSite.Plain with { Replacements = [new Replacement("inverter", 8, 400)] });
        Assert.StartsWith("Found part \"invertor\", expected one of the assumed replacements: inverter.",
            Assert.Throws<UnknownNameException>(() => with.HowSure(new Uncertainties { Inputs = [OutlookInput.ReplacementCost("invertor").Is(new UniformDistribution(1, 2))] })).Message, StringComparison.Ordinal);
    }
}
