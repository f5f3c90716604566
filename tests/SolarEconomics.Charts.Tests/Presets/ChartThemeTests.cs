namespace SolarEconomics.Charts.Tests;

public sealed class ChartThemeTests
{
    /// <summary>The smallest distances that the look states: 32.9 in light, 31.7 in dark.</summary>
    [Theory]
    [InlineData("light", 32.9)]
    [InlineData("dark", 31.7)]
    public void The_five_meanings_are_as_far_apart_as_the_look_states_for_every_eye(string theme, double stated)
    {
        var five = Five(Theme(theme));
        var smallest = ColourDistance.Eyes.Values.Min(eye => five.SelectMany((a, i) => five.Skip(i + 1).Select(b => ColourDistance.Between(a, b, eye))).Min());
        Assert.Equal(stated, smallest, 1);
    }

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public void Every_colour_has_a_contrast_of_3_to_1_and_text_of_4_5_to_1_on_paper_and_card(string name)
    {
        var theme = Theme(name);
        foreach (var ground in new[] { theme.Paper, theme.Card })
        {
            Assert.All(Five(theme), c => Assert.True(ColourDistance.Contrast(c, ground) >= 3, $"{c} on {ground}: {ColourDistance.Contrast(c, ground):0.00}"));
            Assert.All([theme.Ink, theme.Soft], c => Assert.True(ColourDistance.Contrast(c, ground) >= 4.5, $"{c} on {ground}: {ColourDistance.Contrast(c, ground):0.00}"));
        }
    }

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public void Exchanging_colours_is_safe_as_no_two_tokens_share_one(string name)
    {
        var tokens = Theme(name).Tokens;
        Assert.Equal(tokens.Count, tokens.Select(t => t.Value).Distinct(StringComparer.Ordinal).Count());
        Assert.All(tokens, t => Assert.Matches("^#[0-9a-f]{6}$", t.Value));
    }

    [Fact]
    public void Every_destination_has_a_mark_of_its_own_in_colour_and_in_pattern()
    {
        var marks = Enum.GetValues<Destination>().Select(d => BarMark.Of(d, ChartTheme.Light)).ToList();
        Assert.Equal(marks.Count, marks.Select(m => m.Pattern).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(marks.Count, marks.Select(m => m.Colour).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData(CorrectionKind.Ageing)]
    [InlineData(CorrectionKind.PricePath)]
    [InlineData(CorrectionKind.PriceInForce)]
    [InlineData(CorrectionKind.TimeValue)]
    [InlineData(CorrectionKind.Tax)]
    public void What_is_no_flow_is_hatched_ink(CorrectionKind kind)
    {
        var mark = BarMark.Of(kind, ChartTheme.Light);
        Assert.True(mark.IsOutlined);
        Assert.Equal(ChartTheme.Light.Ink, mark.Colour);
    }

    private static ChartTheme Theme(string name) => name == "light" ? ChartTheme.Light : ChartTheme.Dark;

    private static string[] Five(ChartTheme t) => [t.Used, t.Exported, t.Stored, t.Paid, t.Lost];
}
