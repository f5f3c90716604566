using System.Diagnostics;

namespace SolarEconomics.Notebook.Tests;

[Collection(ChildCollection.Name)]
public sealed class ChildSessionTests(ChildFixture children)
{
    private const string Begun = "Console.WriteLine(\"begun\"); ";

    private Task<StepRun> Run(string code) => StepRun.Of(children.Session, code);

    /// <summary>Starts code and returns once it has printed that it begun.</summary>
    private async Task<Task<StepRun>> Begin(string code)
    {
        var begun = new TaskCompletionSource();
        // Listening ends once it has begun; the run goes on and is the caller's to await.
        var listening = children.Session.Listen(e => { if (e is OutputAdded { Output: var o } && o.ToJsonString().Contains("begun", StringComparison.Ordinal)) begun.TrySetResult(); });
        var run = Run(Begun + code);
        await begun.Task.WaitAsync(TimeSpan.FromSeconds(120));
        listening.Dispose();
        return run;
    }

    [Fact]
    public async Task A_sum_comes_back_from_the_other_process()
    {
        var run = await Run("new { Sum = 1 + 2, Process = Environment.ProcessId }");
        Assert.IsType<StepRan>(run.Ended);
        Assert.StartsWith("{ Sum = 3, Process = ", run.Result(), StringComparison.Ordinal);
        Assert.DoesNotContain($"Process = {Environment.ProcessId} ", run.Result(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_native_code_prints_does_not_disturb_the_messages()
    {
        var run = await Run("""
            using (var raw = Console.OpenStandardOutput()) raw.Write(new byte[] { 200, 0, 0, 0, 65, 66, 10 });
            await Task.Delay(200);
            "still here"
            """);
        Assert.Equal("still here", run.Result());
        Assert.Contains("AB", run.Printed(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_endless_loop_stops_and_variables_stay()
    {
        await Run("var kept = 41;");
        var loop = await Begin("while (true) { }");
        Assert.Equal(StopOutcome.Stopped, await children.Session.StopAsync());
        Assert.IsType<StepStopped>((await loop).Ended);
        Assert.Equal("42", (await Run("kept + 1")).Result());
    }

    [Theory]
    [InlineData("await Task.Delay(1); while (true) { }")]
    [InlineData("while (true) { try { while (true) { } } finally { while (true) { } } }")]
    [InlineData("System.Threading.Thread.Sleep(-1);")]
    public async Task A_step_that_cannot_be_stopped_has_its_process_replaced_and_says_so(string code)
    {
        var loop = await Begin(code);
        Assert.Equal(StopOutcome.Replaced, await children.Session.StopAsync());
        var stopped = Assert.IsType<StepStopped>((await loop).Ended);
        Assert.Equal("The step did not stop by itself, so its session was ended. Its variables are gone; the notebook is whole.", stopped.Words);
        Assert.Equal("2", (await Run("1 + 1")).Result());
    }

    [Theory]
    [InlineData("int Deep(int x) => 1 + Deep(x + 1); Deep(0)", EndReason.StackOverflow)]
    [InlineData("Environment.Exit(3);", EndReason.ExitedByCode)]
    [InlineData("System.Diagnostics.Process.GetCurrentProcess().Kill();", EndReason.Killed)]
    [InlineData("Environment.FailFast(\"enough\");", EndReason.Killed)]
    public async Task A_process_that_dies_ends_its_step_and_the_next_one_takes_over(string code, EndReason expected)
    {
        var ends = new List<SessionEnded>();
        using var listening = children.Session.Listen(e => { if (e is SessionEnded end) ends.Add(end); });
        var run = await Run(code);
        var stopped = Assert.IsType<StepStopped>(run.Ended);
        Assert.Equal("2", (await Run("1 + 1")).Result());
        var end = Assert.Single(ends);
        Assert.Equal(expected, end.Reason);
        Assert.Equal(end.Words, stopped.Words);
    }

    [Fact]
    public async Task A_process_killed_from_outside_in_mid_run_leaves_the_document_whole()
    {
        var document = NotebookDocument.New();
        var step = document.Insert(0, StepKind.Code, "System.Threading.Thread.Sleep(-1);");
        var before = document.ToJson();
        var id = (await Run("Environment.ProcessId")).Result();
        var run = await Begin(step.Source);
        using (var child = Process.GetProcessById(int.Parse(id))) child.Kill();
        Assert.IsType<StepStopped>((await run).Ended);
        Assert.Equal(before, document.ToJson());
        Assert.Equal("2", (await Run("1 + 1")).Result());
    }

    [Fact]
    public async Task Too_much_memory_fails_the_step_and_the_session_goes_on()
    {
        var run = await Run("var all = new List<byte[]>(); while (true) all.Add(new byte[64 * 1024 * 1024]);");
        Assert.Equal("OutOfMemoryException", Assert.IsType<StepFailed>(run.Ended).Error.Name);
        Assert.Equal("2", (await Run("1 + 1")).Result());
    }

    [Fact]
    public async Task A_failing_background_thread_is_said_and_does_not_end_the_session()
    {
        var run = await Run("""
            var t = new System.Threading.Thread(() => throw new InvalidOperationException("in the back"));
            t.Start(); t.Join(); "here"
            """);
        Assert.Equal("here", run.Result());
        Assert.Contains("InvalidOperationException: in the back", run.Printed("stderr"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fresh_start_forgets_what_was_declared()
    {
        await Run("var old = 1;");
        await children.Session.RestartAsync();
        Assert.Equal("CS0103", Assert.IsType<StepFailed>((await Run("old")).Ended).Error.Name);
    }

    [Fact]
    public async Task A_step_asks_for_input_and_goes_on_with_the_answer()
    {
        using var listening = children.Session.Listen(e => { if (e is InputAsked asked) children.Session.AnswerInput(asked.InputId, "south roof"); });
        Assert.Equal("SOUTH ROOF", (await Run("Console.ReadLine().ToUpperInvariant()")).Result());
    }

    [Fact]
    public async Task Completion_knows_the_library_and_what_steps_declared()
    {
        await Run("var carport = Site.At(\"Alder Weir\", 53.2, -9.1, \"Europe/Dublin\", \"EUR\");");
        var items = await children.Session.CompleteAsync("carport.Lat", 11);
        Assert.Contains(items, i => i.Text == "LatitudeDeg");
        Assert.Contains(await children.Session.CompleteAsync("carp", 4), i => i.Text == "carport");
    }

    [Fact]
    public async Task No_secret_of_the_host_is_in_the_childs_environment()
    {
        Environment.SetEnvironmentVariable("SOLAR_TEST_TOKEN", "do not show");
        await using var starter = new SessionStarter(ChildMain.Program, keepSpare: false);
        await using var session = starter.Open(new SessionOptions());
        var run = await StepRun.Of(session, "Environment.GetEnvironmentVariable(\"SOLAR_TEST_TOKEN\") ?? \"none\"");
        Assert.Equal("none", run.Result());
    }

    [Fact]
    public async Task Waiting_steps_are_forgotten_by_a_stop()
    {
        var first = await Begin("while (true) { }");
        var second = Run("1");
        await children.Session.StopAsync();
        Assert.IsType<StepStopped>((await first).Ended);
        Assert.Equal(TimeSpan.Zero, Assert.IsType<StepStopped>((await second).Ended).Took);
    }
}
