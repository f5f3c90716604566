using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What is left when the session's process is gone or never comes back: the page, the document, and a fresh session.</summary>
public sealed class LostSessionTests : IDisposable
{
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task Killing_the_session_in_mid_run_leaves_the_page_alive_and_the_document_whole()
    {
        var path = scratch.Notebook("killed.ipynb", "# Killed", "## One", "Environment.ProcessId", "## Two", "Thread.Sleep(100_000);", "## Three", "40 + 2");
        await using var reader = await Reader.OpenAsync(path);
        await reader.Page.Locator("#work").ClickAsync();
        await reader.Page.Locator("#outline li.working", new PageLocatorOptions { HasTextString = "Two" }).WaitForAsync();
        using (var session = Process.GetProcessById(int.Parse(await reader.FigureUnder("One"), CultureInfo.InvariantCulture))) session.Kill();

        await reader.UntilWorkedOutAsync();
        await reader.Page.Locator("#notice", new PageLocatorOptions { HasTextString = "the notebook is whole" }).WaitForAsync();
        await reader.Page.Locator("#outline li.kept").WaitForAsync();
        Assert.Equal(["answer from before", "failed: see message", "not yet worked out"], await reader.States());

        await reader.Card("Three").GetByText("Working").ClickAsync();
        await reader.Card("Three").GetByText("Work out this step").ClickAsync();
        await reader.Card("Three").Locator(".finding b", new LocatorLocatorOptions { HasTextString = "42" }).WaitForAsync();
        await reader.Page.Locator("#saved", new PageLocatorOptions { HasTextString = "Saved" }).WaitForAsync();
        Assert.Equal(7, NotebookDocument.Load(path).Steps.Count);
    }

    [BrowserFact]
    public async Task An_endless_loop_is_stopped_by_the_control_that_started_it()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("loop.ipynb", "# Loop", "## One", "var kept = 1;", "## Two", "while (true) { }", "## Three", "kept + 1"));
        await reader.Page.Locator("#work").ClickAsync();
        await reader.Page.Locator("#outline li.working", new PageLocatorOptions { HasTextString = "Two" }).WaitForAsync();
        await reader.Page.Locator("#work", new PageLocatorOptions { HasTextString = "Stop" }).ClickAsync();
        await reader.UntilWorkedOutAsync();
        var states = await reader.States();
        Assert.Equal(["stopped by you", "not yet worked out"], states.Skip(1));
    }

    public void Dispose() => scratch.Dispose();
}
