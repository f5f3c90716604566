using Microsoft.Playwright;

namespace SolarEconomics.Workbench.Tests;

/// <summary>A reader at the page: the program, a browser, and the few things a person does and sees. Notes every request and every error of the page.</summary>
internal sealed class Reader : IAsyncDisposable
{
    private const float Patience = 120_000;
    private readonly IPlaywright playwright;
    private readonly IBrowser browser;
    private readonly RunningProgram program;

    private Reader(IPlaywright playwright, IBrowser browser, RunningProgram program, IPage page) =>
        (this.playwright, this.browser, this.program, Page) = (playwright, browser, program, page);

    public IPage Page { get; }

    public List<string> Requests { get; } = [];

    public List<string> Errors { get; } = [];

    /// <summary>Opens a notebook and, where the page asks, lets its code run.</summary>
    public static async Task<Reader> OpenAsync(string notebook, ColorScheme look = ColorScheme.Light)
    {
        var reader = await LookAsync(notebook, look);
        if (await reader.LetRun.IsVisibleAsync()) await reader.LetRun.ClickAsync();
        await reader.Page.Locator("#work:not([disabled])").WaitForAsync();
        return reader;
    }

    /// <summary>Opens a notebook and only looks at it.</summary>
    public static async Task<Reader> LookAsync(string notebook, ColorScheme look = ColorScheme.Light, string? state = null)
    {
        var program = await RunningProgram.OpenAsync(notebook, state);
        var playwright = await Playwright.CreateAsync();
        var browser = await Chromium.StartAsync(playwright);
        var page = await browser.NewPageAsync(new BrowserNewPageOptions { ColorScheme = look, ViewportSize = new ViewportSize { Width = 1500, Height = 1000 } });
        var reader = new Reader(playwright, browser, program, page);
        page.SetDefaultTimeout(Patience);
        page.Request += (_, request) => reader.Requests.Add(request.Url);
        page.PageError += (_, error) => reader.Errors.Add(error);
        page.Console += (_, line) => { if (line.Type == "error") reader.Errors.Add(line.Text); };
        await page.GotoAsync(program.Address);
        await page.Locator("#work").WaitForAsync();
        await page.Locator("#outline li").First.WaitForAsync();
        return reader;
    }

    public int ProgramId => program.Id;

    /// <summary>The control that lets the notebook's code run; seen only where it was not let run before.</summary>
    public ILocator LetRun => Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Let its code run" });

    /// <summary>The large figure of a question's answer.</summary>
    public async Task<string> FigureUnder(string question) =>
        await Card(question).Locator(".finding b").First.TextContentAsync() ?? "";

    public ILocator Card(string question) => Page.Locator("section", new PageLocatorOptions { Has = Page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = question, Level = 2 }) });

    /// <summary>The words that the list of questions says of each question's state.</summary>
    public Task<IReadOnlyList<string>> States() => Page.Locator("#outline li i").AllInnerTextsAsync();

    public async Task WorkOutAsync()
    {
        await Page.Locator("#work").ClickAsync();
        await Page.Locator("#work", new PageLocatorOptions { HasTextString = "Stop" }).WaitForAsync();
        await UntilWorkedOutAsync();
    }

    public Task UntilWorkedOutAsync() => Page.Locator("#work", new PageLocatorOptions { HasTextString = "Work out" }).WaitForAsync();

    /// <summary>Types a value into the field of an assumption and leaves the field.</summary>
    public async Task AssumeAsync(string label, string value)
    {
        var field = Page.GetByLabel(label, new PageGetByLabelOptions { Exact = true }).First;
        await field.FillAsync(value);
        await field.PressAsync("Enter");
        await field.PressAsync("Tab");
    }

    /// <summary>Waits until the field offers a way to go on typing; asks again, as a busy session offers nothing.</summary>
    public async Task OfferedAsync(string word)
    {
        var offer = Page.Locator(".cm-tooltip-autocomplete", new PageLocatorOptions { HasTextString = word });
        for (var turn = 0; turn < 15 && !await offer.IsVisibleAsync(); turn++)
        {
            await Page.Keyboard.PressAsync("Control+Space");
            await Task.Delay(2000);
        }
        Assert.True(await offer.IsVisibleAsync(), $"Nothing was offered for {word}.");
    }

    /// <summary>Scrolls to every chart, waits until all are drawn, and says how many there are.</summary>
    public async Task<int> ChartsDrawnAsync()
    {
        var stages = Page.Locator(".stage");
        for (var at = 0; at < await stages.CountAsync(); at++)
        {
            await stages.Nth(at).ScrollIntoViewIfNeededAsync();
            await Page.WaitForFunctionAsync("at => document.querySelectorAll('.stage')[at].querySelector('img')?.naturalWidth > 300", at);
        }
        return await stages.CountAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
        await program.DisposeAsync();
    }
}
