using System.Text.Json.Nodes;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What the page is given for an output of the file format.</summary>
public class AnswersTests
{
    [Fact]
    public void A_finding_is_read_back_from_its_HTML_as_text_alone()
    {
        var finding = Assert.IsType<FindingAnswer>(Of("""
            <div class="finding"><p class="finding-figure">13.0 years</p><p class="finding-words">after &lt;b&gt;all&lt;/b&gt;</p>
            <table class="finding-table"><caption>Parts</caption><thead><tr><th scope="col">Part</th><th scope="col">EUR</th></tr></thead><tbody><tr><td>Sold</td><td class="number">−3,600</td></tr></tbody></table>
            <ul class="finding-notes"><li>Nominal.</li></ul><ul class="finding-cautions"><li>No advice.</li></ul></div>
            """));
        Assert.Equal(("13.0 years", "after <b>all</b>"), (finding.Figure, finding.Words));
        Assert.Equal(["Nominal."], finding.Notes);
        Assert.Equal(["No advice."], finding.Cautions);
        var table = Assert.Single(finding.Tables);
        Assert.Equal("Parts", table.Caption);
        Assert.Equal(["Part", "EUR"], table.Columns);
        Assert.Equal(["Sold", "−3,600"], Assert.Single(table.Rows));
    }

    [Theory]
    [InlineData("<p>something else</p>")]
    [InlineData("<div class=\"finding\"><p>not closed")]
    [InlineData("<!DOCTYPE x [<!ENTITY a 'b'>]><div class=\"finding\">&a;</div>")]
    public void HTML_that_is_no_finding_stays_foreign(string html) => Assert.Equal(html, Assert.IsType<HtmlAnswer>(Of(html)).Html);

    [Fact]
    public void A_chart_keeps_its_figure_and_its_words()
    {
        var chart = Assert.IsType<ChartAnswer>(Answers.Of([Output(new JsonObject { ["application/vnd.plotly.v1+json"] = new JsonObject { ["data"] = new JsonArray() }, ["text/plain"] = "Line chart: it grows." })]).Single());
        Assert.Equal("""{"data":[]}""", chart.Figure.ToJsonString());
        Assert.Equal("Line chart: it grows.", chart.Alt);
    }

    [Fact]
    public void A_short_value_is_shown_as_the_answer_itself_a_long_one_as_text()
    {
        Assert.Equal("42", Assert.IsType<FindingAnswer>(Answers.Of([Output(new JsonObject { ["text/plain"] = "42" })]).Single()).Figure);
        Assert.IsType<TextAnswer>(Answers.Of([Output(new JsonObject { ["text/plain"] = new JsonArray("one\n", "two") })]).Single());
    }

    [Fact]
    public void A_flood_of_text_is_cut_for_the_page_and_says_so()
    {
        var text = Assert.IsType<TextAnswer>(Answers.Of([new JsonObject { ["output_type"] = "stream", ["name"] = "stdout", ["text"] = new string('x', 1_000_000) }]).Single()).Text;
        Assert.InRange(text.Length, 200_000, 200_200);
        Assert.EndsWith("kept in the notebook's file.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_output_of_a_hundred_megabytes_reaches_the_page_as_a_sentence_or_its_beginning()
    {
        var html = Assert.IsType<LongAnswer>(Of("<p>" + new string('x', 100_000_000) + "</p>"));
        Assert.Equal(("HTML", 100_000_007L), (html.What, html.Characters));
        Assert.InRange(((TextAnswer)Answers.Of([Output(new JsonObject { ["text/plain"] = new string('x', 100_000_000) })]).Single()).Text.Length, 200_000, 200_200);
        Assert.IsType<LongAnswer>(Answers.Of([Output(new JsonObject { ["image/png"] = new string('A', 100_000_000) })]).Single());
    }

    [Fact]
    public void A_table_of_the_session_is_named_beside_its_first_rows()
    {
        var output = Output(new JsonObject { ["text/html"] = "<div class=\"finding\"></div>", ["text/plain"] = "t" });
        output["metadata"] = new JsonObject { ["solareconomics"] = new JsonObject { ["table"] = "step-2/1" } };
        Assert.Equal("step-2/1", Assert.IsType<FindingAnswer>(Answers.Of([output]).Single()).Table);
    }

    [Fact]
    public void Outputs_of_other_shapes_are_left_out_not_fallen_over() =>
        Assert.Empty(Answers.Of([new JsonObject(), new JsonObject { ["output_type"] = 3 }, new JsonObject { ["output_type"] = "display_data", ["data"] = "text" }]));

    private static Answer Of(string html) => Answers.Of([Output(new JsonObject { ["text/html"] = html, ["text/plain"] = "plain" })]).Single();

    private static JsonObject Output(JsonObject data) => new() { ["output_type"] = "display_data", ["metadata"] = new JsonObject(), ["data"] = data };
}
