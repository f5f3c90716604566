using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>What an open notebook does when a page asks; the session is a fake, the document and the disk are real.</summary>
public sealed class OpenNotebookTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Fact]
    public async Task Opening_works_nothing_out()
    {
        await using var page = new OpenPage(Chain());
        await page.UntilAsync(() => !page.Busy);
        Assert.Empty(page.Session.Ran);
        Assert.Equal(["none", "none", "none", "none"], page.States);
    }

    [Fact]
    public async Task Everything_is_worked_out_from_the_top_and_the_answers_are_shown()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new WorkOut(Extent.Everything));
        Assert.Equal(["step-2", "step-3", "step-4", "step-5"], page.Session.Ran);
        Assert.Equal(["done", "done", "done", "done"], page.States);
        Assert.Equal("var b = a + 1;", (string)page.Step("step-3")["answers"]![0]!["figure"]!);
    }

    [Fact]
    public async Task An_edited_step_makes_out_of_date_what_uses_it_and_nothing_else()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new EditStep("step-3", "var b = a + 2;"));
        Assert.Equal(["done", "old", "old", "done"], page.States);
    }

    [Fact]
    public async Task Bringing_up_to_date_works_out_only_what_is_out_of_date()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new EditStep("step-3", "var b = a + 2;"), new WorkOut(Extent.OutOfDate));
        Assert.Equal(["step-2", "step-3", "step-4", "step-5", "step-3", "step-4"], page.Session.Ran);
        Assert.Equal(["done", "done", "done", "done"], page.States);
    }

    [Fact]
    public async Task One_step_brings_what_it_needs_from_above_when_the_session_does_not_hold_it()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new WorkOut(Extent.Step, "step-4"));
        Assert.Equal(["step-2", "step-3", "step-4"], page.Session.Ran);
        Assert.Equal(["done", "done", "done", "none"], page.States);
    }

    [Fact]
    public async Task A_failing_step_says_so_and_those_below_keep_their_state()
    {
        await using var page = new OpenPage(scratch.Notebook("f.ipynb", "# F", "var a = 1;", "fail", "a"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        Assert.Equal(["done", "failed", "none"], page.States);
        var problem = page.Step("step-3")["answers"]![0]!;
        Assert.Equal(("problem", "No such name.", "this step, line 1"), ((string)problem["kind"]!, (string)problem["what"]!, (string)problem["detail"]!));
    }

    [Fact]
    public async Task Stopping_ends_the_step_at_work_and_forgets_those_that_wait()
    {
        await using var page = new OpenPage(scratch.Notebook("h.ipynb", "hang", "1"));
        var ended = page.AskAsync(new WorkOut(Extent.Everything));
        await Task.Delay(300);
        await page.AskAsync(new Stop());
        await ended;
        Assert.Equal(["stopped", "none"], page.States);
        Assert.Equal("Stopped by you.", (string)page.Step("step-1")["answers"]![0]!["what"]!);
    }

    [Fact]
    public async Task When_the_session_dies_the_notebook_is_whole_and_the_next_work_brings_back_what_it_needs()
    {
        await using var page = new OpenPage(scratch.Notebook("d.ipynb", "var a = 1;", "die", "a + 1"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        Assert.Equal(["kept", "failed", "none"], page.States);
        Assert.Contains("your notebook is whole", page.Notices.Single(), StringComparison.Ordinal);
        await page.AskAsync(new WorkOut(Extent.Step, "step-3"));
        Assert.Equal(["step-1", "step-2", "step-1", "step-3"], page.Session.Ran);
        Assert.Equal(["done", "failed", "done"], page.States);
    }

    [Fact]
    public async Task An_assumption_is_changed_in_its_declaration_and_makes_out_of_date_what_uses_it()
    {
        var path = scratch.Notebook("a.ipynb", "var rate = Assume.Rate(\"Price growth\", 0.03, from: 0, to: 0.1);\nvar years = Assume.Years(\"Horizon\", 25, from: 10, to: 40);", "rate * 2", "years * 2");
        await using var page = new OpenPage(path);
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new SetAssumption("rate", 0.055));
        Assert.Equal(0.055, (double)page.Notebook["assumptions"]![0]!["value"]!);
        Assert.StartsWith("var rate = Assume.Rate(\"Price growth\", 0.055, from: 0, to: 0.1);", (string)page.Step("step-1")["text"]!, StringComparison.Ordinal);
        Assert.Equal("old", page.StateOf("step-2"));
    }

    [Fact]
    public async Task Every_change_can_be_taken_back_and_made_again_a_deletion_with_its_answer_too()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new DeleteStep("step-4"));
        Assert.DoesNotContain(page.Notebook["steps"]!.AsArray(), step => (string)step!["id"]! == "step-4");
        await page.AskAsync(new Undo());
        Assert.Equal("var c = b + 1;", (string)page.Step("step-4")["answers"]![0]!["figure"]!);
        await page.AskAsync(new Redo());
        Assert.DoesNotContain(page.Notebook["steps"]!.AsArray(), step => (string)step!["id"]! == "step-4");
    }

    [Fact]
    public async Task Taking_an_edit_back_leaves_the_answers_of_other_steps_as_they_are()
    {
        await using var page = new OpenPage(scratch.Notebook("others.ipynb", "# Others", "var a = 1;", "2"));
        await page.AskAsync(new EditStep("step-2", "var a = 3;"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new Undo());
        Assert.Equal(["old", "done"], page.States);
        Assert.Single(page.Step("step-3")["answers"]!.AsArray());
        await page.AskAsync(new Redo());
        Assert.Single(page.Step("step-3")["answers"]!.AsArray());
    }

    [Fact]
    public async Task Typing_in_one_step_is_taken_back_as_one_change()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new EditStep("step-2", "var a = 12;"), new EditStep("step-2", "var a = 123;"), new Undo());
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
    }

    [Fact]
    public async Task Changes_are_saved_by_themselves_and_found_again()
    {
        var path = Chain();
        await using (var page = new OpenPage(path))
        {
            await page.AskAsync(new EditStep("step-2", "var a = 7;"));
            await page.UntilAsync(() => ((string)page.Notebook["saved"]!).StartsWith("Saved ", StringComparison.Ordinal));
        }
        Assert.Equal("var a = 7;", NotebookDocument.Load(path)["step-2"].Source);
    }

    [Fact]
    public async Task A_file_that_another_program_changed_is_not_written_over()
    {
        var path = Chain();
        await using var page = new OpenPage(path);
        await page.AskAsync(new EditStep("step-2", "var a = 7;"), new Save());
        var others = (await File.ReadAllTextAsync(path)).Replace("var a = 7;", "var a = 8;", StringComparison.Ordinal);
        await File.WriteAllTextAsync(path, others);
        await page.AskAsync(new EditStep("step-2", "var a = 9;"), new Save());
        Assert.Equal(others, await File.ReadAllTextAsync(path));
        var ours = Directory.GetFiles(Path.GetDirectoryName(path)!, "chain (page *).ipynb").Single();
        Assert.Equal("var a = 9;", NotebookDocument.Load(ours)["step-2"].Source);
        Assert.Contains("both are kept", (string)page.Notebook["saved"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_that_names_a_step_that_is_gone_is_told_and_brought_up_to_date()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new EditStep("gone", "1"));
        Assert.Contains("gone", page.Notices.Single(), StringComparison.Ordinal);
        Assert.Equal(4, page.States.Count);
    }

    [Fact]
    public async Task Completions_replace_the_word_that_was_begun()
    {
        await using var page = new OpenPage(Chain());
        await page.AskAsync(new Complete("step-2", "outlook.Pay", 11, 5));
        await page.UntilAsync(() => page.Completed is not null);
        Assert.Equal((5, 8, "Payback"), ((int)page.Completed!["request"]!, (int)page.Completed["from"]!, (string)page.Completed["items"]![0]!["label"]!));
    }

    private string Chain() => scratch.Notebook("chain.ipynb", "# A chain", "var a = 1;", "var b = a + 1;", "var c = b + 1;", "Math.Sqrt(2)");

    public void Dispose() => scratch.Dispose();
}
