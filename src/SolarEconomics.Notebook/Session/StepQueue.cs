namespace SolarEconomics.Notebook;

/// <summary>Runs steps one at a time, in the order in which they were asked for.</summary>
internal sealed class StepQueue(EventRelay relay)
{
    private readonly Lock gate = new();
    private Task last = Task.CompletedTask;
    private CancellationTokenSource forget = new();

    /// <summary>Runs a step after those before it; a step that is forgotten while it waits ends as stopped.</summary>
    internal Task<StepEnded> Add(RunStep step, Func<CancellationToken, Task<StepEnded>> run, CancellationToken cancel)
    {
        lock (gate)
        {
            var mine = RunAfter(last, step, run, forget.Token, cancel);
            last = mine;
            return mine;
        }
    }

    /// <summary>Forgets the steps that wait; the one at work goes on.</summary>
    internal void ForgetWaiting()
    {
        CancellationTokenSource old;
        lock (gate) (old, forget) = (forget, new CancellationTokenSource());
        old.Cancel();
        old.Dispose();
    }

    private async Task<StepEnded> RunAfter(Task before, RunStep step, Func<CancellationToken, Task<StepEnded>> run, CancellationToken forgotten, CancellationToken cancel)
    {
        // A caller that holds a lock or a thread of its own is never made to wait for the step itself.
        await before.ConfigureAwait(ConfigureAwaitOptions.ForceYielding | ConfigureAwaitOptions.SuppressThrowing);
        if (!forgotten.IsCancellationRequested && !cancel.IsCancellationRequested) return await run(cancel);
        var stopped = new StepStopped(step.StepId, Throw.StoppedInQueue, TimeSpan.Zero);
        relay.Raise(stopped);
        return stopped;
    }
}
