using System.Diagnostics;

namespace SolarEconomics.Notebook.Tests;

/// <summary>What code can do to its process, tried: each ends in a plain message, and the next step works.</summary>
[Collection(ChildCollection.Name)]
public sealed class FaultTests(ChildFixture children)
{
    private Task<StepRun> Run(string code) => StepRun.Of(children.Session, code);

    [Fact]
    public async Task Memory_that_no_collector_sees_ends_the_session_in_words()
    {
        var run = await Run("""
            var held = new List<IntPtr>();
            while (true)
            {
                var piece = System.Runtime.InteropServices.Marshal.AllocHGlobal(16 << 20);
                for (var at = 0; at < 16 << 20; at += 4096) System.Runtime.InteropServices.Marshal.WriteByte(piece, at, 1);
                held.Add(piece);
                System.Threading.Thread.Sleep(20);
            }
            """);
        Assert.Equal("The session took more memory than its limit and was ended. Its variables are gone; the notebook is whole.", Assert.IsType<StepStopped>(run.Ended).Words);
        Assert.Equal("2", (await Run("1 + 1")).Result());
    }

    [Fact]
    public async Task A_flood_of_threads_that_take_the_whole_pool_is_stopped()
    {
        var begun = new TaskCompletionSource();
        using var listening = children.Session.Listen(e => { if (e is OutputAdded { Output: var o } && o.ToJsonString().Contains("flooded", StringComparison.Ordinal)) begun.TrySetResult(); });
        var run = Run("""
            for (var i = 0; i < 300; i++) new System.Threading.Thread(() => { while (true) System.Threading.Thread.Sleep(1000); }, 65536) { IsBackground = true }.Start();
            for (var i = 0; i < 2000; i++) Task.Run(() => System.Threading.Thread.Sleep(-1));
            Console.WriteLine("flooded");
            while (true) { }
            """);
        await Task.WhenAny(begun.Task, Task.Delay(TimeSpan.FromSeconds(30)));
        await children.Session.StopAsync();
        Assert.IsType<StepStopped>((await run).Ended);
        await children.Session.RestartAsync();
        Assert.Equal("2", (await Run("1 + 1")).Result());
    }

    [Fact]
    public async Task An_output_of_more_than_a_hundred_megabytes_is_left_out_and_said()
    {
        await using var starter = new SessionStarter(ChildMain.Program, keepSpare: false, memoryLimitBytes: 0);
        await using var session = starter.Open(new SessionOptions());
        var run = await StepRun.Of(session, "new Finding(\"\", new string('x', 60_000_000))");
        Assert.Contains("MB is too long to show and was left out. Show a part of it, or write it to a file.", run.Printed("stderr"), StringComparison.Ordinal);
        Assert.Equal("2", (await StepRun.Of(session, "1 + 1")).Result());
    }

    [Theory]
    [InlineData("starting")]
    [InlineData("ready")]
    [InlineData("working")]
    [InlineData("stopping")]
    public async Task A_process_killed_in_any_state_is_replaced_and_the_next_step_works(string state)
    {
        await using var starter = new SessionStarter(ChildMain.Program, keepSpare: false);
        await using var session = (ChildSession)starter.Open(new SessionOptions());
        if (state != "starting") await StepRun.Of(session, "var kept = 1;");
        Task<StepRun>? run = null;
        if (state is "working" or "stopping")
        {
            var working = new TaskCompletionSource();
            using var listening = session.Listen(e => { if (e is StepStarted) working.TrySetResult(); });
            run = StepRun.Of(session, "System.Threading.Thread.Sleep(-1);");
            await working.Task;
        }
        var stop = state == "stopping" ? session.StopAsync() : null;
        using (var process = Process.GetProcessById(session.ProcessId!.Value)) process.Kill();
        if (run is not null) Assert.IsType<StepStopped>((await run).Ended);
        if (stop is not null) await stop;
        var next = await StepRun.Of(session, "1 + 1");
        // Asked for before the loss was noticed, it is told so: what it would need is gone with the process.
        if (next.Ended is StepStopped) next = await StepRun.Of(session, "1 + 1");
        Assert.Equal("2", next.Result());
    }
}
