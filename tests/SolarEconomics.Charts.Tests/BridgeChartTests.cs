using System.Globalization;

namespace SolarEconomics.Charts.Tests;

public sealed class BridgeChartTests
{
    [Fact]
    public void Each_bar_starts_where_the_one_before_it_ended()
    {
        var bars = Figures.Traces(BridgeSamples.ToDate().Chart(), "bar");
        var at = 14_213.0;
        foreach (var bar in bars.Skip(1).SkipLast(1))
        {
            Assert.Equal(at, (double)bar["base"]![0]!, 2);
            at += (double)bar["y"]![0]!;
        }

        Assert.Equal(6_874, at, 2);
        Assert.Equal(6_874, (double)bars[^1]["y"]![0]!, 2);
        Assert.Equal(0, (double)bars[^1]["base"]![0]!, 2);
    }

    [Fact]
    public void Each_bar_says_its_amount_with_its_sign() =>
        Assert.Equal(["€0", "−€410", "−€5,900", "+€980", "−€790", "−€6,120"], Figures.Labels(BridgeSamples.Outlook().Chart(), "amount"));

    [Fact]
    public void Under_each_bar_stands_what_the_result_stands_at_but_only_in_the_printed_order()
    {
        Assert.Contains("Ageing<br><i>14 Jun 2028</i>", Ticks(BridgeSamples.Outlook().Chart()));
        Assert.Contains("Ageing", Ticks(BridgeSamples.Outlook().Chart(new BridgeChartOptions { Parts = BridgeParts.AverageOfAllOrders })));
    }

    [Fact]
    public void The_average_of_all_orders_is_drawn_when_asked_for()
    {
        var bridge = BridgeSamples.ToDate();
        var corrections = bridge.Corrections.ToList();
        corrections[0] = corrections[0] with { ShapleyPart = CashSamples.Euros(-1_002) };
        corrections[1] = corrections[1] with { ShapleyPart = CashSamples.Euros(-3_540) };
        var chart = (bridge with { Corrections = corrections }).Chart(new BridgeChartOptions { Parts = BridgeParts.AverageOfAllOrders });
        Assert.Contains("−€1,002", Figures.Labels(chart, "amount"));
        Assert.Contains("−€3,540", Figures.Labels(chart, "amount"));
    }

    [Fact]
    public void A_bridge_without_corrections_has_its_two_ends()
    {
        var bridge = BridgeSamples.ToDate();
        Assert.Equal(["€14,213", "€14,213"], Figures.Labels((bridge with { Corrections = [], End = bridge.Start }).Chart(), "amount"));
    }

    [Fact]
    public void The_declared_culture_writes_the_numbers() =>
        Assert.Contains("−410 €", Figures.Labels(BridgeSamples.Outlook().Chart(new BridgeChartOptions { Culture = CultureInfo.GetCultureInfo("de-DE") }), "amount").Select(l => l.Replace('\u00a0', ' ')));

    [Fact]
    public void Labels_from_records_cannot_become_tags()
    {
        var bridge = BridgeSamples.ToDate() with { StartLabel = "<b>x</b>" };
        Assert.Contains("&lt;b&gt;x&lt;/b&gt;", Ticks(bridge.Chart()));
    }

    private static IReadOnlyList<string> Ticks(SolarChart chart) => [.. Figures.Of(chart)["layout"]!["xaxis"]!["ticktext"]!.AsArray().Select(t => (string)t!)];
}
