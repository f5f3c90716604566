using System.Globalization;
using NodaTime;

namespace SolarEconomics.Workbench.Tests;

/// <summary>The notebooks that users open, worked out headless and compared by value with the library.</summary>
public class NotebookTests
{
    [Fact]
    public async Task Has_it_paid_for_itself_answers_what_the_library_answers()
    {
        var run = await HeadlessRun.Of("01-has-it-paid-for-itself.ipynb");
        Assert.True(run.ExitCode == 0, run.Said);
        var worth = AlderWeirDemo.Worth;
        var outlook = worth.Outlook(AlderWeirDemo.NotebookAssumptions());
        Assert.StartsWith(worth.Say(CultureInfo.InvariantCulture).Figure, run.Answer("worth"), StringComparison.Ordinal);
        Assert.Contains(outlook.Payback.Finding.Figure, run.Answer("payback"), StringComparison.Ordinal);
        Assert.StartsWith(outlook.Say(CultureInfo.InvariantCulture).Figure, run.Answer("return"), StringComparison.Ordinal);
        Assert.Equal(4, run.Charts);
    }

    [Fact]
    public async Task An_assumption_set_on_the_command_line_moves_the_answer()
    {
        var run = await HeadlessRun.Of("01-has-it-paid-for-itself.ipynb", "--set", "priceGrowth=0", "--set", "discountRate=0.02");
        Assert.True(run.ExitCode == 0, run.Said);
        var outlook = AlderWeirDemo.Worth.Outlook(AlderWeirDemo.NotebookAssumptions() with { PriceGrowth = 0, DiscountRate = 0.02 });
        Assert.Contains(outlook.Payback.Finding.Figure, run.Answer("payback"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Replace_the_panels_answers_what_the_library_answers()
    {
        var run = await HeadlessRun.Of("02-replace-the-panels.ipynb");
        Assert.True(run.ExitCode == 0, run.Said);
        Assert.Contains("74.6 % more", run.Answer("sold"), StringComparison.Ordinal); // common practice, no source: 12 of 550 W for 14 of 270 W
        Assert.StartsWith("Moving the old modules is worth", run.Answer("which").TrimStart('"'), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_real_household_gets_its_bill_to_the_cent_and_no_more_worth_than_its_records_tell()
    {
        // Bill as the sample's own README states it: 104.078956 before tax, 114.49 with 10 % tax.
        var run = await HeadlessRun.Of("03-real-household.ipynb");
        Assert.True(run.ExitCode == 0, run.Said);
        Assert.StartsWith("A$114.49", run.Answer("bill"), StringComparison.Ordinal);
        Assert.Contains("270.7", run.Answer("records"), StringComparison.Ordinal);
        Assert.StartsWith("at least A$0", run.Answer("worth"), StringComparison.Ordinal);
        Assert.Contains("cannot tell more", run.Answer("worth"), StringComparison.Ordinal);
        Assert.Contains("generation by interval", run.Answer("worth"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Which_panels_to_swap_answers_what_the_library_answers()
    {
        var run = await HeadlessRun.Of("06-which-panels-to-swap.ipynb");
        Assert.True(run.ExitCode == 0, run.Said);
        var site = AlderWeirDemo.Worth.Site;
        var lost = ExpectedAgainstMeasured.Of(site, Readings.Load(Repository.File("data-demo", "meter.csv"), site), "south roof");
        Assert.StartsWith(lost.Say(CultureInfo.InvariantCulture).Figure, run.Answer("failed"), StringComparison.Ordinal);
        // By hand: 3.78 + 3.24 + 4.92 kWp; then 12 × 0.55 on the south roof and two strings of six at 0.27 elsewhere.
        Assert.Contains("11.94 kWp become 18.00 kWp", run.Answer("swap"), StringComparison.Ordinal);
        Assert.StartsWith("within the data given", run.Answer("strings"), StringComparison.Ordinal);
        Assert.Equal(1, run.Charts);
    }

    [Fact]
    public async Task Without_a_grid_answers_what_the_library_answers()
    {
        var run = await HeadlessRun.Of("04-without-a-grid.ipynb");
        Assert.True(run.ExitCode == 0, run.Said);
        var log = GeneratorLog.Load(Repository.File("data-demo", "refuge-generator.csv"));
        var energy = log.Energy(new Generator(4.5, new FuelLine(0.09, 0.25)), Currency.Of("EUR"));
        Assert.StartsWith(energy.Say(CultureInfo.InvariantCulture).Figure, run.Answer("generator"), StringComparison.Ordinal);
        var capacity = BatteryLog.Load(Repository.File("data-demo", "refuge-battery.csv")).Capacity();
        Assert.StartsWith(capacity.Say(CultureInfo.InvariantCulture).Figure, run.Answer("battery"), StringComparison.Ordinal);
        Assert.StartsWith("6,474 kWh", run.Answer("flows"), StringComparison.Ordinal); // refuge-counters.csv, last row of the array
        Assert.Contains("EUR from the battery", run.Answer("socket"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_sure_is_it_answers_what_the_library_answers()
    {
        var run = await HeadlessRun.Of("05-how-sure-is-it.ipynb", "--set", "draws=2000");
        Assert.True(run.ExitCode == 0, run.Said);
        var outlook = AlderWeirDemo.Worth.Outlook(AlderWeirDemo.NotebookAssumptions() with
        {
            Replacements = [], WearingParts = [new WearingPart("inverters", 2600m, WeibullDistribution.OfMean(14, 3), new LocalDate(2022, 9, 10))],
        });
        var sure = outlook.HowSure(new Uncertainties
        {
            Inputs =
            [
                OutlookInput.PriceGrowth.Is(new NormalDistribution(0.03, 0.01)),
                OutlookInput.FeedInGrowth.Is(new NormalDistribution(0, 0.01)),
                OutlookInput.YieldFactor.Is(new NormalDistribution(0.99, 0.03)),
                OutlookInput.AgeingPerYear.Is(new TriangularDistribution(0.002, 0.006, 0.012)),
                OutlookInput.RunningCostsPerYear.Is(LognormalDistribution.OfMean(300, 80)),
            ],
            Pairs = [new CorrelatedPair("import price growth", "feed-in price growth", 0.6)],
        }, new DrawOptions { MostDraws = 2_000 });
        Assert.Contains(outlook.Payback.Finding.Figure, run.Answer("today"), StringComparison.Ordinal);
        Assert.StartsWith(sure.Npv.Say(CultureInfo.InvariantCulture).Figure, run.Answer("learn"), StringComparison.Ordinal);
        Assert.StartsWith(sure.Payback.Say(CultureInfo.InvariantCulture).Figure, run.Answer("payback"), StringComparison.Ordinal);
        var line = outlook.BreakEvenLine(OutlookInput.DiscountRate.Between(0.02, 0.12), OutlookInput.YieldFactor.Between(0.2, 1.2));
        Assert.Contains(line.Say(CultureInfo.InvariantCulture).Words, run.Answer("line"), StringComparison.Ordinal);
        Assert.StartsWith("New panels", run.Answer("wait"), StringComparison.Ordinal);
        Assert.Equal(3, run.Charts);
    }

    [Fact]
    public async Task An_assumption_outside_its_range_does_not_start()
    {
        var run = await HeadlessRun.Of("01-has-it-paid-for-itself.ipynb", "--set", "discountRate=5");
        Assert.Equal(2, run.ExitCode);
        Assert.Null(run.Saved);
        Assert.Contains("discountRate", run.Said, StringComparison.Ordinal);
    }
}
