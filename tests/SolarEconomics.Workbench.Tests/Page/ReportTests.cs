using Microsoft.Playwright;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A report is one page: it opens with the network off, asks for nothing, and draws its charts.</summary>
public sealed class ReportTests : IDisposable
{
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task A_report_opens_with_no_network_and_asks_for_nothing()
    {
        var notebook = scratch.Notebook("report.ipynb", "# Does it add up?", "## The answer\n\nWith **words**.", "new Finding(\"€1030\", \"after one year; <b>no tag</b>.\") { Cautions = [\"Not financial advice.\"] }",
            "## The picture", "SolarEconomics.Charts.SolarChart.Of(Plotly.NET.CSharp.Chart.Line<int, int, string>(new[] { 1, 2, 3 }, new[] { 2, 4, 6 }), \"Growth\", \"It grows.\")");
        var target = Path.Combine(scratch.Folder, "report.html");
        var (code, said) = await Verb.RunAsync("report", notebook, "--bare", "--out", target);
        Assert.True(code == 0, said);

        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.StartAsync(playwright);
        var context = await browser.NewContextAsync(new BrowserNewContextOptions { Offline = true });
        var page = await context.NewPageAsync();
        var asked = new List<string>();
        var errors = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        page.PageError += (_, error) => errors.Add(error);
        await page.GotoAsync(new Uri(target).AbsoluteUri);
        await page.Locator(".chart .main-svg").First.WaitForAsync();
        Assert.Equal([new Uri(target).AbsoluteUri], asked.Where(address => !address.StartsWith("data:", StringComparison.Ordinal)));
        Assert.Empty(errors);
        Assert.Equal("€1030", await page.Locator(".finding b").InnerTextAsync());
        Assert.Contains("<b>no tag</b>", await page.Locator(".finding").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal("Take care: Not financial advice.", await page.Locator(".caution").InnerTextAsync());
    }

    [Fact]
    public async Task A_report_of_a_notebook_that_fails_is_not_written()
    {
        var target = Path.Combine(scratch.Folder, "none.html");
        var (code, said) = await Verb.RunAsync("report", scratch.Notebook("fails.ipynb", "# Fails", "none"), "--bare", "--out", target);
        Assert.Equal(1, code);
        Assert.Contains("no report was written", said, StringComparison.Ordinal);
        Assert.False(File.Exists(target));
    }

    public void Dispose() => scratch.Dispose();
}
