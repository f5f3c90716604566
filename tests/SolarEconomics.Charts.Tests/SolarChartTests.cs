using Plotly.NET;

namespace SolarEconomics.Charts.Tests;

public sealed class SolarChartTests
{
    [Fact]
    public void A_figure_drawn_with_the_drawing_package_becomes_a_chart_with_words()
    {
        var chart = SolarChart.Of(CashSamples.PaidBack().Chart().ToPlotly(), "Cash", "It rises.");
        Assert.Equal("Chart: Cash. It rises.", chart.AltText);
        Assert.Equal(CashSamples.PaidBack().Chart().FigureJson, chart.FigureJson);
    }

    [Fact]
    public void Another_size_or_look_keeps_the_words_and_changes_the_figure()
    {
        var chart = BridgeSamples.ToDate().Chart();
        var video = chart.For(ChartPreset.Video).In(ChartTheme.Dark);
        Assert.Equal(chart.Words, video.Words);
        Assert.Equal(1920, (int)Figures.Of(video)["layout"]!["width"]!);
        Assert.Equal(1080, (int)Figures.Of(video)["layout"]!["height"]!);
        Assert.Equal(ChartTheme.Dark.Card, (string?)Figures.Of(video)["layout"]!["paper_bgcolor"]);
    }

    [Fact]
    public void Heading_finding_and_footnote_stand_inside_a_headed_picture_only()
    {
        var chart = BridgeSamples.ToDate().Chart(new BridgeChartOptions { Title = "Why", Footnote = "Invented data" });
        Assert.Empty(Figures.Labels(chart, "heading"));
        Assert.Equal(["Why"], Figures.Labels(chart.For(ChartPreset.Video), "heading"));
        Assert.Equal(["€6,874 so far, where counters times one price say €14,213."], Figures.Labels(chart.For(ChartPreset.Report), "finding"));
        Assert.Equal(["Invented data"], Figures.Labels(chart.For(ChartPreset.Report), "footnote"));
    }

    [Fact]
    public void The_exported_page_escapes_text_and_carries_the_script_once()
    {
        var bridge = BridgeSamples.ToDate() with { Finding = new Finding("<script>", "a & b") { Cautions = ["Not <tax> advice."] } };
        var html = bridge.Chart(new BridgeChartOptions { Title = "</title><i>" }).ToHtml();
        Assert.Contains("<title>&lt;/title&gt;&lt;i&gt;</title>", html, StringComparison.Ordinal);
        Assert.Contains("<b>&lt;script&gt;</b> a &amp; b", html, StringComparison.Ordinal);
        Assert.Contains("<li>Not &lt;tax&gt; advice.</li>", html, StringComparison.Ordinal);
        Assert.Equal(2, html.Split("plotly.js v" + PlotlyScript.Version).Length);
        Assert.Equal(5, html.Split("</script>").Length);
    }

    [Fact]
    public void Saving_makes_the_folder_and_leaves_no_part_behind()
    {
        var folder = Path.Combine(Path.GetTempPath(), $"charts-{Guid.NewGuid():N}");
        try
        {
            BridgeSamples.ToDate().Chart().SaveHtml(Path.Combine(folder, "deep", "bridge.html"));
            Assert.Equal(["bridge.html"], Directory.GetFiles(Path.Combine(folder, "deep")).Select(Path.GetFileName));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void The_carried_script_is_the_version_that_it_says()
    {
        Assert.StartsWith("/**\n* plotly.js v" + PlotlyScript.Version, PlotlyScript.Read(), StringComparison.Ordinal);
        Assert.True(PlotlyScript.LengthBytes > 3_000_000);
    }

    [Fact]
    public void A_chart_prints_its_heading_and_finding() =>
        Assert.StartsWith("Value to date. €6,874 so far", BridgeSamples.ToDate().Chart().ToString(), StringComparison.Ordinal);
}
