using System.Collections.Concurrent;
using System.ComponentModel;

namespace SolarEconomics.Notebook;

/// <summary>A session in a process of its own: whatever its code does, the document and the page stay.</summary>
internal sealed class ChildSession : ISession
{
    private readonly SessionStarter starter;
    private readonly SessionOptions options;
    private readonly EventRelay relay = new();
    private readonly StepQueue queue;
    private readonly MemoryMeter meter;
    private readonly ConcurrentDictionary<int, TaskCompletionSource<IReadOnlyList<Completion>>> completions = new();
    private readonly ConcurrentDictionary<int, TaskCompletionSource<TablePage?>> readings = new();
    private readonly Lock gate = new();
    private ChildProcess? child;
    private StepAtWork? atWork;
    private Task following = Task.CompletedTask;
    private string lastStepId = "";
    private int requests;
    private bool isClosed;

    internal ChildSession(SessionStarter starter, SessionOptions options)
    {
        this.starter = starter;
        this.options = options;
        queue = new StepQueue(relay);
        meter = new MemoryMeter(starter.MemoryLimitBytes, () => child, relay);
        Replace();
    }

    public SessionState State => relay.State;

    /// <summary>The process that works now; null where none could be started.</summary>
    internal int? ProcessId => child?.Id;

    public IDisposable Listen(Action<SessionEvent> hear) => relay.Listen(hear);

    public Task<StepEnded> RunAsync(RunStep step, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(step);
        return queue.Add(step, stop => WorkOutAsync(step, stop), cancel);
    }

    public async Task<StopOutcome> StopAsync()
    {
        queue.ForgetWaiting();
        if (atWork is not { } work) return StopOutcome.NothingToStop;
        relay.Become(SessionState.Stopping);
        if (work.TryClaim())
        {
            Finish(work, new StepStopped(work.Step.StepId, Throw.StoppedInQueue, work.Took));
            return StopOutcome.Stopped;
        }
        work.Child.Send(new StopStep());
        await Task.WhenAny(work.Done, Task.Delay(starter.StopPatience));
        if (work.Done.IsCompleted) return StopOutcome.Stopped;
        work.Child.End(EndReason.DidNotStop);
        await work.Done;
        return StopOutcome.Replaced;
    }

    public async Task RestartAsync()
    {
        queue.ForgetWaiting();
        if (child is { Ended.IsCompleted: false } old)
        {
            old.End(EndReason.Closed);
            await following;
        }
        if (await LivingChild() is { } fresh) await fresh.Ready;
    }

    public async Task<IReadOnlyList<Completion>> CompleteAsync(string code, int position, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(code);
        if (State != SessionState.Ready || child is not { } asked) return [];
        var id = Interlocked.Increment(ref requests);
        var answer = new TaskCompletionSource<IReadOnlyList<Completion>>(TaskCreationOptions.RunContinuationsAsynchronously);
        completions[id] = answer;
        asked.Send(new CompleteCode(id, code, position));
        await Task.WhenAny(answer.Task, asked.Ended, Task.Delay(Timeout.Infinite, cancel));
        completions.TryRemove(id, out _);
        return answer.Task.IsCompletedSuccessfully ? await answer.Task : [];
    }

    public async Task<TablePage?> ReadTableAsync(TableQuery query, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(query);
        if (child is not { Ready.IsCompleted: true } asked) return null;
        var id = Interlocked.Increment(ref requests);
        var answer = new TaskCompletionSource<TablePage?>(TaskCreationOptions.RunContinuationsAsynchronously);
        readings[id] = answer;
        asked.Send(new ReadTable(id, query));
        await Task.WhenAny(answer.Task, asked.Ended, Task.Delay(Timeout.Infinite, cancel));
        readings.TryRemove(id, out _);
        return answer.Task.IsCompletedSuccessfully ? await answer.Task : null;
    }

    public void AnswerInput(string inputId, string text) => child?.Send(new AnswerInput(inputId, text));

    public async ValueTask DisposeAsync()
    {
        isClosed = true;
        queue.ForgetWaiting();
        meter.Dispose();
        if (child is not { } last) return;
        last.Dispose();
        await last.Ended;
    }

    private async Task<StepEnded> WorkOutAsync(RunStep step, CancellationToken cancel)
    {
        if (await LivingChild() is not { } worker) return new StepStopped(step.StepId, Throw.NoSession, TimeSpan.Zero);
        var work = new StepAtWork(step, worker);
        lastStepId = step.StepId;
        atWork = work;
        using var cancelling = cancel.Register(() => _ = StopAsync());
        await Task.WhenAny(worker.Ready, work.Done);
        if (work.TryClaim()) worker.Send(step);
        if (await Task.WhenAny(work.Done, worker.Ended) != work.Done)
            Finish(work, new StepStopped(step.StepId, (await worker.Ended).Words, work.Took));
        return await work.Done;
    }

    /// <summary>The process to work in: after an end its successor, after a failed start another try.</summary>
    private async Task<ChildProcess?> LivingChild()
    {
        if (child is { Ended.IsCompleted: true }) await following;
        if (child is null or { Ended.IsCompleted: true }) Replace();
        return child;
    }

    private void Finish(StepAtWork work, StepEnded ended)
    {
        lock (gate)
        {
            if (atWork != work) return;
            atWork = null;
        }
        relay.Raise(ended);
        if (child == work.Child && !work.Child.Ended.IsCompleted) relay.Become(work.Child.Ready.IsCompleted ? SessionState.Ready : SessionState.Starting);
        work.Finish(ended);
    }

    /// <summary>Takes a process and tells it whose notebook it works for. Its end brings the next one.</summary>
    private void Replace()
    {
        relay.Become(SessionState.Starting);
        try
        {
            child = starter.Take();
        }
        catch (Win32Exception e)
        {
            child = null;
            relay.Raise(new SessionEnded(EndReason.DidNotStart, $"No session could be started: {e.Message}"));
            relay.Become(SessionState.Ended);
            return;
        }
        var mine = child;
        mine.Hear = happened => Hear(mine, happened);
        mine.HearPrint = HearPrint;
        mine.Send(new OpenSession(options.Folder, options.Culture));
        following = Follow(mine);
    }

    private async Task Follow(ChildProcess mine)
    {
        await mine.Ready;
        var wasReady = !mine.Ended.IsCompleted;
        if (wasReady && atWork is null) relay.Become(SessionState.Ready);
        var end = await mine.Ended;
        mine.Dispose();
        // The step first, then the session: a reader looks for the reason where the work was.
        if (atWork is { } lost && lost.Child == mine) await lost.Done;
        relay.Raise(new SessionEnded(end.Reason, end.Words));
        // A process that never got ready would not get ready the next time either; the reader decides.
        if (isClosed || (!wasReady && end.Reason != EndReason.Closed)) relay.Become(SessionState.Ended);
        else Replace();
    }

    private void Hear(ChildProcess from, SessionEvent happened)
    {
        if (from != child) return;
        switch (happened)
        {
            case StateChanged:
                break;
            case CompletionsFound found:
                if (completions.TryGetValue(found.RequestId, out var answer)) answer.TrySetResult(found.Items);
                break;
            case TableRead read:
                if (readings.TryGetValue(read.RequestId, out var page)) page.TrySetResult(read.Page);
                break;
            case StepEnded ended:
                if (atWork is { } work) Finish(work, ended);
                break;
            case StepStarted:
                relay.Become(SessionState.Working);
                relay.Raise(happened);
                break;
            default:
                relay.Raise(happened);
                break;
        }
    }

    // Printed past the session's console: by a native library, or by a thread that outlived its step.
    private void HearPrint(string stream, string text) => relay.Raise(new OutputAdded(lastStepId, Outputs.Printed(stream, text)));
}
