using System.Globalization;

namespace SolarEconomics.Benchmarks;

/// <summary>A step that answers with very much text.</summary>
internal static class LongOutput
{
    /// <summary>The longest time in which the page's own thread did nothing else, and the longest time until the program answered a question of the page, while the output came and was saved. Unit: s.</summary>
    internal static async Task<(double LongestStop, double LongestSilence)> OfCharacters(int count)
    {
        var code = string.Create(CultureInfo.InvariantCulture, $"new string('x', {count})");
        await using var opened = await PageInBrowser.OpenAsync(MadeNotebook.Write("long-output", [(code, null), ("1 + 1", null)]));
        var page = opened.Page;
        await opened.UntilWarmAsync();
        await opened.OpenWorkingAsync("step-1");
        await page.EvaluateAsync("""
            () => {
              window.longest = { stop: 0, silence: 0 };
              let before = performance.now();
              setInterval(() => { const now = performance.now(); longest.stop = Math.max(longest.stop, now - before - 4); before = now; }, 4);
              const asked = new WebSocket(`ws://${location.host}/talk${location.search}`);
              let askedAt = 0;
              const ask = () => { askedAt = performance.now(); asked.send(JSON.stringify({ message: "askVersions" })); };
              asked.onopen = ask;
              asked.onmessage = ({ data }) => {
                if (!data.startsWith('{"message":"versionsFound"')) return;
                longest.silence = Math.max(longest.silence, performance.now() - askedAt);
                setTimeout(ask, 50);
              };
            }
            """);
        await Task.Delay(1000);
        await page.EvaluateAsync("() => { longest.stop = longest.silence = 0; }");
        await page.Locator("[data-step=step-1]").GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Work out this step" }).ClickAsync();
        await page.Locator("[data-step=step-1][data-state=done]").WaitForAsync();
        await page.Locator("#saved", new() { HasText = "Saved" }).WaitForAsync();
        await Task.Delay(5000);
        var longest = await page.EvaluateAsync<Dictionary<string, double>>("() => longest");
        return (longest["stop"] / 1000, longest["silence"] / 1000);
    }
}
