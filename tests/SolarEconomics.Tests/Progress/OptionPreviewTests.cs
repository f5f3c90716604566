using System.Globalization;
using NodaTime;

namespace SolarEconomics.Tests;

/// <summary>Draws of options are slow, a good part of a millisecond each: the first 256 are told as a preview, and nothing else changes.</summary>
public sealed class OptionPreviewTests
{
    private static readonly Outlook Outlook = YearSite.Worth().Outlook(YearSite.Plain with { DiscountRate = 0.05 });
    private static readonly SwapOption Doubled = new("twice the modules", new PanelSwap("roof", NewKwp: 4, Cost: 1_150, On: new LocalDate(2024, 1, 1)));
    private static readonly Uncertainties Odds = new() { WeatherSd = 0.05, Inputs = [OutlookInput.FeedInGrowth.Is(new NormalDistribution(0, 0.02)), OutlookInput.PriceGrowth.Is(new NormalDistribution(0.03, 0.01))] };
    private static readonly DrawOptions Many = new() { MostDraws = 200_000 };
    private static readonly DrawOptions First = new() { MostDraws = 256 };

    [Fact]
    public void What_an_option_may_be_worth_is_told_from_its_first_draws()
    {
        var preview = Assert.IsType<Chances>(FirstTold(stop => Outlook.HowSure(Doubled, Odds, Many, null, stop)));
        Assert.True(preview.IsPreview);
        Assert.Equal(Outlook.HowSure(Doubled, Odds, First).Values.Values.ToArray(), preview.Values.Values.ToArray());
        Assert.StartsWith("is a preview from 256 of 200,000 draws, with a standard error of the mean of €", preview.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_waiting_is_worth_is_told_from_its_first_draws()
    {
        var preview = Assert.IsType<WaitingWorth>(FirstTold(stop => Outlook.Waiting(Doubled, 2, Odds, null, Many, null, stop)));
        var full = Outlook.Waiting(Doubled, 2, Odds, null, First);
        Assert.True(preview.IsPreview && !full.IsPreview);
        Assert.Equal(full.Decided.Values.Values.ToArray(), preview.Decided.Values.Values.ToArray());
        Assert.Equal((full.Flexibility, full.WaitingGain, full.BuyShare), (preview.Flexibility, preview.WaitingGain, preview.BuyShare));
        Assert.StartsWith("is a preview from 256 of 200,000 draws, with", preview.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
        Assert.Contains(". So much is what the right to decide again in 2 years is worth: ", preview.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_grid_is_told_from_five_rows_and_columns()
    {
        var (down, across) = (OutlookInput.PriceGrowth.Between(0, 0.05), OutlookInput.DiscountRate.Between(0.03, 0.07));
        var preview = Assert.IsType<TwoWayGrid>(FirstTold(stop => Outlook.Grid(down, across, 101, null, stop)));
        Assert.Equal(101, preview.PreviewOf);
        var full = Outlook.Grid(down, across, 5);
        Assert.Equal(0, full.PreviewOf);
        Assert.All(full.DownValues.Zip(preview.DownValues), pair => Assert.Equal(pair.First, pair.Second, 12));
        Assert.Equal(full.Amounts, preview.Amounts);
        Assert.StartsWith("is a preview of 101 rows and columns. So many pairs of ", preview.Say(CultureInfo.InvariantCulture).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e-9, 6_000), InlineData(1e9, 4_096), InlineData(1e9, 300)]
    public void A_stop_rule_looks_where_it_looked_whoever_listens(double enough, int most)
    {
        var options = new DrawOptions { MostDraws = most, StopAtStandardError = enough };
        var alone = Outlook.HowSure(Doubled, Odds, options);
        Assert.Equal(most, alone.Values.Count);
        using (WorkProgress.Around(new WorkListener(null) { Preview = _ => { } }))
            Assert.Equal(alone.Values.Values.ToArray(), Outlook.HowSure(Doubled, Odds, options).Values.Values.ToArray());
    }

    /// <summary>The first answer; the rest of the work is stopped.</summary>
    private static IFinding FirstTold(Action<CancellationToken> work)
    {
        using var stop = new CancellationTokenSource();
        var told = new List<IFinding>();
        using (WorkProgress.Around(new WorkListener(null) { Preview = answer => { told.Add(answer); stop.Cancel(); } }))
            Assert.ThrowsAny<OperationCanceledException>(() => work(stop.Token));
        return Assert.Single(told);
    }
}
