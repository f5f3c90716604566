using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Changes of steps taken back by keys, and an answer kept as data: in a real browser. What the notebook holds stays data in the page.</summary>
public sealed class StepKeysPageTests : IDisposable
{
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task A_deleted_step_comes_back_by_a_key_and_its_answer_is_kept_as_data()
    {
        await using var reader = await Reader.OpenAsync(scratch.Notebook("keys.ipynb", "# Keys", "## One", "41 + 1", "## Two", "// </script><b>{{nonce}}</b> {{mark}}\n2"));
        var page = reader.Page;
        await reader.WorkOutAsync();
        await page.Locator("[data-step=step-3] .beneath > summary").ClickAsync();
        await page.Locator("[data-step=step-3]").GetByText("More for this step").ClickAsync();
        var kept = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep the answers as data" }).ClickAsync());
        var answers = JsonNode.Parse(await File.ReadAllTextAsync(await kept.PathAsync()))!.AsArray();
        Assert.Equal("42", (string?)answers.Single()!["figure"]);

        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Delete this step" }).ClickAsync();
        var step = page.Locator("[data-step=step-3]");
        await step.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Detached });
        await page.Keyboard.PressAsync("Control+z");
        await step.WaitForAsync();
        await page.Keyboard.PressAsync("Control+Shift+z");
        await step.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Detached });

        await page.ReloadAsync();
        await page.Locator("[data-step=step-5] .beneath > summary").ClickAsync();
        await page.Locator("[data-step=step-5] .cm-content").GetByText("</script><b>{{nonce}}</b> {{mark}}").WaitForAsync();
        Assert.Equal(0, await page.Locator("body > b").CountAsync());
        Assert.Empty(reader.Errors);
    }

    public void Dispose() => scratch.Dispose();
}
