using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Nothing is lost: not by a crash, not by another program, not by a disk that takes nothing.</summary>
public sealed class KeepingTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Fact]
    public async Task What_was_left_behind_is_offered_with_both_states_to_look_at_and_taken()
    {
        var path = LeftBehind("var a = 2;");
        await using var page = new OpenPage(path);
        await page.UntilAsync(() => page.Notebook["offer"] is not null);
        Assert.Contains("not lost", (string)page.Notebook["offer"]!["words"]!, StringComparison.Ordinal);
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
        await page.AskAsync(new ShowState(Other: true));
        Assert.Equal("var a = 2;", (string)page.Step("step-2")["text"]!);
        await page.AskAsync(new ShowState(Other: false));
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
        await page.AskAsync(new TakeState(), new Save());
        Assert.Equal("var a = 2;", (string)page.Step("step-2")["text"]!);
        await page.UntilAsync(() => NotebookDocument.Load(path)["step-2"].Source == "var a = 2;");
        Assert.Null(page.Notebook["offer"]);
        await page.AskAsync(new Undo());
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
    }

    [Fact]
    public async Task What_is_not_gone_on_with_is_found_among_the_earlier_versions()
    {
        var path = LeftBehind("var a = 2;");
        await using var page = new OpenPage(path);
        await page.AskAsync(new LeaveState(), new AskVersions());
        await page.UntilAsync(() => page.Versions?.AsArray().Count == 1);
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(path)!, ".*.journal"));
        await page.AskAsync(new LookAtVersion((string)page.Versions![0]!["name"]!));
        Assert.Equal("var a = 2;", (string)page.Step("step-2")["text"]!);
        await page.AskAsync(new TakeState());
        Assert.Equal("var a = 2;", (string)page.Step("step-2")["text"]!);
        Assert.Null(page.Notebook["offer"]);
    }

    [Fact]
    public async Task While_another_state_is_shown_nothing_is_changed_or_worked_out()
    {
        await using var page = new OpenPage(LeftBehind("var a = 2;"));
        await page.AskAsync(new ShowState(Other: true), new EditStep("step-2", "var a = 3;"), new WorkOut(Extent.Everything));
        Assert.All(page.Notices, words => Assert.StartsWith("Another state of the notebook is shown.", words, StringComparison.Ordinal));
        Assert.Empty(page.Session.Ran);
        await page.AskAsync(new LeaveState());
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
    }

    [Fact]
    public async Task Until_the_reader_has_chosen_changes_are_kept_beside_the_file_and_said_to_be()
    {
        var path = LeftBehind("var a = 2;");
        var before = await File.ReadAllTextAsync(path);
        await using var page = new OpenPage(path);
        await page.AskAsync(new EditStep("step-2", "var a = 3;"));
        await page.UntilAsync(() => (string?)page.Notebook["saved"] == "Kept beside the file until you have chosen above");
        await page.AskAsync(new Save());
        Assert.StartsWith("Choose first which state of the notebook to go on with.", page.Notices.Single(), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(path));
        await page.AskAsync(new LeaveState(), new Save());
        await page.UntilAsync(() => NotebookDocument.Load(path)["step-2"].Source == "var a = 3;");
    }

    [Fact]
    public async Task Answers_left_out_of_the_file_are_still_shown_and_can_be_saved_again()
    {
        var path = scratch.Notebook("out.ipynb", "# Out", "1", "2");
        await using (var page = new OpenPage(path))
        {
            await page.AskAsync(new WorkOut(Extent.Everything));
            await page.AskAsync(new SaveAnswers(Wanted: false), new Save());
            Assert.True((bool)page.Notebook["leavesAnswersOut"]!);
            Assert.Equal(["done", "done"], page.States);
            Assert.DoesNotContain("execute_result", await File.ReadAllTextAsync(path), StringComparison.Ordinal);
            await page.AskAsync(new Undo(), new Save());
            Assert.False((bool)page.Notebook["leavesAnswersOut"]!);
        }
        Assert.Contains("execute_result", await File.ReadAllTextAsync(path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_decision_for_the_pages_own_state_keeps_both_files_and_is_not_asked_again()
    {
        var time = new ManualTime();
        var path = scratch.Notebook("both.ipynb", "# Both", "var a = 1;");
        await using var page = new OpenPage(path, time: time);
        await page.UntilAsync(() => !page.Busy);
        await File.WriteAllTextAsync(path, (await File.ReadAllTextAsync(path)).Replace("var a = 1;", "var a = 8;", StringComparison.Ordinal));
        time.GoOn(TimeSpan.FromSeconds(2));
        await page.UntilAsync(() => page.Notebook["offer"] is not null);
        await page.AskAsync(new LeaveState());
        time.GoOn(TimeSpan.FromSeconds(2));
        await page.UntilAsync(() => page.Notebook["offer"] is null);
        Assert.Contains("var a = 8;", await File.ReadAllTextAsync(path), StringComparison.Ordinal);
        var beside = Assert.Single(Directory.GetFiles(Path.GetDirectoryName(path)!, "both (page *.ipynb"));
        Assert.Contains("var a = 1;", await File.ReadAllTextAsync(beside), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_changes_on_the_disk_is_noticed_and_the_reader_chooses()
    {
        var path = scratch.Notebook("disk.ipynb", "# Disk", "var a = 1;");
        await using var page = new OpenPage(path);
        await page.UntilAsync(() => !page.Busy);
        var theirs = (await File.ReadAllTextAsync(path)).Replace("var a = 1;", "var a = 8;", StringComparison.Ordinal);
        await File.WriteAllTextAsync(path, theirs);
        await page.UntilAsync(() => page.Notebook["offer"] is not null);
        await page.AskAsync(new TakeState());
        Assert.Equal("var a = 8;", (string)page.Step("step-2")["text"]!);
        await page.AskAsync(new EditStep("step-2", "var a = 9;"), new Save());
        await page.UntilAsync(() => NotebookDocument.Load(path)["step-2"].Source == "var a = 9;");
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(path)!, "*.ipynb"));
    }

    [Fact]
    public async Task Two_programs_on_one_file_lose_nothing_of_either()
    {
        var path = scratch.Notebook("two.ipynb", "# Two", "var a = 1;", "var b = 1;");
        await using var one = new OpenPage(path);
        await using var other = new OpenPage(path);
        await one.AskAsync(new EditStep("step-2", "var a = 2;"), new Save());
        await other.AskAsync(new EditStep("step-3", "var b = 2;"), new Save());
        await other.UntilAsync(() => Directory.GetFiles(Path.GetDirectoryName(path)!, "*.ipynb").Length == 2);
        var all = Directory.GetFiles(Path.GetDirectoryName(path)!, "*.ipynb").Select(File.ReadAllText).ToList();
        Assert.Contains(all, text => text.Contains("var a = 2;", StringComparison.Ordinal));
        Assert.Contains(all, text => text.Contains("var b = 2;", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_read_only_file_is_said_in_words_and_saved_once_it_may_be_written()
    {
        var path = scratch.Notebook("fixed.ipynb", "# Fixed", "var a = 1;");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        await using var page = new OpenPage(path);
        await page.AskAsync(new EditStep("step-2", "var a = 2;"), new Save());
        await page.UntilAsync(() => ((string)page.Notebook["saved"]!).Length > 0);
        Assert.StartsWith("Not saved: fixed.ipynb is read-only. Allow writing to it", (string)page.Notebook["saved"]!, StringComparison.Ordinal);
        Assert.Equal("var a = 1;", NotebookDocument.Load(path)["step-2"].Source);
        File.SetAttributes(path, FileAttributes.Normal);
        await page.UntilAsync(() => ((string)page.Notebook["saved"]!).StartsWith("Saved ", StringComparison.Ordinal));
        Assert.Equal("var a = 2;", NotebookDocument.Load(path)["step-2"].Source);
    }

    [Fact]
    public async Task The_version_before_the_first_change_can_be_brought_back()
    {
        var path = scratch.Notebook("before.ipynb", "# Before", "var a = 1;");
        await using var page = new OpenPage(path);
        await page.AskAsync(new EditStep("step-2", "var a = 2;"), new Save(), new AskVersions());
        await page.UntilAsync(() => page.Versions?.AsArray().Count == 1);
        await page.AskAsync(new LookAtVersion((string)page.Versions![0]!["name"]!), new TakeState());
        Assert.Equal("var a = 1;", (string)page.Step("step-2")["text"]!);
    }

    [Fact]
    public void A_clock_that_is_set_back_replaces_no_version_and_stops_none()
    {
        var time = new ManualTime();
        var versions = new Versions(new StateFolder(Path.Combine(scratch.Folder, "state")), "/home/a/n.ipynb", time);
        versions.Keep("one"u8, time.GetUtcNow());
        Assert.False(versions.IsDue);
        time.Set(time.GetUtcNow() - TimeSpan.FromHours(5));
        Assert.True(versions.IsDue);
        versions.Keep("two"u8, time.GetUtcNow());
        versions.Keep("three"u8, time.GetUtcNow());
        Assert.Equal(3, versions.All.Count);
    }

    [Fact]
    public void Versions_of_the_last_day_stay_then_one_a_day_for_two_weeks()
    {
        var time = new ManualTime();
        var versions = new Versions(new StateFolder(Path.Combine(scratch.Folder, "state")), "/home/a/n.ipynb", time);
        for (var hour = 0; hour < 24 * 20; hour += 4)
        {
            time.GoOn(TimeSpan.FromHours(4));
            versions.Keep("version"u8, time.GetUtcNow());
        }
        var ages = versions.All.Select(entry => time.GetUtcNow() - entry.At).ToList();
        Assert.Equal(6, ages.Count(age => age < TimeSpan.FromDays(1)));
        Assert.InRange(ages.Count, 6 + 12, 6 + 14);
        Assert.All(ages, age => Assert.True(age < TimeSpan.FromDays(14)));
    }

    /// <summary>A notebook whose program was killed after a change: its file is old, its journal new.</summary>
    private string LeftBehind(string code)
    {
        var path = scratch.Notebook("left.ipynb", "# Left", "var a = 1;");
        var document = NotebookDocument.Load(path);
        var saved = document.State();
        document.SetSource("step-2", code);
        using (var journal = new NotebookJournal(path, saved)) journal.Append(document.State(), DateTimeOffset.UtcNow);
        return path;
    }

    public void Dispose() => scratch.Dispose();
}
