using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Steps as a whole: split, joined, turned, copied, asked; every one of it can be taken back.</summary>
public sealed class StepsTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Fact]
    public async Task A_step_is_split_where_the_cursor_is_and_joined_again()
    {
        await using var page = new OpenPage(scratch.Notebook("s.ipynb", "# S", "var a = 1;\nvar b = 2;"));
        await page.AskAsync(new SplitStep("step-2", 11));
        Assert.Equal(["# S", "var a = 1;", "var b = 2;"], Texts(page));
        await page.AskAsync(new JoinStep("step-2"));
        Assert.Equal(["# S", "var a = 1;\nvar b = 2;"], Texts(page));
        await page.AskAsync(new Undo(), new Undo());
        Assert.Equal(["# S", "var a = 1;\nvar b = 2;"], Texts(page));
        await page.AskAsync(new Redo());
        Assert.Equal(["# S", "var a = 1;", "var b = 2;"], Texts(page));
    }

    [Fact]
    public async Task Text_and_code_are_not_joined_and_the_reader_is_told_what_to_do()
    {
        await using var page = new OpenPage(scratch.Notebook("j.ipynb", "# J", "1"));
        await page.AskAsync(new JoinStep("step-1"));
        Assert.Equal("The step below is not text: turn one of the two into the other kind first.", page.Notices.Single());
        Assert.Equal(2, Texts(page).Count);
    }

    [Fact]
    public async Task Code_turned_into_text_makes_out_of_date_what_used_it_and_can_be_taken_back_with_its_answer()
    {
        await using var page = new OpenPage(scratch.Notebook("t.ipynb", "# T", "var a = 1;", "a + 1"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new ChangeKind("step-2"));
        Assert.Equal("text", (string)page.Step("step-2")["kind"]!);
        Assert.Equal("old", page.StateOf("step-3"));
        await page.AskAsync(new Undo());
        Assert.Equal("code", (string)page.Step("step-2")["kind"]!);
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["answers"]![0]!["figure"]!);
    }

    [Fact]
    public async Task A_step_is_copied_into_another_notebook()
    {
        var other = scratch.Notebook("b.ipynb", "# B");
        await using var page = new OpenPage(scratch.Notebook("a.ipynb", "# A", "var a = 1;"));
        await using var into = new OpenPage(other, page.Shared);
        await page.AskAsync(new CopyStep("step-2"));
        await into.AskAsync(new PutStep("step-1"));
        Assert.Equal(["# B", "var a = 1;"], Texts(into));
        await into.AskAsync(new Undo());
        Assert.Equal(["# B"], Texts(into));
    }

    [Fact]
    public async Task What_a_step_asks_is_shown_answered_and_gone()
    {
        await using var page = new OpenPage(scratch.Notebook("i.ipynb", "# I", "ask"));
        await page.UntilAsync(() => !page.Busy);
        page.Ask(new WorkOut(Extent.Everything));
        await page.UntilAsync(() => page.Step("step-2")["asks"] is not null);
        Assert.Equal("How many panels?", (string)page.Step("step-2")["asks"]!["prompt"]!);
        await page.AskAsync(new GiveInput("step-2", "another", "no"), new GiveInput("step-2", "input-1", "twelve"), new GiveInput("step-2", "input-1", "late"));
        Assert.Equal(["twelve"], page.Session.Answers);
        Assert.Null(page.Step("step-2")["asks"]);
        Assert.Equal(["done"], page.States);
    }

    [Fact]
    public async Task A_long_step_shows_how_far_it_is_and_how_long_it_still_takes_until_it_is_stopped()
    {
        await using var page = new OpenPage(scratch.Notebook("p.ipynb", "# P", "1", "slow"));
        await page.UntilAsync(() => !page.Busy);
        page.Ask(new WorkOut(Extent.Everything));
        await page.UntilAsync(() => page.Notebook["work"]!["share"] is not null);
        var work = page.Notebook["work"]!;
        Assert.Equal(("step-3", 0.25, 6.0, 6.0), ((string)work["step"]!, (double)work["share"]!, (double)work["stepSecondsLeft"]!, (double)work["secondsLeft"]!));
        await page.AskAsync(new Stop());
        Assert.Null(page.Notebook["work"]!["share"]);
        Assert.Equal(["done", "stopped"], page.States);
    }

    [Fact]
    public async Task A_step_deleted_in_the_middle_makes_what_rested_on_it_out_of_date_and_nothing_else()
    {
        await using var page = new OpenPage(scratch.Notebook("d.ipynb", "# D", "var x = 1;", "x = 2;", "x", "7"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new DeleteStep("step-3"));
        Assert.Equal(["done", "old", "done"], page.States);
        await page.AskAsync(new WorkOut(Extent.OutOfDate));
        Assert.Equal(["step-2", "step-4"], page.Session.Ran.Skip(4));
    }

    [Fact]
    public async Task A_change_taken_out_of_a_step_makes_out_of_date_what_rested_on_it()
    {
        await using var page = new OpenPage(scratch.Notebook("taken-out.ipynb", "var list = new List<int> { 1 };", "list.Add(2);", "list.Sum()", "1 + 1"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new EditStep("step-2", "// list.Add(2);"));
        Assert.Equal(["done", "old", "old", "done"], page.States);
        await page.AskAsync(new WorkOut(Extent.OutOfDate));
        // The session's list still held what the step had put in.
        Assert.Equal(["step-1", "step-2", "step-3"], page.Session.Ran.Skip(4));
        await page.AskAsync(new Undo());
        Assert.Equal("old", page.States[2]);
    }

    [Fact]
    public async Task What_changes_a_list_in_place_is_worked_out_again_from_where_the_list_was_made()
    {
        await using var page = new OpenPage(scratch.Notebook("l.ipynb", "# L", "var l = new List<int>();", "l.Add(1);", "l.Count"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new EditStep("step-3", "l.Add(2);"), new WorkOut(Extent.OutOfDate));
        Assert.Equal(["step-2", "step-3", "step-4"], page.Session.Ran.Skip(3));
    }

    [Fact]
    public async Task A_name_that_a_later_step_overwrote_is_made_again_for_a_step_above()
    {
        await using var page = new OpenPage(scratch.Notebook("o.ipynb", "# O", "var x = 1;", "x", "var x = 2;", "x + 1"));
        await page.AskAsync(new WorkOut(Extent.Everything));
        await page.AskAsync(new WorkOut(Extent.Step, "step-3"));
        Assert.Equal(["step-2", "step-3"], page.Session.Ran.Skip(4));
    }

    [Fact]
    public async Task A_value_from_further_down_or_from_a_deleted_step_is_pointed_out()
    {
        await using var page = new OpenPage(scratch.Notebook("h.ipynb", "# H", "x + 1", "var x = 1;"));
        await page.AskAsync(new WorkOut(Extent.Step, "step-3"));
        await page.AskAsync(new WorkOut(Extent.Step, "step-2"));
        Assert.StartsWith("This answer rests on x from a step further down", (string)page.Step("step-2")["hidden"]!, StringComparison.Ordinal);
        await page.AskAsync(new DeleteStep("step-3"));
        await page.AskAsync(new WorkOut(Extent.Step, "step-2"));
        Assert.StartsWith("This answer rests on x from a step or a text that is gone", (string)page.Step("step-2")["hidden"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_thirty_minutes_without_work_the_session_is_closed_in_words_and_the_answers_stay()
    {
        var time = new ManualTime();
        await using var page = new OpenPage(scratch.Notebook("idle.ipynb", "# Idle", "1"), time: time);
        await page.AskAsync(new WorkOut(Extent.Everything));
        for (var minute = 0; minute < 29; minute++) { time.GoOn(TimeSpan.FromMinutes(1)); await page.SettleAsync(); }
        Assert.Equal(0, page.Session.Closes);
        for (var minute = 0; minute < 3; minute++) { time.GoOn(TimeSpan.FromMinutes(1)); await page.SettleAsync(); }
        await page.UntilAsync(() => page.Session.Closes == 1);
        Assert.StartsWith("The session was closed after 30 minutes without work", (string)page.Notebook["session"]!["words"]!, StringComparison.Ordinal);
        Assert.Equal(["kept"], page.States);
        await page.AskAsync(new WorkOut(Extent.Everything));
        Assert.Equal(["done"], page.States);
    }

    private static IReadOnlyList<string> Texts(OpenPage page) => [.. page.Notebook["steps"]!.AsArray().Select(step => (string)step!["text"]!)];

    public void Dispose() => scratch.Dispose();
}
