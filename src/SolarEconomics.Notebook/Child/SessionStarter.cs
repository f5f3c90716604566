using System.ComponentModel;

namespace SolarEconomics.Notebook;

/// <summary>Opens sessions, each in a process of its own, and keeps one warm process in reserve so that a fresh start is quick.</summary>
/// <remarks>Thread-safe. Disposing it ends the spare process; sessions are disposed by who opened them.</remarks>
public sealed class SessionStarter : IAsyncDisposable
{
    private readonly Lock gate = new();
    private readonly ChildProgram program;
    private readonly bool keepSpare;
    private readonly long memoryLimitBytes;
    private ChildProcess? spare;
    private bool isClosed;

    /// <summary>A starter; the first process begins to warm up at once where a spare is kept.</summary>
    /// <param name="program">What to start.</param>
    /// <param name="keepSpare">Whether to keep one warm process in reserve.</param>
    /// <param name="memoryLimitBytes">Memory at which a session's process is ended, in bytes; 0 sets no limit.</param>
    public SessionStarter(ChildProgram program, bool keepSpare, long memoryLimitBytes = 3L << 30)
    {
        ArgumentNullException.ThrowIfNull(program);
        ArgumentOutOfRangeException.ThrowIfNegative(memoryLimitBytes);
        this.program = program;
        this.keepSpare = keepSpare;
        this.memoryLimitBytes = memoryLimitBytes;
        if (keepSpare) WarmSpare();
    }

    /// <summary>How long a step may take to stop before its process is replaced.</summary>
    internal TimeSpan StopPatience { get; init; } = TimeSpan.FromMilliseconds(500);

    internal long MemoryLimitBytes => memoryLimitBytes;

    /// <summary>Opens a session; it is at once there and works its first step as soon as it is warm.</summary>
    /// <param name="options">Folder and culture of the notebook.</param>
    public ISession Open(SessionOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return new ChildSession(this, options);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        ChildProcess? left;
        lock (gate) (left, spare, isClosed) = (spare, null, true);
        left?.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>The spare process where one lives, else a new one.</summary>
    /// <exception cref="Win32Exception">The program cannot be started.</exception>
    internal ChildProcess Take()
    {
        ChildProcess? taken;
        lock (gate) (taken, spare) = (spare, null);
        if (taken is null or { Ended.IsCompleted: true }) taken = ChildProcess.Start(program, memoryLimitBytes);
        // The next spare waits until this one is warm: two at once would make the reader wait twice as long.
        if (keepSpare) _ = WarmSpareAfter(taken);
        return taken;
    }

    private async Task WarmSpareAfter(ChildProcess taken)
    {
        await taken.Ready;
        if (!taken.Ended.IsCompleted) WarmSpare();
    }

    private void WarmSpare()
    {
        lock (gate)
        {
            if (isClosed || spare is { Ended.IsCompleted: false }) return;
            try
            {
                spare = ChildProcess.Start(program, memoryLimitBytes);
            }
            catch (Win32Exception)
            {
                // No spare now; whoever opens the next session hears why none can be started.
                spare = null;
            }
        }
    }
}
