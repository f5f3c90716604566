using Microsoft.Playwright;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The system's Chromium, started without a window and without asking anything of a network.</summary>
internal static class Chromium
{
    private static readonly string[] Places =
    [
        Environment.GetEnvironmentVariable("CHROMIUM") ?? "", "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome",
        "/Applications/Chromium.app/Contents/MacOS/Chromium", @"C:\Program Files\Google\Chrome\Application\chrome.exe",
    ];

    public static string? Path { get; } = Places.FirstOrDefault(File.Exists);

    public static Task<IBrowser> StartAsync(IPlaywright playwright, params IEnumerable<string> further) => playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = Path ?? throw new InvalidOperationException("Found no Chromium. Install it with: apt-get install --no-install-recommends chromium"),
        Args = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", .. further],
    });
}
