namespace SolarEconomics.Benchmarks;

/// <summary>Scrolling with the wheel past charts that are drawn as they come into sight.</summary>
internal static class Scrolling
{
    /// <summary>Seconds of each frame from the first chart to the last.</summary>
    internal static async Task<IReadOnlyList<double>> PastCharts(int count)
    {
        var chart = MadeNotebook.Chart();
        await using var opened = await PageInBrowser.OpenAsync(MadeNotebook.Write("many-charts", Enumerable.Range(1, count).Select(number => ($"// chart {number}", (System.Text.Json.Nodes.JsonNode?)chart))));
        var page = opened.Page;
        await page.Locator(".chart img").First.WaitForAsync();
        await opened.UntilWarmAsync();
        var drawnBefore = await page.Locator(".chart img").CountAsync();
        if (drawnBefore >= count) throw new InvalidOperationException($"All {count} charts were drawn before they were seen.");
        await page.EvaluateAsync("""
            () => {
              window.frames60 = [];
              let before = performance.now();
              const next = () => { const now = performance.now(); window.frames60.push((now - before) / 1000); before = now; requestAnimationFrame(next); };
              requestAnimationFrame(next);
            }
            """);
        await page.Mouse.MoveAsync(720, 500);
        while (await page.EvaluateAsync<bool>("() => scrollY + innerHeight < document.documentElement.scrollHeight - 4"))
        {
            await page.Mouse.WheelAsync(0, 120);
            await Task.Delay(16);
        }
        var frames = await page.EvaluateAsync<double[]>("() => window.frames60.slice(1)");
        await page.WaitForFunctionAsync("count => document.querySelectorAll('.chart img').length === count", count);
        return frames;
    }
}
