using Microsoft.Playwright;

namespace SolarEconomics.Charts.Tests;

/// <summary>One browser for all tests of a class, with the network off and every request written down.</summary>
public sealed class ChartBrowser : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private OpenChart? _shared;

    public async Task InitializeAsync()
    {
        if (Chromium.WhyNot is not null)
        {
            return;
        }

        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium.Path, Args = ["--no-sandbox"] });
    }

    /// <summary>One page that stays open, for drawing many figures: reading the script once takes seconds on a small machine.</summary>
    internal async Task<OpenChart> Shared() => _shared ??= await Open(Samples.All["cash-paid-back"], 1940, 1200, dark: false);

    public async Task DisposeAsync()
    {
        if (_shared is not null)
        {
            await _shared.DisposeAsync();
        }

        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
    }

    /// <summary>Opens the exported page of a chart from a file.</summary>
    internal async Task<OpenChart> Open(SolarChart chart, int width, int height, bool dark)
    {
        var file = Path.Combine(Path.GetTempPath(), $"chart-{Guid.NewGuid():N}.html");
        chart.SaveHtml(file);
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            Offline = true, ViewportSize = new ViewportSize { Width = width, Height = height }, ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
        });
        var page = await context.NewPageAsync();
        var opened = new OpenChart(page, file);
        page.Request += (_, r) => opened.Requests.Add(r.Url);
        page.Console += (_, m) => { if (m.Type is "error" or "warning") { opened.Complaints.Add(m.Text); } };
        page.PageError += (_, e) => opened.Complaints.Add(e);
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        await page.WaitForSelectorAsync("#chart .main-svg");
        return opened;
    }
}
