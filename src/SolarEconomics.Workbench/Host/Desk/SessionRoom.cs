using SolarEconomics.Notebook;

namespace SolarEconomics.Workbench;

/// <summary>The session of one open notebook: opened when a page looks, and never in the way of the notebook's own loop.</summary>
/// <param name="open">Opens a session; it is there at once and warms up by itself.</param>
/// <param name="options">Folder and culture of the notebook.</param>
/// <param name="hear">Called for all that happens in the session.</param>
/// <param name="post">Puts something into the notebook's loop.</param>
internal sealed class SessionRoom(Func<SessionOptions, ISession> open, SessionOptions options, Action<SessionEvent> hear, Action<Action> post) : IAsyncDisposable
{
    private volatile ISession? session;
    private IDisposable? listening;

    /// <summary>Opens the session where its code may run, so that the first step need not wait for it.</summary>
    public void WarmIf(bool mayRun)
    {
        if (mayRun) Opened();
    }

    /// <summary>Whether there is a session.</summary>
    public bool IsOpen => session is not null;

    /// <summary>Works one step out and hands over how it ended.</summary>
    public async Task RunAsync(RunStep step, Action<StepEnded> ended)
    {
        var end = await Opened().RunAsync(step);
        post(() => ended(end));
    }

    /// <summary>Stops what is at work; the outcome is handed over.</summary>
    public async Task StopAsync(Action<StopOutcome> stopped)
    {
        var outcome = await Opened().StopAsync();
        post(() => stopped(outcome));
    }

    /// <summary>Forgets every value.</summary>
    public async Task RestartAsync(Action ready)
    {
        await Opened().RestartAsync();
        post(ready);
    }

    /// <summary>Gives a step the line of text that it waits for.</summary>
    public void Answer(string inputId, string text) => session?.AnswerInput(inputId, text);

    /// <summary>Rows of a table that the session holds; null where it does not, or there is no session.</summary>
    public Task<TablePage?> ReadTableAsync(TableQuery query) => session?.ReadTableAsync(query) ?? Task.FromResult<TablePage?>(null);

    /// <summary>Ends the session; the next step opens another one.</summary>
    public async Task CloseAsync()
    {
        if (session is not { } old) return;
        listening?.Dispose();
        session = null;
        await old.DisposeAsync();
    }

    /// <summary>Ways to go on typing.</summary>
    public async Task CompleteAsync(string code, int position, Action<IReadOnlyList<Completion>> offer)
    {
        var items = await Opened().CompleteAsync(code, position);
        post(() => offer(items));
    }

    private ISession Opened()
    {
        if (session is not null) return session;
        session = open(options);
        listening = session.Listen(hear);
        hear(new StateChanged(session.State));
        return session;
    }

    public async ValueTask DisposeAsync() => await CloseAsync();
}
