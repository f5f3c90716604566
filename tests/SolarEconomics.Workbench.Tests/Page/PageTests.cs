using System.Net;
using System.Net.Sockets;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The page in a real browser, with a real session behind it.</summary>
public sealed class PageTests : IDisposable
{
    private readonly Scratch scratch = new();

    private string Small() => scratch.Notebook("small.ipynb",
        "# Does it add up?\n\nA small notebook of the tests.",
        "var rate = Assume.Rate(\"Price growth\", 0.03, from: 0, to: 0.1);",
        "## The answer\n\nIt is large.",
        "var worth = 1000 * (1 + rate);\nnew Finding($\"€{worth:0}\", \"after one year.\") { Cautions = [\"Not financial advice.\"] }",
        "## The picture",
        "var drawn = Plotly.NET.CSharp.Chart.Line<int, double, string>(new[] { 1, 2, 3 }, new[] { worth, worth * 2, worth * 3 });\nSolarEconomics.Charts.SolarChart.Of(drawn, \"Growth\", \"It grows.\")");

    [BrowserFact]
    public async Task A_notebook_is_worked_out_changed_saved_and_found_again()
    {
        var path = Small();
        await using var reader = await Reader.OpenAsync(path);
        Assert.Equal(["not yet worked out", "not yet worked out"], (await reader.States()).Skip(1));
        await reader.WorkOutAsync();
        Assert.Equal("€1030", await reader.FigureUnder("The answer"));
        Assert.Equal(1, await reader.ChartsDrawnAsync());

        await reader.AssumeAsync("Price growth", "5");
        await reader.Page.Locator("#outline li.old").Nth(1).WaitForAsync();
        Assert.Equal("€1030", await reader.FigureUnder("The answer"));
        await reader.WorkOutAsync();
        Assert.Equal("€1050", await reader.FigureUnder("The answer"));

        await reader.Page.Locator("#saved", new PageLocatorOptions { HasTextString = "Saved" }).WaitForAsync();
        await Task.Delay(2000);
        Assert.Contains("<p class=\\\"finding-figure\\\">€1050</p>", await File.ReadAllTextAsync(path), StringComparison.Ordinal);
        await reader.Page.ReloadAsync();
        Assert.Equal("€1050", await reader.FigureUnder("The answer"));
        Assert.Equal("5.0", await reader.Page.GetByLabel("Price growth", new PageGetByLabelOptions { Exact = true }).First.InputValueAsync());
        Assert.Empty(reader.Errors);
        Assert.All(reader.Requests, address => Assert.StartsWith("http://127.0.0.1:", address, StringComparison.Ordinal));
    }

    [BrowserFact]
    public async Task Code_that_is_typed_is_highlighted_completed_and_worked_out()
    {
        var path = scratch.Notebook("typed.ipynb", "# Typed", "## One", "1");
        await using var reader = await Reader.OpenAsync(path);
        await reader.WorkOutAsync();
        await reader.Card("One").GetByText("Working").ClickAsync();
        var field = reader.Card("One").Locator(".cm-content");
        await field.ClickAsync();
        await reader.Page.Keyboard.PressAsync("Control+A");
        await reader.Page.Keyboard.TypeAsync("var x = 41; // a comment");
        Assert.True(await reader.Card("One").Locator(".cm-line span").CountAsync() >= 3);
        await reader.Page.Keyboard.PressAsync("Enter");
        await reader.Page.Keyboard.TypeAsync("Math.Sq");
        await reader.OfferedAsync("Sqrt");
        await reader.Page.Keyboard.PressAsync("Escape");
        await reader.Page.Keyboard.TypeAsync("rt(x - 5)");
        await reader.Page.Keyboard.PressAsync("Control+Enter");
        await reader.Card("One").GetByText("6", new LocatorGetByTextOptions { Exact = true }).WaitForAsync();
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task A_failing_step_says_what_went_wrong_and_where()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("failing.ipynb", "# Failing", "## One", "var a = 1;\nnone + a", "## Two", "2"));
        await reader.WorkOutAsync();
        Assert.Equal(["failed: see message", "not yet worked out"], await reader.States());
        var problem = await reader.Card("One").Locator(".problem").InnerTextAsync();
        Assert.Contains("none", problem, StringComparison.Ordinal);
        Assert.Contains("line 2", problem, StringComparison.Ordinal);
        Assert.DoesNotContain("Microsoft.", problem, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task HTML_that_a_step_made_reaches_neither_page_nor_network()
    {
        using var elsewhere = new TcpListener(IPAddress.Loopback, 0);
        elsewhere.Start();
        var html = $$"""
            <p id='kept'>kept</p><img src='http://{{elsewhere.LocalEndpoint}}/x.png' onerror='parent.document.title="reached"'><script>top.document.title = 'reached';</script>
            <meta http-equiv='refresh' content='0;url=http://{{elsewhere.LocalEndpoint}}/meta'><link rel='preconnect' href='http://{{elsewhere.LocalEndpoint}}'><link rel='stylesheet' href='http://{{elsewhere.LocalEndpoint}}/x.css'>
            <iframe src='http://{{elsewhere.LocalEndpoint}}/frame'></iframe><form action='http://{{elsewhere.LocalEndpoint}}/form'></form><svg onload='fetch("/notebooks.json").then(() => top.document.title = "reached")'></svg>
            <img src='x' onerror='top.document.title = document.cookie'><style>body { background: url(http://{{elsewhere.LocalEndpoint}}/y.png) }</style>
            """;
        var path = scratch.Notebook("foreign.ipynb", "# Foreign", "## One", "1");
        var document = NotebookDocument.Load(path);
        document.AddOutput("step-3", new() { ["output_type"] = "display_data", ["metadata"] = new System.Text.Json.Nodes.JsonObject(), ["data"] = new System.Text.Json.Nodes.JsonObject { ["text/html"] = html } });
        document.Save(path);
        await using var reader = await Reader.OpenAsync(path);
        await reader.Page.FrameLocator("iframe.foreign").GetByText("kept").WaitForAsync();
        await Task.Delay(500);
        Assert.Equal("Foreign", await reader.Page.TitleAsync());
        Assert.False(elsewhere.Pending(), "The frame reached the network.");
    }

    [BrowserFact]
    public async Task The_page_has_no_barrier_that_can_be_found_by_a_program_in_light_and_dark()
    {
        foreach (var look in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await using var reader = await Reader.OpenAsync(Small(), look);
            await reader.WorkOutAsync();
            await reader.ChartsDrawnAsync();
            await reader.Card("The answer").GetByText("Working").ClickAsync();
            var found = await reader.Page.RunAxe();
            Assert.Empty(found.Violations.Select(one => $"{look}: {one.Id} {one.Help}: {string.Join(" | ", one.Nodes.Select(node => node.Html).Take(3))}"));
        }
    }

    public void Dispose() => scratch.Dispose();
}
