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
        var start = new ProcessStartInfo("dotnet", [WorkbenchAtWork.Dll, "open", notebook, "--no-browser"]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        // What the program keeps per user stands beside what was made, not in the measurer's own folder.
        start.Environment["SOLARECONOMICS_STATE"] = Places.Made("page-state");
        var program = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        program.ErrorDataReceived += (_, _) => { };
        program.BeginErrorReadLine();
        var address = await program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program ended without an address.");
        var playwright = await Playwright.CreateAsync();
        var browser = await Chromium.StartAsync(playwright, browserOptions);
        var page = await browser.NewPageAsync(new BrowserNewPageOptions { ViewportSize = new ViewportSize { Width = 1440, Height = 900 } });
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync(address);
        await page.Locator(".part").First.WaitForAsync();
        var letRun = page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Let its code run" });
        if (await letRun.CountAsync() > 0) await letRun.ClickAsync();
        await page.Locator("#choices").WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Hidden });
        return new PageInBrowser(program, playwright, browser, page);
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
        _program.Kill(entireProcessTree: true);
        await _program.WaitForExitAsync();
        _program.Dispose();
    }
}
