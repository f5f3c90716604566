using System.Diagnostics;

namespace SolarEconomics.Notebook;

/// <summary>The step that a process works on, and the promise of its end.</summary>
internal sealed class StepAtWork(RunStep step, ChildProcess child)
{
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private readonly TaskCompletionSource<StepEnded> done = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private int claimed;

    internal RunStep Step => step;

    internal ChildProcess Child => child;

    internal TimeSpan Took => watch.Elapsed;

    internal Task<StepEnded> Done => done.Task;

    /// <summary>True for the first of the two that want it: the sender, or a stop that came before it was sent.</summary>
    internal bool TryClaim() => Interlocked.Exchange(ref claimed, 1) == 0;

    internal void Finish(StepEnded ended) => done.TrySetResult(ended);
}
