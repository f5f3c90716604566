namespace SolarEconomics.Benchmarks;

/// <summary>Typing in the middle of a long notebook, as a person types: with pauses in which the text is sent, kept and told back.</summary>
internal static class Typing
{
    private const string Line = "var share = 0.35 * flows.Total; // what is used on site";

    /// <summary>Seconds from each key to the end of all work for it: script, layout and painting. The browser paints at once instead of at the screen's next turn, so that only work is counted.</summary>
    internal static async Task<IReadOnlyList<double>> AtManySteps(int count)
    {
        var notebook = MadeNotebook.Write("many-steps", Enumerable.Range(1, count).Select(number => ($"var value{number} = {(number == 1 ? "1" : $"value{number - 1} + 1")};\nvalue{number}", (System.Text.Json.Nodes.JsonNode?)null)));
        await using var opened = await PageInBrowser.OpenAsync(notebook, "--disable-frame-rate-limit", "--disable-gpu-vsync");
        var page = opened.Page;
        await opened.UntilWarmAsync();
        var step = $"step-{count / 2}";
        await opened.OpenWorkingAsync(step);
        await page.Locator($"[data-step={step}] .cm-content").ClickAsync();
        await page.Keyboard.PressAsync("Control+End");
        await Type(page);
        await page.EvaluateAsync("""
            () => {
              window.keys = [];
              document.addEventListener("keydown", (event) => requestAnimationFrame(() => {
                // A message is handled after the frame in which it was sent is painted.
                const channel = new MessageChannel();
                channel.port1.onmessage = () => window.keys.push((performance.now() - event.timeStamp) / 1000);
                channel.port2.postMessage(0);
              }), true);
            }
            """);
        for (var line = 0; line < 4; line++) await Type(page);
        return await page.EvaluateAsync<double[]>("() => window.keys");
    }

    private static async Task Type(Microsoft.Playwright.IPage page)
    {
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync(Line, new Microsoft.Playwright.KeyboardTypeOptions { Delay = 60 });
        await page.Keyboard.PressAsync("Escape");
        await Task.Delay(800);
    }
}
