using System.Globalization;
using Microsoft.Playwright;
using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The main job, as a reader does it: open the first notebook, work it out, change an assumption, save, come back.</summary>
public sealed class PaidBackTests : IDisposable
{
    private const string Question = "When it is paid back";
    private readonly Scratch scratch = new();

    [BrowserFact]
    public async Task Has_it_paid_for_itself_is_answered_changed_saved_and_found_again()
    {
        await using var reader = await Reader.OpenAsync(Notebook());
        await reader.WorkOutAsync();
        Assert.All(await reader.States(), state => Assert.Equal("done", state));
        Assert.Equal(Payback(priceGrowth: 0.03), await reader.FigureUnder(Question));
        Assert.True(await reader.ChartsDrawnAsync() >= 3);

        await reader.AssumeAsync("Price growth", "6");
        await reader.Page.Locator("#outline li.old", new PageLocatorOptions { HasTextString = Question }).WaitForAsync();
        Assert.Contains("done", await reader.States());
        await reader.WorkOutAsync();
        var changed = Payback(priceGrowth: 0.06);
        Assert.NotEqual(Payback(priceGrowth: 0.03), changed);
        Assert.Equal(changed, await reader.FigureUnder(Question));

        await reader.Page.Locator("#saved", new PageLocatorOptions { HasTextString = "Saved" }).WaitForAsync();
        await Task.Delay(2000);
        await reader.Page.ReloadAsync();
        Assert.Equal(changed, await reader.FigureUnder(Question));
        Assert.Empty(reader.Errors);
        Assert.All(reader.Requests, address => Assert.StartsWith("http://127.0.0.1:", address, StringComparison.Ordinal));
    }

    /// <summary>The same answer from the library, as the notebook's steps ask it.</summary>
    private static string Payback(double priceGrowth)
    {
        string Demo(string name) => Path.Combine(Sources.Root, "data-demo", name);
        var site = Site.At("Alder Weir", latitude: 53.2, longitude: -9.1, zone: "Europe/Dublin", currency: "EUR") with
        {
            Plant = Plant.Load(Demo("plant.json")),
            TaxReclaimedShare = 0.3,
        };
        var worth = Worth.ToDate(site, Readings.Load([Demo("meter.csv"), Demo("counters.csv")], site), TariffHistory.Load(Demo("tariffs.json")), Ledger.Load(Demo("ledger.csv")));
        var outlook = worth.Outlook(new Assumptions
        {
            Years = 25, PriceGrowth = priceGrowth, DiscountRate = 0.05, Ageing = Ageing.Compound(0.006),
            RunningCostsPerYear = 300, Replacements = [new Replacement("inverters", 14, 2600)],
        });
        return string.Create(CultureInfo.InvariantCulture, $"{outlook.Payback.LastingYears:0.0} years");
    }

    /// <summary>The first notebook with the demo's records beside it, answers cleared.</summary>
    private string Notebook()
    {
        Directory.CreateDirectory(Path.Combine(scratch.Folder, "data-demo"));
        foreach (var file in Directory.GetFiles(Path.Combine(Sources.Root, "data-demo"))) File.Copy(file, Path.Combine(scratch.Folder, "data-demo", Path.GetFileName(file)));
        const string Name = "01-has-it-paid-for-itself.ipynb";
        var document = NotebookDocument.Load(Path.Combine(Sources.Root, "notebooks", Name));
        document.ClearAllOutputs();
        var path = Path.Combine(scratch.Folder, "notebooks", Name);
        document.Save(path);
        return path;
    }

    public void Dispose() => scratch.Dispose();
}
