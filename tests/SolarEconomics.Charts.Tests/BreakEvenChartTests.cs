using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

/// <summary>What the picture of a break-even line has that its approved figures do not show.</summary>
public sealed class BreakEvenChartTests
{
    private static readonly BreakEvenLine Line = ChanceSamples.CostsAgainstRate();

    [Fact]
    public void The_side_that_gains_lies_between_the_line_and_the_edge()
    {
        var outline = Traces(Line.Chart()).Single(t => (string?)t["name"] == "gains");
        Assert.Equal([0, 2, 4, 6, 8, 10, 10, 0, 0], Numbers(outline["x"]!));
        Assert.Equal([512, 402, 286, 166, 42, 0, 0, 0, 512], Numbers(outline["y"]!));
        var above = Traces((Line with { GainsAbove = [true, true, true, true, true] }).Chart()).Single(t => (string?)t["name"] == "gains");
        // The last step loses throughout: all of it lies below a line at the upper edge.
        Assert.Equal([512, 402, 286, 166, 42, 600, 600, 600, 512], Numbers(above["y"]!));
    }

    [Fact]
    public void Without_sides_or_without_filling_the_line_stands_alone()
    {
        Assert.DoesNotContain(Traces(Line.Chart(new BreakEvenChartOptions { FillsGains = false })), t => (string?)t["name"] == "gains");
        var unknown = (Line with { GainsAbove = [] }).Chart();
        Assert.DoesNotContain(Traces(unknown), t => (string?)t["name"] == "gains");
        Assert.DoesNotContain("\"text\":\"gains\"", unknown.FigureJson, StringComparison.Ordinal);
        Assert.Contains("\"text\":\"gains\"", Line.Chart().FigureJson, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_with_two_values_or_another_side_breaks_the_line()
    {
        var runs = Traces(ChanceSamples.SeveralValues().Chart()).Where(t => (string?)t["name"] == "just 0").Select(t => Numbers(t["x"]!)).ToList();
        Assert.Equal([-5, -2.5, 0], Assert.Single(runs));
        var turned = Line with { GainsAbove = [false, false, true, true, true] };
        Assert.Equal([[0, 2], [4, 6, 8]], Traces(turned.Chart()).Where(t => (string?)t["name"] == "just 0").Select(t => Numbers(t["x"]!)));
    }

    [Fact]
    public void What_stands_now_is_marked_only_inside_the_picture()
    {
        Assert.Contains(Traces(Line.Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = (0.2, 150) }).Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = (0.03, 601) }).Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = null }).Chart()), t => (string?)t["name"] == "as it stands");
    }

    [Fact]
    public void The_words_of_a_side_keep_away_from_what_stands_now()
    {
        foreach (var (across, solved) in new[] { (0.01, 100.0), (0.05, 80), (0.09, 500), (0.02, 350) })
        {
            var chart = (Line with { AsItStands = (across, solved) }).Chart();
            foreach (var side in JsonNode.Parse(chart.FigureJson)!["layout"]!["annotations"]!.AsArray().Where(a => (string?)a!["name"] == "side"))
            {
                var apart = Math.Max(Math.Abs((double)side!["x"]! - (100 * across)) / 10, Math.Abs((double)side["y"]! - solved) / 600);
                Assert.True(apart > 0.03, $"{side["text"]} at {side["x"]}, {side["y"]} with {across}, {solved}");
            }
        }
    }

    private static IEnumerable<JsonNode> Traces(SolarChart chart) => JsonNode.Parse(chart.FigureJson)!["data"]!.AsArray().Select(t => t!);

    private static double[] Numbers(JsonNode numbers) => [.. numbers.AsArray().Select(n => (double)n!)];
}
