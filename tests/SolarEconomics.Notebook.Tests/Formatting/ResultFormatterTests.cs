using System.Globalization;
using Deedle;
using SolarEconomics.Charts;

namespace SolarEconomics.Notebook.Tests;

public sealed class ResultFormatterTests
{
    private static readonly CultureInfo Irish = NotebookCulture.Named("en-IE");

    [Fact]
    public void A_finding_is_figure_words_tables_notes_and_cautions()
    {
        var shown = ResultFormatter.Format(Sample("13.0 years", "until it is paid back."), Irish);
        Assert.Equal(
            "<div class=\"finding\"><p class=\"finding-figure\">13.0 years</p><p class=\"finding-words\">until it is paid back.</p>" +
            "<table class=\"finding-table\"><caption>Money by year, EUR</caption><thead><tr><th scope=\"col\">year</th><th scope=\"col\">what</th></tr></thead>" +
            "<tbody><tr><td class=\"number\">2026</td><td>panels</td></tr></tbody></table>" +
            "<ul class=\"finding-notes\"><li>Nominal.</li></ul><ul class=\"finding-cautions\"><li>Not advice.</li></ul></div>",
            MultilineText.Read(shown.Data["text/html"]));
        Assert.Equal(
            "13.0 years\nuntil it is paid back.\n\nMoney by year, EUR\nyear  what\n2026  panels\n\n- Nominal.\n! Not advice.",
            MultilineText.Read(shown.Data["text/plain"]));
    }

    [Fact]
    public void Text_of_a_record_never_becomes_a_tag()
    {
        const string Evil = "<script>alert('x')</script>&\"";
        var finding = new Finding(Evil, Evil) { Notes = [Evil], Cautions = [Evil], Tables = [new(Evil, [Evil], [[Evil]])] };
        var html = MultilineText.Read(ResultFormatter.Format(finding, Irish).Data["text/html"]);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Equal(7, html.Split("&lt;script&gt;").Length - 1);
    }

    [Fact]
    public void A_frame_says_its_size_and_what_is_missing()
    {
        var frame = Frame.FromColumns(new Dictionary<string, Series<int, double>>
        {
            ["import (kWh)"] = new SeriesBuilder<int, double> { { 1, 0.5 }, { 2, 1234.25 } }.Series,
            ["<b>"] = new SeriesBuilder<int, double> { { 1, 2 } }.Series,
        });
        var html = MultilineText.Read(ResultFormatter.Format(frame, Irish).Data["text/html"]);
        Assert.Contains("<caption>2 rows × 2 columns, 1 value missing</caption>", html, StringComparison.Ordinal);
        Assert.Contains("<td class=\"number\">1,234.25</td>", html, StringComparison.Ordinal);
        Assert.Contains("<td>missing</td>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_frame_shows_its_first_rows_and_counts_the_rest()
    {
        var series = Enumerable.Range(0, 52_608).Select(i => KeyValuePair.Create(i, (double)i)).ToSeries();
        var html = MultilineText.Read(ResultFormatter.Format(Frame.FromColumns(new Dictionary<string, Series<int, double>> { ["kWh"] = series }), Irish).Data["text/html"]);
        Assert.Contains("52,608 rows × 1 column, 0 values missing; the first 25 rows", html, StringComparison.Ordinal);
        Assert.Equal(26, html.Split("<tr>").Length - 1);
    }

    [Fact]
    public void A_chart_is_data_and_says_its_finding_to_those_who_cannot_see_it()
    {
        var drawing = Plotly.NET.CSharp.Chart.Line<int, double, string>([1, 2], [3.5, 4]);
        var shown = ResultFormatter.Format(SolarChart.Of(drawing, "Cash", "Paid back in 2031."), Irish);
        var figure = shown.Data["application/vnd.plotly.v1+json"]!;
        Assert.NotNull(figure["layout"]);
        Assert.Single(figure["data"]!.AsArray());
        Assert.Equal("Chart: Cash. Paid back in 2031.", MultilineText.Read(shown.Data["text/plain"]));
        Assert.Equal("Chart: Cash. Paid back in 2031.", (string?)shown.Metadata["solareconomics"]!["alt"]);
        Assert.Contains("finding-words\">Paid back in 2031.", MultilineText.Read(shown.Data["text/html"]), StringComparison.Ordinal);
        Assert.NotNull(ResultFormatter.Format(drawing, Irish).Data["application/vnd.plotly.v1+json"]);
    }

    [Fact]
    public void A_chart_of_a_finding_s_own_table_tells_it_once()
    {
        var line = new BreakEvenLine("net present value", OutlookInput.DiscountRate.Between(0, 0.1), OutlookInput.YieldFactor.Between(0, 2), [(0, 0.5), (0.1, 1.5)], 2, Currency.Of("EUR"));
        var html = MultilineText.Read(ResultFormatter.Format(line.Chart(), Irish).Data["text/html"]);
        Assert.Equal(1, html.Split("<caption>Where the net present value is 0").Length - 1);
    }

    [Theory]
    [InlineData("en-IE", "1234.5")]
    [InlineData("de-DE", "1234,5")]
    public void A_number_is_written_in_the_culture_of_the_notebook(string culture, string expected) =>
        Assert.Equal(expected, MultilineText.Read(ResultFormatter.Format(1234.5, NotebookCulture.Named(culture)).Data["text/plain"]));

    [Fact]
    public void An_endless_list_ends_and_a_failing_one_is_said()
    {
        static IEnumerable<int> Endless()
        {
            for (var i = 0; ; i++) yield return i;
        }
        static IEnumerable<int> Failing()
        {
            yield return 1;
            throw new InvalidOperationException("no more");
        }
        Assert.EndsWith("49\n…", MultilineText.Read(ResultFormatter.Format(Endless(), Irish).Data["text/plain"]), StringComparison.Ordinal);
        Assert.EndsWith("could not be shown: no more", MultilineText.Read(ResultFormatter.Format(Failing(), Irish).Data["text/plain"]), StringComparison.Ordinal);
    }

    private static Finding Sample(string figure, string words) => new(figure, words)
    {
        Notes = ["Nominal."],
        Cautions = ["Not advice."],
        Tables = [new("Money by year, EUR", ["year", "what"], [["2026", "panels"]])],
    };
}
