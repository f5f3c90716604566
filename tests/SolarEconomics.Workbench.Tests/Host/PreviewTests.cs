namespace SolarEconomics.Workbench.Tests;

/// <summary>A first answer on the page while a step works, and a step that gives way to a newer value.</summary>
public sealed class PreviewTests : IDisposable
{
    private const string Declared = "var rate = Assume.Rate(\"Price growth\", 0.03, from: 0, to: 0.1);";
    private readonly Scratch scratch = new();

    [Fact]
    public async Task A_first_answer_is_shown_while_the_step_works_and_goes_with_its_end()
    {
        await using var page = new OpenPage(scratch.Notebook("p.ipynb", "slow"));
        page.Ask(new WorkOut(Extent.Everything));
        await page.UntilAsync(() => page.Step("step-1")["preview"]!.AsArray().Count == 1);
        Assert.Equal("about 7", (string)page.Step("step-1")["preview"]![0]!["figure"]!);
        Assert.Empty(page.Step("step-1")["answers"]!.AsArray());
        await page.AskAsync(new Stop());
        Assert.Empty(page.Step("step-1")["preview"]!.AsArray());
    }

    [Fact]
    public async Task A_step_at_work_on_an_older_value_gives_way_to_the_new_one()
    {
        await using var page = new OpenPage(scratch.Notebook("w.ipynb", Declared, "rate // slow"));
        page.Ask(new WorkOut(Extent.Everything));
        await page.UntilAsync(() => page.StateOf("step-2") == "working");
        page.Ask(new SetAssumption("rate", 0.04));
        page.Ask(new WorkOut(Extent.OutOfDate));
        await page.UntilAsync(() => page.Session.Ran.Count == 4);
        Assert.Equal(["step-1", "step-2", "step-1", "step-2"], page.Session.Ran);
        await page.UntilAsync(() => page.StateOf("step-2") == "working");
        await page.AskAsync(new Stop());
        Assert.Equal("stopped", page.StateOf("step-2"));
    }

    public void Dispose() => scratch.Dispose();
}
