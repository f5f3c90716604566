using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

public sealed class CashCurveChartTests
{
    [Fact]
    public void Payback_and_straight_line_are_labelled_with_their_years()
    {
        var labels = Labels(CashSamples.PaidBack().Chart());
        Assert.Contains("<b>paid back after 13.0 years</b>", labels);
        Assert.Contains("straight line says 6.0 years", labels);
    }

    [Fact]
    public void A_plant_that_is_never_paid_back_says_what_is_still_open() =>
        Assert.Contains(Labels(CashSamples.NeverPaidBack().Chart()), l => l.Contains("not paid back within 25 years", StringComparison.Ordinal));

    [Fact]
    public void The_words_are_the_finding_of_the_curve()
    {
        var curve = CashSamples.PaidBack();
        Assert.Equal(curve.Finding.Figure + " " + curve.Finding.Words, curve.Chart().Words);
    }

    private static IReadOnlyList<string> Labels(SolarChart chart) =>
        [.. JsonNode.Parse(chart.FigureJson)!["layout"]!["annotations"]!.AsArray().Select(a => (string)a!["text"]!)];
}
