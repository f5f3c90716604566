using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

/// <summary>Each chart as JSON, as words and for its units.</summary>
public sealed class ApprovedChartsTests
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static TheoryData<string> Names => Samples.Names;

    public static TheoryData<string, string> NamesAndCultures
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in Samples.All.Keys)
            {
                data.Add(name, "de-DE");
                data.Add(name, "tr-TR");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_figure_is_the_approved_one(string name) =>
        ApprovedText.Match(name + ".json", JsonNode.Parse(Samples.All[name].FigureJson)!.ToJsonString(Readable) + "\n");

    [Theory]
    [MemberData(nameof(Names))]
    public void The_words_and_the_table_are_the_approved_ones(string name) => ApprovedText.Match(name + ".txt", InWords(Samples.All[name]));

    [Theory]
    [MemberData(nameof(NamesAndCultures))]
    public void The_machine_s_culture_changes_nothing(string name, string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            var anew = Samples.Draw(name);
            Assert.Equal(Samples.All[name].FigureJson, anew.FigureJson);
            Assert.Equal(InWords(Samples.All[name]), InWords(anew));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_value_axis_says_its_unit(string name)
    {
        var layout = JsonNode.Parse(Samples.All[name].FigureJson)!["layout"]!;
        var unit = layout["annotations"]!.AsArray().Single(a => (string?)a!["name"] == "unit")!;
        Assert.Matches("€|CHF|kWh|%", (string)unit["text"]!);
        Assert.All(Samples.All[name].Table.Rows, r => Assert.Equal(Samples.All[name].Table.Columns.Count, r.Count));
        Assert.Matches("€|CHF|kWh|%", Samples.All[name].Table.Caption + string.Join(' ', Samples.All[name].Table.Columns));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hover_text_has_a_unit_on_every_mark(string name)
    {
        var texts = JsonNode.Parse(Samples.All[name].FigureJson)!["data"]!.AsArray()
            .SelectMany(t => t!["hovertext"]?.AsArray() ?? []).Select(t => (string)t!).Where(t => t.Length > 0).ToList();
        Assert.NotEmpty(texts);
        Assert.All(texts, t => Assert.Matches("€|CHF|kWh|years|%", t));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_figure_can_stand_inside_a_script_element(string name) =>
        Assert.All(Samples.All[name].FigureJson, c => Assert.True(c is >= ' ' and < '\u007f' and not '<' and not '>', $"found {(int)c}"));

    private static string InWords(SolarChart chart)
    {
        var text = new StringBuilder();
        text.Append(chart.AltText).Append("\n\n").Append(chart.Table.Caption).Append('\n').AppendJoin(" | ", chart.Table.Columns).Append('\n');
        foreach (var row in chart.Table.Rows)
        {
            text.AppendJoin(" | ", row).Append('\n');
        }

        return text.ToString();
    }
}
