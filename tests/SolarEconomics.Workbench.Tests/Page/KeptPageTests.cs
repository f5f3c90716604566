using Microsoft.Playwright;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The page where something has to be decided, asked, or is very long: in a real browser.</summary>
public sealed class KeptPageTests : IDisposable
{
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task Code_from_elsewhere_is_still_until_the_reader_lets_it_run()
    {
        var path = scratch.Notebook("elsewhere.ipynb", "# Elsewhere", "## One", "System.IO.File.WriteAllText(\"ran.txt\", \"\"); 41 + 1");
        await using var reader = await Reader.LookAsync(path, state: Scratch.StateBeside(path).Path);
        Assert.True(await reader.Page.Locator("#work").IsDisabledAsync());
        await reader.LetRun.ClickAsync();
        Assert.False(File.Exists(Path.Combine(Path.GetDirectoryName(path)!, "ran.txt")));
        await reader.Page.Locator("#work:not([disabled])").WaitForAsync();
        await reader.WorkOutAsync();
        Assert.Equal("42", await reader.FigureUnder("One"));
        Assert.Equal(0, await reader.LetRun.CountAsync());
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task After_a_crash_both_states_can_be_looked_at_and_one_is_taken()
    {
        var path = scratch.Notebook("left.ipynb", "# Left", "## One", "1");
        var document = NotebookDocument.Load(path);
        var saved = document.State();
        document.SetSource("step-2", "## One, changed");
        using (var journal = new NotebookJournal(path, saved)) journal.Append(document.State(), DateTimeOffset.UtcNow);
        await using var reader = await Reader.LookAsync(path);
        var changed = reader.Page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "One, changed" });
        Assert.Equal(0, await changed.CountAsync());
        await reader.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Look at it with the last changes" }).ClickAsync();
        await changed.WaitForAsync();
        await reader.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Look at it as it was saved" }).ClickAsync();
        await changed.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Detached });
        await reader.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Go on with the last changes" }).ClickAsync();
        await changed.WaitForAsync();
        await reader.Page.Locator("#saved", new PageLocatorOptions { HasTextString = "Saved" }).WaitForAsync();
        Assert.Equal("## One, changed", NotebookDocument.Load(path)["step-2"].Source);
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task What_a_step_asks_is_answered_and_a_long_table_is_read_sorted_and_searched()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("asks.ipynb", "# Asks", "## One", "int.Parse(Console.ReadLine()) * 2",
            "## Table", "Frame.FromRecords(Enumerable.Range(0, 5000).Select(i => new { Number = i, Name = $\"row {i}\" }))"));
        await reader.Page.Locator("#work").ClickAsync();
        await reader.Page.GetByLabel("This step waits for a line of text:").FillAsync("21");
        await reader.Page.Keyboard.PressAsync("Enter");
        await reader.Card("One").Locator(".finding b", new LocatorLocatorOptions { HasTextString = "42" }).WaitForAsync();
        await reader.UntilWorkedOutAsync();
        var table = reader.Card("Table");
        await table.GetByText("All rows").ClickAsync();
        await table.GetByText("1 to 25 of 5,000").WaitForAsync();
        var number = table.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Number" });
        await number.ClickAsync();
        await table.Locator("th[aria-sort=ascending]").WaitForAsync();
        await number.ClickAsync();
        await table.GetByText("row 4999").WaitForAsync();
        await table.GetByLabel("Find in this table").FillAsync("row 123");
        await table.GetByText("1 to 11 of 11 found in 5,000").WaitForAsync();
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task A_notebook_without_a_step_offers_the_ways_to_begin()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("empty.ipynb", "// only\n1 + 1"));
        var step = reader.Page.Locator("[data-step=step-1]");
        await step.GetByText("Working").ClickAsync();
        await step.GetByText("More for this step").ClickAsync();
        await step.GetByText("Delete this step").ClickAsync();
        await reader.Page.GetByText("This notebook has no steps yet.").WaitForAsync();
        await reader.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Add a step" }).ClickAsync();
        await reader.Page.Locator("[data-step] .cm-content").WaitForAsync();
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task Of_sixty_charts_those_in_sight_are_drawn_and_the_others_when_they_come_into_sight()
    {
        var path = scratch.Notebook("charts.ipynb", [.. Enumerable.Range(1, 60).SelectMany(n => new[] { $"## Chart {n}", "1" })]);
        var document = NotebookDocument.Load(path);
        foreach (var step in document.Steps.Where(step => step.Kind == StepKind.Code)) document.AddOutput(step.Id, Chart());
        document.Save(path);
        await using var reader = await Reader.LookAsync(path);
        await reader.Page.Locator(".stage img").First.WaitForAsync();
        await Task.Delay(3000);
        Assert.InRange(await reader.Page.Locator(".stage img").CountAsync(), 1, 20);
        await reader.Page.Locator(".stage").Nth(59).ScrollIntoViewIfNeededAsync();
        await reader.Page.Locator(".stage").Nth(59).Locator("img").WaitForAsync();
        Assert.Empty(reader.Errors);
    }

    [BrowserFact]
    public async Task Typing_in_one_of_three_hundred_steps_touches_no_other_card()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("many.ipynb", [.. Enumerable.Range(1, 150).SelectMany(n => new[] { $"## Question {n}", $"var v{n} = {n};" })]));
        await reader.Page.Locator("#q-step-5").GetByText("Working").ClickAsync();
        await reader.Page.Locator("#q-step-5").Locator(".cm-content").ClickAsync();
        await reader.Page.EvaluateAsync("""
            () => {
              window.touched = new Set();
              new MutationObserver((list) => list.forEach(({ target }) => window.touched.add((target.closest ?? target.parentElement.closest).call(target.closest ? target : target.parentElement, "section[id^=q-]")?.id ?? "")))
                .observe(document.getElementById("answers"), { subtree: true, childList: true, characterData: true, attributes: true });
            }
            """);
        await reader.Page.Keyboard.TypeAsync("// typed ");
        await reader.Page.Locator("#saved", new PageLocatorOptions { HasTextString = "Saved" }).WaitForAsync();
        var touched = await reader.Page.EvaluateAsync<string[]>("() => [...window.touched].filter(Boolean)");
        Assert.Equal(["q-step-5"], touched);
    }

    private static System.Text.Json.Nodes.JsonObject Chart() => (System.Text.Json.Nodes.JsonObject)System.Text.Json.Nodes.JsonNode.Parse("""
        {"output_type": "display_data", "metadata": {}, "data": {"text/plain": "A line that grows.",
         "application/vnd.plotly.v1+json": {"data": [{"type": "scatter", "x": [1, 2, 3], "y": [2, 4, 6]}], "layout": {}}}}
        """)!;

    public void Dispose() => scratch.Dispose();
}
