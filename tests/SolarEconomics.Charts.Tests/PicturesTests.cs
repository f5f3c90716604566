using System.Text.Json.Nodes;

namespace SolarEconomics.Charts.Tests;

/// <summary>Charts in a real browser with the network off.</summary>
public sealed class PicturesTests(ChartBrowser browser) : IClassFixture<ChartBrowser>
{
    public static TheoryData<string> Names => Samples.Names;

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task A_chart_is_drawn_at_every_size_in_both_looks_with_all_text_inside_and_apart(string name)
    {
        var open = await browser.Shared();
        foreach (var preset in Samples.Presets)
        {
            foreach (var theme in Samples.Themes)
            {
                var chart = Samples.All[name].For(preset).In(theme);
                await open.Draw(chart);
                var file = Path.Combine(Artifacts.Folder("pictures"), $"{name}-{preset.Name}-{theme.Name}.png");
                await File.WriteAllBytesAsync(file, await open.Picture(chart));
                var texts = await open.Texts();
                Assert.NotEmpty(texts);
                Assert.All(texts, t => Assert.True(t.IsInside, $"{file}: {t} runs out of the picture"));
                Assert.All(texts, t => Assert.True(t.SizePx >= preset.SmallTextPx - 0.01, $"{file}: {t} is smaller than {preset.SmallTextPx} px"));
                foreach (var (a, b) in texts.SelectMany((a, i) => texts.Skip(i + 1).Select(b => (a, b))))
                {
                    Assert.False(a.Covers(b), $"{file}: {a} and {b} cover each other");
                }
            }
        }

        Assert.Empty(open.Complaints);
    }

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task Plotly_s_own_schema_has_no_objection(string name)
    {
        var open = await browser.Shared();
        var objections = string.Join("\n", await open.Objections(Samples.All[name]));
        Assert.True(objections.Length == 0, objections);
    }

    [BrowserFact]
    public async Task An_exported_page_asks_nothing_of_a_network_and_complains_of_nothing()
    {
        await using var open = await browser.Open(Samples.All["cash-paid-back"], 1100, 900, dark: true);
        Assert.Equal([open.Address.AbsoluteUri], open.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)));
        Assert.Empty(open.Complaints);
        Assert.True(await open.Page.EvaluateAsync<bool>("() => document.fonts.check('16px Reading')"));
        await open.Page.ScreenshotAsync(new() { Path = Path.Combine(Artifacts.Folder("pictures"), "page-dark.png"), FullPage = true });
    }

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task The_page_s_recolouring_gives_the_dark_figure(string name)
    {
        var open = await browser.Shared();
        var recoloured = await open.Page.EvaluateAsync<string>("text => JSON.stringify(solarChart.recolour(JSON.parse(text), 'dark'))", Samples.All[name].FigureJson);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(recoloured), Figures.Of(Samples.All[name].In(ChartTheme.Dark))), recoloured);
    }
}
