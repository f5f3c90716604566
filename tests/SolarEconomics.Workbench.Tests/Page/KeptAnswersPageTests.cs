using System.Text.Json.Nodes;
using Microsoft.Playwright;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>An answer taken out of the page, as picture, drawing, table or whole notebook, and shown on the whole screen: in a real browser.</summary>
public sealed class KeptAnswersPageTests : IDisposable
{
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task A_chart_is_kept_as_picture_drawing_and_table_and_shown_on_the_whole_screen()
    {
        await using var reader = await Reader.LookAsync(NotebookWithChart("chart.ipynb"));
        var page = reader.Page;
        await page.Locator(".stage img").WaitForAsync();

        var picture = await KeptAsync(page, "Keep as picture");
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], picture.Content[..4]);
        Assert.EndsWith(".png", picture.Name, StringComparison.Ordinal);
        var drawing = await KeptAsync(page, "Keep as drawing");
        Assert.EndsWith(".svg", drawing.Name, StringComparison.Ordinal);
        Assert.Equal("svg", System.Xml.Linq.XDocument.Parse(System.Text.Encoding.UTF8.GetString(drawing.Content)).Root!.Name.LocalName);

        const string Whole = "() => document.fullscreenElement?.className ?? ''";
        Assert.Equal("", await page.EvaluateAsync<string>(Whole));
        await Button(page, "Whole screen").ClickAsync();
        await Button(page, "Back to the page").WaitForAsync();
        Assert.Equal("chart", await page.EvaluateAsync<string>(Whole));
        await Button(page, "Back to the page").ClickAsync();
        await Button(page, "Whole screen").WaitForAsync();
        Assert.Equal("", await page.EvaluateAsync<string>(Whole));
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task A_table_is_kept_as_CSV_and_the_notebook_as_a_copy_and_as_a_report_one_after_another()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("table.ipynb", "# Table", "## Rows", "Frame.FromRecords(Enumerable.Range(1, 3).Select(i => new { Number = i, Square = i * i }))"));
        var page = reader.Page;
        await reader.WorkOutAsync();
        var table = await KeptAsync(page, "Keep as CSV");
        Assert.Equal([",Number,Square", "0,1,1", "1,2,4", "2,3,9"], System.Text.Encoding.UTF8.GetString(table.Content).TrimStart('\uFEFF').Split(["\r\n", "\n"], StringSplitOptions.RemoveEmptyEntries));

        // The menu closes on a choice, so that the next press of its name opens it again.
        var copy = await KeptFromMenuAsync(page, "Keep a copy of the notebook");
        Assert.Equal(3, JsonNode.Parse(copy.Content)!["cells"]!.AsArray().Count);
        var report = await KeptFromMenuAsync(page, "Keep a report");
        Assert.Contains("<title>Table</title>", System.Text.Encoding.UTF8.GetString(report.Content), StringComparison.Ordinal);
        Assert.Empty(reader.Errors);
    }

    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true }).First;

    private static Task<(string Name, byte[] Content)> KeptAsync(IPage page, string name) => KeptByAsync(page, Button(page, name));

    private static async Task<(string Name, byte[] Content)> KeptFromMenuAsync(IPage page, string name)
    {
        await page.Locator(".menu summary", new PageLocatorOptions { HasTextString = "Notebook" }).ClickAsync();
        return await KeptByAsync(page, page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = name }));
    }

    private static async Task<(string Name, byte[] Content)> KeptByAsync(IPage page, ILocator control)
    {
        var kept = await page.RunAndWaitForDownloadAsync(() => control.ClickAsync());
        return (kept.SuggestedFilename, await File.ReadAllBytesAsync(await kept.PathAsync()));
    }

    private string NotebookWithChart(string name)
    {
        var path = scratch.Notebook(name, "# Chart", "## Line", "1");
        var document = NotebookDocument.Load(path);
        document.AddOutput("step-3", (JsonObject)JsonNode.Parse("""
            {"output_type": "display_data", "metadata": {}, "data": {"text/plain": "A line that grows.",
             "application/vnd.plotly.v1+json": {"data": [{"type": "scatter", "x": [1, 2, 3], "y": [2, 4, 6]}], "layout": {}}}}
            """)!);
        document.Save(path);
        return path;
    }

    public void Dispose() => scratch.Dispose();
}
