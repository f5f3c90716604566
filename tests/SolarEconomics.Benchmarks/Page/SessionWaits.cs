namespace SolarEconomics.Benchmarks;

/// <summary>How long the session lets its reader wait, from a click to what the page then shows. Unit: s.</summary>
internal static class SessionWaits
{
    private const int Runs = 5;
    private const int Presses = 20;

    internal static async Task<(IReadOnlyList<double> FreshStarts, IReadOnlyList<double> EmptySteps)> Measure()
    {
        await using var opened = await PageInBrowser.OpenAsync(MadeNotebook.Write("no-code", [("// a step without code", null)]));
        var page = opened.Page;
        await opened.UntilWarmAsync();
        await opened.OpenWorkingAsync("step-1");
        var (fresh, empty) = (new List<double>(), new List<double>());
        for (var press = 0; press <= Presses; press++)
        {
            var seconds = await page.EvaluateAsync<double>("""
                () => new Promise((resolve) => {
                  const part = document.querySelector("[data-step=step-1]");
                  const began = performance.now();
                  const watching = new MutationObserver(() => { if (part.dataset.state === "done") { watching.disconnect(); resolve((performance.now() - began) / 1000); } });
                  watching.observe(part, { attributes: true });
                  part.querySelector(".works").click();
                })
                """);
            // The first one compiles what all later ones use.
            if (press > 0) empty.Add(seconds);
            await Task.Delay(200);
        }
        for (var run = 0; run < Runs; run++)
        {
            fresh.Add(await page.EvaluateAsync<double>("""
                () => new Promise((resolve) => {
                  const said = document.querySelector(".menu [role=status]");
                  const began = performance.now();
                  let hasBegun = false;
                  const watching = new MutationObserver(() => {
                    hasBegun ||= said.textContent !== "The session is ready.";
                    if (hasBegun && said.textContent === "The session is ready.") { watching.disconnect(); resolve((performance.now() - began) / 1000); }
                  });
                  watching.observe(said, { childList: true, characterData: true, subtree: true });
                  [...document.querySelectorAll(".menu button")].find((one) => one.textContent === "Start afresh").click();
                })
                """));
            await opened.UntilWarmAsync();
        }
        return (fresh, empty);
    }
}
