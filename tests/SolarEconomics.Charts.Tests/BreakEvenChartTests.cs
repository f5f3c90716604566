using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

/// <summary>What the picture of a break-even line has that its approved figures do not show.</summary>
public sealed class BreakEvenChartTests
{
    private static readonly BreakEvenLine Line = ChanceSamples.CostsAgainstRate();

    [Fact]
    public void The_ground_that_gains_lies_between_the_line_and_the_edge()
    {
        Assert.Equal([(0, 0), (2, 0), (4, 0), (6, 0), (8, 0), (8.7, 0), (8.7, 0), (8, 42), (6, 166), (4, 286), (2, 402), (0, 512), (0, 0)], Assert.Single(Ground(Line)));
        var above = Line with { GainsAbove = [true, true, true, true, true], AlwaysBelow = [], AlwaysAbove = [0.1] };
        Assert.Equal([(0, 512), (2, 402), (4, 286), (6, 166), (8, 42), (8.7, 0), (10, 0), (10, 600), (8.7, 600), (8, 600), (6, 600), (4, 600), (2, 600), (0, 600), (0, 512)], Assert.Single(Ground(above)));
        // By which end the line leaves after 8 % is not known, so nothing is filled there.
        Assert.Equal(8, Assert.Single(Ground(Line with { Edges = [] })).Max(p => p.X));
    }

    [Fact]
    public void A_line_that_stands_upright_parts_the_picture()
    {
        var upright = new BreakEvenLine(Line.Measure, Line.Across, Line.Solved, [], 3, Line.Currency) { AlwaysAbove = [0, 0.05], AlwaysBelow = [0.1], Edges = [(0.07, 0), (0.075, 600)] };
        Assert.Equal([(0, 0), (5, 0), (7, 0), (7.5, 600), (5, 600), (0, 600), (0, 0)], Assert.Single(Ground(upright)));
        var other = upright with { AlwaysAbove = [0.1], AlwaysBelow = [0, 0.05] };
        Assert.Equal([(7, 0), (10, 0), (10, 600), (7.5, 600), (7, 0)], Assert.Single(Ground(other)));
        Assert.Equal([7, 7.5], Numbers(Traces(other.Chart()).Single(t => (string?)t["name"] == "just 0")["x"]!));
        Assert.Empty(Ground(other with { Edges = [] }));
    }

    [Fact]
    public void A_line_that_leaves_and_comes_back_has_its_sides_exchanged()
    {
        BreakEvenLine Turned(double low, double high) => new("net present value", Line.Across, Line.Solved, [(0, 200), (0.1, 400)], 2, Line.Currency) { GainsAbove = [true, false], Edges = [(low, 0), (high, 600)] };
        // Down to the lower edge at 4 %, back from the upper one at 6 %: between them all gains.
        Assert.Equal([(0, 200), (4, 0), (5, 0), (6, 0), (10, 0), (10, 400), (6, 600), (5, 600), (4, 600), (0, 600), (0, 200)], Assert.Single(Ground(Turned(0.04, 0.06))));
        // Up to the upper edge at 4 %, back from the lower one at 6 %: between them all loses.
        Assert.Equal([[(0, 200), (4, 600), (4, 600), (0, 600), (0, 200)], [(6, 0), (10, 0), (10, 400), (6, 0), (6, 0)]], Ground(Turned(0.06, 0.04)));
    }

    [Fact]
    public void A_side_without_ground_has_no_word()
    {
        Assert.DoesNotContain("\"loses\"", ChanceSamples.NeverZero().Chart().FigureJson, StringComparison.Ordinal);
        Assert.Contains("\"loses\"", Line.Chart().FigureJson, StringComparison.Ordinal);
    }

    [Fact]
    public void A_touch_or_a_step_not_looked_into_ends_line_and_ground()
    {
        var touching = Line with { GainsAbove = [false, false, null, false, false] };
        Assert.Equal([[0, 2], [6, 8, 8.7]], Runs(touching));
        Assert.Equal(2, Ground(touching).Count);
        Assert.Equal([[0, 2], [6, 8, 8.7]], Runs(Line with { Unclear = [0.04] }));
    }

    [Fact]
    public void A_leap_is_not_called_0()
    {
        var leaping = Line with { Jumps = [.. Line.Points] };
        Assert.Equal("Where the net present value changes its sign", leaping.Chart().Title);
        Assert.All(Traces(leaping.Chart()).Single(t => (string?)t["name"] == "solved")["hovertext"]!.AsArray(), t => Assert.StartsWith("Changes its sign with", (string)t!, StringComparison.Ordinal));
    }

    [Fact]
    public void Numbers_of_an_axis_suit_its_input()
    {
        BreakEvenLine Along(DeclaredRange solved, double at) => new("net present value", Line.Across, solved, [(0, at), (0.1, at)], 2, Line.Currency);
        string[] Ticks(BreakEvenLine line) => [.. JsonNode.Parse(line.Chart().FigureJson)!["layout"]!["yaxis"]!["ticktext"]!.AsArray().Select(t => (string)t!)];
        Assert.Equal(["20", "21", "22"], Ticks(Along(OutlookInput.Horizon.Between(20, 22), 21)));
        var price = OutlookInput.Of("price", InputUnit.Money, 0, 1, _ => 0.05, (a, _) => a).Between(0.03, 0.09);
        Assert.Equal(["€0.04", "€0.06", "€0.08"], Ticks(Along(price, 0.05)).Where((_, i) => i % 2 == 1).ToArray());
        Assert.Contains("€0.0512 at", Along(price, 0.0512).Chart().Words, StringComparison.Ordinal);
        var tiny = OutlookInput.Of("share", InputUnit.Number, 0, 1, _ => 0, (a, _) => a).Between(0, 0.0001);
        Assert.Equal(6, Ticks(Along(tiny, 0.00005)).Distinct().Count());
        Assert.Equal([0.00005, 0.00005], Numbers(Traces(Along(tiny, 0.00005).Chart()).Single(t => (string?)t["name"] == "solved")["y"]!));
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
        Assert.Equal([[-5, -2.5, 0]], Runs(ChanceSamples.SeveralValues()));
        Assert.Equal([[0, 2], [4, 6, 8]], Runs(Line with { GainsAbove = [false, false, true, true, true] }));
    }

    [Fact]
    public void What_stands_now_is_marked_only_inside_the_picture()
    {
        Assert.Contains(Traces(Line.Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = (0.2, 150) }).Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = (0.03, 601) }).Chart()), t => (string?)t["name"] == "as it stands");
        Assert.DoesNotContain(Traces((Line with { AsItStands = null }).Chart()), t => (string?)t["name"] == "as it stands");
    }

    private static List<double[]> Runs(BreakEvenLine line) => [.. Traces(line.Chart()).Where(t => (string?)t["name"] == "just 0").Select(t => Numbers(t["x"]!))];

    private static List<(double X, double Y)[]> Ground(BreakEvenLine line) =>
        [.. Traces(line.Chart()).Where(t => (string?)t["name"] == "gains").Select(t => Numbers(t["x"]!).Zip(Numbers(t["y"]!)).ToArray())];

    private static IEnumerable<JsonNode> Traces(SolarChart chart) => JsonNode.Parse(chart.FigureJson)!["data"]!.AsArray().Select(t => t!);

    private static double[] Numbers(JsonNode numbers) => [.. numbers.AsArray().Select(n => (double)n!)];
}
