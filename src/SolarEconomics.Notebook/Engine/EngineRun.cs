namespace SolarEconomics.Notebook;

/// <summary>One run of code in the engine: how it is stopped, what surrounds it, and who hears what comes of it.</summary>
internal sealed class EngineRun(Action<EngineHappening> hear, Func<IDisposable> enter) : IDisposable
{
    /// <summary>Time that the compiler and well-behaved code get to end by themselves before the thread is stopped in mid-loop.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(100);

    private readonly CancellationTokenSource stop = new();
    private readonly CancellationTokenSource abort = new();
    private readonly TaskCompletionSource ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Lock gate = new();
    private int begun;
    private bool isDisposed;

    /// <summary>Seen by the compiler and by code that asks.</summary>
    internal CancellationToken StopAsked => stop.Token;

    /// <summary>Ends the thread of the code wherever it is.</summary>
    internal CancellationToken AbortAsked => abort.Token;

    /// <summary>Completes when no line of the code runs any more.</summary>
    internal Task CodeEnded => ended.Task;

    internal void Stop()
    {
        lock (gate)
        {
            if (isDisposed) return;
            abort.CancelAfter(Patience);
        }
        // Outside the lock: what hears it runs here and now. A run that ends meanwhile has no one left to tell.
        stop.Cancel();
    }

    /// <summary>True for the first of the two that want the run: the engine's thread, or its caller who gave up.</summary>
    internal bool TryBegin() => Interlocked.Exchange(ref begun, 1) == 0;

    internal IDisposable Enter() => enter();

    internal void Hear(EngineHappening happening) => hear(happening);

    internal void EndCode() => ended.TrySetResult();

    public void Dispose()
    {
        // The first source has no timer and so nothing to free; a late stop may still reach it.
        lock (gate)
        {
            isDisposed = true;
            abort.Dispose();
        }
    }
}
