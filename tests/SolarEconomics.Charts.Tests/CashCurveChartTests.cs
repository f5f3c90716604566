namespace SolarEconomics.Charts.Tests;

public sealed class CashCurveChartTests
{
    [Fact]
    public void Payback_and_straight_line_are_labelled_with_their_years()
    {
        var chart = CashSamples.PaidBack().Chart();
        Assert.Equal(["paid back after 13.1 years"], Figures.Labels(chart, "payback"));
        Assert.Equal(["straight line says 6.0 years"], Figures.Labels(chart, "straight line"));
    }

    [Fact]
    public void A_plant_that_is_never_paid_back_says_what_is_still_open() =>
        Assert.Equal(["not paid back within 25 years: €5,208 still open"], Figures.Labels(CashSamples.NeverPaidBack().Chart(), "payback"));

    [Fact]
    public void A_first_crossing_that_does_not_last_has_a_mark_of_its_own()
    {
        var curve = CashSamples.PaidBack();
        Assert.DoesNotContain("first", Names(curve.Chart()));
        Assert.Contains("first", Names((curve with { Payback = curve.Payback with { FirstYears = 11.2 } }).Chart()));
    }

    [Fact]
    public void Recorded_cash_is_thicker_than_projected_and_the_lines_meet()
    {
        var lines = Figures.Traces(CashSamples.PaidBack().Chart(), "scatter");
        var recorded = lines.Single(l => (string?)l["name"] == "recorded");
        var projected = lines.Single(l => (string?)l["name"] == "projected");
        Assert.True((double)recorded["line"]!["width"]! > (double)projected["line"]!["width"]!);
        Assert.Equal((string?)recorded["x"]!.AsArray()[^1], (string?)projected["x"]![0]);
        Assert.Equal("dash", (string?)lines.Single(l => (string?)l["name"] == "straight line")["line"]!["dash"]);
    }

    [Fact]
    public void The_straight_line_can_be_left_out()
    {
        var chart = CashSamples.PaidBack().Chart(new CashChartOptions { StraightLine = false });
        Assert.DoesNotContain("straight line", Names(chart));
        Assert.Empty(Figures.Labels(chart, "straight line"));
    }

    [Fact]
    public void A_curve_of_records_alone_or_of_projection_alone_is_drawn()
    {
        var curve = CashSamples.PaidBack();
        var records = curve with { Points = [.. curve.Points.Select(p => p with { IsRecorded = true })] };
        var projection = curve with { Points = [.. curve.Points.Select(p => p with { IsRecorded = false })] };
        Assert.DoesNotContain("projected", Names(records.Chart()));
        Assert.DoesNotContain("recorded", Names(projection.Chart()));
        Assert.Empty(Figures.Labels(projection.Chart(), "records end"));
    }

    [Fact]
    public void The_words_are_the_finding_of_the_curve()
    {
        var curve = CashSamples.PaidBack();
        Assert.Equal(curve.Finding.Figure + " " + curve.Finding.Words, curve.Chart().Words);
    }

    [Fact]
    public void One_point_is_refused_in_words()
    {
        var curve = CashSamples.PaidBack();
        var failure = Assert.Throws<ArgumentException>(() => (curve with { Points = [curve.Points[0]] }).Chart());
        Assert.StartsWith("Found 1 point of the cash position, expected at least 2.", failure.Message, StringComparison.Ordinal);
    }

    private static IEnumerable<string?> Names(SolarChart chart) => Figures.Traces(chart, "scatter").Select(t => (string?)t["name"]);
}
