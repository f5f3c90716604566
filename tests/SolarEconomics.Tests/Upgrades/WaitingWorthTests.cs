using System.Globalization;
using CsCheck;
using NodaTime;

namespace SolarEconomics.Tests;

// Oracles: by hand where two outcomes are known for sure by then; the perfect choice of each draw as an upper bound; properties. No published household case of deciding again carries its draws.
public sealed class WaitingWorthTests
{
    private static readonly LocalDate Start = new(2024, 1, 1);
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.05 });
    private static readonly SwapOption Doubled = new("twice the modules", new PanelSwap("roof", NewKwp: 4, Cost: 1_150, On: Start));
    private static readonly DrawOptions Few = new() { MostDraws = 400 };

    // Feed-in doubles or dies away: with either half of the odds the swap is worth its price later, or is not.
    private static readonly Uncertainties FeedIn = new() { WeatherSd = 0, Inputs = [OutlookInput.FeedInGrowth.Is(DiscreteDistribution.Of((-0.15, 0.5), (0.10, 0.5)))] };

    [Fact]
    public void Where_all_is_known_by_then_only_what_is_worth_it_is_bought()
    {
        var worth = Outlook.Waiting(Doubled, 2, FeedIn, null, Few);
        Assert.Equal(["feed-in price growth"], worth.Known);
        var later = worth.Later.Values.Values;
        var decided = worth.Decided.Values.Values;
        for (var i = 0; i < later.Length; i++) Assert.Equal(Math.Max(0, later[i]), decided[i], 9);
        Assert.Contains(later.ToArray(), v => v < 0);
        Assert.Contains(later.ToArray(), v => v > 0);
        Assert.Equal(later.ToArray().Count(v => v > 0) / 400.0, worth.BuyShare, 9);
        Assert.True(worth.Flexibility.Amount > 50);
    }

    [Fact]
    public void The_fixed_plans_are_those_of_the_paired_draws()
    {
        var worth = Outlook.Waiting(Doubled, 2, FeedIn, new WaitingOptions { PriceFallPerYear = Certain.Of(0.04) }, Few);
        Assert.Equal(Outlook.HowSure(Doubled, FeedIn, Few).Values.Values.ToArray(), worth.Now.Values.Values.ToArray());
        Assert.Equal(Outlook.HowSure(Doubled.Waiting(2, 0.04), FeedIn, Few).Values.Values.ToArray(), worth.Later.Values.Values.ToArray());
    }

    [Fact]
    public void Where_nothing_is_known_by_then_the_right_to_decide_adds_nothing()
    {
        var worth = Outlook.Waiting(Doubled with { Swap = Doubled.Swap with { Cost = 300 } }, 2, FeedIn, new WaitingOptions { Known = [] }, Few);
        Assert.Equal(1, worth.BuyShare);
        Assert.Equal(0, worth.Flexibility.Amount);
        Assert.Contains(worth.Say(CultureInfo.InvariantCulture).Notes, n => n.StartsWith("Nothing drawn is known by then", StringComparison.Ordinal));
    }

    [Fact]
    public void Deciding_again_is_never_worth_more_than_knowing_all() =>
        Gen.Select(Gen.Double[0.01, 0.06], Gen.Double[0, 0.08], Gen.Int[300, 2500], Gen.UInt).Sample((spread, fallSpread, cost, seed) =>
        {
            var open = new Uncertainties { Inputs = [OutlookInput.PriceGrowth.Is(new NormalDistribution(0.01, spread)), OutlookInput.FeedInGrowth.Is(new NormalDistribution(0, spread))] };
            var waiting = new WaitingOptions { PriceFallPerYear = new NormalDistribution(0.03, fallSpread + 0.001) };
            var worth = Outlook.Waiting(Doubled with { Swap = Doubled.Swap with { Cost = cost } }, 3, open, waiting, Few with { Seed = seed });
            var later = worth.Later.Values.Values.ToArray();
            Assert.Equal(["import price growth", "feed-in price growth", "fall of the option's price"], worth.Known);
            Assert.InRange(worth.Decided.Values.Mean, Math.Max(0, worth.Later.Values.Mean) - (3 * worth.Later.Values.StandardError), later.Average(v => Math.Max(0, v)) + 1e-9);
        }, iter: 20);

    [Fact]
    public void Threads_change_nothing_and_the_words_say_what_is_assumed()
    {
        var one = Outlook.Waiting(Doubled, 2, FeedIn, null, Few with { Threads = 1 });
        var many = Outlook.Waiting(Doubled, 2, FeedIn, null, Few with { Threads = 4 });
        Assert.Equal(one.Decided.Values.Values.ToArray(), many.Decided.Values.Values.ToArray());
        var said = one.Say(CultureInfo.InvariantCulture);
        Assert.StartsWith("is what the right to decide again in 2 years is worth: ", said.Words, StringComparison.Ordinal);
        Assert.Contains("Known by then, and taken as fully known: feed-in price growth. A few years tell less than that of a growth rate, so this is an upper estimate.", said.Notes);
        Assert.Equal(3, said.Tables[0].Rows.Count);
        Assert.NotEmpty(said.Cautions);
    }
}
