using System.Diagnostics;
using Microsoft.Playwright;
using SolarEconomics.Workbench.Tests;

namespace SolarEconomics.Benchmarks;

/// <summary>The program and a browser that has one of its notebooks open, its code let run.</summary>
internal sealed class PageInBrowser : IAsyncDisposable
{
    private readonly Process _program;
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;

    private PageInBrowser(Process program, IPlaywright playwright, IBrowser browser, IPage page) => (_program, _playwright, _browser, Page) = (program, playwright, browser, page);

    internal IPage Page { get; }

    internal static async Task<PageInBrowser> OpenAsync(string notebook, params IEnumerable<string> browserOptions)
    {
        var playwright = await Playwright.CreateAsync();
        var browser = await Chromium.StartAsync(playwright, browserOptions);
        var page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 1440, Height = 900 } });
        page.SetDefaultTimeout(120_000);
        var (program, address) = await StartAsync(notebook);
        await page.GotoAsync(address);
        await page.Locator(".part").First.WaitForAsync();
        var letRun = page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Let its code run" });
        if (await letRun.CountAsync() > 0) await letRun.ClickAsync();
        await page.Locator("#choices").WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Hidden });
        return new PageInBrowser(program, playwright, browser, page);
    }

    /// <summary>Seconds from the command until a browser that runs already shows the first saved answer.</summary>
    internal static async Task<IReadOnlyList<double>> FirstAnswersAsync(string notebook, int runs)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.StartAsync(playwright);
        var waits = new List<double>();
        for (var run = 0; run <= runs; run++)
        {
            await using var surroundings = await browser.NewContextAsync();
            var page = await surroundings.NewPageAsync();
            var watch = Stopwatch.StartNew();
            var (program, address) = await StartAsync(notebook);
            await page.GotoAsync(address, new PageGotoOptions { WaitUntil = WaitUntilState.Commit });
            await page.Locator(".finding").First.WaitForAsync();
            // The first one brings program and page into the machine's memory.
            if (run > 0) waits.Add(watch.Elapsed.TotalSeconds);
            await EndAsync(program);
        }
        return waits;
    }

    private static async Task<(Process Program, string Address)> StartAsync(string notebook)
    {
        var start = new ProcessStartInfo("dotnet", [WorkbenchAtWork.Dll, "open", notebook, "--no-browser"]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        // What the program keeps per user stands beside what was made, not in the measurer's own folder.
        start.Environment["SOLARECONOMICS_STATE"] = Places.Made("page-state");
        var program = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        program.ErrorDataReceived += (_, _) => { };
        program.BeginErrorReadLine();
        return (program, await program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program ended without an address."));
    }

    private static async Task EndAsync(Process program)
    {
        program.Kill(entireProcessTree: true);
        await program.WaitForExitAsync();
        program.Dispose();
    }

    /// <summary>Opens the working of a step.</summary>
    internal Task OpenWorkingAsync(string step) => Page.Locator($"[data-step={step}] .beneath > summary").ClickAsync();

    /// <summary>Waits until the session is warm, and the spare behind it.</summary>
    internal async Task UntilWarmAsync()
    {
        await Page.WaitForFunctionAsync("() => [...document.querySelectorAll('.menu [role=status]')].some(said => said.textContent === 'The session is ready.')");
        await Task.Delay(TimeSpan.FromSeconds(15));
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.CloseAsync();
        _playwright.Dispose();
        await EndAsync(_program);
    }
}
