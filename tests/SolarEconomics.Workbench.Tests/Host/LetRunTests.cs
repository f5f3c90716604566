using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench.Tests;

/// <summary>Code that this installation has neither written nor let run stays still.</summary>
public sealed class LetRunTests : IDisposable
{
    private readonly Scratch scratch = new();

    [Fact]
    public async Task A_notebook_from_elsewhere_shows_its_answers_and_runs_nothing()
    {
        await using var page = new OpenPage(scratch.Notebook("from-elsewhere.ipynb", "# Elsewhere", "var a = 1;"), letRun: false);
        await page.UntilAsync(() => !page.Busy);
        Assert.False((bool)page.Notebook["mayRun"]!);
        await page.AskAsync(new WorkOut(Extent.Everything), new StartAfresh(), new Complete("step-2", "a", 1, 1));
        Assert.Empty(page.Session.Ran);
        Assert.Equal(0, page.Session.Restarts);
        Assert.Equal("The session has not started.", (string)page.Notebook["session"]!["words"]!);
        Assert.All(page.Notices, words => Assert.Equal("This notebook's code has not been let run here.", words));
        Assert.Equal(3, page.Notices.Count);
    }

    [Fact]
    public async Task Once_let_run_it_runs_now_and_the_next_time()
    {
        var path = scratch.Notebook("once.ipynb", "# Once", "var a = 1;");
        await using (var page = new OpenPage(path, letRun: false))
        {
            await page.AskAsync(new LetCodeRun(), new WorkOut(Extent.Everything));
            Assert.Equal(["step-2"], page.Session.Ran);
        }
        await using var again = new OpenPage(path, letRun: false);
        await again.UntilAsync(() => !again.Busy);
        Assert.True((bool)again.Notebook["mayRun"]!);
    }

    [Fact]
    public async Task What_is_changed_here_was_written_here_and_what_is_changed_elsewhere_was_not()
    {
        var path = scratch.Notebook("changed.ipynb", "# Changed", "var a = 1;");
        await using (var page = new OpenPage(path)) await page.AskAsync(new EditStep("step-2", "var a = 2;"), new Save());
        await using (var page = new OpenPage(path, letRun: false))
        {
            await page.UntilAsync(() => !page.Busy);
            Assert.True((bool)page.Notebook["mayRun"]!);
        }
        await File.WriteAllTextAsync(path, (await File.ReadAllTextAsync(path)).Replace("var a = 2;", "var a = 3;", StringComparison.Ordinal));
        await using var elsewhere = new OpenPage(path, letRun: false);
        await elsewhere.UntilAsync(() => !elsewhere.Busy);
        Assert.False((bool)elsewhere.Notebook["mayRun"]!);
    }

    [Fact]
    public async Task Saving_a_notebook_from_elsewhere_does_not_let_its_code_run()
    {
        var path = scratch.Notebook("typed.ipynb", "# Typed", "var a = 1;");
        await using (var page = new OpenPage(path, letRun: false)) await page.AskAsync(new EditStep("step-2", "var a = 2;"), new Save());
        await using var again = new OpenPage(path, letRun: false);
        await again.UntilAsync(() => !again.Busy);
        Assert.False((bool)again.Notebook["mayRun"]!);
    }

    [Fact]
    public async Task What_was_run_by_name_from_the_command_line_was_let_run()
    {
        var path = scratch.Notebook("run.ipynb", "# Run", "1 + 1");
        var (code, said) = await Verb.RunAsync("run", path);
        Assert.True(code == 0, said);
        Assert.True(new LetRun(new StateFolder(OwnState.Folder), TimeProvider.System).Knows(NotebookDocument.Load(path)));
    }

    [Fact]
    public void Every_notebook_that_comes_with_the_program_may_run()
    {
        var letRun = new LetRun(new StateFolder(Path.Combine(scratch.Folder, "none")), TimeProvider.System);
        var shipped = Directory.GetFiles(Path.Combine(Sources.Root, "notebooks"), "*.ipynb");
        Assert.NotEmpty(shipped);
        Assert.All(shipped, path => Assert.True(letRun.Knows(NotebookDocument.Load(path)), path));
    }

    [Fact]
    public void Code_moved_from_one_step_into_the_next_is_other_code_and_words_do_not_count()
    {
        var one = NotebookDocument.Load(scratch.Notebook("a.ipynb", "a", "b"));
        Assert.NotEqual(CodeHash.Of(one), CodeHash.Of(NotebookDocument.Load(scratch.Notebook("b.ipynb", "ab", ""))));
        Assert.Equal(CodeHash.Of(one), CodeHash.Of(NotebookDocument.Load(scratch.Notebook("c.ipynb", "# Words", "a", "b"))));
    }

    public void Dispose() => scratch.Dispose();
}
